// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/measure/working.hpp"

namespace core::measure {

enum class Comparison { AtMost, LessThan };

/// What a bond may have. Whether exactly the limit is allowed is part of it: one source prints both, not over 3 mΩ for a jumper's
/// connection (AC 43.13-1B (9/8/98) par. 11-189) and less than 2.5 mΩ for the frame of equipment (par. 11-188 f).
struct BondingLimit {
    Quantity resistance;
    Comparison comparison;
    /// `at most 3 mΩ`
    QString text() const;
};

/// A bond's resistance against its limit.
struct BondingVerdict {
    Rational resistance; ///< Ω; of two readings the worse
    bool isMet;
    QString said; ///< one sentence: what it means and what to do
};

/// Judges a four-wire reading. Exact, across units. Refuses what is no resistance, a reading below 0 and a limit of 0 or less.
Measured<BondingVerdict> bondingAgainst(const BondingLimit &limit, const Quantity &reading);

/// Judges two readings of one bond, as when it is read again with the leads the other way round: both have to meet the limit, so the
/// worse one counts. Refuses as bondingAgainst, for either.
Measured<BondingVerdict> worseOfTwo(const BondingLimit &limit, const Quantity &first, const Quantity &second);

/// The resistance in Ω by the drop of voltage under a known current: R = U / I.
/// Refuses a current of 0 or less, a voltage below 0 (leads the wrong way round), and what is neither.
/// Source: millivolt-drop test, AC 43.13-1B (9/8/98) par. 11-188 j and fig. 11-19.
Measured<Rational> millivoltDrop(const Quantity &voltage, const Quantity &current);

/// Judges the drop against a limit. Refuses as millivoltDrop, and a limit of 0 or less.
Measured<BondingVerdict> dropAgainst(const BondingLimit &limit, const Quantity &voltage, const Quantity &current);

/// Why the recorded zero of the leads says that the reading cannot be relied on, or nothing: no resistance, below 0, or above the
/// reading. It is recorded as proof of the set-up and never subtracted: in a four-wire reading the leads drop out.
/// Source: common practice.
std::optional<QString> whyNotZeroed(const Quantity &leadZero, const Quantity &reading);

/// One reading or two with the recorded zero of the leads, shown. Refuses as the functions above.
Measured<Working> bondingWorking(const BondingLimit &limit, const Quantity &reading, const std::optional<Quantity> &second, const std::optional<Quantity> &leadZero);
Measured<Working> dropWorking(const BondingLimit &limit, const Quantity &voltage, const Quantity &current);

/// What to mind when bonds are measured: isolation, bare faces, what a current can light; and who decides.
/// Source: AC 43.13-1B (9/8/98) par. 11-188 j, 11-189 a and b; the rest is common practice.
QStringList bondingCautions();

} // namespace core::measure
