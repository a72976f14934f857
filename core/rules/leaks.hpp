// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// Leak checks of one interface, against the class and the rate that its listing allows.

/// The classes that a job is opened with have a scheme, and a name each, which is not `dry`.
std::optional<Refusal> leakClassesAreSound(const Case &c);
std::optional<Refusal> leakIsAskedFor(const Case &c);
/// What the limit speaks of was looked at: a class, `dry` where nothing shows, or a rate.
std::optional<Refusal> leakIsTold(const Case &c);
/// The class is one of the job's and no worse than the limit; the rate is at most the limit, drops counted as the entry says.
std::optional<Refusal> leakIsWithinLimit(const Case &c);

/// A leak check comes after the torque: before it, dryness proves nothing.
std::optional<Refusal> leakIsCheckedAfterTorque(const Case &c);

extern const Rule leakClasses, leakAsked, leakTold, leakLimit, leakAfterTorque;

} // namespace core::rules
