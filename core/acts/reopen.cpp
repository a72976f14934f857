// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/reopen.hpp"

namespace core {

void voidWhatWasShown(InterfaceState &item)
{
    item.torque.clear();
    item.bonding.reset();
    item.safetying.reset();
    item.acceptances.clear();
    item.torqueTakenOverBy.clear();
}

void reopenTwins(JobState &job, const InterfaceState &changed)
{
    if (changed.listed.twinGroup.isEmpty())
        return;
    for (InterfaceState &other : job.items) {
        if (other.listed.twinGroup == changed.listed.twinGroup)
            other.acceptances.clear();
    }
}

} // namespace core
