// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

/// Its id is new, its serial number is nobody else's, and its interfaces are on the list.
std::optional<Refusal> accessoryIsNew(const Case &c);
/// Listed, and neither moved nor left yet.
std::optional<Refusal> accessoryIsToBePlaced(const Case &c);
/// The plate reads the number that was listed.
std::optional<Refusal> accessorySerialIsRead(const Case &c);
/// It moves when the incoming unit is there, and its interfaces are off.
std::optional<Refusal> accessoryCanMove(const Case &c);
/// What takes its place comes with a certificate, and is not in another place already.
std::optional<Refusal> replacementIsSound(const Case &c);

extern const Rule accessoryNew, accessoryOpen, accessorySerial, accessoryFree, accessoryReplacement;

} // namespace core::rules
