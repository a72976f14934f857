// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

namespace record {

/// The widths of a table's columns: each its share of `width`, and none under its `least` as long as others have more than they need,
/// who give it up in proportion to what they have over. Where not even the least fit, each gets as much of it as there is.
/// As many answers as there are shares, and of leasts; together they are as wide as `width`.
std::vector<double> columnWidths(double width, const std::vector<double> &shares, const std::vector<double> &least);

} // namespace record
