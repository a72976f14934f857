// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <chrono>
#include <cstdint>
#include <memory>

#include "core/value/result.hpp"

namespace db {

/// The queue of all programs that write to one store: first come, first served. SQLite itself lets waiting programs try again
/// now and then, so with many of them some wait for seconds while others pass.
///
/// Tickets are counted in a small file beside the store (`<store>-queue`) that all programs share in memory. While a program
/// has a ticket it holds a lock on the ticket's own byte of that file; the system drops the lock when the program ends, so
/// those behind a dead one pass over it. The queue is a courtesy: SQLite's lock is what keeps writers apart.
class TurnQueue {
public:
    static core::Result<std::unique_ptr<TurnQueue>> open(const QString &storePath);
    /// Takes the file away when nobody else uses it.
    ~TurnQueue();
    TurnQueue(const TurnQueue &) = delete;
    TurnQueue &operator=(const TurnQueue &) = delete;

    enum class Outcome {
        OurTurn,
        GaveUp, ///< patience ran out; we are no longer in the queue
    };
    /// Waits for our turn. Must be followed by leave() when it came.
    Outcome wait(std::chrono::milliseconds patience);
    void leave();

private:
    struct Board;
    TurnQueue(QString path, int file, Board *board) : m_path(std::move(path)), m_file(file), m_board(board) {}
    void takeTicket();
    bool isHeld(std::uint32_t ticket) const;
    void passOver(std::uint32_t ticket);
    void passOverWhoIsGone(std::uint32_t serving, bool evenIfThere);

    QString m_path;
    int m_file;
    Board *m_board;
    std::uint32_t m_ticket = 0;
};

} // namespace db
