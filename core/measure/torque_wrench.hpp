// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <vector>

#include "core/measure/working.hpp"

namespace core::measure {

/// What a fastener may be tightened to, both ends belonging to it; in N·m, with the unit in which it was given.
struct TorqueBand {
    Rational least;
    Rational most;
    const Unit *unit;

    bool holds(const Rational &torque) const { return torque >= least && torque <= most; }
    /// `50 to 70 lbf·in`
    QString text() const;
};

/// The band as the maintenance data gives it. `least` above `most` is the caller's to refuse.
TorqueBand torqueBand(const Quantity &least, const Quantity &most);

/// The band of a pass that goes to so many percent of the final torque. A number of the maintenance data: schemes differ.
TorqueBand ofPass(const TorqueBand &band, const Decimal &percent);

/// The band with the friction drag of the nut added to both ends.
/// Source: AC 43.13-1B (9/8/98) par. 7-40 d and f: the sum is what is indicated, and the upper limit moves with it.
TorqueBand withPrevailing(const TorqueBand &band, const Quantity &prevailing);

/// What is asked of one reading, and how it comes from the band of the maintenance data.
struct AskedTorque {
    TorqueBand specified;
    std::optional<Decimal> percent; ///< of the pass; nothing for the only one
    std::optional<Quantity> drag;   ///< of the nut, where it is added

    TorqueBand band() const;
    /// A step each for pass and drag; none where the band is the specified one.
    std::vector<WorkingStep> steps() const;
};

/// Why a self-locking nut may not be used again, or nothing: its prevailing torque is below the least for its size.
/// Source: AC 43.13-1B (9/8/98) par. 7-40 and table 7-2; the least itself comes from the maintenance data or the table.
std::optional<QString> whyNotReused(const Quantity &prevailing, const Quantity &least);

/// An adapter on a torque wrench that moves the drive away from the fastener.
struct Lever {
    Quantity length;    ///< L: middle of the grip to the square drive
    Quantity extension; ///< E: square drive to the fastener
    Decimal angle;      ///< a, in degrees: 0 in line and longer, 90 at a right angle, 180 pointing back along the wrench
    bool operator==(const Lever &) const = default;
};

/// How many times the torque at the fastener is what the wrench shows: (L + E · cos a) / L.
/// Refuses L of 0 or less, E below 0, an angle outside 0 to 180, and an adapter that reaches back to the grip or beyond, where
/// no setting gives the torque (E · cos a = −L).
/// Source: TM 9-254 par. 4-1 d(2) and fig. 4-6 (with the sum that its copies lost); TM 1-1500-204-23-9 (31 July 1992) par. 8-6.
Measured<Rational> leverRatio(const Lever &lever);

/// What a wrench can be set to, or read to.
struct WrenchScale {
    Quantity least; ///< of its usable range
    Quantity most;
    std::optional<Quantity> graduation; ///< one step of its scale or display
};

struct Setting {
    Quantity set;     ///< the mark nearest to the middle of the band
    Quantity lowest;  ///< the marks that lie in the band
    Quantity highest;
    Working working;
};

/// What to set a wrench to, so that the fastener gets a torque of the band: the band divided by the lever's ratio, and of the marks
/// that lie inside it the one nearest to its middle. Nothing is rounded before the mark is chosen, and never out of the band.
/// Refuses a lever as leverRatio does, a band that leaves the usable range, a band between two marks, and a wrench whose graduation
/// is not registered.
/// Formula: Y = T · L / (L + E · cos a). Source: AC 43.13-1B (9/8/98) par. 7-40 h with fig. 7-2; TM 1-1500-204-23-9 par. 8-6.
Measured<Setting> settingFor(const TorqueBand &band, const std::optional<Lever> &lever, const WrenchScale &scale);

/// Why a wrench set to `set` does not give a torque of the band, or nothing: off its marks, out of its range, out of the band.
std::optional<QString> whyNotSet(const Quantity &set, const TorqueBand &band, const std::optional<Lever> &lever, const WrenchScale &scale);

/// The torque at the fastener when the wrench shows so much: TA = TW · (L + E · cos a) / L, in N·m.
/// Source: TM 9-254 par. 4-1 d, fig. 4-5.
Measured<Rational> torqueAtFastener(const Quantity &indicated, const std::optional<Lever> &lever);

/// What to mind when tightening: pulling, adapters, a fastener that went too far; and who decides. Common practice.
QStringList torqueCautions();

} // namespace core::measure
