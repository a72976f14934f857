// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/reopen.hpp"

namespace core {

void voidWhatWasShown(InterfaceState &item)
{
    item.torque.clear();
    item.bonding.reset();
    item.safetying.reset();
    item.leak.reset();
    item.acceptances.clear();
    item.torqueTakenOverBy.clear();
}

void reopenTwins(JobState &job, const InterfaceState &changed)
{
    if (changed.listed.twinGroup.isEmpty())
        return;
    const QString group = changed.listed.twinGroup;
    for (std::size_t at = 0; at < job.items.size(); ++at) {
        if (job.items[at].listed.twinGroup == group)
            job.items.edit(at).acceptances.clear();
    }
}

} // namespace core
