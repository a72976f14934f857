// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// Blanks over what stands open: one count an end, and a search for what is not found.

std::optional<Refusal> blanksBalance(const Case &c);
std::optional<Refusal> missingBlanksWereFitted(const Case &c);
std::optional<Refusal> missingBlanksAreAccountedFor(const Case &c);
std::optional<Refusal> openingsAreBlanked(const Case &c);

/// No test while a blank is missing that nobody has accounted for.
std::optional<Refusal> nothingTurnsWithABlankMissing(const Case &c);
/// What became of a missing blank is known, not allowed.
std::optional<Refusal> missingBlankIsRectified(const Case &c);
/// Logged again after a strike, with no fewer blanks and pieces than before.
std::optional<Refusal> noLessThanWasSaid(const Case &c);

extern const Rule blanks, blanksMissed, blanksSearch, blanksFound, blanksRectified, countedAgain, unitOpenings;

} // namespace core::rules
