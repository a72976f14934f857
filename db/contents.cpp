// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/contents.hpp"

#include <QCoreApplication>

#include <numeric>
#include <optional>

#include "db/sqlite/connection.hpp"

namespace db {

using core::Digest;
using core::ErrorCode;
using core::failure;
using core::Result;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Store", text); }

/// Adds a field with its length, so that no two rows give the same bytes.
void addField(core::DigestStream &stream, QByteArrayView bytes)
{
    stream.add(QByteArray::number(bytes.size()) + ':');
    stream.add(bytes);
}

/// Adds so many columns of each row. `digestColumn` holds the SHA-256 of `bytesColumn`; a row where it does not stops.
struct Columns {
    int count;
    int digest = -1;
    int bytes = -1;
};

struct Rows {
    qint64 count = 0;
    bool isSound = true;
    Digest digest{};
};

Result<Rows> readRows(Statement &query, const Columns &columns)
{
    Rows rows;
    core::DigestStream stream;
    auto done = query.each([&](Statement &row) {
        ++rows.count;
        rows.isSound = columns.digest < 0 || Digest::fromBytes(row.bytes(columns.digest)) == Digest::of(row.bytes(columns.bytes));
        for (int column = 0; column < columns.count; ++column)
            addField(stream, row.bytes(column));
        return rows.isSound ? Walk::On : Walk::Stop;
    });
    if (!done)
        return failure(done.error());
    rows.digest = stream.soFar();
    return rows;
}

struct LedgerRow {
    qint64 id;
    QString name;
};

Result<std::vector<LedgerRow>> ledgerRows(Connection &connection)
{
    std::vector<LedgerRow> rows;
    auto done = connection.query("SELECT id, uuid FROM ledgers ORDER BY id").each([&](Statement &row) {
        rows.push_back({row.integer(0), row.text(1)});
        return Walk::On;
    });
    return done.map([&] { return std::move(rows); });
}

Result<Contents::Ledger> ledgerContents(Connection &connection, const LedgerRow &ledger)
{
    auto all = connection.query("SELECT seq, bytes, hash, signature FROM entries WHERE ledger = ? ORDER BY seq");
    const auto rows = readRows(all.with(ledger.id), {.count = 4, .digest = 2, .bytes = 1});
    if (!rows)
        return failure(rows.error());
    if (!rows->isSound)
        return failure(ErrorCode::Damaged, tr("Row %1 of the ledger %2 is damaged: its content was changed after it was recorded. Verify the "
                                              "store, and keep the backup that you have.")
                                               .arg(rows->count)
                                               .arg(ledger.name));
    return Contents::Ledger{ledger.name, rows->count, rows->digest};
}

} // namespace

qint64 Contents::entries() const
{
    return std::accumulate(ledgers.begin(), ledgers.end(), qint64{0}, [](qint64 sum, const Ledger &ledger) { return sum + ledger.entries; });
}

Result<Contents> contentsOf(Connection &connection)
{
    Contents contents;
    const auto ledgers = ledgerRows(connection);
    if (!ledgers)
        return failure(ledgers.error());
    for (const LedgerRow &row : *ledgers) {
        auto ledger = ledgerContents(connection, row);
        if (!ledger)
            return failure(ledger.error());
        contents.ledgers.push_back(*std::move(ledger));
    }
    auto allAttachments = connection.query("SELECT digest, media_type, bytes FROM attachments ORDER BY id");
    auto allKeys = connection.query("SELECT person, fingerprint, passes, memory_bytes, salt, nonce, sealed FROM credentials "
                                    "ORDER BY person, fingerprint");
    const auto attachments = readRows(allAttachments, {.count = 3, .digest = 0, .bytes = 2});
    const auto keys = readRows(allKeys, {.count = 7});
    if (!attachments || !keys)
        return failure(attachments ? keys.error() : attachments.error());
    if (!attachments->isSound)
        return failure(ErrorCode::Damaged, tr("Attachment %1 is damaged: its content was changed after it was recorded. Verify the store, and keep "
                                              "the backup that you have.")
                                               .arg(attachments->count));
    contents.attachments = attachments->digest;
    contents.keys = keys->digest;
    return contents;
}

} // namespace db
