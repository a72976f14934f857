// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// What was undone without being on the list.

/// Details are asked of what is without them.
std::optional<Refusal> detailsAreAskedFor(const Case &c);
/// No interface waits for itself, nor two for each other.
std::optional<Refusal> accessHasNoCircle(const Case &c);
/// Nothing is inspected of which nobody knows what it has to show.
std::optional<Refusal> detailsAreKnown(const Case &c);
/// What it depends on is listed.
std::optional<Refusal> dependsOnListed(const Case &c);

/// What was undone in front of a gate that would have held it back, had it been listed, is detailed by an inspector.
std::optional<Refusal> gatePassedOrInspector(const Case &c);

extern const Rule detailAsked, detailGate, detailCircle, detailKnown, dependsKnown;

} // namespace core::rules
