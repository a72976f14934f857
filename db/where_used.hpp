// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QHash>
#include <QString>

#include <functional>
#include <optional>
#include <vector>

#include "core/ledger/entry.hpp"
#include "core/value/id.hpp"
#include "core/value/instant.hpp"
#include "core/value/result.hpp"
#include "db/stored.hpp"

namespace db {

class Connection;
class Meta;
class WriteGate;

/// A stretch of time, both ends within it. Empty when it ends before it begins.
struct Between {
    core::Instant from;
    core::Instant until;
    bool operator==(const Between &) const = default;
};

/// What is looked for: the uses of one thing; of all its time and in every kind of entry, unless said otherwise. An entry lies
/// in its stretch of time by its own `at`, so what was told later than it was done lies where it was told.
struct Wanted {
    QString sort; ///< as in core::Reference: `tool`, `person` …
    QString value;
    std::optional<Between> between{};
    std::optional<QString> kind{}; ///< `torque.applied`
};

/// One entry that names the thing that was asked for.
struct Use {
    core::Instant at; ///< the entry's own moment
    core::LedgerId ledger;
    qint64 seq;
    bool operator==(const Use &) const = default;
};

using UseVisitor = std::function<Walk(const core::LedgerId &ledger, const StoredEntryView &entry)>;

/// Which entries name a person, tool, part, batch, serial or certificate (core::referencesOf). Computed from the ledgers and
/// kept with a version of its own: rebuilt, never migrated.
class WhereUsed {
public:
    WhereUsed(Connection &connection, WriteGate &gate, Meta &meta) : m_connection(connection), m_gate(gate), m_meta(meta) {}

    // These three: ReadOnly when another version of the program made the index and the store is open for reading alone. Time and kind
    // are told by the index: an entry that is not wanted is not read.

    /// At most `limit` uses that follow `after`, by their moments; those of one moment by ledger in the order in which they were
    /// begun, then by sequence number.
    core::Result<std::vector<Use>> find(const Wanted &wanted, qsizetype limit, const std::optional<Use> &after = {});
    /// All of them with their entries, one by one, in the same order. The visitor must not write to this store.
    core::Result<void> forEach(const Wanted &wanted, const UseVisitor &visit);

    /// Every name of that sort that an entry has, in no order: what somebody may have meant who mistyped one.
    core::Result<std::vector<QString>> names(const QString &sort);

    /// Compares the index with what the entries name: a sentence where it is another, so that a look-up would leave something out or make something
    /// up. Nothing where it is the same, or of another version, by which nothing is looked up.
    core::Result<std::optional<QString>> difference();

    // --- for db itself ---

    /// Row numbers of things that one transaction has met already; of no use after it.
    using Met = QHash<QString, qint64>;
    /// Where an entry lies: its ledger's row number and its own.
    struct Place {
        qint64 ledgerRow;
        qint64 entryRow;
    };
    /// Adds an entry's references; within the transaction that inserts the entry.
    core::Result<void> add(Place place, const core::Statement &said, Met &met);
    /// Rebuilds the index when its version is another one. Returns true when it did.
    core::Result<bool> makeCurrent();
    core::Result<bool> isCurrent();

private:
    core::Result<qint64> nameRow(const QString &sort, const QString &value, Met &met);
    core::Result<std::optional<core::LedgerId>> nameOf(qint64 ledgerRow);
    core::Result<std::optional<StoredEntry>> entryOf(qint64 ledgerRow, qint64 seq);
    core::Result<void> rebuild();
    core::Result<void> checkCurrent();

    Connection &m_connection;
    WriteGate &m_gate;
    Meta &m_meta;
    QHash<qint64, std::optional<core::LedgerId>> m_names; ///< met so far; a ledger never changes its name
};

} // namespace db
