// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/break_point.hpp"

#include "core/job/state.hpp"
#include "core/requirements/torque.hpp"

namespace core {

std::optional<NextStep> breakPointOf(const InterfaceState &item)
{
    if (!item.restoration || item.torque.empty())
        return std::nullopt;
    const std::vector<TorqueStep> next = nextTorqueSteps(item);
    return next.empty() ? std::nullopt : std::optional(NextStep{next.front().fastener, next.front().pass});
}

bool hasSeen(const BreakPoint &stopped, const PersonId &person) { return stopped.mark.by == person || stopped.seenBy.contains(person); }

} // namespace core
