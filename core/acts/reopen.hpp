// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/job/state.hpp"

namespace core {

/// Voids all that had been shown about the joint, torque to inspection; for when it is undone, disturbed or rejected.
void voidWhatWasShown(InterfaceState &item);

/// Look-alikes are inspected against each other, so a change to one leaves none of its twin group inspected.
void reopenTwins(JobState &job, const InterfaceState &changed);

} // namespace core
