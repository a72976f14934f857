// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <utility>
#include <vector>

#include "core/job/state.hpp"

namespace core {

/// The interfaces of the item's twin group that are part of this job, the item among them, in the order of the list; none where it has no twin.
std::vector<const InterfaceState *> twinsOf(const JobState &job, const InterfaceState &item);

/// True when its twins have to be verified against each other before one of them is accepted: where the list names their halves.
/// Source: look-alikes that can be crossed are told apart by the designations of both halves, as a pair: common practice.
bool asksForTwinCheck(const JobState &job, const InterfaceState &item);

/// What belongs together in the group: the half on the aircraft, and its mate on the unit.
using HalfPair = std::pair<QString, QString>;
std::vector<HalfPair> listedPairs(const JobState &job, const InterfaceState &item);

/// The pairs that the body of `twins.verified` holds, as they were read at the aircraft: the first of one list belongs to the first of the other.
std::vector<HalfPair> readPairs(const json::Object &body);

/// The interfaces that an entry `twins.verified` was about: its subject, and every twin of it whose halves were read with it. None for any other entry.
std::vector<InterfaceId> twinsReadIn(const JobState &job, const Statement &said);

/// Whether somebody had a hand in joining it as it is, or in joining it before that was struck.
bool hadAHandInJoining(const InterfaceState &item, const PersonId &person);

/// The first twin that is off, or nullptr.
const InterfaceState *twinThatIsOff(const JobState &job, const InterfaceState &item);

} // namespace core
