// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/calculations/calculation.hpp"

namespace core {

/// A calculation as lines of plain text, for a terminal or the clipboard: title, cautions, what was given, steps, answer, lines for
/// the record, notes, sources; the last line is measure::dataGoverns().
QStringList linesOf(const Calculation &calculation, const json::Object &body, const Calculated &result);

} // namespace core
