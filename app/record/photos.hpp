// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/record/flow.hpp"
#include "core/reports/job_record.hpp"

namespace record {

/// Sets the section of photos: every attachment that an entry names, zone by zone. One that cannot be fetched, or is no picture, has its
/// place with the reason in it. Nothing where no entry names one.
void setPhotos(Flow &flow, const core::JobRecord &job, const FetchAttachment &fetch);

} // namespace record
