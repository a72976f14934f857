// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// Striking an entry: which, and who may. What it would do to the rest of the job: strike_effects.hpp.

/// Only what counts is struck; and what was struck once more where the named level says that nothing of it was so.
std::optional<Refusal> struckEntryExists(const Case &c);
/// Opening, closing and striking are not struck.
std::optional<Refusal> entryMayBeStruck(const Case &c);
/// By its author; by the lead, as long as no loose end disappears with it; what an inspector said, or somebody who was there as an
/// inspector, by that inspector, or by a person with authority to overrule who had no hand in the item. Source: 14 CFR 135.427(b)(8).
std::optional<Refusal> strikerMay(const Case &c);
/// What raised a finding, a failed test and a revision of the maintenance data are answered; struck, where they were a mistake, by an
/// inspector who is not of the crew and had no hand in what they are about. A missing tool or blank: by the named level.
std::optional<Refusal> warningIsAnswered(const Case &c);
/// A listing is struck only while nothing was done to the interface: otherwise an open joint would vanish from the list. By an inspector
/// who had no hand in it as soon as anything rests on the row.
std::optional<Refusal> listingIsUntouched(const Case &c);
/// Hands and counts of a struck entry stay, unless the named level says that nothing of it was so.
std::optional<Refusal> nothingOfItWasSo(const Case &c);

extern const Rule strikeExists, strikeable, strikeBy, strikeWarning, strikeListing, strikeNeverWas;

} // namespace core::rules
