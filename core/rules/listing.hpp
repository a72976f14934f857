// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// What may stand on the interface list, and what a job must be opened with.

std::optional<Refusal> interfaceIsNew(const Case &c);
std::optional<Refusal> zoneExists(const Case &c);
std::optional<Refusal> requirementsCanBeShown(const Case &c);
std::optional<Refusal> torqueBandIsSound(const Case &c);
std::optional<Refusal> accessIsListed(const Case &c);
std::optional<Refusal> inspectionsAreOneOrTwo(const Case &c);
std::optional<Refusal> zonesAreNamed(const Case &c);

extern const Rule interfaceNew, zoneKnown, requirementsSound, torqueSpecSound, accessKnown, inspectionCount, zonesNamed;

} // namespace core::rules
