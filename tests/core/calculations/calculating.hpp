// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/calculations/calculation.hpp"

/// Calculations as somebody types them: `least=50 lbf·in; most=70 lbf·in`.
namespace calculating {

/// The program's own look-up tables.
const core::LookUpTables &tables();

std::vector<core::TypedField> typed(const QString &fields);
std::vector<core::TypedField> exampleOf(const core::Calculation &calculation);

/// What it came to, or the error of body or calculation.
core::Result<core::Calculated> work(const core::Calculation &calculation, const std::vector<core::TypedField> &fields);
core::Result<core::Calculated> work(const QString &name, const QString &fields);

/// `answer: …`, `refused: …` or `bad input: …`.
QString said(const core::Result<core::Calculated> &result);

/// The result of a step by its number from 0; what was said when there is no such step.
QString resultOf(const core::Result<core::Calculated> &result, int step);

} // namespace calculating
