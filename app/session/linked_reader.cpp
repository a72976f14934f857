// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/linked_reader.hpp"

#include "core/ledger/verify.hpp"

namespace session {

void LinkedReader::readOn(const core::LedgerId &ledger, Along &along, qint64 upToSeq)
{
    // A store that fails to read leaves the fold short of the head, which is what the caller looks at.
    (void)m_read(ledger, along.fold.head().seq, [&](const db::StoredEntryView &row) {
        if (row.seq > upToSeq)
            return db::Walk::Stop;
        const core::ReadEntry entry = core::readEntry({row.seq, row.bytes.toByteArray(), row.hash.toByteArray(), row.signature.toByteArray()});
        if (!entry.said || entry.said->seq != along.fold.head().seq + 1)
            return db::Walk::Stop;
        along.fold.take(*entry.said, entry.digest);
        along.state = nullptr;
        return row.seq < upToSeq ? db::Walk::On : db::Walk::Stop;
    });
}

std::shared_ptr<const core::JobState> LinkedReader::upTo(const core::LinkedHead &at)
{
    Along &along = m_along[at.ledger];
    if (along.fold.head().seq < at.head.seq)
        readOn(at.ledger, along, at.head.seq);
    if (along.fold.head() != at.head)
        return nullptr;
    if (!along.state)
        along.state = std::make_shared<const core::JobState>(along.fold.state());
    return along.state;
}

void showLinked(core::JobRecord &record, Evidence &evidence)
{
    if (record.entries().empty())
        return;
    LinkedReader reader([&evidence](const core::LedgerId &of, qint64 after, const db::EntryVisitor &visit) { return evidence.forEach(of, after, visit); });
    for (const core::LinkedHead &at : std::vector<core::LinkedHead>(record.entries().back().said.linked)) {
        if (auto other = reader.upTo(at))
            record.see(at, std::move(other));
    }
}

void showLinked(core::JobRecord &record, db::Store &store)
{
    StoreEvidence evidence(store);
    showLinked(record, evidence);
}

} // namespace session
