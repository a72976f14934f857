// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/job/state.hpp"

namespace core {

/// The last entry of that person in the job that stands and is no strike: what they mean by "take back what I said last".
/// Nullptr where there is none. Whether it may be struck is asked of the rules; an earlier one is never meant in its place.
const Line *lastOwnEntry(const JobState &job, const PersonId &author);

} // namespace core
