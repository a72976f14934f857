// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/next_to_restore.hpp"

#include <algorithm>

#include "core/job/linked.hpp"
#include "core/job/stage.hpp"
#include "core/rules/holds.hpp"
#include "core/rules/sequence.hpp"

namespace core {

namespace {

std::vector<QString> inTheWayOf(const InterfaceState &item, const JobState &job, const Register &reg)
{
    // Who puts it on and when makes no difference to what is in front of it.
    static const auto somebody = PersonId::parse(u"-");
    const Draft draft{*somebody, job.lastAt.value_or(Instant::fromMilliseconds(0)), QStringLiteral("interface.reconnected"), item.listed.id.text(), {}};
    const Case c{job, reg, draft, &item};
    std::vector<QString> sentences;
    for (const auto refuse : {&rules::noHoldIsBefore, &rules::nothingUnderItIsOpen}) {
        if (const auto refused = refuse(c))
            sentences.push_back(refused->sentence);
    }
    if (item.stillAttached)
        sentences.push_back(item.stillAttached->what);
    return sentences;
}

} // namespace

std::vector<NextToRestore> nextToRestore(const JobState &job, const Register &reg)
{
    std::vector<const InterfaceState *> off;
    for (const InterfaceState &item : job.items) {
        if (stageOf(item) == Stage::Disconnected && !isElsewhere(item))
            off.push_back(&item);
    }
    std::sort(off.begin(), off.end(), [](const InterfaceState *a, const InterfaceState *b) { return a->removal->mark.seq > b->removal->mark.seq; });
    std::vector<NextToRestore> steps;
    for (const InterfaceState *item : off) {
        const auto &zones = job.facts.zones;
        const auto zone = std::find_if(zones.begin(), zones.end(), [&](const Zone &one) { return one.name == item->listed.zone; });
        steps.push_back({item->listed.id, item->listed.zone, zone == zones.end() ? std::nullopt : zone->technician, inTheWayOf(*item, job, reg)});
    }
    std::stable_partition(steps.begin(), steps.end(), [](const NextToRestore &step) { return step.inTheWay.empty(); });
    return steps;
}

} // namespace core
