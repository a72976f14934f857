// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QHash>

#include <queue>

#include "core/list/list_checks.hpp"

namespace core {

namespace {

using Position = std::size_t;

/// Which rows wait for which, by position. Access to what is not among the rows binds nothing here.
struct Waits {
    std::vector<std::vector<Position>> waiters; ///< beside the rows: who waits for this one
    std::vector<std::size_t> open;              ///< beside the rows: for how many it waits
};

Waits waitsOf(const std::vector<ListedRow> &rows)
{
    QHash<InterfaceId, Position> at;
    for (Position i = 0; i < rows.size(); ++i)
        at.insert(rows[i].id, i);
    Waits waits{std::vector<std::vector<Position>>(rows.size()), std::vector<std::size_t>(rows.size(), 0)};
    for (Position i = 0; i < rows.size(); ++i) {
        for (const InterfaceId &other : namedFirst(rows[i].listing)) {
            if (const auto found = at.constFind(other); found != at.constEnd()) {
                waits.waiters[*found].push_back(i);
                ++waits.open[i];
            }
        }
    }
    return waits;
}

} // namespace

std::vector<InterfaceId> namedFirst(const Listing &listing)
{
    std::vector<InterfaceId> all = listing.access;
    all.insert(all.end(), listing.dependsOn.begin(), listing.dependsOn.end());
    return all;
}

AccessOrder inOrderOfAccess(const std::vector<ListedRow> &rows)
{
    // Of all rows that wait for nothing, the first in the file goes next: so a list in a sound order stays as it is.
    Waits waits = waitsOf(rows);
    std::priority_queue<Position, std::vector<Position>, std::greater<>> ready;
    for (Position i = 0; i < rows.size(); ++i) {
        if (waits.open[i] == 0)
            ready.push(i);
    }
    AccessOrder order;
    while (!ready.empty()) {
        const Position next = ready.top();
        ready.pop();
        order.rows.push_back(rows[next]);
        for (const Position waiter : waits.waiters[next]) {
            if (--waits.open[waiter] == 0)
                ready.push(waiter);
        }
    }
    for (Position i = 0; i < rows.size(); ++i) {
        if (waits.open[i] > 0)
            order.waiting.push_back(rows[i]);
    }
    return order;
}

} // namespace core
