// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>
#include <vector>

#include "core/job/state.hpp"
#include "core/register/register.hpp"

namespace core {

/// From this entry on, so many interfaces are undone, and not inspected as often as is asked: ReleaseCounts::undone.
struct ProgressStep {
    qint64 seq;
    Instant at;
    qint64 undone;
    bool operator==(const ProgressStep &) const = default;
};

/// Steps in the order of the ledger, each with another number than the one before; the first is the job's first entry. Never empty.
struct ProgressLine {
    QString name; ///< of the zone or the person; empty for the whole job
    std::vector<ProgressStep> steps;
    bool operator==(const ProgressLine &) const = default;
};

/// How many interfaces were undone and not inspected after each entry, as the ledger then stood: an entry that was struck later counts until its strike.
struct Progress {
    ProgressLine total;
    std::vector<ProgressLine> zones;   ///< in the order of the job, those of no zone last; of none that never had one
    std::vector<ProgressLine> persons; ///< what each one undid last, in the order in which they began
    Instant from;
    Instant until; ///< of the last entry
};

/// Nothing for a job without entries.
std::optional<Progress> progressOf(const JobState &job, const Register &reg);

/// One line in a sentence: how it began, the most, and how it stands.
QString progressInWords(const ProgressLine &line);

/// Fewer completed interfaces than this say nothing about a pace: the program's own choice.
constexpr qsizetype leastCompletions = 10;

/// Where nobody signed anything for so long, nobody is taken to have worked: the program's own choice. Milliseconds.
constexpr qint64 pauseFrom = qint64{2} * 60 * 60 * 1000;

/// What would be left if the job went on at its own pace. No more than that: it knows of no part that is late and of no finding to come.
struct Pace {
    qsizetype completed = 0; ///< interfaces that are inspected now
    qsizetype open = 0;      ///< interfaces that have still to come to that: ReleaseCounts::open
    qsizetype undone = 0;    ///< of those: ReleaseCounts::undone
    qsizetype stretch = 0;   ///< how many completions one after the other are timed together; 0 where no estimate is made
    qint64 lower = 0;        ///< milliseconds of work: the first quartile
    qint64 median = 0;
    qint64 upper = 0; ///< the third quartile
    bool isKnown() const { return stretch > 0; }
    bool operator==(const Pace &) const = default;
};

/// Times how long it took to complete `stretch` interfaces one after the other, for every such stretch of the job, and takes median and quartiles
/// (measure::quantile) for as many as are open. A stretch is as long as what is open, at most half of what was completed: inspections come in
/// bursts, and the time between two of them alone would promise too much. Pauses (pauseFrom) are left out.
/// No estimate for a closed job, with nothing open, or below leastCompletions.
Pace paceOf(const JobState &job);

/// The same in sentences, with what it is and what it is not.
QString paceInWords(const Pace &pace);

/// `3 h 20 min`, rounded to the minute.
QString durationInWords(qint64 milliseconds);

} // namespace core
