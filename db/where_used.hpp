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
#include "core/value/result.hpp"
#include "db/stored.hpp"

namespace db {

class Connection;
class Meta;
class WriteGate;

/// One entry that names the thing that was asked for.
struct Use {
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

    // Both: ReadOnly when another version of the program made the index and the store is open for reading alone.

    /// At most `limit` uses that follow `after`, by ledger in the order in which they were begun, then by sequence number.
    core::Result<std::vector<Use>> find(const QString &sort, const QString &value, qsizetype limit,
                                        const std::optional<Use> &after = {});
    /// All of them with their entries, one by one, in the same order. The visitor must not write to this store.
    core::Result<void> forEach(const QString &sort, const QString &value, const UseVisitor &visit);

    // --- for db itself ---

    /// Row numbers of things that one transaction has met already; of no use after it.
    using Met = QHash<QString, qint64>;
    /// Adds an entry's references; within the transaction that inserts the entry.
    core::Result<void> add(qint64 ledgerRow, const core::Statement &said, Met &met);
    /// Rebuilds the index when its version is another one. Returns true when it did.
    core::Result<bool> makeCurrent();
    core::Result<bool> isCurrent();

private:
    core::Result<qint64> nameRow(const QString &sort, const QString &value, Met &met);
    core::Result<std::optional<core::LedgerId>> nameOf(qint64 ledgerRow);
    core::Result<void> rebuild();
    core::Result<void> checkCurrent();

    Connection &m_connection;
    WriteGate &m_gate;
    Meta &m_meta;
};

} // namespace db
