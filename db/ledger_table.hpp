// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/ledger/entry.hpp"
#include "core/value/result.hpp"
#include "db/stored.hpp"
#include "db/where_used.hpp"

namespace db {

class Connection;
class WriteGate;

/// The entries. See Store for what each function promises.
class LedgerTable {
public:
    LedgerTable(Connection &connection, WriteGate &gate, WhereUsed &whereUsed)
        : m_connection(connection), m_gate(gate), m_whereUsed(whereUsed)
    {
    }

    core::Result<core::Head> head(const core::LedgerId &ledger);
    core::Result<void> append(std::span<const core::Entry> entries, const core::Head &seen);
    core::Result<void> forEach(const core::LedgerId &ledger, qint64 afterSeq, const EntryVisitor &visit);
    core::Result<std::vector<StoredLedger>> ledgers();
    core::Result<std::optional<core::LedgerId>> registerLedger();
    core::Result<std::optional<core::Instant>> jobsLastAt();

private:
    core::Result<std::optional<qint64>> rowOf(const core::LedgerId &ledger);
    core::Result<qint64> begin(const core::LedgerId &ledger, LedgerRole role);
    core::Result<core::Head> headOfRow(std::optional<qint64> ledgerRow);
    core::Result<core::Head> registerHead();
    core::Result<void> appendWithin(std::span<const core::Entry> entries, const core::Head &seen);
    /// Whether every linked ledger still has the head that the entries pin.
    core::Result<bool> linkedStand(std::span<const core::Entry> entries);
    core::Result<void> insert(qint64 ledgerRow, const core::Entry &entry, WhereUsed::Met &met);

    Connection &m_connection;
    WriteGate &m_gate;
    WhereUsed &m_whereUsed;
};

} // namespace db
