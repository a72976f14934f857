// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// Look-alikes that could be crossed, verified as a pair.

/// The subject has twins whose halves the list names.
std::optional<Refusal> twinsCanBeTold(const Case &c);
/// Every twin is joined.
std::optional<Refusal> twinsAreJoined(const Case &c);
/// The halves as read are the pairs of the list, each once.
std::optional<Refusal> halvesReadAreThePairs(const Case &c);
/// By somebody who joined none of them.
std::optional<Refusal> verifierJoinedNone(const Case &c);
/// Before a twin is accepted, its group was verified.
std::optional<Refusal> twinsWereVerified(const Case &c);

/// Look-alikes that share a designation cannot be told apart by it.
std::optional<Refusal> halvesDifferFromTheTwins(const Case &c);

extern const Rule twinHalves, twinsAsked, twinsJoined, twinsRead, twinsAnother, twinsVerified;

} // namespace core::rules
