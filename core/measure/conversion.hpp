// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/measure/working.hpp"

namespace core::measure {

/// A quantity in another unit of what it measures: y = x · f / g, with the factors f and g of the two units. Exact; shown with at most so
/// many places, 0 to mostConversionPlaces, and "≈" where it has more.
/// Refuses a unit that measures something else, and other places.
/// Source of the factors: NIST SP 811 (2008) appendix B.
Measured<Working> conversionWorking(const Quantity &quantity, const Unit &to, qint64 places);

constexpr qint64 mostConversionPlaces = 18;

} // namespace core::measure
