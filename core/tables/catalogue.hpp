// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

namespace core {

/// What stands in a column of a look-up table.
enum class Holds {
    Words,
    Number, ///< zero or more, with a decimal point
    OneOf,  ///< one of the form's choices
};

/// Whether a row may leave it empty, where its source says nothing.
enum class Filled { Always, OrEmpty };

struct TableColumnForm {
    const char *id;    ///< stable
    const char *title; ///< translated in the context `Tables`
    Holds holds;
    Filled filled;
    const char *unit;    ///< UTF-8; empty for none
    const char *choices; ///< of OneOf, separated by a bar; else empty
};

/// What one table is: its file is resources/tables/<id>.csv. Its columns stand between `id` and `note`, see parseTable.
/// Columns `x_least` and `x_most` are the two ends of one band.
struct TableForm {
    const char *id;
    const char *title;
    const char *about; ///< what to mind when reading it
    std::vector<TableColumnForm> columns;
};

/// Every look-up table, in the order in which they are shown. A new one is a row here, its file, and the file's line in
/// resources/CMakeLists.txt.
const std::vector<TableForm> &tableForms();

} // namespace core
