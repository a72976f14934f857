// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// What a strike would do to the rest of the job.

/// A hold point that was passed, and a passing behind which something was done, stay.
std::optional<Refusal> struckHoldMatters(const Case &c);
/// What an entry voided (a joint, torque, bonding, safetying, leak check, inspection, twins, test, hold point) does not come back by striking
/// it, but by the word of the named level.
std::optional<Refusal> strikeBringsNothingBack(const Case &c);
/// A correction of the list is not struck by those who have to show what it asks for.
std::optional<Refusal> strikeAsksNoLess(const Case &c);
/// A reconnection stays once the interface was undone again: what came off then was counted from it.
std::optional<Refusal> nothingWasUndoneSince(const Case &c);
/// A handover stays once somebody worked under it: who is of the crew is not changed behind their backs.
std::optional<Refusal> handoverWasWorkedUnder(const Case &c);
/// That the change was given up stays once something rests on it.
std::optional<Refusal> givingUpStays(const Case &c);

extern const Rule strikeHold, strikeBack, strikeLess, strikeUndone, strikeHandover, strikeReversal;

} // namespace core::rules
