// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/reopen.hpp"

#include <QSet>

#include "core/requirements/catalogue.hpp"

namespace core {

void voidWhatWasShown(InterfaceState &item)
{
    item.torque.clear();
    item.bonding.reset();
    item.safetying.reset();
    item.leak.reset();
    takeBackAcceptances(item);
    item.torqueTakenOverBy.clear();
}

void takeBackAcceptances(InterfaceState &item)
{
    item.acceptances.clear();
    item.reinspections.clear();
}

void reopenTwins(JobState &job, const InterfaceState &changed)
{
    const Places twins = job.index.twins(changed.listed.twinGroup);
    for (const std::size_t at : twins) {
        InterfaceState &twin = job.items.edit(at);
        takeBackAcceptances(twin);
        twin.twinsVerified.reset();
    }
}

void noteRow(JobState &job, const Listing *before, const Listing &after)
{
    job.index.note(static_cast<std::size_t>(job.itemAt.value(after.id)), before, after);
    for (const InterfaceId &on : before ? before->dependsOn : std::vector<InterfaceId>()) {
        const auto at = job.dependents.find(on);
        if (at == job.dependents.end())
            continue;
        std::erase(*at, after.id);
        if (at->empty())
            job.dependents.erase(at);
    }
    for (const InterfaceId &on : after.dependsOn)
        job.dependents[on].push_back(after.id);
}

std::vector<InterfaceId> dependentsOf(const JobState &job, const InterfaceId &id)
{
    std::vector<InterfaceId> found{id};
    QSet<InterfaceId> known{id};
    for (std::size_t at = 0; at < found.size(); ++at) {
        for (const InterfaceId &dependent : job.dependents.value(found[at])) {
            if (known.contains(dependent))
                continue;
            known.insert(dependent);
            found.push_back(dependent);
        }
    }
    found.erase(found.begin());
    return found;
}

void reopenWhatRestsOn(JobState &job, const InterfaceState &changed)
{
    const InterfaceId id = changed.listed.id;
    reopenTwins(job, changed);
    for (const InterfaceId &dependent : dependentsOf(job, id)) {
        InterfaceState *item = job.item(dependent);
        if (!item->restoration)
            continue;
        if (asksFor(item->listed, "torque"))
            voidWhatWasShown(*item);
        else
            takeBackAcceptances(*item);
        reopenTwins(job, *item);
    }
}

void disturb(JobState &job, const InterfaceId &id, const Mark &mark)
{
    InterfaceState *item = job.item(id);
    voidWhatWasShown(*item);
    item->disturbed = mark;
    reopenWhatRestsOn(job, *item);
}

} // namespace core
