// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/labels/labels.hpp"

#include "core/labels/label_text.hpp"

namespace core {

std::vector<Label> labelsOf(const JobState &job)
{
    std::vector<Label> labels;
    for (const InterfaceState &item : job.items) {
        const Listing &listed = item.listed;
        const QString code = writeLabelText({job.facts.workOrder, listed.id});
        const bool hasTag = carriesTag(item) && item.removal->tag != code;
        labels.push_back({code, job.facts.workOrder, listed.id.text(), listed.name, listed.zone, hasTag ? item.removal->tag : QString()});
    }
    return labels;
}

} // namespace core
