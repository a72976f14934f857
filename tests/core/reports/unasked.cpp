// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/reports/unasked.hpp"

#include "tests/core/reports/scene.hpp"

using namespace core;
using namespace Qt::StringLiterals;

namespace {

void add(std::vector<Entry> &ledger, const QString &author, const QString &kind, const QString &subject, const json::Object &body, std::optional<Head> pin)
{
    const qint64 seq = static_cast<qint64>(ledger.size()) + 1;
    const Statement said{*LedgerId::parse(u"elsewhere"), seq, *Instant::parseLedger(u"2026-03-02T06:00:00.000Z"), *PersonId::parse(author), {}, {}, kind,
                         subject.isEmpty() ? std::nullopt : std::optional(subject), body, pin, {}};
    ledger.push_back({said, {}, Digest::of(QByteArray::number(seq)), {}});
}

} // namespace

void Unasked::onRegister(const QString &kind, const QString &subject, const json::Object &body) { add(m_register, u"olga"_s, kind, subject, body, std::nullopt); }

void Unasked::say(const QString &author, const QString &kind, const QString &subject, const json::Object &body, std::optional<qint64> pin)
{
    add(m_job, author, kind, subject, body, Head{pin.value_or(static_cast<qint64>(m_register.size())), {}});
}

void Unasked::sayWithoutPin(const QString &author, const QString &kind, const QString &subject, const json::Object &body) { add(m_job, author, kind, subject, body, std::nullopt); }

JobRecord Unasked::record() const { return JobRecord(m_job, m_register, scene::openRecord(1).kinds()); }
