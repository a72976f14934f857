// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/seeds.hpp"

#include <algorithm>

#include "app/desktop/seed_help.hpp"
#include "core/job/draft_help.hpp"
#include "core/job/linked.hpp"

namespace desktop::seeds {

using namespace Qt::StringLiterals;

/// The work order is typed as it was read, so that the wrong job is not linked by a slip in a list.
std::vector<Seed> link(const Situation &s)
{
    Seed seed;
    for (const JobChoice &choice : s.otherJobs ? s.otherJobs() : std::vector<JobChoice>()) {
        const auto ledger = core::LedgerId::parse(choice.ledger);
        if (ledger && !core::isLinkedWith(s.job, *ledger))
            seed.jobs.push_back(choice);
    }
    if (!seed.jobs.empty())
        seed.probe = {{u"ledger"_s, seed.jobs.front().ledger}, {u"work_order"_s, seed.jobs.front().workOrder}};
    return {seed};
}

std::vector<Seed> send(const Situation &s)
{
    const core::InterfaceState *item = chosen(s);
    if (!item)
        return {};
    Seed seed{item->listed.id.text(), {}, {}};
    for (const core::JobState *other : core::linkedBothWays(s.job)) {
        if (!other->closed)
            seed.jobs.push_back({other->ledger->text(), other->facts.workOrder, core::jobInWords(*other)});
    }
    if (seed.jobs.size() == 1)
        seed.body.set(u"to"_s, seed.jobs.front().ledger);
    else if (!seed.jobs.empty())
        seed.probe.set(u"to"_s, seed.jobs.front().ledger);
    return {seed};
}

/// All is as the other job has it; asked is what this job decides.
std::vector<Seed> takeOn(const Situation &s)
{
    for (const core::Placed &one : core::sentHere(s.job)) {
        if (one.item->listed.id.text() != s.subject)
            continue;
        Seed seed{s.subject, core::takenOnAs(s.job, *one.job, *one.item), {}};
        seed.asked = {"zone"_L1, "remarks"_L1};
        if (core::isOff(*one.item))
            seed.asked.insert(seed.asked.begin() + 1, "tag_instead"_L1);
        return {seed};
    }
    return {{s.subject, {}, {}}};
}

} // namespace desktop::seeds
