// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/case.hpp"

#include "core/job/fold.hpp"

namespace core {

const JobState &Case::after() const
{
    if (!worked)
        worked = std::make_shared<const JobState>(afterTaking(job, draft));
    return *worked;
}

} // namespace core
