// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// What may be done to an interface in which stage.

std::optional<Refusal> itemIsListed(const Case &c);
/// An interface can be disconnected once until it is restored.
std::optional<Refusal> isNotAlreadyOff(const Case &c);
/// What must be off before it for access is off.
std::optional<Refusal> accessIsClear(const Case &c);
/// Only what is disconnected can be reconnected.
std::optional<Refusal> isOff(const Case &c);
/// Nothing is covered before it was inspected.
std::optional<Refusal> nothingUnderItIsOpen(const Case &c);
/// Measuring, safetying and disturbing need a joined interface.
std::optional<Refusal> isJoined(const Case &c);
/// After an acceptance no more work is done on an item unless it is said to be disturbed, which voids the acceptance.
std::optional<Refusal> isNotAccepted(const Case &c);

extern const Rule onTheList, disconnectedOnce, accessOff, reconnectedWhenOff, inspectedBeforeCover, measuredWhenJoined, disturbedBeforeMoreWork;

} // namespace core::rules
