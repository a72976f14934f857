// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/calculations/calculation.hpp"
#include "core/value/instant.hpp"

namespace desktop {

/// A calculation that came to something, for the screen, the clipboard and paper.
struct WorkedOut {
    const core::Calculation *calculation; ///< lives as long as the program
    core::json::Object body;
    core::Calculated result;
};

/// Title and summary of a calculation, translated.
QString titleOf(const core::Calculation &calculation);
QString summaryOf(const core::Calculation &calculation);

} // namespace desktop
