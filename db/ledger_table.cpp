// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/ledger_table.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <map>

#include "core/ledger/canonical.hpp"
#include "db/sqlite/connection.hpp"
#include "db/write_gate.hpp"

namespace db {

using core::Entry;
using core::ErrorCode;
using core::failure;
using core::Head;
using core::LedgerId;
using core::Result;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Store", text); }

tl::unexpected<core::Error> headMoved()
{
    return failure(ErrorCode::HeadMoved, tr("Somebody else recorded something at the same moment. Nothing of yours was recorded. "
                                            "Look at what is new and sign again."));
}

/// What can be seen without the store: one ledger, without gaps, each following the one before, each hash right, all or none
/// pinning the register. None of this can fail for entries that the session made.
bool holdTogether(std::span<const Entry> entries, Head head)
{
    const Entry &first = entries.front();
    for (const Entry &entry : entries) {
        const bool follows = entry.said.seq == head.seq + 1 && entry.said.prev == head.hash;
        const bool sameSort =
            entry.said.ledger == first.said.ledger && entry.said.reg.has_value() == first.said.reg.has_value();
        if (!follows || !sameSort || core::Digest::of(entry.bytes) != entry.hash)
            return false;
        head = entry.head();
    }
    return true;
}

} // namespace

Result<std::optional<qint64>> LedgerTable::rowOf(const LedgerId &ledger)
{
    return m_connection.query("SELECT id FROM ledgers WHERE uuid = ?").with(ledger.text()).one([](const Statement &row) {
        return row.integer(0);
    });
}

Result<Head> LedgerTable::headOfRow(std::optional<qint64> ledgerRow)
{
    if (!ledgerRow)
        return Head{};
    auto last = m_connection.query("SELECT seq, hash FROM entries WHERE ledger = ? ORDER BY seq DESC LIMIT 1")
                    .with(*ledgerRow)
                    .one([](Statement &row) { return std::pair(row.integer(0), core::Digest::fromBytes(row.bytes(1))); });
    if (!last)
        return failure(last.error());
    if (!*last)
        return Head{};
    const auto &[seq, hash] = **last;
    if (!hash)
        return failure(ErrorCode::Damaged, tr("The last entry of this ledger (number %1) is damaged. Nothing more can be recorded "
                                              "in it. Verify the store, and go on with the last backup.")
                                               .arg(seq));
    return Head{seq, *hash};
}

Result<Head> LedgerTable::head(const LedgerId &ledger)
{
    return rowOf(ledger).and_then([this](std::optional<qint64> row) { return headOfRow(row); });
}

Result<Head> LedgerTable::registerHead()
{
    auto row = m_connection.query("SELECT id FROM ledgers WHERE is_register = 1").one([](const Statement &found) {
        return found.integer(0);
    });
    return row.and_then([this](std::optional<qint64> found) { return headOfRow(found); });
}

Result<qint64> LedgerTable::begin(const LedgerId &ledger, LedgerRole role)
{
    const bool isRegister = role == LedgerRole::Register;
    if (isRegister) {
        auto present = registerLedger();
        if (!present)
            return failure(present.error());
        if (*present)
            return failure(ErrorCode::BadInput, tr("This store has its register already. One store has one register."));
    }
    auto row = m_connection.query("INSERT INTO ledgers (uuid, is_register) VALUES (?, ?) RETURNING id")
                   .with(ledger.text())
                   .with(qint64{isRegister})
                   .one([](const Statement &made) { return made.integer(0); });
    return row.map([](std::optional<qint64> made) { return *made; });
}

Result<void> LedgerTable::append(std::span<const Entry> entries, const Head &seen)
{
    if (entries.empty())
        return {};
    if (!holdTogether(entries, seen))
        return failure(ErrorCode::BadInput, tr("These entries do not follow one another. Nothing was recorded. This is a fault of "
                                               "the program: please report it."));
    return m_gate.write([&] { return appendWithin(entries, seen); });
}

Result<void> LedgerTable::appendWithin(std::span<const Entry> entries, const Head &seen)
{
    const core::Statement &first = entries.front().said;
    auto row = rowOf(first.ledger);
    if (!row)
        return failure(row.error());
    const auto head = headOfRow(*row);
    const auto reg = first.reg ? registerHead() : Result<Head>(Head{});
    if (!head || !reg)
        return failure(head ? reg.error() : head.error());
    const bool registerMoved = std::any_of(entries.begin(), entries.end(), [&](const Entry &entry) {
        return entry.said.reg && *entry.said.reg != *reg;
    });
    const auto linked = linkedStand(entries);
    if (!linked)
        return failure(linked.error());
    const auto jobsLast = first.reg || !*row ? Result<std::optional<core::Instant>>() : jobsLastAt();
    if (!jobsLast)
        return failure(jobsLast.error());
    if (*head != seen || registerMoved || !*linked || *jobsLast > first.at)
        return headMoved();
    const auto ledgerRow =
        *row ? Result<qint64>(**row) : begin(first.ledger, first.reg ? LedgerRole::Job : LedgerRole::Register);
    if (!ledgerRow)
        return failure(ledgerRow.error());
    WhereUsed::Met met;
    for (const Entry &entry : entries)
        if (auto done = insert(*ledgerRow, entry, met); !done)
            return done;
    return {};
}

Result<bool> LedgerTable::linkedStand(std::span<const Entry> entries)
{
    std::map<LedgerId, Head> heads;
    for (const Entry &entry : entries) {
        for (const core::LinkedHead &pinned : entry.said.linked) {
            if (!heads.contains(pinned.ledger)) {
                const auto now = head(pinned.ledger);
                if (!now)
                    return failure(now.error());
                heads.emplace(pinned.ledger, *now);
            }
            if (heads.at(pinned.ledger) != pinned.head)
                return false;
        }
    }
    return true;
}

Result<void> LedgerTable::insert(qint64 ledgerRow, const Entry &entry, WhereUsed::Met &met)
{
    const QByteArray hash = entry.hash.bytes();
    auto done = m_connection.query("INSERT INTO entries (ledger, seq, bytes, hash, signature) VALUES (?, ?, ?, ?, ?)")
                    .with(ledgerRow)
                    .with(entry.said.seq)
                    .with(QByteArrayView(entry.bytes))
                    .with(QByteArrayView(hash))
                    .with(QByteArrayView(entry.signature))
                    .run();
    return done.and_then([&] { return m_whereUsed.add({ledgerRow, m_connection.lastRow()}, entry.said, met); });
}

Result<void> LedgerTable::forEach(const LedgerId &ledger, qint64 afterSeq, const EntryVisitor &visit)
{
    const auto row = rowOf(ledger);
    if (!row)
        return failure(row.error());
    if (!*row)
        return {};
    return m_connection
        .query("SELECT seq, bytes, hash, signature FROM entries WHERE ledger = ? AND seq > ? ORDER BY seq")
        .with(**row)
        .with(afterSeq)
        .each([&](Statement &found) {
            return visit({found.integer(0), found.bytes(1), found.bytes(2), found.bytes(3)});
        });
}

Result<std::vector<StoredLedger>> LedgerTable::ledgers()
{
    std::vector<StoredLedger> all;
    auto done = m_connection
                    .query("SELECT uuid, is_register, coalesce((SELECT max(seq) FROM entries WHERE ledger = ledgers.id), 0) "
                           "FROM ledgers ORDER BY id")
                    .each([&](Statement &row) {
                        all.push_back({row.text(0), row.integer(1) == 1 ? LedgerRole::Register : LedgerRole::Job,
                                       row.integer(2)});
                        return Walk::On;
                    });
    return done.map([&] { return std::move(all); });
}

Result<std::optional<LedgerId>> LedgerTable::registerLedger()
{
    auto uuid = m_connection.query("SELECT uuid FROM ledgers WHERE is_register = 1").one([](Statement &row) {
        return row.text(0);
    });
    if (!uuid)
        return failure(uuid.error());
    if (!*uuid)
        return std::nullopt;
    auto id = LedgerId::parse(**uuid);
    if (!id)
        return failure(ErrorCode::Damaged, tr("The name of the store's register is damaged. Verify the store, and go on with the "
                                              "last backup."));
    return id;
}

Result<std::optional<core::Instant>> LedgerTable::jobsLastAt()
{
    std::optional<core::Instant> last;
    auto done = m_connection
                    .query("SELECT bytes FROM entries JOIN ledgers ON ledgers.id = entries.ledger WHERE is_register = 0 "
                           "AND seq = (SELECT max(seq) FROM entries WHERE ledger = ledgers.id)")
                    .each([&](Statement &row) {
                        if (const auto said = core::parseStatement(row.bytes(0)))
                            last = std::max(last, std::optional(said->at));
                        return Walk::On;
                    });
    return done.map([&] { return last; });
}

} // namespace db
