// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <deque>
#include <functional>
#include <future>
#include <vector>

#include "core/ledger/verify.hpp"
#include "db/stored.hpp"

namespace session {

/// Digests and parses rows on all cores while more are read, and hands them on in their order, in the thread of the caller. A
/// few rows are not worth a thread and are read where they are.
class EntryReader {
public:
    /// Called for each row; Stop ends the reading.
    using Take = std::function<db::Walk(core::ReadEntry &&entry)>;

    explicit EntryReader(Take take) : m_take(std::move(take)) {}

    /// The next row. Stop when the receiver said so.
    db::Walk add(const db::StoredEntryView &row);
    /// Hands on what is still under way.
    void finish();

private:
    using Batch = std::vector<core::ReadEntry>;
    db::Walk handOn(Batch batch);
    db::Walk handOnOldest();

    Take m_take;
    std::vector<core::FoundEntry> m_filling;
    std::deque<std::future<Batch>> m_underWay;
    bool m_stopped = false;
};

} // namespace session
