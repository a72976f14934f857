// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/write_gate.hpp"

#include <QCoreApplication>

#include "db/sqlite/connection.hpp"
#include "db/turn_queue.hpp"

namespace db {

using core::ErrorCode;
using core::failure;
using core::Result;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Store", text); }

/// Pages in the side file that make it worth writing back: about 4 MB.
constexpr int worthWritingBack = 1000;

} // namespace

Turn::~Turn()
{
    if (m_gate)
        m_gate->giveBack();
}

WriteGate::WriteGate(Connection &connection, std::unique_ptr<TurnQueue> queue)
    : m_connection(connection), m_queue(std::move(queue))
{
}

WriteGate::~WriteGate() { Q_ASSERT(m_turns == 0); }

Result<Turn> WriteGate::takeTurn()
{
    if (!m_queue)
        return failure(ErrorCode::ReadOnly, tr("The store is open for reading only. Nothing was recorded. Open it for writing "
                                               "and try again."));
    // Whoever is at the head of the queue may be stopped or asleep. After half our patience we go on without them: the lock
    // inside SQLite says whether the store is really held.
    if (m_turns == 0)
        m_inQueue = m_queue->wait(m_connection.patience() / 2) == TurnQueue::Outcome::OurTurn;
    ++m_turns;
    return Turn(*this);
}

void WriteGate::giveBack()
{
    if (--m_turns == 0 && m_inQueue)
        m_queue->leave();
}

void WriteGate::afterCommit()
{
    ++m_commits;
    if (m_connection.sideFilePages() < worthWritingBack)
        return;
    // Still within our turn: with nobody writing, the side file is written back whole and begins anew.
    (void)writeBack(); // what went wrong is kept for whoever asks
}

Result<void> WriteGate::writeBack()
{
    m_trouble.reset();
    if (auto done = m_connection.writeBack(); !done) {
        m_trouble = core::Error{ErrorCode::Io, tr("The entries are safe in the side file, but writing them back into the store failed. Keep "
                                                  "the side file beside the store, and check the disk. (%1)")
                                                   .arg(done.error().message)};
        return failure(*m_trouble);
    }
    return {};
}

} // namespace db
