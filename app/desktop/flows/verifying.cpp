// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/flows/verifying.hpp"

#include <QCoreApplication>
#include <QSet>

namespace desktop {

namespace {

struct Verifying {
    Q_DECLARE_TR_FUNCTIONS(Verifying)
};

core::Error cancelled() { return {core::ErrorCode::Cancelled, Verifying::tr("Verifying was stopped.")}; }

/// Gives each row of a ledger to `take`, counting and asking whether to go on.
template <class Take>
core::Result<void> walk(db::Store &store, const core::LedgerId &ledger, Verdict &verdict, qint64 all, const Progress &progress, Take take)
{
    bool isStopped = false;
    const auto read = store.forEach(ledger, 0, [&](const db::StoredEntryView &row) {
        take(core::FoundEntry{row.seq, row.bytes.toByteArray(), row.hash.toByteArray(), row.signature.toByteArray()});
        ++verdict.entries;
        isStopped = verdict.entries % 16 == 0 && progress && !progress(verdict.entries, all);
        return isStopped ? db::Walk::Stop : db::Walk::On;
    });
    if (isStopped)
        return core::failure(cancelled());
    return read;
}

void add(Verdict &verdict, const std::vector<core::Fault> &faults) { verdict.faults.insert(verdict.faults.end(), faults.begin(), faults.end()); }

void checkAttachments(db::Store &store, const core::LedgerId &ledger, const std::vector<core::Digest> &digests, Verdict &verdict)
{
    for (const core::Digest &digest : digests) {
        ++verdict.attachments;
        if (const auto bytes = store.attachments().get(digest); !bytes)
            verdict.faults.push_back({ledger, 0, QStringLiteral("attachment.digest"), bytes.error().message});
    }
}

} // namespace

core::Result<Verdict> verifyStore(db::Store &store, const Progress &progress)
{
    const auto ledgers = store.ledgers();
    const auto registerLedger = ledgers ? store.registerLedger() : core::Result<std::optional<core::LedgerId>>(core::failure(ledgers.error()));
    if (!registerLedger)
        return core::failure(registerLedger.error());
    Verdict verdict;
    qint64 all = 0;
    for (const db::StoredLedger &ledger : *ledgers)
        all += ledger.headSeq;
    if (!*registerLedger)
        return verdict;

    core::RegisterVerifier reg(**registerLedger);
    if (const auto read = walk(store, **registerLedger, verdict, all, progress, [&](const core::FoundEntry &found) { reg.take(found); }); !read)
        return core::failure(read.error());
    add(verdict, reg.faults());
    for (const db::StoredLedger &ledger : *ledgers) {
        const auto id = ledger.id();
        if (!id || ledger.role != db::LedgerRole::Job)
            continue;
        core::JobVerifier job(*id, reg);
        if (const auto read = walk(store, *id, verdict, all, progress, [&](const core::FoundEntry &found) { job.take(found); }); !read)
            return core::failure(read.error());
        add(verdict, job.faults());
        checkAttachments(store, *id, job.attachments(), verdict);
    }
    return verdict;
}

} // namespace desktop
