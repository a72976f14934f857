// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/record/column_widths.hpp"

#include <algorithm>
#include <cstddef>
#include <numeric>

namespace record {

std::vector<double> columnWidths(double width, const std::vector<double> &shares, const std::vector<double> &least)
{
    const auto sum = [](const std::vector<double> &all) { return std::accumulate(all.begin(), all.end(), 0.0); };
    std::vector<double> widths = shares;
    for (double &one : widths)
        one *= width / sum(shares);
    const double wanted = sum(least);
    if (wanted >= width) {
        for (std::size_t i = 0; i < widths.size(); ++i)
            widths[i] = least[i] * width / wanted;
        return widths;
    }
    double missing = 0;
    double over = 0;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        missing += std::max(0.0, least[i] - widths[i]);
        over += std::max(0.0, widths[i] - least[i]);
    }
    if (missing <= 0)
        return widths;
    for (std::size_t i = 0; i < widths.size(); ++i)
        widths[i] = widths[i] <= least[i] ? least[i] : widths[i] - (widths[i] - least[i]) * missing / over;
    return widths;
}

} // namespace record
