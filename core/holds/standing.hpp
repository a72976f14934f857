// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/holds/condition.hpp"

namespace core {

enum class HoldState {
    Open,   ///< not passed yet
    Passed, ///< and what it rests on stands as it did
    Void,   ///< passed, and undermined since: it has to be passed again
};

/// A condition with how it stands.
struct ConditionShown {
    QString said;
    QStringList missing;
    bool isOver; ///< it need no longer hold: a later hold point was passed
    bool isMet() const { return missing.isEmpty(); }
};

struct HoldStanding {
    HoldState state;
    std::vector<ConditionShown> conditions;
    QString undermined; ///< why it is void; else empty
    bool areConditionsMet() const;
    /// The first thing that is missing, or an empty text.
    QString firstMissing() const;
};

/// How a hold point of the job stands. Void as soon as a condition that still has to hold is not met, or is met by other entries than when
/// it was passed: an interface that was opened since and is restored again was not looked at.
HoldStanding standingOf(const JobState &job, const HoldPoint &hold);

/// False where the change was given up and this hold point was on the way that nobody takes any more: not passed since, and in front of
/// nothing that has to be done for the outgoing unit to be on again. What it holds back waits for it all the same; but nothing needs it for the job to be closed.
bool isStillAsked(const JobState &job, const HoldPoint &hold);

/// The hold points that this entry waits for: with a gate for it, and not passed, or void.
std::vector<const HoldPoint *> holdsBefore(const JobState &job, const Draft &draft);

/// True when a gate of the hold point is about such an entry.
bool isBehind(const JobState &job, const HoldPoint &hold, QStringView kind, const std::optional<QString> &subject);

} // namespace core
