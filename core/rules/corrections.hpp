// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// Striking an entry.

std::optional<Refusal> struckEntryExists(const Case &c);
/// Opening, closing and striking are not struck.
std::optional<Refusal> entryMayBeStruck(const Case &c);
/// By its author or by the lead; what an inspector said, by that inspector, or by a person with authority to overrule who had
/// no hand in the item. Source: 14 CFR 135.427(b)(8).
std::optional<Refusal> strikerMay(const Case &c);
/// A listing is struck only while nothing was done to the interface: otherwise an open joint would vanish from the list.
std::optional<Refusal> listingIsUntouched(const Case &c);

/// A hold point that was passed, and a passing behind which something was done, stay.
std::optional<Refusal> struckHoldMatters(const Case &c);
/// An acceptance that an entry voided does not come back by striking it, but by the word of the named level.
std::optional<Refusal> strikeBringsNoAcceptanceBack(const Case &c);

extern const Rule strikeExists, strikeable, strikeBy, strikeListing, strikeHold, strikeAcceptance;

} // namespace core::rules
