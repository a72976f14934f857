// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/read_on.hpp"

#include <QCoreApplication>

#include "app/session/entry_reader.hpp"

namespace session {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Session", text); }

core::Error damaged(const core::LedgerId &ledger, qint64 seq, const QString &why)
{
    return {core::ErrorCode::Damaged,
            tr("Entry %1 of ledger %2 cannot be used: %3 Do not go on working in this store. Verify it, and go back to a backup.")
                .arg(seq)
                .arg(ledger.text(), why)};
}

core::Result<void> checkSound(const core::LedgerId &ledger, const core::Head &head, const core::ReadEntry &entry)
{
    const qint64 seq = entry.found.seq;
    if (core::Digest::fromBytes(entry.found.hash) != entry.digest)
        return core::failure(damaged(ledger, seq, tr("it is not what its digest says.")));
    if (!entry.said)
        return core::failure(damaged(ledger, seq, entry.said.error().message));
    const core::Statement &said = *entry.said;
    if (said.ledger != ledger || said.seq != seq || seq != head.seq + 1 || said.prev != head.hash)
        return core::failure(damaged(ledger, seq, tr("it does not follow the entry before it.")));
    return {};
}

template <class Take>
core::Result<void> readSound(Evidence &evidence, const core::LedgerId &ledger, core::Head head, Take take)
{
    core::Result<void> sound;
    EntryReader reader([&](core::ReadEntry &&entry) {
        sound = checkSound(ledger, head, entry);
        if (!sound)
            return db::Walk::Stop;
        head = {entry.found.seq, entry.digest};
        take(std::move(entry));
        return db::Walk::On;
    });
    const auto read = evidence.forEach(ledger, head.seq, [&reader](const db::StoredEntryView &row) { return reader.add(row); });
    reader.finish();
    return sound ? read : sound;
}

} // namespace

core::Result<void> readOn(db::Store &store, const core::LedgerId &ledger, core::Head head, const TakeStatement &take)
{
    StoreEvidence evidence(store);
    return readSound(evidence, ledger, head, [&take](core::ReadEntry &&entry) { take(*entry.said, entry.digest); });
}

core::Result<std::vector<core::Entry>> readEntries(Evidence &evidence, const core::LedgerId &ledger)
{
    std::vector<core::Entry> entries;
    const auto read = readSound(evidence, ledger, {}, [&entries](core::ReadEntry &&entry) {
        entries.push_back({*std::move(entry.said), std::move(entry.found.bytes), entry.digest, std::move(entry.found.signature)});
    });
    if (!read)
        return core::failure(read.error());
    return entries;
}

core::Result<std::vector<core::Entry>> readEntries(db::Store &store, const core::LedgerId &ledger)
{
    StoreEvidence evidence(store);
    return readEntries(evidence, ledger);
}

} // namespace session
