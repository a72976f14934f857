// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <variant>
#include <vector>

#include "core/measure/working.hpp"

namespace core::measure {

/// A thing with its weight (as a mass) and its arm from the datum: negative on the far side of it, where weight counts backwards.
struct Weighed {
    QString what;
    Quantity weight;
    Quantity arm;
};

/// A weight and its moment about the datum: kg and kg·m.
struct Balance {
    Rational weight; ///< above 0
    Rational moment;
    /// The arm of the centre of gravity, in m.
    Rational centre() const { return moment / weight; }
    bool operator==(const Balance &) const = default;
};

/// A balance as a weight record gives it: with its moment, or with the arm of its centre of gravity (then moment = weight · arm).
/// Refuses a weight of 0 or less, and a moment or arm that is neither.
Measured<Balance> balanceOf(const Quantity &weight, const Quantity &momentOrCentre);

/// The balance after some things were taken out and others put in: M = M₀ − Σ w·a of the removed + Σ w·a of the installed, the weight in
/// the same way without arms. Exact, across units.
/// Refuses a thing without a weight above 0 or without an arm, and a removal that leaves no weight.
/// Source: AC 43.13-1B (9/27/01, change 1) ch. 10, par. 10-2 h and fig. 10-10, 10-11.
Measured<Balance> newBalance(const Balance &before, const std::vector<Weighed> &removed, const std::vector<Weighed> &installed);

/// Whether a change of weight may be neglected, by the empty weight of the aircraft.
struct WeightVerdict {
    bool isNegligible;
    Rational limit; ///< kg
    QString said;
};

/// Bands: 1 lb or less under 5000 lb, 2 lb or less from there to 50 000 lb, 5 lb or less above. Up and down count alike. The text leaves
/// exactly 5000 and exactly 50 000 lb in no band: the stricter one is taken, and it says so. Says nothing of the centre of gravity.
/// `change` and `emptyWeight` in kg; emptyWeight is above 0.
/// Source: AC 43.13-1B (9/27/01, change 1) par. 10-2 c.
WeightVerdict weightVerdict(const Rational &change, const Rational &emptyWeight);

/// One unit for another in an aircraft.
struct UnitSwap {
    Weighed outgoing;
    Weighed incoming;
    Quantity emptyWeight;    ///< of the aircraft, before
    Quantity momentOrCentre; ///< of the aircraft, before
};

struct WeightChange {
    Rational weight; ///< incoming less outgoing, kg
    Rational moment; ///< kg·m
    Balance before;
    Balance after;
    WeightVerdict verdict;
};

/// Refuses as balanceOf and newBalance.
Measured<WeightChange> weightChange(const UnitSwap &swap);

/// The swap, shown. Weights in the unit of the aircraft's weight, arms in that of the incoming unit's arm.
Measured<Working> weightChangeWorking(const UnitSwap &swap);

/// Lines for the aircraft's weight record, one fact each, in the same units: out, in, difference, before, after. Rounded to four places
/// only as they are written, and then marked "≈".
Measured<QStringList> weightRecordEntry(const UnitSwap &swap);

} // namespace core::measure
