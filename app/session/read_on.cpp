// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/read_on.hpp"

#include <QCoreApplication>

#include "core/ledger/canonical.hpp"

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

core::Result<core::Statement> soundStatement(const core::LedgerId &ledger, const core::Head &head, const core::Digest &hash,
                                             const db::StoredEntryView &row)
{
    if (row.hash != hash.bytes())
        return core::failure(damaged(ledger, row.seq, tr("it is not what its digest says.")));
    auto said = core::parseStatement(row.bytes);
    if (!said)
        return core::failure(damaged(ledger, row.seq, said.error().message));
    if (said->ledger != ledger || said->seq != row.seq || row.seq != head.seq + 1 || said->prev != head.hash)
        return core::failure(damaged(ledger, row.seq, tr("it does not follow the entry before it.")));
    return said;
}

template <class Take>
core::Result<void> readSound(db::Store &store, const core::LedgerId &ledger, core::Head head, Take take)
{
    core::Result<void> sound;
    const auto read = store.forEach(ledger, head.seq, [&](const db::StoredEntryView &row) {
        const core::Digest hash = core::Digest::of(row.bytes);
        const auto said = soundStatement(ledger, head, hash, row);
        if (!said) {
            sound = core::failure(said.error());
            return db::Walk::Stop;
        }
        take(*said, hash, row);
        head = {said->seq, hash};
        return db::Walk::On;
    });
    return read ? sound : read;
}

} // namespace

core::Result<void> readOn(db::Store &store, const core::LedgerId &ledger, core::Head head, const TakeStatement &take)
{
    return readSound(store, ledger, head, [&take](const core::Statement &said, const core::Digest &hash, const db::StoredEntryView &) { take(said, hash); });
}

core::Result<std::vector<core::Entry>> readEntries(db::Store &store, const core::LedgerId &ledger)
{
    std::vector<core::Entry> entries;
    const auto read = readSound(store, ledger, {}, [&entries](const core::Statement &said, const core::Digest &hash, const db::StoredEntryView &row) {
        entries.push_back({said, row.bytes.toByteArray(), hash, row.signature.toByteArray()});
    });
    if (!read)
        return core::failure(read.error());
    return entries;
}

} // namespace session
