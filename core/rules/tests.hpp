// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

std::optional<Refusal> testIsNew(const Case &c);
/// Everything that it names is on the list, and what it covers is restored.
std::optional<Refusal> testCoversWhatIsRestored(const Case &c);
/// Values have the form that they must have; of a passed test each lies within its limits.
std::optional<Refusal> testValuesAreWithin(const Case &c);
/// A failed test names what is worked on again; a passed one names nothing.
std::optional<Refusal> failedTestReopens(const Case &c);

extern const Rule testNew, testCovers, testValues, testReopens;

} // namespace core::rules
