// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// Leak checks of one interface, against the class and the rate that its listing allows.

/// The classes that a job is opened with have a scheme, a name each, which is not `dry`, and sizes and minutes as leakSchemeIn() takes them.
std::optional<Refusal> leakClassesAreSound(const Case &c);
std::optional<Refusal> leakIsAskedFor(const Case &c);
/// What the limit speaks of was looked at, and nothing is told that no limit judges.
/// By class, where the job's scheme has sizes: size and flow, minutes where it has a time; the class follows, and one that is told must
/// agree. Where it has no sizes: the class by its name. By rate: a rate, or drops. Beside a limit of rate alone only `dry` may be told,
/// beside one of class alone no rate: a reading that nothing judges would pass for a good one. Drops to the millilitre are the list's
/// where it has a number.
std::optional<Refusal> leakIsTold(const Case &c);
/// It was looked as late as the scheme says; the class is one of the job's and no worse than the limit; the rate is at most the limit,
/// drops turned by the list's number, else by the checker's own. Where a rate above 0 is told, nothing is dry or still.
std::optional<Refusal> leakIsWithinLimit(const Case &c);

/// A leak check comes after the torque: before it, dryness proves nothing.
std::optional<Refusal> leakIsCheckedAfterTorque(const Case &c);

extern const Rule leakClasses, leakAsked, leakTold, leakLimit, leakAfterTorque;

} // namespace core::rules
