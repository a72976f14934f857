// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

#include "core/value/json.hpp"

namespace core {

/// What the list asks for: so many of a part, and whether each has to be a new one (what is never used again: seals, gaskets, cotter
/// pins, lockwire).
struct HardwareLine {
    QString part;
    qint64 quantity;
    bool mustBeNew;
    bool operator==(const HardwareLine &) const = default;
};

/// What came off.
struct HardwareRemoved {
    QString part;
    qint64 quantity;
    bool operator==(const HardwareRemoved &) const = default;
};

/// What became of it. Reused and scrapped are of what came off; renewed is of the batch.
struct HardwareUse {
    QString part;
    qint64 reused;
    qint64 renewed;
    qint64 scrapped;
    QString batch; ///< may be empty where nothing is renewed
    bool operator==(const HardwareUse &) const = default;
};

/// One part of one interface, all its lines together.
struct HardwareBalance {
    QString part;
    qint64 required;
    bool mustBeNew;
    qint64 removed;
    qint64 reused;
    qint64 renewed;
    qint64 scrapped;
    /// Neither lost nor left: removed = reused + scrapped.
    bool isAccountedFor() const { return removed == reused + scrapped; }
    /// Neither too few nor too many: required = reused + renewed.
    bool isComplete() const { return required == reused + renewed; }
    bool operator==(const HardwareBalance &) const = default;
};

/// More than this of one part at one interface is a slip of the finger. Common practice.
inline constexpr qint64 mostOfOnePart = 9999;

/// From the members `hardware`, `hardware_removed` and `hardware` of the entries that list, disconnect and reconnect. What is no line is
/// passed over; a number beyond mostOfOnePart becomes the next one after it, which no rule admits.
std::vector<HardwareLine> hardwareLinesIn(const json::Object &body);
std::vector<HardwareRemoved> hardwareRemovedIn(const json::Object &body);
std::vector<HardwareUse> hardwareUsesIn(const json::Object &body);

/// What is on when so much was reused and renewed: as it comes off the next time.
std::vector<HardwareRemoved> hardwareOn(const std::vector<HardwareUse> &used);

/// Every part that is listed, came off or went on, in that order.
std::vector<HardwareBalance> hardwareBalance(const std::vector<HardwareLine> &listed, const std::vector<HardwareRemoved> &removed, const std::vector<HardwareUse> &used);

} // namespace core
