// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/summary.hpp"

#include <numeric>

#include "core/job/loose_ends.hpp"
#include "core/job/stage.hpp"

namespace core {

JobSummary summaryOf(const JobState &job, const Register &reg)
{
    JobSummary summary{.title = job.facts.title, .workOrder = job.facts.workOrder, .aircraft = job.facts.aircraft, .unit = job.facts.unit};
    summary.isClosed = job.closed.has_value();
    const auto counts = stageCounts(job);
    summary.interfaces = std::accumulate(counts.begin(), counts.end(), qint64{0});
    std::copy(counts.begin(), counts.end(), summary.byStage.begin());
    summary.looseEnds = static_cast<qint64>(looseEnds(job, reg).size());
    summary.lastAtMilliseconds = job.lastAt ? job.lastAt->milliseconds() : 0;
    return summary;
}

} // namespace core
