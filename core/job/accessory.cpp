// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/accessory.hpp"

#include <algorithm>

#include "core/job/state.hpp"

namespace core {

bool isPlaced(const JobState &job, const Accessory &accessory)
{
    if (accessory.left || !job.reversed)
        return accessory.left || accessory.moved;
    if (accessory.moved)
        return accessory.moved->seq > job.reversed->seq;
    const auto wasNeverUndone = [&](const InterfaceId &id) {
        const InterfaceState *item = job.item(id);
        return item && !item->removal;
    };
    return !accessory.interfaces.empty() && std::all_of(accessory.interfaces.begin(), accessory.interfaces.end(), wasNeverUndone);
}

} // namespace core
