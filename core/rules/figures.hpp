// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// What is lifted, filled in and weighed.

/// Nothing above a working load limit, no flat sling, no overdue inspection, no centre of gravity outside the lifting points: see
/// core/measure/lifting.hpp.
std::optional<Refusal> liftIsSafe(const Case &c);
/// Span and centre of gravity are told together.
std::optional<Refusal> liftingPointsAreTold(const Case &c);
/// The quantity lies in its band, both ends included.
std::optional<Refusal> quantityIsInBand(const Case &c);

extern const Rule liftSafe, liftPoints, servicingBand;

} // namespace core::rules
