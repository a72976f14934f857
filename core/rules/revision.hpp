// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// The maintenance data and the list under a job that goes on: what may change, by whom, and what waits for it.

std::optional<Refusal> revisionIsAnother(const Case &c);
std::optional<Refusal> revisedInterfacesAreListed(const Case &c);
std::optional<Refusal> revisionOfNothingSaysSo(const Case &c);
std::optional<Refusal> revisionWasLookedUp(const Case &c);
std::optional<Refusal> relistedByLeadOrInspector(const Case &c);
std::optional<Refusal> relistedKindStays(const Case &c);
std::optional<Refusal> relistedJointIsOpen(const Case &c);
/// Of a listing that corrects one, or that follows one under the same id that was struck.
std::optional<Refusal> lessIsAskedByAnInspector(const Case &c);
std::optional<Refusal> acceptedByWhoAskedNoLess(const Case &c);
std::optional<Refusal> timesInDoubtAreThere(const Case &c);

extern const Rule revisionAnother, revisionItems, revisionSaid, revisionLookedUp, relistBy, relistKind, relistJoined, relistLess, relistAccept, timesThere;

} // namespace core::rules
