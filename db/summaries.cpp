// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/summaries.hpp"

#include "core/ledger/linked_heads.hpp"
#include "core/value/json.hpp"
#include "db/embedded_sql.hpp"
#include "db/meta.hpp"
#include "db/sqlite/connection.hpp"
#include "db/write_gate.hpp"

namespace db {

using core::Digest;
using core::failure;
using core::JobSummary;
using core::Result;

namespace {

/// Moves when the table or the form of a summary in it changes; core's own version moves when summaries come out otherwise.
constexpr qint64 formVersion = 2;
constexpr qint64 version = formVersion * 1'000'000 + core::summaryVersion;

QString versionName() { return QStringLiteral("summaries.version"); }

QByteArray written(const JobSummary &summary, const std::vector<core::LinkedHead> &linked)
{
    core::json::Array byStage;
    for (const qint64 count : summary.byStage)
        byStage.emplace_back(count);
    return core::json::canonical({{QStringLiteral("title"), summary.title},
                                  {QStringLiteral("work_order"), summary.workOrder},
                                  {QStringLiteral("aircraft"), summary.aircraft},
                                  {QStringLiteral("unit"), summary.unit},
                                  {QStringLiteral("closed"), summary.isClosed},
                                  {QStringLiteral("interfaces"), summary.interfaces},
                                  {QStringLiteral("by_stage"), byStage},
                                  {QStringLiteral("loose_ends"), summary.looseEnds},
                                  {QStringLiteral("last_at"), summary.lastAtMilliseconds},
                                  {QStringLiteral("linked"), core::linkedHeadsValue(linked)}});
}

std::optional<KeptSummary> parsed(const SummarySource &source, QByteArrayView bytes)
{
    const auto object = core::json::parseObject(bytes);
    const core::json::Value *stages = object ? object->find(u"by_stage") : nullptr;
    const core::json::Value *heads = object ? object->find(u"linked") : nullptr;
    auto linked = heads ? core::readLinkedHeads(*heads) : std::nullopt;
    if (!stages || !stages->array() || !linked)
        return std::nullopt;
    JobSummary summary;
    if (stages->array()->size() != summary.byStage.size())
        return std::nullopt;
    for (std::size_t i = 0; i < summary.byStage.size(); ++i) {
        const qint64 *count = stages->array()->at(i).integer();
        summary.byStage[i] = count ? *count : 0;
    }
    summary.title = object->text(u"title");
    summary.workOrder = object->text(u"work_order");
    summary.aircraft = object->text(u"aircraft");
    summary.unit = object->text(u"unit");
    summary.isClosed = object->isTrue(u"closed");
    summary.interfaces = object->integer(u"interfaces").value_or(0);
    summary.looseEnds = object->integer(u"loose_ends").value_or(0);
    summary.lastAtMilliseconds = object->integer(u"last_at").value_or(0);
    return KeptSummary{source, std::move(summary), *std::move(linked)};
}

Digest digestOf(const SummarySource &source, QByteArrayView summary)
{
    return Digest::of(source.ledger.text().toUtf8() + '\n' + source.job.bytes() + source.reg.bytes() + summary.toByteArray());
}

} // namespace

Result<bool> Summaries::isCurrent()
{
    return m_meta.get(versionName()).map([](std::optional<qint64> stored) { return stored == version; });
}

Result<bool> Summaries::makeCurrent()
{
    const auto current = isCurrent();
    if (!current || *current)
        return current.map([](bool) { return false; });
    return m_gate
        .write([this] {
            return m_connection.runScript(embeddedSql(QStringLiteral("derived/summaries.sql"))).and_then([this] {
                return m_meta.set(versionName(), version);
            });
        })
        .map([] { return true; });
}

Result<std::optional<KeptSummary>> Summaries::find(const SummarySource &source)
{
    // Read-only, and never opened for writing by this version: nothing is remembered in a form that we know.
    const auto current = isCurrent();
    if (!current)
        return failure(current.error());
    if (!*current)
        return std::nullopt;
    const QByteArray job = source.job.bytes();
    const QByteArray reg = source.reg.bytes();
    auto found = m_connection
                     .query("SELECT summary, digest FROM job_summaries WHERE ledger = ? AND job_hash = ? AND register_hash = ?")
                     .with(source.ledger.text())
                     .with(QByteArrayView(job))
                     .with(QByteArrayView(reg))
                     .one([&](Statement &row) -> std::optional<KeptSummary> {
                         const QByteArrayView summary = row.bytes(0);
                         if (Digest::fromBytes(row.bytes(1)) != digestOf(source, summary))
                             return std::nullopt;
                         return parsed(source, summary);
                     });
    return found.map([](const auto &row) { return row ? *row : std::nullopt; });
}

Result<void> Summaries::remember(std::span<const KeptSummary> summaries)
{
    if (summaries.empty() || !m_gate.mayWrite())
        return {};
    return m_gate.write([&]() -> Result<void> {
        for (const KeptSummary &kept : summaries)
            if (auto done = keep(kept); !done)
                return done;
        return {};
    });
}

Result<void> Summaries::keep(const KeptSummary &kept)
{
    const QByteArray job = kept.source.job.bytes();
    const QByteArray reg = kept.source.reg.bytes();
    const QByteArray summary = written(kept.summary, kept.linked);
    const QByteArray digest = digestOf(kept.source, summary).bytes();
    return m_connection
        .query("INSERT OR REPLACE INTO job_summaries (ledger, job_hash, register_hash, summary, digest) VALUES (?, ?, ?, ?, ?)")
        .with(kept.source.ledger.text())
        .with(QByteArrayView(job))
        .with(QByteArrayView(reg))
        .with(QByteArrayView(summary))
        .with(QByteArrayView(digest))
        .run();
}

} // namespace db
