// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QIODevice>
#include <QString>

#include <vector>

#include "core/ledger/entry.hpp"
#include "core/value/digest.hpp"
#include "core/value/id.hpp"
#include "core/value/instant.hpp"
#include "core/value/result.hpp"

namespace db {

class Connection;
class WriteGate;

/// A record package of another store, as it was when it was taken in.
struct KeptPackage {
    qint64 number = 0; ///< in this store, from 1
    core::Digest digest; ///< SHA-256 of the whole file
    qint64 size = 0;
    core::LedgerId ledger; ///< of the job
    core::Head head;
    core::Digest root; ///< fingerprint
    QString workOrder;
    QString aircraft;
    QString title;
    bool isClosed = false;
    core::Instant takenAt;
};

/// Record packages that were taken in from elsewhere, whole and apart from the ledgers. Never changed, never removed.
class Packages {
public:
    Packages(Connection &connection, WriteGate &gate) : m_connection(connection), m_gate(gate) {}

    /// Keeps the file that `from` gives from where it stands; `package.number` is passed over, digest and size are checked against it.
    /// All or nothing. BadInput when it is there already; Damaged when the file is not what its digest says; Io.
    core::Result<qint64> put(QIODevice &from, const KeptPackage &package);
    /// All of them, in the order in which they came.
    core::Result<std::vector<KeptPackage>> list();
    /// Writes the whole file. NotFound; Damaged when it is not what its digest says; Io.
    core::Result<void> writeTo(QIODevice &to, qint64 number);

private:
    core::Result<void> putParts(QIODevice &from, qint64 number, const KeptPackage &package);
    Connection &m_connection;
    WriteGate &m_gate;
};

} // namespace db
