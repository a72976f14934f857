// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/where_used.hpp"

#include <QCoreApplication>

#include <limits>
#include <set>

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
constexpr qint64 tablesVersion = 2;
constexpr qint64 version = tablesVersion * 1'000'000 + core::referencesVersion;

QString versionName() { return QStringLiteral("where_used.version"); }

QString kindSort() { return QStringLiteral("kind"); }

/// The stretch as the index counts it: all of time when none was asked for.
struct Milliseconds {
    qint64 from = std::numeric_limits<qint64>::min();
    qint64 until = std::numeric_limits<qint64>::max();
};

Milliseconds millisecondsOf(const std::optional<Between> &between)
{
    return between ? Milliseconds{between->from.milliseconds(), between->until.milliseconds()} : Milliseconds{};
}

/// An entry as it lies at the place where the index saw it. Columns from `first` on: seq (none: another one lies there), bytes,
/// hash, signature.
std::optional<StoredEntryView> seenAt(Statement &row, int first)
{
    if (row.integer(first) == 0)
        return std::nullopt;
    return StoredEntryView{row.integer(first), row.bytes(first + 1), row.bytes(first + 2), row.bytes(first + 3)};
}

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
    auto read = m_connection.query("SELECT ledger, rowid, bytes FROM entries ORDER BY ledger, seq").each([&](Statement &row) {
        // An entry that cannot be read refers to nothing; naming it is for whoever verifies the store.
        if (const auto said = core::parseStatement(row.bytes(2)))
            added = add({row.integer(0), row.integer(1)}, *said, met);
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

Result<void> WhereUsed::add(Place place, const core::Statement &said, Met &met)
{
    const auto references = core::referencesOf(said);
    if (references.empty())
        return {};
    const auto kind = nameRow(kindSort(), said.kind, met);
    if (!kind)
        return failure(kind.error());
    for (const core::Reference &reference : references) {
        const auto thing = nameRow(reference.sort, reference.value, met);
        if (!thing)
            return failure(thing.error());
        auto done = m_connection.query("INSERT INTO uses (thing, at, ledger, seq, kind, entry) VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING")
                        .with(*thing)
                        .with(said.at.milliseconds())
                        .with(place.ledgerRow)
                        .with(said.seq)
                        .with(*kind)
                        .with(place.entryRow)
                        .run();
        if (!done)
            return done;
    }
    return {};
}

Result<std::optional<QString>> WhereUsed::difference()
{
    const auto current = isCurrent();
    if (!current || !*current)
        return current.map([](bool) { return std::optional<QString>(); });
    QHash<QString, qint64> things;
    auto read = m_connection.query("SELECT id, sort || ' ' || value FROM used_things").each([&](Statement &row) {
        things.insert(row.text(1), row.integer(0));
        return Walk::On;
    });
    if (!read)
        return failure(read.error());
    // Each use that the entries give is there, and there are as many: so they are the same.
    qint64 given = 0;
    std::optional<QString> missing;
    Result<void> looked;
    read = m_connection.query("SELECT e.ledger, e.seq, e.bytes, l.uuid FROM entries e JOIN ledgers l ON l.id = e.ledger ORDER BY e.ledger, e.seq").each([&](Statement &row) {
        const auto said = core::parseStatement(row.bytes(2));
        std::set<qint64> met;
        for (const core::Reference &reference : said ? core::referencesOf(*said) : std::vector<core::Reference>()) {
            const qint64 thing = things.value(reference.sort + u' ' + reference.value, 0);
            if (!met.insert(thing).second)
                continue;
            ++given;
            const auto found = m_connection.query("SELECT 1 FROM uses WHERE thing = ? AND at = ? AND ledger = ? AND seq = ? AND kind = ?")
                                   .with(thing)
                                   .with(said->at.milliseconds())
                                   .with(row.integer(0))
                                   .with(row.integer(1))
                                   .with(things.value(kindSort() + u' ' + said->kind, 0))
                                   .one([](const Statement &) { return true; });
            if (!found)
                looked = failure(found.error());
            else if (!*found)
                missing = QCoreApplication::translate("Store", "A look-up of %1 \"%2\" would leave out entry %3 of ledger %4: the index of where things were used was changed.").arg(reference.sort, reference.value).arg(row.integer(1)).arg(row.text(3));
        }
        return looked && !missing ? Walk::On : Walk::Stop;
    });
    if (!read || !looked)
        return failure(read ? looked.error() : read.error());
    if (missing)
        return missing;
    return m_connection.query("SELECT COUNT(*) FROM uses").one([](const Statement &row) { return row.integer(0); }).map([&](std::optional<qint64> there) {
        return there == given ? std::nullopt : std::optional(QCoreApplication::translate("Store", "The index of where things were used has %1 uses, and the entries give %2: it was changed.").arg(there.value_or(0)).arg(given));
    });
}

Result<std::vector<Use>> WhereUsed::find(const Wanted &wanted, qsizetype limit, const std::optional<Use> &after)
{
    if (auto current = checkCurrent(); !current)
        return failure(current.error());
    // The page begins where the last one ended: the index narrows by the moment, the rest is compared within it.
    const auto [from, until] = millisecondsOf(wanted.between);
    const qint64 begin = after ? std::max(from, after->at.milliseconds()) : from;
    std::vector<Use> found;
    Result<void> read;
    auto done = m_connection
                    .query("SELECT uses.ledger, uses.seq, at FROM uses "
                           "WHERE thing = (SELECT id FROM used_things WHERE sort = ?1 AND value = ?2) AND at BETWEEN ?3 AND ?4 "
                           "AND (?5 = '' OR kind = (SELECT id FROM used_things WHERE sort = 'kind' AND value = ?5)) "
                           "AND (at, uses.ledger, uses.seq) > (?6, coalesce((SELECT id FROM ledgers WHERE uuid = ?7), 0), ?8) "
                           "ORDER BY at, uses.ledger, uses.seq LIMIT ?9")
                    .with(wanted.sort)
                    .with(wanted.value)
                    .with(begin)
                    .with(until)
                    .with(wanted.kind.value_or(QString()))
                    .with(after ? after->at.milliseconds() : from)
                    .with(after ? after->ledger.text() : QString())
                    .with(after ? after->seq : 0)
                    .with(qint64{limit})
                    .each([&](Statement &row) {
                        const auto ledger = nameOf(row.integer(0));
                        if (!ledger) {
                            read = failure(ledger.error());
                            return Walk::Stop;
                        }
                        if (*ledger)
                            found.push_back({core::Instant::fromMilliseconds(row.integer(2)), **ledger, row.integer(1)});
                        return Walk::On;
                    });
    if (!read)
        return failure(read.error());
    return done.map([&] { return std::move(found); });
}

Result<std::vector<QString>> WhereUsed::names(const QString &sort)
{
    if (auto current = checkCurrent(); !current)
        return failure(current.error());
    std::vector<QString> names;
    const auto read = m_connection.query("SELECT value FROM used_things WHERE sort = ?").with(sort).each([&](Statement &row) {
        names.push_back(row.text(0));
        return Walk::On;
    });
    if (!read)
        return failure(read.error());
    return names;
}

Result<std::optional<LedgerId>> WhereUsed::nameOf(qint64 ledgerRow)
{
    // Joining ledgers to each use costs as much as reading its entry.
    if (const auto known = m_names.constFind(ledgerRow); known != m_names.constEnd())
        return *known;
    auto uuid = m_connection.query("SELECT uuid FROM ledgers WHERE id = ?").with(ledgerRow).one([](Statement &row) { return row.text(0); });
    return uuid.map([&](const std::optional<QString> &found) {
        return *m_names.insert(ledgerRow, found ? LedgerId::parse(*found) : std::nullopt);
    });
}

Result<std::optional<StoredEntry>> WhereUsed::entryOf(qint64 ledgerRow, qint64 seq)
{
    return m_connection.query("SELECT seq, bytes, hash, signature FROM entries WHERE ledger = ? AND seq = ?")
        .with(ledgerRow)
        .with(seq)
        .one([](Statement &row) { return seenAt(row, 0)->copy(); });
}

Result<void> WhereUsed::forEach(const Wanted &wanted, const UseVisitor &visit)
{
    if (auto current = checkCurrent(); !current)
        return current;
    const auto [from, until] = millisecondsOf(wanted.between);
    Result<void> read;
    const auto show = [&](qint64 ledgerRow, const StoredEntryView &entry) {
        const auto ledger = nameOf(ledgerRow);
        if (!ledger) {
            read = failure(ledger.error());
            return Walk::Stop;
        }
        return *ledger ? visit(**ledger, entry) : Walk::On;
    };
    auto done = m_connection
        .query("SELECT uses.ledger, uses.seq, entries.seq, bytes, hash, signature FROM uses "
               "LEFT JOIN entries ON entries.rowid = uses.entry AND entries.ledger = uses.ledger AND entries.seq = uses.seq "
               "WHERE thing = (SELECT id FROM used_things WHERE sort = ?1 AND value = ?2) AND at BETWEEN ?3 AND ?4 "
               "AND (?5 = '' OR kind = (SELECT id FROM used_things WHERE sort = 'kind' AND value = ?5)) "
               "ORDER BY at, uses.ledger, uses.seq")
        .with(wanted.sort)
        .with(wanted.value)
        .with(from)
        .with(until)
        .with(wanted.kind.value_or(QString()))
        .each([&](Statement &row) {
            if (const auto seen = seenAt(row, 2))
                return show(row.integer(0), *seen);
            const auto moved = entryOf(row.integer(0), row.integer(1));
            if (!moved) {
                read = failure(moved.error());
                return Walk::Stop;
            }
            return *moved ? show(row.integer(0), {(*moved)->seq, (*moved)->bytes, (*moved)->hash, (*moved)->signature}) : Walk::On;
        });
    return read ? done : read;
}

} // namespace db
