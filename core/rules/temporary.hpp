// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

/// Its id names nothing yet, and its zone is one of the job.
std::optional<Refusal> temporaryIsNew(const Case &c);
std::optional<Refusal> temporaryIsApplied(const Case &c);
/// Lockouts come off by the hand that put them on. Where that person is away, the lead takes them off and says why.
/// Source: 29 CFR 1910.147(e)(3) and its exception for an absent employee.
std::optional<Refusal> lockoutIsOnesOwn(const Case &c);
/// Handed over by its owner, to somebody of the crew.
std::optional<Refusal> lockoutGoesToTheCrew(const Case &c);

/// That a lockout was applied, or went to another person, is not struck while it is on; but by the named level, as never so.
std::optional<Refusal> struckLockoutIsOff(const Case &c);

extern const Rule temporaryNew, temporaryApplied, lockoutOwn, lockoutTo, strikeLockout;

} // namespace core::rules
