// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/linked.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Link", text); }

/// The first of the job's items in the group that the person had a hand in.
const InterfaceState *touchedInGroup(const JobState &job, const Listing &listed, const PersonId &person)
{
    const Places group = united(job.index.independent(listed.independenceGroup), job.index.twins(listed.twinGroup));
    const auto at = std::find_if(group.begin(), group.end(), [&](std::size_t place) { return job.items[place].actors.contains(person); });
    return at == group.end() ? nullptr : &job.items[*at];
}

/// Each job's clock never runs back, so its lines are in the order of their moments.
qint64 numberAfter(const JobState &job, const Instant &moment)
{
    const auto at = std::lower_bound(job.lines.begin(), job.lines.end(), moment, [](const Line &line, const Instant &one) { return line.at < one; });
    return (at - job.lines.begin()) + 1;
}

/// From the job that an item is listed in to the one that has it.
std::optional<Placed> followed(const JobState &job, const JobState &in, const InterfaceState &item)
{
    std::optional<Placed> found;
    const JobState *from = &in;
    const InterfaceState *one = &item;
    // An item never comes back to a job that lists it, so it goes on at most once a job.
    for (std::size_t hops = 0; hops <= job.others.byLedger.size() && one->sent && from->ledger; ++hops) {
        const JobState *to = one->sent->to == job.ledger ? &job : seenJob(job, one->sent->to);
        const InterfaceState *there = to ? to->item(item.listed.id) : nullptr;
        if (!there || !there->takenOn || there->takenOn->from != *from->ledger)
            break;
        found = Placed{to, there};
        from = to;
        one = there;
    }
    return found;
}

} // namespace

const JobState *seenJob(const JobState &job, const LedgerId &ledger)
{
    const auto at = job.others.byLedger.find(ledger);
    return at == job.others.byLedger.end() ? nullptr : at->second.job.get();
}

bool isLinkedWith(const JobState &job, const LedgerId &ledger)
{
    return std::any_of(job.links.begin(), job.links.end(), [&](const Link &link) { return link.ledger == ledger; });
}

std::vector<const JobState *> linkedBothWays(const JobState &job)
{
    std::vector<const JobState *> both;
    for (const Link &link : job.links) {
        const JobState *other = seenJob(job, link.ledger);
        if (other && job.ledger && isLinkedWith(*other, *job.ledger))
            both.push_back(other);
    }
    return both;
}

JobState asItSees(const JobState &job, const JobState &other)
{
    JobState seen = other;
    seen.others = job.others;
    if (other.ledger)
        seen.others.byLedger.erase(*other.ledger);
    if (job.ledger) {
        auto itself = std::make_shared<JobState>(job);
        itself->others = {};
        seen.others.byLedger.insert_or_assign(*job.ledger, SeenJob{{}, std::move(itself)});
    }
    return seen;
}

std::set<LedgerId> ledgersPinnedBy(const JobState &job, QStringView kind, const json::Object &body)
{
    std::set<LedgerId> ledgers;
    for (const Link &link : job.links)
        ledgers.insert(link.ledger);
    if (const auto named = kind == u"job.linked" ? LedgerId::parse(body.text(u"ledger")) : std::nullopt; named && named != job.ledger)
        ledgers.insert(*named);
    return ledgers;
}

QString jobInWords(const JobState &job) { return u"%1 (%2)"_s.arg(job.facts.workOrder, job.facts.title); }

QString jobInWords(const JobState &job, const LedgerId &ledger)
{
    if (const JobState *other = seenJob(job, ledger))
        return jobInWords(*other);
    const auto link = std::find_if(job.links.begin(), job.links.end(), [&](const Link &one) { return one.ledger == ledger; });
    return link == job.links.end() ? ledger.text() : link->workOrder;
}

std::optional<Placed> whereTakenOn(const JobState &job, const InterfaceState &item) { return followed(job, job, item); }

const InterfaceState &asItIsNow(const JobState &job, const InterfaceState &item) { return asItIsNow(job, job, item); }

const InterfaceState &asItIsNow(const JobState &job, const JobState &in, const InterfaceState &item)
{
    const auto there = followed(job, in, item);
    return there ? *there->item : item;
}

Reached reachedNow(const JobState &job, const InterfaceState &item, Reached (*reached)(const InterfaceState &))
{
    const auto there = whereTakenOn(job, item);
    if (!there)
        return reached(item);
    const Reached seq = reached(*there->item);
    if (!seq || *seq < 1 || *seq > static_cast<qint64>(there->job->lines.size()))
        return std::nullopt;
    return numberAfter(job, there->job->lines[static_cast<std::size_t>(*seq - 1)].at);
}

const InterfaceState *itemNamedBy(const JobState &job, const InterfaceState &item, const InterfaceId &id)
{
    if (const InterfaceState *here = job.item(id))
        return &asItIsNow(job, *here);
    const JobState *from = item.takenOn ? seenJob(job, item.takenOn->from) : nullptr;
    const InterfaceState *there = from ? from->item(id) : nullptr;
    return there ? &asItIsNow(job, *from, *there) : nullptr;
}

std::vector<Placed> sentHere(const JobState &job)
{
    std::vector<Placed> waiting;
    for (const JobState *other : linkedBothWays(job)) {
        for (const InterfaceState &item : other->items) {
            if (item.sent && item.sent->to == job.ledger && !job.item(item.listed.id))
                waiting.push_back({other, &item});
        }
    }
    return waiting;
}

QString whereInWords(const JobState &job, const InterfaceState &item)
{
    if (!item.sent)
        return {};
    if (const auto there = whereTakenOn(job, item))
        return tr(QT_TRANSLATE_NOOP("Link", "It is with %1.")).arg(jobInWords(*there->job));
    return tr(QT_TRANSLATE_NOOP("Link", "It was sent to %1, which has not taken it on yet.")).arg(jobInWords(job, item.sent->to));
}

std::optional<Hand> handOf(const JobState &job, const InterfaceState &item, const PersonId &person)
{
    if (item.actors.contains(person))
        return Hand{&job, &item, false};
    for (const auto &[ledger, seen] : job.others.byLedger) {
        const InterfaceState *like = isLinkedWith(job, ledger) ? seen.job->item(item.listed.id) : nullptr;
        if (like && like->actors.contains(person))
            return Hand{seen.job.get(), like, true};
        // Its row was struck there; whose hands were on it stays.
        const LeftByStrikes *left = isLinkedWith(job, ledger) && !like ? leftOf(*seen.job, item.listed.id) : nullptr;
        if (left && left->hands.contains(person))
            return Hand{seen.job.get(), &item, true};
    }
    return std::nullopt;
}

std::optional<Hand> handInGroupOf(const JobState &job, const InterfaceState &item, const PersonId &person)
{
    if (const InterfaceState *here = touchedInGroup(job, item.listed, person))
        return Hand{&job, here, false};
    for (const auto &[ledger, seen] : job.others.byLedger) {
        const InterfaceState *there = isLinkedWith(job, ledger) ? touchedInGroup(*seen.job, item.listed, person) : nullptr;
        if (there)
            return Hand{seen.job.get(), there, true};
    }
    return std::nullopt;
}

QString itemInWords(const Hand &hand)
{
    return hand.isElsewhere ? tr(QT_TRANSLATE_NOOP("Link", "%1 of %2")).arg(hand.item->listed.id.text(), jobInWords(*hand.job)) : hand.item->listed.id.text();
}

} // namespace core
