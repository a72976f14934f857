// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/twins.hpp"

#include <algorithm>

#include "core/job/stage.hpp"

namespace core {

std::vector<const InterfaceState *> twinsOf(const JobState &job, const InterfaceState &item)
{
    std::vector<const InterfaceState *> twins;
    for (const std::size_t at : job.index.twins(item.listed.twinGroup)) {
        if (!isNotApplicable(job.items[at]))
            twins.push_back(&job.items[at]);
    }
    return twins;
}

std::vector<HalfPair> listedPairs(const JobState &job, const InterfaceState &item)
{
    std::vector<HalfPair> pairs;
    for (const InterfaceState *twin : twinsOf(job, item)) {
        if (!twin->listed.aircraftHalf.isEmpty() && !twin->listed.unitHalf.isEmpty())
            pairs.emplace_back(twin->listed.aircraftHalf, twin->listed.unitHalf);
    }
    return pairs;
}

bool asksForTwinCheck(const JobState &job, const InterfaceState &item) { return listedPairs(job, item).size() > 1; }

std::vector<HalfPair> readPairs(const json::Object &body)
{
    const std::vector<QString> aircraft = body.texts(u"aircraft_halves");
    const std::vector<QString> unit = body.texts(u"unit_halves");
    std::vector<HalfPair> pairs;
    for (std::size_t at = 0; at < std::max(aircraft.size(), unit.size()); ++at)
        pairs.emplace_back(at < aircraft.size() ? aircraft[at] : QString(), at < unit.size() ? unit[at] : QString());
    return pairs;
}

std::vector<InterfaceId> twinsReadIn(const JobState &job, const Statement &said)
{
    const auto subject = InterfaceId::parse(said.subject.value_or(QString()));
    if (said.kind != u"twins.verified" || !subject)
        return {};
    std::vector<InterfaceId> ids{*subject};
    const InterfaceState *item = job.item(*subject);
    const std::vector<HalfPair> read = readPairs(said.body);
    for (const std::size_t at : item ? job.index.twins(item->listed.twinGroup) : Places()) {
        const Listing &twin = job.items[at].listed;
        if (twin.id != *subject && std::find(read.begin(), read.end(), HalfPair(twin.aircraftHalf, twin.unitHalf)) != read.end())
            ids.push_back(twin.id);
    }
    return ids;
}

bool hadAHandInJoining(const InterfaceState &item, const PersonId &person)
{
    return (item.restoration && item.restoration->joinedBy.contains(person)) || item.left.joiners.contains(person);
}

const InterfaceState *twinThatIsOff(const JobState &job, const InterfaceState &item)
{
    const auto twins = twinsOf(job, item);
    const auto at = std::find_if(twins.begin(), twins.end(), [](const InterfaceState *twin) { return stageOf(*twin) == Stage::Disconnected; });
    return at == twins.end() ? nullptr : *at;
}

} // namespace core
