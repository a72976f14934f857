// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/sound.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <set>

#include "app/session/linked_reader.hpp"
#include "app/session/read_on.hpp"
#include "app/session/verdict_words.hpp"
#include "core/ledger/canonical.hpp"

namespace session {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Session", text); }

/// What one job's record rests on, out of a store of many jobs.
class EvidenceOfJob final : public Evidence {
public:
    explicit EvidenceOfJob(db::Store &store) : m_store(store) {}

    /// Finds the jobs that it is linked with, directly or by others, and the attachments. To be called first.
    core::Result<void> gather(const core::LedgerId &job)
    {
        std::vector<core::LedgerId> ahead{job};
        while (!ahead.empty()) {
            const core::LedgerId next = ahead.back();
            ahead.pop_back();
            if (!m_jobs.insert(next).second)
                continue;
            if (const auto noted = note(next, ahead); !noted)
                return noted;
        }
        return {};
    }

    core::Result<std::vector<db::StoredLedger>> ledgers() override
    {
        auto all = m_store.ledgers();
        if (!all)
            return all;
        std::erase_if(*all, [this](const db::StoredLedger &one) { return one.role == db::LedgerRole::Job && !(one.id() && m_jobs.contains(*one.id())); });
        return all;
    }
    core::Result<void> forEach(const core::LedgerId &ledger, qint64 afterSeq, const db::EntryVisitor &visit) override { return m_store.forEach(ledger, afterSeq, visit); }
    core::Result<void> forEachAttachment(const AttachmentVisitor &visit) override
    {
        for (const core::Digest &named : m_attachments) {
            const auto bytes = m_store.attachments().get(named);
            if (!bytes && bytes.error().code != core::ErrorCode::Damaged && bytes.error().code != core::ErrorCode::NotFound)
                return core::failure(bytes.error());
            visit(named, bytes ? std::nullopt : std::optional(bytes.error().message));
        }
        return {};
    }
    core::Result<std::vector<core::Fault>> faultsOfTheWhole() override { return std::vector<core::Fault>(); }

private:
    /// An entry that cannot be read names nothing; verifying it says so.
    core::Result<void> note(const core::LedgerId &ledger, std::vector<core::LedgerId> &ahead)
    {
        return m_store.forEach(ledger, 0, [&](const db::StoredEntryView &row) {
            const auto said = core::parseStatement(row.bytes);
            for (const core::LinkedHead &linked : said ? said->linked : std::vector<core::LinkedHead>())
                ahead.push_back(linked.ledger);
            if (const auto digest = said ? core::Digest::parse(said->body.text(u"sha256")) : std::nullopt)
                m_attachments.insert(*digest);
            return db::Walk::On;
        });
    }

    db::Store &m_store;
    std::set<core::LedgerId> m_jobs;
    std::set<core::Digest> m_attachments;
};

} // namespace

core::Result<void> requireSound(db::Store &store, const core::LedgerId &job, const VerifyProgress &progress)
{
    EvidenceOfJob evidence(store);
    if (const auto gathered = evidence.gather(job); !gathered)
        return gathered;
    const auto report = verify(evidence, {}, progress);
    if (!report)
        return core::failure(report.error());
    if (report->faults.empty())
        return {};
    const core::Fault &first = report->faults.front();
    return core::failure(core::ErrorCode::Damaged,
                         tr("Nothing was written, since the record would say what nobody signed, or what was not allowed. Faults: %1; the first (%2): %3 Verify the store to see them all, "
                            "keep its file as it is, and ask whoever looks after the records.")
                             .arg(report->faults.size())
                             .arg(placeInWords(first, *report), first.sentence));
}

core::Result<core::JobRecord> soundRecordOf(db::Store &store, const core::LedgerId &job, core::Kinds kinds, const VerifyProgress &progress)
{
    if (const auto sound = requireSound(store, job, progress); !sound)
        return core::failure(sound.error());
    const auto registerLedger = store.registerLedger();
    if (!registerLedger)
        return core::failure(registerLedger.error());
    auto entries = readEntries(store, job);
    if (!entries)
        return core::failure(entries.error());
    const auto reg = readEntries(store, **registerLedger); // a sound job has one
    if (!reg)
        return core::failure(reg.error());
    core::JobRecord record(*std::move(entries), *reg, std::move(kinds));
    showLinked(record, store);
    return record;
}

} // namespace session
