// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// What a list may ask for beside the torque band: what is asked for here is what readings are held against.

/// Passes rise to 100 % of the final torque, ten at most; a last one round the ring repeats it.
std::optional<Refusal> passesAreSound(const Case &c);
/// The order names each fastener once, or is `cross`.
std::optional<Refusal> orderIsSound(const Case &c);
/// A turn runs from less to more, and the least drag of a nut is not below zero.
std::optional<Refusal> turnAndDragAreSound(const Case &c);
/// One or two bonding readings.
std::optional<Refusal> bondingReadingsAreSound(const Case &c);
/// A leak's worst class is one of the job's, and a rate is not below zero.
std::optional<Refusal> leakLimitIsSound(const Case &c);

extern const Rule passesSound, orderSound, turnAndDragSound, bondingReadingsSound, leakLimitSound;

} // namespace core::rules
