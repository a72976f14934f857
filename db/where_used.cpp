// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/where_used.hpp"

#include <QCoreApplication>

#include "core/acts/references.hpp"
#include "core/ledger/canonical.hpp"
#include "db/embedded_sql.hpp"
#include "db/meta.hpp"
#include "db/sqlite/connection.hpp"
#include "db/write_gate.hpp"

namespace db {

using core::failure;
using core::LedgerId;
using core::Result;

namespace {

/// Moves when the tables change; core's own version moves when it finds other references in the same entry.
constexpr qint64 tablesVersion = 1;
constexpr qint64 version = tablesVersion * 1'000'000 + core::referencesVersion;

QString versionName() { return QStringLiteral("where_used.version"); }

} // namespace

Result<bool> WhereUsed::isCurrent()
{
    return m_meta.get(versionName()).map([](std::optional<qint64> stored) { return stored == version; });
}

Result<void> WhereUsed::checkCurrent()
{
    const auto current = isCurrent();
    if (!current)
        return failure(current.error());
    if (!*current)
        return failure(core::ErrorCode::ReadOnly,
                       QCoreApplication::translate("Store", "The index of where things were used is of another version of this "
                                                            "program. Open the store once for writing, so that it is made again."));
    return {};
}

Result<bool> WhereUsed::makeCurrent()
{
    const auto current = isCurrent();
    if (!current || *current)
        return current.map([](bool) { return false; });
    return m_gate.write([this] { return rebuild(); }).map([] { return true; });
}

Result<void> WhereUsed::rebuild()
{
    auto made = m_connection.runScript(embeddedSql(QStringLiteral("derived/where_used.sql")));
    if (!made)
        return made;
    Result<void> added;
    Met met;
    auto read = m_connection.query("SELECT ledger, bytes FROM entries ORDER BY ledger, seq").each([&](Statement &row) {
        // An entry that cannot be read refers to nothing; naming it is for whoever verifies the store.
        if (const auto said = core::parseStatement(row.bytes(1)))
            added = add(row.integer(0), *said, met);
        return added ? Walk::On : Walk::Stop;
    });
    if (!read || !added)
        return read ? added : read;
    return m_meta.set(versionName(), version);
}

Result<qint64> WhereUsed::nameRow(const QString &sort, const QString &value, Met &met)
{
    // The same author, tool and aircraft stand in entry after entry. No sort has a blank in its name.
    const QString thing = sort + u' ' + value;
    if (const auto known = met.constFind(thing); known != met.constEnd())
        return *known;
    auto found = m_connection.query("SELECT id FROM used_things WHERE sort = ? AND value = ?")
                     .with(sort)
                     .with(value)
                     .one([](const Statement &row) { return row.integer(0); });
    if (!found)
        return failure(found.error());
    if (*found)
        return *met.insert(thing, **found);
    return m_connection.query("INSERT INTO used_things (sort, value) VALUES (?, ?) RETURNING id")
        .with(sort)
        .with(value)
        .one([](const Statement &row) { return row.integer(0); })
        .map([&](std::optional<qint64> made) { return *met.insert(thing, *made); });
}

Result<void> WhereUsed::add(qint64 ledgerRow, const core::Statement &said, Met &met)
{
    for (const core::Reference &reference : core::referencesOf(said)) {
        const auto thing = nameRow(reference.sort, reference.value, met);
        if (!thing)
            return failure(thing.error());
        auto done = m_connection.query("INSERT INTO uses (thing, ledger, seq) VALUES (?, ?, ?) ON CONFLICT DO NOTHING")
                        .with(*thing)
                        .with(ledgerRow)
                        .with(said.seq)
                        .run();
        if (!done)
            return done;
    }
    return {};
}

Result<std::vector<Use>> WhereUsed::find(const QString &sort, const QString &value, qsizetype limit,
                                         const std::optional<Use> &after)
{
    if (auto current = checkCurrent(); !current)
        return failure(current.error());
    std::vector<Use> found;
    std::optional<LedgerId> ledger;
    qint64 ledgerRow = 0;
    auto done = m_connection
                    .query("SELECT ledgers.uuid, uses.seq, uses.ledger FROM uses JOIN ledgers ON ledgers.id = uses.ledger "
                           "WHERE thing = (SELECT id FROM used_things WHERE sort = ? AND value = ?) "
                           "AND (uses.ledger, uses.seq) > (coalesce((SELECT id FROM ledgers WHERE uuid = ?), 0), ?) "
                           "ORDER BY uses.ledger, uses.seq LIMIT ?")
                    .with(sort)
                    .with(value)
                    .with(after ? after->ledger.text() : QString())
                    .with(after ? after->seq : 0)
                    .with(qint64{limit})
                    .each([&](Statement &row) {
                        if (row.integer(2) != ledgerRow) {
                            ledgerRow = row.integer(2);
                            ledger = LedgerId::parse(row.text(0));
                        }
                        if (ledger)
                            found.push_back({*ledger, row.integer(1)});
                        return Walk::On;
                    });
    return done.map([&] { return std::move(found); });
}

Result<std::optional<LedgerId>> WhereUsed::nameOf(qint64 ledgerRow)
{
    auto uuid = m_connection.query("SELECT uuid FROM ledgers WHERE id = ?").with(ledgerRow).one([](Statement &row) { return row.text(0); });
    return uuid.map([](const std::optional<QString> &found) { return found ? LedgerId::parse(*found) : std::nullopt; });
}

Result<void> WhereUsed::forEach(const QString &sort, const QString &value, const UseVisitor &visit)
{
    if (auto current = checkCurrent(); !current)
        return current;
    Result<std::optional<LedgerId>> ledger;
    qint64 ledgerRow = 0;
    auto done = m_connection
        .query("SELECT uses.ledger, uses.seq, bytes, hash, signature FROM uses "
               "JOIN entries ON entries.ledger = uses.ledger AND entries.seq = uses.seq "
               "WHERE thing = (SELECT id FROM used_things WHERE sort = ? AND value = ?) "
               "ORDER BY uses.ledger, uses.seq")
        .with(sort)
        .with(value)
        .each([&](Statement &row) {
            if (row.integer(0) != ledgerRow) {
                ledgerRow = row.integer(0);
                ledger = nameOf(ledgerRow); // once a ledger: joining it to each row costs as much as the entries
            }
            if (!ledger)
                return Walk::Stop;
            return *ledger ? visit(**ledger, {row.integer(1), row.bytes(2), row.bytes(3), row.bytes(4)}) : Walk::On;
        });
    return ledger ? done : failure(ledger.error());
}

} // namespace db
