// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/release_counts.hpp"

#include "core/job/linked.hpp"
#include "core/job/stage.hpp"

namespace core {

bool isUndone(const InterfaceState &item) { return item.removal && !isElsewhere(item) && stageOf(item) != Stage::Inspected; }

ReleaseCounts releaseCounts(const JobState &job)
{
    ReleaseCounts counts;
    for (const InterfaceState &item : job.items) {
        if (isElsewhere(item))
            ++counts.givenOver;
        else if (stageOf(item) == Stage::Inspected)
            ++counts.inspected;
        else if (isNotApplicable(item))
            ++counts.notApplicable;
        else if (isConfirmedUndisturbed(item))
            ++counts.undisturbed;
        else
            ++counts.open;
        counts.undone += isUndone(item) ? 1 : 0;
    }
    return counts;
}

} // namespace core
