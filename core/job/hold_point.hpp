// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/job/item_filter.hpp"
#include "core/job/mark.hpp"

#include <optional>

namespace core {

/// One thing that has to be so before a hold point is passed. Which there are, holds/catalogue.cpp says.
struct HoldCondition {
    QString what;                ///< name in the catalogue of conditions
    ItemFilter which;            ///< interfaces, where the condition is about such
    QString stage;               ///< how far these have to be
    std::vector<QString> names;  ///< of other things that it is about: sorts of temporary items, units, tests, hold points
    qint64 least = 1;            ///< how many there have to be, where it counts
    QString until;               ///< the hold point with whose passing this one need no longer hold; empty: to the end of the job
    bool operator==(const HoldCondition &) const = default;
};

/// Entries that wait for a hold point: of this kind, about what the filter or the names let through.
struct HoldGate {
    QString act;
    ItemFilter which;
    std::vector<QString> names;
    bool operator==(const HoldGate &) const = default;
};

/// A signed gate in the middle of the job. Its conditions are computed; the signature is a person's.
struct HoldPoint {
    HoldId id;
    QString title;
    std::vector<HoldCondition> conditions;
    std::vector<HoldGate> gates;
    std::vector<QString> statements; ///< what the signer looked at and confirms, each on its own
    QString authority;               ///< that the signer has to have: `work`, `lead`, `inspect`, `release`
    bool isIndependent = false;      ///< signed by somebody who had no hand in any interface that its conditions are about
    std::optional<Mark> passed;      ///< the last time
    bool operator==(const HoldPoint &) const = default;
};

} // namespace core
