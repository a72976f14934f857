// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "tests/fault/rows/row.hpp"

namespace catalogue {

/// Runs all rows, or those whose name has the words `only`.
std::vector<Row> run(const Extent &extent, const QString &only);

} // namespace catalogue
