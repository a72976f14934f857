// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// Striking an entry.

std::optional<Refusal> struckEntryExists(const Case &c);
/// Opening, closing and striking are not struck.
std::optional<Refusal> entryMayBeStruck(const Case &c);
/// By its author; by the lead, as long as no loose end disappears with it; what an inspector said, or somebody who was there as an
/// inspector, by that inspector, or by a person with authority to overrule who had no hand in the item. Source: 14 CFR 135.427(b)(8).
std::optional<Refusal> strikerMay(const Case &c);
/// What raised a finding, a failed test and a revision of the maintenance data are answered; struck, where they were a mistake, by an
/// inspector who had no hand in it.
std::optional<Refusal> warningIsAnswered(const Case &c);
/// A listing is struck only while nothing was done to the interface: otherwise an open joint would vanish from the list. By an inspector
/// who had no hand in it as soon as anything rests on the row.
std::optional<Refusal> listingIsUntouched(const Case &c);

/// A hold point that was passed, and a passing behind which something was done, stay.
std::optional<Refusal> struckHoldMatters(const Case &c);
/// What an entry voided (torque, bonding, safetying, leak check, inspection, twins, test, hold point) does not come back by striking it, but
/// by the word of the named level.
std::optional<Refusal> strikeBringsNothingBack(const Case &c);
/// A correction of the list is not struck by those who have to show what it asks for.
std::optional<Refusal> strikeAsksNoLess(const Case &c);
/// Hands and counts of a struck entry stay, unless the named level says that nothing of it was so.
std::optional<Refusal> nothingOfItWasSo(const Case &c);
/// That the change was given up stays once something rests on it.
std::optional<Refusal> givingUpStays(const Case &c);

extern const Rule strikeExists, strikeable, strikeBy, strikeWarning, strikeListing, strikeLess, strikeHold, strikeBack, strikeNeverWas, strikeReversal;

} // namespace core::rules
