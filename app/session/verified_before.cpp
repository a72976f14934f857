// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/verified_before.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

#include "core/ledger/linked_heads.hpp"
#include "core/value/json.hpp"

namespace session {

namespace {

using namespace Qt::StringLiterals;
using core::json::Object;

QString programVersion() { return QStringLiteral(REMATE_VERSION); }

std::optional<VerifiedUpTo> upToIn(const Object &object)
{
    const auto seq = object.integer(u"seq");
    const auto content = core::Digest::parse(object.text(u"content"));
    const auto regSeq = object.integer(u"register_seq");
    const auto regHash = core::Digest::parse(object.text(u"register_hash"));
    const auto at = core::Instant::parseLedger(object.text(u"at"));
    const core::json::Value *heads = object.find(u"linked"); // none is written for a ledger without links
    auto linked = heads ? core::readLinkedHeads(*heads) : std::vector<core::LinkedHead>();
    if (!seq || !content || !regSeq || !regHash || !at || !linked)
        return std::nullopt;
    return VerifiedUpTo{*seq, *content, {*regSeq, *regHash}, *at, *std::move(linked)};
}

} // namespace

VerifiedBefore VerifiedBefore::load(const QString &path)
{
    VerifiedBefore before(path);
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return before;
    const auto read = core::json::parseObject(file.readAll());
    const core::json::Value *ledgers = read ? read->find(u"ledgers") : nullptr;
    if (!ledgers || !ledgers->object() || read->text(u"program") != programVersion())
        return before;
    for (const auto &[name, value] : ledgers->object()->members()) {
        const auto ledger = core::LedgerId::parse(name);
        const auto upTo = value.object() ? upToIn(*value.object()) : std::nullopt;
        if (ledger && upTo)
            before.set(*ledger, *upTo);
    }
    return before;
}

std::optional<VerifiedUpTo> VerifiedBefore::find(const core::LedgerId &ledger) const
{
    const auto at = m_ledgers.find(ledger);
    return at == m_ledgers.end() ? std::nullopt : std::optional(at->second);
}

core::Result<void> VerifiedBefore::save() const
{
    Object ledgers;
    for (const auto &[ledger, upTo] : m_ledgers) {
        Object row{{u"seq"_s, upTo.seq},
                   {u"content"_s, upTo.content.hex()},
                   {u"register_seq"_s, upTo.reg.seq},
                   {u"register_hash"_s, upTo.reg.hash.hex()},
                   {u"at"_s, upTo.at.text()}};
        if (!upTo.linked.empty())
            row.set(u"linked"_s, core::linkedHeadsValue(upTo.linked));
        ledgers.set(ledger.text(), std::move(row));
    }
    QSaveFile file(m_path);
    const bool isSaved = QDir().mkpath(QFileInfo(m_path).absolutePath()) && file.open(QIODevice::WriteOnly)
                         && file.setPermissions(QFile::ReadOwner | QFile::WriteOwner)
                         && file.write(core::json::canonical({{u"program"_s, programVersion()}, {u"ledgers"_s, ledgers}})) >= 0 && file.commit();
    if (isSaved)
        return {};
    return core::failure(core::ErrorCode::Io,
                         QCoreApplication::translate("VerifyStore", "What was verified could not be remembered in %1 (%2). The next verification "
                                                                    "begins at the first entry again.")
                             .arg(m_path, file.errorString()));
}

} // namespace session
