// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// Tools that are issued to the job, counted, and come back: common practice.

/// A measuring tool is of the register and not withdrawn; a hand tool or kit is not, and has a name; a kit has its number of pieces.
std::optional<Refusal> toolIsKnown(const Case &c);
/// It is not out already.
std::optional<Refusal> toolIsIn(const Case &c);
/// It was issued and has not come back.
std::optional<Refusal> toolIsOut(const Case &c);
/// As many pieces as went out, unless the kit is known to be missing something.
std::optional<Refusal> kitIsWhole(const Case &c);
/// Exactly what is out.
std::optional<Refusal> countIsExact(const Case &c);
/// A tool is said to be missing once.
std::optional<Refusal> toolIsNotMissingYet(const Case &c);
/// An issue on which a count, a return or a loss rests is not struck.
std::optional<Refusal> struckIssueIsUnused(const Case &c);

extern const Rule toolMarked, toolIn, toolOut, toolKit, toolCount, toolMissed, strikeTool;

} // namespace core::rules
