// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// Bolts, nuts, seals and pins of an interface. Removed = reused + scrapped, required = reused + renewed: common practice.

/// Each part once, one of it or more.
std::optional<Refusal> listedHardwareIsSound(const Case &c);
/// Each listed part is counted as it comes off, each once; none of it is a count too.
std::optional<Refusal> removedHardwareIsCounted(const Case &c);
/// Where hardware is listed or came off, the reconnection says what became of each part.
std::optional<Refusal> hardwareHasLines(const Case &c);
/// Only what came off is reused.
std::optional<Refusal> reusedHardwareCameOff(const Case &c);
/// removed = reused + scrapped.
std::optional<Refusal> removedHardwareIsAccountedFor(const Case &c);
/// required = reused + renewed; where the list names no hardware, nothing is required.
std::optional<Refusal> requiredHardwareIsOn(const Case &c);
/// What must be new is not reused.
/// Source: AC 43.13-1B par. 7-38, a cotter pin is new for each application, and so is lockwire; seals and gaskets: common practice.
std::optional<Refusal> newHardwareIsNotReused(const Case &c);
/// What is renewed has its batch.
std::optional<Refusal> renewedHardwareHasItsBatch(const Case &c);

extern const Rule hardwareListed, hardwareCounted, hardwareLines, hardwareReused, hardwareRemoved, hardwareRequired, hardwareNew, hardwareBatch;

} // namespace core::rules
