// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>

#include "core/acts/act.hpp"
#include "core/list/csv.hpp"
#include "core/value/json.hpp"

namespace core {

/// What a cell says for a member of an entry's body: nothing when it is empty, or what was expected in it.
using CellValue = tl::expected<std::optional<json::Value>, QString>;

/// Reads a cell by the type of its field. Free text keeps the blanks at its ends when it was quoted; everything else is
/// trimmed.
CellValue cellValue(const Field &field, const csv::Field &cell);

/// The cell that reads as that value.
QString cellText(const json::Value &value);
/// The same where the field says how: lines of columns stand as line_cell.hpp writes them.
QString cellText(const Field &field, const json::Value &value);

/// The text of a cell without a spreadsheet's guard, trimmed unless it was quoted.
QString plainText(const csv::Field &cell);

/// Several texts in one cell: separated by `|`, with `\|` and `\\` for those characters themselves.
QString joinedInCell(const std::vector<QString> &texts);
std::vector<QString> partsOfCell(const QString &cell);

} // namespace core
