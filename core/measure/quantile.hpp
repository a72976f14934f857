// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtGlobal>

#include <vector>

namespace core::measure {

/// The value below which the share p = numerator / denominator of the values lies, estimated from N of them in rising order:
/// p (N + 1) = k + d with a whole k and 0 ≤ d < 1; Y(p) = Y[k] + d (Y[k+1] − Y[k]); below the first and above the last it is that one.
/// In the values' own unit, rounded to a whole number, halves up. Needs at least one value, and 0 < p < 1.
/// Source: NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.2 (method R6 of Hyndman and Fan, 1996).
qint64 quantile(const std::vector<qint64> &rising, qint64 numerator, qint64 denominator);

} // namespace core::measure
