// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// Independent inspection.

/// Inspected only when every requirement was shown.
std::optional<Refusal> isSecured(const Case &c);
/// A rejection needs something to look at.
std::optional<Refusal> isJoinedForInspection(const Case &c);
/// An inspection authorisation, valid at that moment, that covers the kind and the aircraft type.
std::optional<Refusal> inspectorIsAuthorised(const Case &c);
/// Refuses anybody in the item's actor set, over all shifts and linked jobs (an item of the same id there is the same one handed on, or its
/// like on the other engine): who disconnected, reconnected, torqued, measured, helped,
/// supervised or taught. Source: 14 CFR 121.371(c). Teaching counts as a hand in it: common practice.
std::optional<Refusal> inspectorHadNoHand(const Case &c);
/// On a critical interface, nobody who had a hand in any of its independence group or twin group, in linked jobs as well.
std::optional<Refusal> inspectorHadNoHandInGroup(const Case &c);
/// Two inspections are made by two persons.
std::optional<Refusal> inspectorIsAnother(const Case &c);
/// What is inspected already takes no further acceptance.
std::optional<Refusal> isNotInspectedYet(const Case &c);

/// No reading on it was taken with a tool that was found out of tolerance later.
std::optional<Refusal> nothingIsInDoubt(const Case &c);

extern const Rule notInDoubt, secured, somethingToInspect, inspectAuthorised, ownWork, ownGroup, secondPerson, inspectedOnce;

} // namespace core::rules
