// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/measure/working.hpp"

namespace core::measure {

/// The order in which a ring of fasteners is tightened crosswise: numbers 1 to n, counted clockwise, each of them once.
/// Even n: opposite fasteners in pairs, f then f + n/2, and the pairs in the order of a ring of n/2. From pair to pair that halves
/// the angle as long as it can be halved: 12, 6, 3 and 9 o'clock, then half past one and half past seven.
/// Odd n, where nothing is opposite: each time on by (n − 1)/2, to the nearer of the two that face the last one. As n − 1 and n have
/// no common divisor, that comes to every fastener before it comes back.
/// One fastener is its own order; none or fewer have none. Any n that fits in memory.
/// Source: gasket makers' instructions (opposite pairs, then halve the angle), which the sequences of 4 and 8 follow; the same rule
/// gives the tables for 12, 16, 20 and 24 of ASME PCC-1 (from memory). Odd numbers: common practice, no source.
/// The maintenance data's own order governs where it gives one.
std::vector<qint64> crossPattern(qint64 fasteners);

/// What all fasteners are brought to, in turn, before the next pass begins.
struct PassTarget {
    qint64 pass; ///< from 1
    Decimal percent;
    Rational torque; ///< N·m
    bool operator==(const PassTarget &) const = default;
};

/// The targets of the passes: so many percent of the final torque, exact.
/// Refuses a final torque that is none or not above 0, no passes, a percent of 0 or less or above 100, a pass that asks for less
/// than the one before it, and a last pass of other than 100. Passes may repeat a percent, as a last one round the ring does.
/// Formula: T(i) = T · p(i) / 100. The percents come from the maintenance data: schemes differ (30, 60, 100; 20, 40, 80, 100).
Measured<std::vector<PassTarget>> passTargets(const Quantity &finalTorque, const std::vector<Decimal> &percents);

/// The targets and the order, shown. Refuses as passTargets, and fewer fasteners than one.
Measured<Working> tighteningWorking(qint64 fasteners, const Quantity &finalTorque, const std::vector<Decimal> &percents);

} // namespace core::measure
