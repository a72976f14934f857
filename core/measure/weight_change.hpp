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

/// Whether a change of weight may be neglected for its weight alone, by the empty weight of the aircraft.
struct WeightVerdict {
    bool isNegligible;
    Rational limit; ///< kg
    QString said;
};

/// Bands: 1 lb or less under 5000 lb, 2 lb or less from there to 50 000 lb, 5 lb or less above. Up and down count alike. The text leaves
/// exactly 5000 and exactly 50 000 lb in no band: the stricter one is taken, and it says so. Says nothing of the centre of gravity, so
/// what it says is never that the change as a whole is negligible: that takes centreVerdict as well.
/// `change` and `emptyWeight` in kg; emptyWeight is above 0.
/// Source: AC 43.13-1B (9/27/01, change 1) par. 10-2 c.
WeightVerdict weightVerdict(const Rational &change, const Rational &emptyWeight);

/// Whether a shift of the centre of gravity may be neglected, by the mean aerodynamic chord of an aeroplane.
struct CentreVerdict {
    bool isNegligible;
    Rational percentOfChord; ///< with the sign of the shift
    QString said;
};

/// Negligible: less than 0.05 % of the mean aerodynamic chord, forward and aft alike. `shift` and `chord` in m; chord is above 0.
/// For a rotorcraft the same paragraph counts by its allowable range of the centre of gravity (less than 0.2 % of it). That is not
/// offered here, and a rotorcraft has no chord to give: its shift stays to be judged.
/// Source: AC 43.13-1B (9/27/01, change 1) par. 10-2 c.
CentreVerdict centreVerdict(const Rational &shift, const Rational &chord);

/// One unit for another in an aircraft.
struct UnitSwap {
    Weighed outgoing;
    Weighed incoming;
    Quantity emptyWeight;    ///< of the aircraft, before
    Quantity momentOrCentre; ///< of the aircraft, before
    std::optional<Quantity> chord{}; ///< mean aerodynamic chord, a length above 0
};

struct WeightChange {
    Rational weight; ///< incoming less outgoing, kg
    Rational moment; ///< kg·m
    Balance before;
    Balance after;
    Rational shift; ///< of the centre of gravity, after less before, m
    WeightVerdict byWeight;
    std::optional<CentreVerdict> byCentre; ///< nothing where no chord is given: then the shift is still to be judged
    /// By weight and by centre of gravity: never so while the shift is still to be judged.
    bool isNegligible() const { return byWeight.isNegligible && byCentre && byCentre->isNegligible; }
    /// What both come to: whether it is negligible as a whole where it is, then of the weight and of the centre of gravity.
    QStringList said() const;
};

/// Refuses as balanceOf and newBalance, and a chord of 0 or less.
Measured<WeightChange> weightChange(const UnitSwap &swap);

/// The swap, shown. Weights in the unit of the aircraft's weight, arms in that of the incoming unit's arm.
Measured<Working> weightChangeWorking(const UnitSwap &swap);

/// Lines for the aircraft's weight record, one fact each, in the same units: out, in, difference, before, after, shift, and whether
/// weight and shift are negligible. Rounded to four places, the shift to six,
/// only as they are written, and then marked "≈".
Measured<QStringList> weightRecordEntry(const UnitSwap &swap);

} // namespace core::measure
