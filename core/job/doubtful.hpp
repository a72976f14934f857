// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "core/job/state.hpp"
#include "core/register/register.hpp"

namespace core {

/// A reading that was taken with a tool which was found out of tolerance later, on a day that its last good calibration does not cover.
struct DoubtfulReading {
    ToolId tool;
    qint64 seq;    ///< of the entry with the reading
    QString found; ///< what was wrong with the tool
};

/// Of what stands on the item now: torque and bond. Empty when nothing is in doubt.
/// Source: a tool found out of tolerance puts in doubt all that was measured with it since it was last known to be right: common practice.
std::vector<DoubtfulReading> doubtfulReadings(const InterfaceState &item, const Register &reg);

/// "Torqued with TW-12 in entry 17, which was found out of tolerance later: reads 6 % low.", or nothing.
std::optional<QString> whyInDoubt(const InterfaceState &item, const Register &reg);

} // namespace core
