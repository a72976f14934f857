// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// Who may say it.

/// Whether the author is authorised to inspect that interface and had no hand in it.
bool mayInspect(const Case &c, const InterfaceState &item);
/// Whether the author may set aside an inspector's word, on that interface or, with nullptr, on the job: authority to overrule, and no hand in it.
bool mayOverrule(const Case &c, const InterfaceState *item);
/// Whether the author is authorised to inspect anything on this type of aircraft.
bool mayInspectSomething(const Case &c);

std::optional<Refusal> authorIsEnrolled(const Case &c);
/// A stopped key has no successor yet.
std::optional<Refusal> authorsKeyIsNotStopped(const Case &c);
std::optional<Refusal> peopleAreEnrolled(const Case &c);
std::optional<Refusal> authorIsOfTheCrew(const Case &c);
std::optional<Refusal> authorMayWork(const Case &c);
/// Members of the crew and authorised inspectors may raise what they see.
std::optional<Refusal> authorTakesPart(const Case &c);
std::optional<Refusal> authorLeads(const Case &c);
std::optional<Refusal> openerMayLead(const Case &c);
std::optional<Refusal> authorMayRelease(const Case &c);

extern const Rule enrolled, signsWithKey, peopleKnown, ofTheCrew, mayWork, takesPart, leads, mayOpen, mayRelease;

} // namespace core::rules
