// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>
#include <vector>

#include "core/job/mark.hpp"

namespace core {

/// The outgoing unit, once it is off.
struct UnitOff {
    Mark mark;
    QString serial;
    QString stand;
    qint64 openingsBlanked = 0;
    QString tag;                 ///< of what is unserviceable
    std::vector<QString> staysOn; ///< what leaves with it
    bool operator==(const UnitOff &) const = default;
};

/// The incoming unit, once it is there.
struct UnitIn {
    Mark mark;
    QString serial;
    QString certificate;    ///< of its release
    qint64 shippingBlanks = 0;
    QString configuration; ///< how its modification state compares with that of the outgoing one
    bool operator==(const UnitIn &) const = default;
};

/// The incoming unit, once it hangs in its place.
struct UnitUp {
    Mark mark;
    QString serial;
    qint64 shippingBlanksRemoved = 0;
    bool operator==(const UnitUp &) const = default;
};

/// How far the change of the unit itself is.
struct UnitChange {
    std::optional<UnitOff> off;
    std::optional<UnitIn> in;
    std::optional<UnitUp> up;
    bool operator==(const UnitChange &) const = default;
};

struct JobState;

/// The serial number of the unit that this job puts in its place: the incoming one, or the outgoing one where the change was given up.
const QString &serialToPutUp(const JobState &job);

/// The blanks that come out of its openings before it goes up.
qint64 blanksOfTheUnitToPutUp(const JobState &job);

} // namespace core
