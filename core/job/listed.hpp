// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>
#include <vector>

#include "core/job/hardware.hpp"
#include "core/measure/bonding.hpp"
#include "core/value/decimal.hpp"
#include "core/value/id.hpp"
#include "core/value/quantity.hpp"

namespace core {

/// What becomes of the drag that a self-locking nut has while it is run down.
enum class Prevailing {
    None,     ///< no self-locking nut, or the maintenance data says nothing of it
    Added,    ///< measured, and added to the band
    Included, ///< the band has it already
};

/// How far the fastener is turned after its torque, in degrees.
struct TurnBand {
    Decimal least;
    Decimal most;
    bool operator==(const TurnBand &) const = default;
};

/// What the maintenance data asks for, per fastener.
struct TorqueSpec {
    qint64 fasteners;
    Quantity min;
    Quantity max;
    Prevailing prevailing = Prevailing::None;
    std::optional<Quantity> prevailingMin{}; ///< least drag of a nut that is used again
    std::optional<Quantity> prevailingMax{}; ///< greatest drag of any nut
    QString condition{};                     ///< `dry`, `lubricated`; empty where the data does not say
    std::vector<Decimal> passes{};           ///< percent of the final torque, the last 100; empty for one pass
    std::vector<qint64> order{};             ///< each fastener once; empty where any order will do
    std::optional<TurnBand> turn{};
    QString thread{};
    bool operator==(const TorqueSpec &) const = default;
};

/// What a leak check may show at most: a class of the job's scheme, a rate, or both.
struct LeakLimit {
    QString worstClass;
    std::optional<Quantity> rate;
    std::optional<Decimal> dropsPerMillilitre{}; ///< by which drops are turned into a flow; nothing: the checker says
    bool operator==(const LeakLimit &) const = default;
};

/// One row of the interface list.
struct Listing {
    InterfaceId id;
    QString name;
    QString kind;
    QString zone;
    std::vector<QString> requirements; ///< names in the requirements catalogue
    std::optional<TorqueSpec> torque;
    std::optional<Quantity> bondingMax;
    measure::Comparison bondingComparison = measure::Comparison::AtMost;
    qint64 bondingReadings = 1;
    std::optional<LeakLimit> leak;
    QString sealPart;
    QString safetying;     ///< method asked for: `lockwire`, `cotter pin`
    QString aircraftHalf;  ///< designation of the half on the aircraft
    QString unitHalf;      ///< designation of its mate on the unit
    bool critical = false;
    qint64 inspections = 1; ///< by so many persons
    QString independenceGroup;
    QString twinGroup;
    std::vector<InterfaceId> access; ///< must be off before this one, and go on after it
    QString reference;               ///< task or page in the maintenance data
    QString note;
    std::vector<HardwareLine> hardware{}; ///< each part once
    std::vector<InterfaceId> dependsOn{}; ///< disturbing one of these voids the torque and the acceptance of this one
    bool operator==(const Listing &) const = default;
};

} // namespace core
