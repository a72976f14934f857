// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// What is lifted, filled in and weighed.

/// Nothing above a working load limit, no flat sling, no overdue inspection, no centre of gravity outside the lifting points: see
/// core/measure/lifting.hpp.
std::optional<Refusal> liftIsSafe(const Case &c);
/// One lifting point without span and centre of gravity, or two with both: see faultOfLiftingPoints.
std::optional<Refusal> liftingPointsAreTold(const Case &c);
/// A unit is lifted with no less than the weight record of the job says that it weighs, across units of weight.
std::optional<Refusal> liftCarriesWhatIsRecorded(const Case &c);
/// A lift is planned for today or a day to come, told as the crew's calendar has it: up to one day behind UTC.
std::optional<Refusal> liftIsStillToCome(const Case &c);
/// The quantity lies in its band, both ends included.
std::optional<Refusal> quantityIsInBand(const Case &c);
/// The aircraft's balance is told once, by moment or centre of gravity, and no weight is 0 or less: see core/measure/weight_change.hpp.
std::optional<Refusal> weightsMakeSense(const Case &c);
/// One weight record stands in a job.
std::optional<Refusal> weightIsRecordedOnce(const Case &c);
/// A unit weighs no more than each standing plan of its lift reckoned with.
std::optional<Refusal> weightsAreAsLifted(const Case &c);

extern const Rule liftSafe, liftPoints, liftDay, liftWeight, servicingBand, weightSound, weightOnce, weightAsLifted;

} // namespace core::rules
