// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/record/flow.hpp"
#include "core/reports/job_record.hpp"

namespace record {

/// Sets a job's whole record into the flow: verdict, signatures and facts, the register's root, cautions, people, tools, interfaces,
/// photos, measurements, lifts, servicing and weight, inspections, findings, handovers, every entry, and the index of persons.
void setContents(Flow &flow, const core::JobRecord &job, const FetchAttachment &fetch);

/// What stands at the head of every page: `Work order WO-17 · aircraft · Engine change`.
QString runningHead(const core::JobRecord &job);
/// What stands at its foot: the last entry with its hash, which fixes everything before it.
QString runningFoot(const core::JobRecord &job);

} // namespace record
