// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>
#include <set>

#include "core/job/mark.hpp"

namespace core {

/// Where somebody stopped in the middle of an interface. It stands until somebody works on it again.
struct BreakPoint {
    Mark mark;
    QString word;
    std::optional<qint64> fastener; ///< the next one to tighten
    std::optional<qint64> pass;
    std::set<PersonId> seenBy{}; ///< who took it up by signature
    bool operator==(const BreakPoint &) const = default;
};

struct InterfaceState;

/// What to write where a person stops: the next step of a torque that is begun.
struct NextStep {
    qint64 fastener;
    qint64 pass;
};
std::optional<NextStep> breakPointOf(const InterfaceState &item);

/// True for the one who stopped, and for everybody who took it up.
bool hasSeen(const BreakPoint &stopped, const PersonId &person);

} // namespace core
