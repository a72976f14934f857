// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <utility>

#include "core/value/result.hpp"

namespace db {

class Connection;

/// All or nothing: undone when it goes without commit().
class Transaction {
public:
    /// For writing. Takes the write lock at once, so that what is read in it still holds when it commits.
    static core::Result<Transaction> begin(Connection &connection);
    /// For reading several things as they were at one moment.
    static core::Result<Transaction> beginReading(Connection &connection);

    Transaction(Transaction &&other) noexcept : m_connection(std::exchange(other.m_connection, nullptr)) {}
    Transaction &operator=(Transaction &&) = delete;
    Transaction(const Transaction &) = delete;
    Transaction &operator=(const Transaction &) = delete;
    ~Transaction();

    core::Result<void> commit();

private:
    explicit Transaction(Connection &connection) : m_connection(&connection) {}
    Connection *m_connection;
};

} // namespace db
