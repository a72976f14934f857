// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "core/job/state.hpp"
#include "core/register/register.hpp"

namespace desktop {

/// `before: Chafe mark beside the clamp`, or who attached it where nothing was written under it.
QString photoInWords(const core::Photo &photo, const core::JobState &job, const core::Register &reg);

/// That this very file was attached in this job before, and where; empty when it was not.
QString attachedBefore(const core::Digest &digest, const core::JobState &job);

/// `2 before, 1 after`
QString photosCounted(const std::vector<core::Photo> &photos);

} // namespace desktop
