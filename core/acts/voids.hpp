// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <map>
#include <vector>

#include "core/job/state.hpp"

namespace core {

/// One thing that a disturbance voids.
struct Voided {
    QString subject; ///< the interface, test or hold point that loses it
    QLatin1String what; ///< `joint`, `torque`, `bonding`, `safetying`, `leak`, `inspection`, `twins`, `test`, `hold`
    QString sentence;   ///< for a person: "The inspection of F2 (feed line, lower) by Cho is void."
    bool operator==(const Voided &) const = default;
};

/// What disturbing an interface voids, before anybody signs it: of the item itself, of its twins, of what depends on it, and every test and
/// hold point that rests on it. Worked out by disturbing a copy, so it cannot differ from what the signed entry does.
/// Nothing where the interface is not joined.
std::vector<Voided> whatDisturbingVoids(const JobState &job, const InterfaceId &id);

/// What was so in one state of a job and is not in the next, the same way: for a timeline.
std::vector<Voided> whatWasVoided(const JobState &before, const JobState &after);

/// What each disturbance of a job voided when it was signed, by its sequence number.
std::map<qint64, std::vector<Voided>> voidedByDisturbing(const Series<Statement> &said);

} // namespace core
