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

extern const Rule blanks, blanksMissed, blanksSearch, unitOpenings;

} // namespace core::rules
