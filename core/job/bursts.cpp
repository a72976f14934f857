// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/bursts.hpp"

#include <QSet>

#include <algorithm>
#include <map>

#include "core/acts/act.hpp"

namespace core {

namespace {

using Signed = std::vector<const Line *>;

/// Signatures for which hands or eyes have to be at the interface.
bool isHandOrEye(QLatin1String meaning)
{
    constexpr QLatin1String meanings[] = {QLatin1String("performed"), QLatin1String("inspected"), QLatin1String("reinspected"), QLatin1String("confirmed"), QLatin1String("seen")};
    return std::find(std::begin(meanings), std::end(meanings), meaning) != std::end(meanings);
}

/// What each person signed about interfaces, apart by what the signature means.
std::map<std::pair<PersonId, QLatin1String>, Signed> signedAboutInterfaces(const JobState &job)
{
    std::map<std::pair<PersonId, QLatin1String>, Signed> all;
    for (const Line &line : job.lines) {
        const Act *act = findAct(line.kind);
        if (act && act->subject == SubjectSort::Interface && line.subject && isHandOrEye(act->meaning))
            all[{line.author, act->meaning}].push_back(&line);
    }
    return all;
}

/// Where the run that starts at `first` ends: behind the last line within the time.
std::size_t endOfRun(const Signed &lines, std::size_t first)
{
    std::size_t end = first;
    while (end < lines.size() && lines[end]->at.milliseconds() - lines[first]->at.milliseconds() <= burstMilliseconds)
        ++end;
    return end;
}

qint64 interfacesIn(const Signed &lines, std::size_t first, std::size_t end)
{
    QSet<QString> subjects;
    for (std::size_t at = first; at < end; ++at)
        subjects.insert(*lines[at]->subject);
    return subjects.size();
}

} // namespace

std::vector<Burst> burstsOfSigning(const JobState &job)
{
    std::vector<Burst> bursts;
    for (const auto &[who, lines] : signedAboutInterfaces(job)) {
        for (std::size_t first = 0; first < lines.size();) {
            const std::size_t end = endOfRun(lines, first);
            const qint64 interfaces = interfacesIn(lines, first, end);
            if (interfaces < burstOfInterfaces) {
                ++first;
                continue;
            }
            const auto struck = std::count_if(lines.begin() + static_cast<std::ptrdiff_t>(first), lines.begin() + static_cast<std::ptrdiff_t>(end), [](const Line *line) { return line->standing != Standing::Stands; });
            bursts.push_back({who.first, who.second, lines[first]->seq, lines[end - 1]->seq, lines[first]->at, lines[end - 1]->at, interfaces, static_cast<qint64>(struck)});
            first = end;
        }
    }
    std::sort(bursts.begin(), bursts.end(), [](const Burst &a, const Burst &b) { return a.first < b.first; });
    return bursts;
}

} // namespace core
