// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// The inspection of one's own work where nobody else is there: off unless the job allows it, and never the ordinary way.
// Source: AMC4 145.A.48(b), paragraph (d); 14 CFR 135.429(d).

std::optional<Refusal> jobAllowsReinspection(const Case &c);
/// Who had no hand in it inspects in the ordinary way.
std::optional<Refusal> isOwnWork(const Case &c);
/// Nobody else who may inspect it is of the crew, or signed in this job within 24 hours.
std::optional<Refusal> nobodyElseIsThere(const Case &c);
/// Allowed by somebody else, who has authority to overrule.
std::optional<Refusal> approverMayAllow(const Case &c);
/// After the pause that the job sets.
std::optional<Refusal> pauseIsOver(const Case &c);

extern const Rule reinspectionAllowed, reinspectionOwn, reinspectionAlone, reinspectionApprover, reinspectionPause;

} // namespace core::rules
