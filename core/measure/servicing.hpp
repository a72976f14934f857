// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/measure/working.hpp"

namespace core::measure {

enum class Level { TooLittle, Within, TooMuch };

/// What was filled in, or stands on the gauge, against its band; in litres.
struct Servicing {
    Rational quantity;
    Rational least;
    Rational most;
    Level level;
    Rational off; ///< what is missing or too much; 0 within the band
    QString said; ///< one sentence: what it means and what to do
};

/// Compares a volume with the band of the maintenance data, both ends belonging to it. Exact, across units.
/// Refuses what is no volume, a volume below 0 and a band whose least is above its most. A band may be a single quantity, and 0 is one.
/// Source: the band is the maintenance data's; both ends count: common practice.
Measured<Servicing> servicing(const Quantity &quantity, const Quantity &least, const Quantity &most);
Measured<Working> servicingWorking(const Quantity &quantity, const Quantity &least, const Quantity &most);

/// What to mind when liquids are filled in: fire, static, pressure, heat, the wrong liquid; and who decides. Common practice.
QStringList servicingCautions();

} // namespace core::measure
