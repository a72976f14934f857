// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

/// The plate says the number that the job was opened with.
std::optional<Refusal> serialIsTheJobs(const Case &c);
/// Off once, received once, in its place once, in this order.
std::optional<Refusal> unitMovesInOrder(const Case &c);
/// A unit of which something is still logged as connected does not come off.
std::optional<Refusal> nothingHoldsTheUnit(const Case &c);
/// As many shipping blanks come off as were counted.
std::optional<Refusal> shippingBlanksAreOut(const Case &c);

/// Given up once, and before the incoming unit hangs.
std::optional<Refusal> isNotReversedYet(const Case &c);

/// A unit that is received again, after that was struck, has no fewer blanks than before, unless an inspector counted.
std::optional<Refusal> unitIsCountedAgain(const Case &c);
/// A mount is not joined while there is no unit that it could be joined to.
std::optional<Refusal> mountsWaitForAUnit(const Case &c);
/// A mount of a unit that hangs in its place is undone with the load on something that is logged.
std::optional<Refusal> unitIsCarried(const Case &c);

extern const Rule reversedOnce, unitSerial, unitOrder, unitFree, unitBlanks, unitCounted, unitThere, unitCarried;

} // namespace core::rules
