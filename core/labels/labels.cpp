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
        labels.push_back({writeLabelText({job.facts.workOrder, listed.id}), job.facts.workOrder, listed.id.text(), listed.name, listed.zone, carriesTag(item) ? item.removal->tag : QString()});
    }
    return labels;
}

} // namespace core
