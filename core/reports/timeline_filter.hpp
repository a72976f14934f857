// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QSet>
#include <QString>

#include <optional>
#include <set>
#include <vector>

#include "core/job/state.hpp"

namespace core {

/// Whether entries that count are looked for, too.
enum class WhichStand { All, StruckOnly };

/// Which entries of a job are looked for. What is left open fits every entry; an entry has to fit all that is said.
struct TimelineFilter {
    std::optional<PersonId> person{}; ///< who signed it, or whom it names: who helped, took over
    std::optional<QString> kind{};    ///< `torque.applied`
    std::optional<QString> zone{};    ///< of what it is about, see zonesOf
    WhichStand which = WhichStand::All; ///< StruckOnly: what was struck or fell
    QString words{};                  ///< somewhere in the entry as it is shown, capitals or not
    bool operator==(const TimelineFilter &) const = default;
};

/// The zones that an entry speaks of: of the interface, the finding's interface or the temporary item that it is about; of interfaces that its
/// body names; and a zone that its body itself names. Also those of an interface whose listing was struck.
QSet<QString> zonesOf(const JobState &job, const Statement &said);

/// `shown` is the entry as a person reads it, in which the words are looked for.
bool fits(const TimelineFilter &filter, const JobState &job, const Statement &said, const QString &shown);

/// What there is to choose from in a job: who signed or is named, which kinds of entries, which zones. Each once.
struct TimelineChoices {
    std::set<PersonId> people{};
    std::set<QString> kinds{};
    std::vector<QString> zones{}; ///< in the order of the job
    bool operator==(const TimelineChoices &) const = default;
};
TimelineChoices timelineChoices(const JobState &job);

} // namespace core
