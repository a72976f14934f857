// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/job/state.hpp"

namespace core {

/// Every part of an interface, as it is listed, came off and went on.
std::vector<HardwareBalance> hardwareOf(const InterfaceState &item);

/// What can be said of one part of an interface.
enum class HardwareStanding {
    NotUndone, ///< nothing came off yet
    Open,      ///< off, and what comes off is to be accounted for
    Even,      ///< joined: nothing lost, and as many as the list requires, where it lists hardware at all
    NotEven,
};
HardwareStanding hardwareStanding(const InterfaceState &item, const HardwareBalance &part);

/// What is likely said of hardware that comes off: as it is listed.
std::vector<HardwareRemoved> likelyRemoved(const Listing &listed);

/// What is likely said of it as it goes back on: what may be used again is, as far as it came off and is required; the rest of what is
/// required is renewed, and the rest of what came off is scrapped. The batch is left open. Where the list names no hardware, all that came off
/// goes on again. Common practice.
std::vector<HardwareUse> likelyUse(const InterfaceState &item);

} // namespace core
