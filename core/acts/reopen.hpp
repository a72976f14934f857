// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/job/state.hpp"

namespace core {

/// Voids all that had been shown about the joint, torque to inspection; for when it is undone, disturbed or rejected.
void voidWhatWasShown(InterfaceState &item);

/// Its acceptances, and the re-inspections behind them.
void takeBackAcceptances(InterfaceState &item);

/// Look-alikes are verified and inspected against each other, so a change to one leaves none of its twin group so.
void reopenTwins(JobState &job, const InterfaceState &changed);

/// For when an interface is listed, or its row is another: which ones name which.
void noteRow(JobState &job, const Listing *before, const Listing &after);

/// The interfaces that are listed as depending on this one, on what depends on it, and so on; each once, without itself.
std::vector<InterfaceId> dependentsOf(const JobState &job, const InterfaceId &id);

/// What a change to an interface leaves unproven beside itself: its twins, and what depends on it. A dependent loses its torque and what
/// rests on it, or its acceptance alone where no torque is asked for.
void reopenWhatRestsOn(JobState &job, const InterfaceState &changed);

/// Voids what was shown of a joined interface and of all that rests on it.
void disturb(JobState &job, const InterfaceId &id, const Mark &mark);

} // namespace core
