// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "core/job/state.hpp"

namespace core {

/// The next tag number that no interface of this job has had: one more than the greatest number so far.
QString nextTag(const JobState &job);

/// The next finding number: `F1`, `F2` …
QString nextFinding(const JobState &job);

} // namespace core
