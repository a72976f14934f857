// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/sqlite/transaction.hpp"

#include "db/sqlite/connection.hpp"
#include "db/sqlite/failure.hpp"

namespace db {

using core::failure;
using core::Result;

Result<Transaction> Transaction::begin(Connection &connection)
{
    if (auto begun = connection.query("BEGIN IMMEDIATE").run(); !begun)
        return failure(begun.error());
    return Transaction(connection);
}

Result<Transaction> Transaction::beginReading(Connection &connection)
{
    if (auto begun = connection.query("BEGIN").run(); !begun)
        return failure(begun.error());
    return Transaction(connection);
}

Transaction::~Transaction()
{
    // Some failures roll back by themselves; a second rollback would be an error of its own.
    if (m_connection && m_connection->isInTransaction())
        (void)m_connection->query("ROLLBACK").run(); // fails only when there is nothing left to undo
}

Result<void> Transaction::commit()
{
    if (auto done = m_connection->query("COMMIT").toldBy(&errorOfCommit).run(); !done)
        return failure(done.error());
    m_connection = nullptr;
    return {};
}

} // namespace db
