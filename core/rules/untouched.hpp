// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// What is on the list and was never undone.

std::optional<Refusal> wasNeverUndone(const Case &c);
std::optional<Refusal> isNotSaidYet(const Case &c);
/// A critical interface is confirmed undisturbed by an inspector.
std::optional<Refusal> criticalByInspector(const Case &c);
std::optional<Refusal> thereIsSomethingToAgreeTo(const Case &c);
std::optional<Refusal> agreedByAnother(const Case &c);

/// What was said to be undone and struck since is found untouched, or agreed to be not applicable, by an inspector who had no hand in it.
std::optional<Refusal> struckUndoingByInspector(const Case &c);
/// A joint that came back by a strike, after it was said to be undone once more, is not inspected.
std::optional<Refusal> undoingIsNotInQuestion(const Case &c);

extern const Rule untouchedStage, untouchedOnce, undisturbedInspector, untouchedStruck, undoingClear, notApplicableStated, notApplicableSecond;

} // namespace core::rules
