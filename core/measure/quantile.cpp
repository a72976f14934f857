// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/measure/quantile.hpp"

#include <algorithm>

namespace core::measure {

qint64 quantile(const std::vector<qint64> &rising, qint64 numerator, qint64 denominator)
{
    Q_ASSERT(!rising.empty() && std::is_sorted(rising.begin(), rising.end()) && numerator > 0 && numerator < denominator);
    const auto count = static_cast<qint64>(rising.size());
    const qint64 place = numerator * (count + 1);
    const qint64 k = place / denominator;
    if (k < 1)
        return rising.front();
    if (k >= count)
        return rising.back();
    const qint64 below = rising[static_cast<std::size_t>(k - 1)];
    const qint64 part = (place % denominator) * (rising[static_cast<std::size_t>(k)] - below);
    return below + (2 * part + denominator) / (2 * denominator);
}

} // namespace core::measure
