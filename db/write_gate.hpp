// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <memory>
#include <optional>
#include <type_traits>
#include <utility>

#include "core/value/result.hpp"
#include "db/sqlite/transaction.hpp"
#include "db/turn.hpp"

namespace db {

class Connection;
class TurnQueue;

/// The one way in for everything that writes: queue, transaction, commit, write-back.
class WriteGate {
public:
    /// Without a queue the store is open for reading alone.
    WriteGate(Connection &connection, std::unique_ptr<TurnQueue> queue);
    ~WriteGate();
    WriteGate(const WriteGate &) = delete;
    WriteGate &operator=(const WriteGate &) = delete;

    /// ReadOnly when the store is open for reading alone. A turn within a turn costs nothing.
    core::Result<Turn> takeTurn();

    /// Runs `change` in a transaction: committed and durable when it returns a value, undone when it returns an error.
    template <class Change>
    auto write(Change change) -> std::invoke_result_t<Change>
    {
        auto turn = takeTurn();
        if (!turn)
            return core::failure(turn.error());
        auto transaction = Transaction::begin(m_connection);
        if (!transaction)
            return core::failure(transaction.error());
        auto outcome = change();
        if (!outcome)
            return outcome;
        if (auto done = transaction->commit(); !done)
            return core::failure(done.error());
        afterCommit();
        return outcome;
    }

    bool mayWrite() const { return m_queue != nullptr; }
    qint64 commits() const { return m_commits; }
    core::Result<void> writeBack();
    const std::optional<core::Error> &trouble() const { return m_trouble; }

private:
    friend class Turn;
    void giveBack();
    void afterCommit();

    Connection &m_connection;
    std::unique_ptr<TurnQueue> m_queue;
    int m_turns = 0;         ///< how many are held, one in another
    bool m_inQueue = false;  ///< false when patience ran out and we went on without the queue
    qint64 m_commits = 0;
    std::optional<core::Error> m_trouble; ///< of the last write-back
};

} // namespace db
