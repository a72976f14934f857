// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "app/record/flow.hpp"
#include "core/reports/job_record.hpp"

namespace record {

/// Sets the index of persons: under each name and each meaning of a signature, every entry with what it is about and its page.
/// `pages`: where each entry stands in the section of all entries, in order, counted from 1.
void setIndexOfPersons(Flow &flow, const core::JobRecord &job, const std::vector<int> &pages);

} // namespace record
