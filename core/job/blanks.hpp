// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLatin1String>
#include <QStringView>

#include <optional>

#include "core/job/mark.hpp"

namespace core {

/// The two halves of an interface stand open apart from each other, and are blanked apart.
enum class End {
    Aircraft,
    Unit, ///< goes wherever the unit goes
};

QLatin1String endText(End end); ///< in entries: `aircraft`
std::optional<End> parseEnd(QStringView text);

/// Blanks that were fitted and are not where they were fitted: they may be inside.
struct MissingBlanks {
    Mark mark;
    End end;
    qint64 count;
    FindingId finding; ///< that says what became of them
    bool operator==(const MissingBlanks &) const = default;
};

struct InterfaceState;
struct JobState;
struct Removal;

/// Blanks that were fitted to that end, without those that are missing.
qint64 blanksThere(const Removal &removal, End end);

/// Blanks of that end that have to come out before an open interface is joined: as many as were fitted, without those that are missing.
/// None at the unit's end once a unit went up after they were fitted: its ends are looked over before it goes up. 0 for one that is not open.
qint64 blanksToComeOut(const JobState &job, const InterfaceState &item, End end);

/// Blanks that were fitted to the ends of the unit that comes off, over all interfaces that are open, without those that are missing.
qint64 blanksOnTheUnit(const JobState &job);

} // namespace core
