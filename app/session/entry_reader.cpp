// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/entry_reader.hpp"

#include <algorithm>
#include <thread>
#include <utility>

namespace session {

namespace {

/// Enough that starting a thread is nothing beside it.
constexpr std::size_t batchSize = 512;

std::vector<core::ReadEntry> readAll(std::vector<core::FoundEntry> rows)
{
    std::vector<core::ReadEntry> read;
    read.reserve(rows.size());
    core::json::ObjectReader objects;
    for (core::FoundEntry &row : rows)
        read.push_back(core::readEntry(std::move(row), objects));
    return read;
}

std::size_t mostUnderWay() { return std::max(2u, std::thread::hardware_concurrency()); }

} // namespace

db::Walk EntryReader::add(const db::StoredEntryView &row)
{
    m_filling.push_back({row.seq, row.bytes.toByteArray(), row.hash.toByteArray(), row.signature.toByteArray()});
    if (m_filling.size() < batchSize)
        return db::Walk::On;
    m_underWay.push_back(std::async(std::launch::async | std::launch::deferred, readAll, std::exchange(m_filling, {})));
    return m_underWay.size() < mostUnderWay() ? db::Walk::On : handOnOldest();
}

void EntryReader::finish()
{
    while (!m_underWay.empty())
        (void)handOnOldest();
    (void)handOn(readAll(std::exchange(m_filling, {})));
}

db::Walk EntryReader::handOnOldest()
{
    Batch batch = m_underWay.front().get();
    m_underWay.pop_front();
    return handOn(std::move(batch));
}

db::Walk EntryReader::handOn(Batch batch)
{
    for (core::ReadEntry &entry : batch) {
        if (m_stopped)
            break;
        m_stopped = m_take(std::move(entry)) == db::Walk::Stop;
    }
    return m_stopped ? db::Walk::Stop : db::Walk::On;
}

} // namespace session
