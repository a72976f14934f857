// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>

#include <algorithm>

#include "core/job/linked.hpp"
#include "core/job/stage.hpp"
#include "core/measure/quantile.hpp"
#include "core/reports/left_in_words.hpp"
#include "core/reports/progress.hpp"

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Progress", text); }

constexpr qint64 minute = 60 * 1000;

/// How long was worked before each entry, pauses left out: entry n at index n−1.
std::vector<qint64> workedBefore(const Series<Line> &lines)
{
    std::vector<qint64> worked;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const qint64 since = i == 0 ? 0 : lines[i].at.milliseconds() - lines[i - 1].at.milliseconds();
        worked.push_back((i == 0 ? 0 : worked.back()) + (since < pauseFrom ? std::max(since, qint64{0}) : 0));
    }
    return worked;
}

/// When each interface that is inspected now came to be so, in milliseconds of work, rising.
std::vector<qint64> completions(const JobState &job)
{
    const std::vector<qint64> worked = workedBefore(job.lines);
    std::vector<qint64> times;
    for (const InterfaceState &item : job.items) {
        if (!isElsewhere(item) && !item.acceptances.empty() && stageOf(item) == Stage::Inspected)
            times.push_back(worked[static_cast<std::size_t>(item.acceptances.back().seq - 1)]);
    }
    std::sort(times.begin(), times.end());
    return times;
}

} // namespace

Pace paceOf(const JobState &job)
{
    const std::vector<qint64> times = completions(job);
    const auto completed = static_cast<qsizetype>(times.size());
    const ReleaseCounts counts = releaseCounts(job);
    Pace pace{completed, counts.open, counts.undone};
    if (job.closed || pace.open == 0 || completed < leastCompletions)
        return pace;
    pace.stretch = std::min(pace.open, completed / 2);
    std::vector<qint64> took;
    for (std::size_t i = static_cast<std::size_t>(pace.stretch); i < times.size(); ++i)
        took.push_back((times[i] - times[i - static_cast<std::size_t>(pace.stretch)]) * pace.open / pace.stretch);
    std::sort(took.begin(), took.end());
    pace.lower = measure::quantile(took, 1, 4);
    pace.median = measure::quantile(took, 1, 2);
    pace.upper = measure::quantile(took, 3, 4);
    return pace;
}

QString durationInWords(qint64 milliseconds)
{
    const qint64 minutes = (milliseconds + minute / 2) / minute;
    return minutes < 60 ? tr("%1 min").arg(minutes) : tr("%1 h %2 min").arg(minutes / 60).arg(minutes % 60);
}

QString paceInWords(const Pace &pace)
{
    ReleaseCounts left;
    left.open = pace.open;
    left.undone = pace.undone;
    if (pace.open == 0)
        return unfinishedInWords(left) + u'.';
    if (!pace.isKnown())
        return tr("%1. Too little done to say how long the rest takes: %2 inspected so far, and an estimate needs %3.").arg(unfinishedInWords(left)).arg(pace.completed).arg(leastCompletions);
    return tr("%1. About %2 of work left for them, between %3 and %4 for the middle half of what this job has shown. "
              "This is the job's own pace of %5 inspected interfaces continued, timed over %6 at a time, and nothing else: it counts no pauses, no waiting and no work that comes up.")
        .arg(unfinishedInWords(left), durationInWords(pace.median), durationInWords(pace.lower), durationInWords(pace.upper))
        .arg(pace.completed)
        .arg(pace.stretch);
}

} // namespace core
