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
/// A lift is planned for today or a day to come, told as the crew's calendar has it: up to one day behind UTC.
std::optional<Refusal> liftIsStillToCome(const Case &c);
std::optional<Refusal> quantityIsInBand(const Case &c);
/// The aircraft's balance is told once, by moment or centre of gravity, and no weight is 0 or less: see core/measure/weight_change.hpp.
std::optional<Refusal> weightsMakeSense(const Case &c);

extern const Rule liftSafe, liftPoints, liftDay, servicingBand, weightSound;

} // namespace core::rules
