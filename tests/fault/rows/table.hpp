// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QTextStream>

#include <vector>

#include "tests/fault/rows/row.hpp"

namespace table {

/// The table in Markdown, then what must not be.
void print(QTextStream &out, const std::vector<Row> &rows);
/// What was said, each message once with how often.
void printMessages(QTextStream &out, const std::vector<Row> &rows);
/// False when something failed or nothing was run at all. Rows that were not run are named and count for nothing.
bool isGood(const std::vector<Row> &rows);

} // namespace table
