// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// What is physically true of an interface, and that none of it counts as done.

/// What is said fits the stage: positioned and temporary are said of what is off, slave hardware of what was undone.
std::optional<Refusal> conditionFitsTheStage(const Case &c);
/// A condition is said once, and cleared before it is said again.
std::optional<Refusal> conditionIsNotSaidYet(const Case &c);
/// What does not go by itself has a reason; slave hardware names its pieces.
std::optional<Refusal> conditionIsExplained(const Case &c);
/// Damage raises a finding, and nothing else does.
std::optional<Refusal> damageRaisesAFinding(const Case &c);
std::optional<Refusal> conditionStandsToBeCleared(const Case &c);
/// Pieces and trial fits are taken out by somebody of the crew who may work, and has seen where the work stopped.
std::optional<Refusal> clearedByAWorker(const Case &c);
/// Damage is cleared when the finding that it raised is closed.
std::optional<Refusal> damageIsDisposedOf(const Case &c);
/// A trial fit is undone or made final before the interface is reconnected.
std::optional<Refusal> nothingIsTemporary(const Case &c);
/// An inspector accepts nothing with a condition that is not settled.
std::optional<Refusal> conditionsAreSettled(const Case &c);

extern const Rule conditionStage, conditionOnce, conditionExplained, conditionFinding, conditionStands, conditionWorker, conditionRepaired, conditionFinal, conditionSettled;

} // namespace core::rules
