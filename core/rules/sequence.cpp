// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/sequence.hpp"

#include <algorithm>

#include "core/job/linked.hpp"
#include "core/job/stage.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString technician() { return inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")); }

/// What is against covering an item with the one that the draft is about, or nothing.
std::optional<Refusal> openUnderIt(const Case &c, const InterfaceState &under)
{
    const auto &access = under.listed.access;
    if (std::find(access.begin(), access.end(), c.item->listed.id) == access.end())
        return std::nullopt;
    const QString name = under.listed.id.text() + u" ("_s + under.listed.name + u')';
    if (const ConditionStated *stated = unsettled(under))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 would cover %2. %3")).arg(c.itemName(), name, inWordsOf(*stated)), technician());
    const Stage stage = stageOf(under);
    if (stage != Stage::Connected && stage != Stage::Inspected)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 would cover %2, which has not been inspected.")).arg(c.itemName(), name), inWords(QT_TRANSLATE_NOOP("Rule", "an authorised inspector, by inspecting what is under it")));
    return std::nullopt;
}

} // namespace

std::optional<Refusal> itemIsListed(const Case &c)
{
    if (c.item)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The list has no interface \"%1\". List it first.")).arg(c.draft.subject.value_or(QString())), technician());
}

std::optional<Refusal> isNotAlreadyOff(const Case &c)
{
    if (!c.item || stageOf(*c.item) != Stage::Disconnected)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is disconnected already (%2, %3).")).arg(c.itemName(), c.reg.nameOf(c.item->removal->mark.by), c.item->removal->mark.at.spoken()), technician());
}

std::optional<Refusal> accessIsClear(const Case &c)
{
    if (!c.item)
        return std::nullopt;
    for (const InterfaceId &id : c.item->listed.access) {
        const InterfaceState *inFront = itemNamedBy(c.job, *c.item, id);
        if (inFront && stageOf(*inFront) != Stage::Disconnected && !isNotApplicable(*inFront))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 must be off before %2, and it is still on.")).arg(id.text() + u" ("_s + inFront->listed.name + u')', c.itemName()), technician());
    }
    return std::nullopt;
}

std::optional<Refusal> isOff(const Case &c)
{
    if (!c.item || stageOf(*c.item) == Stage::Disconnected)
        return std::nullopt;
    const QString sentence = c.item->removal ? inWords(QT_TRANSLATE_NOOP("Rule", "%1 is joined already.")) : inWords(QT_TRANSLATE_NOOP("Rule", "No disconnection of %1 was logged. If it was found open, say so first."));
    return refusal(c, sentence.arg(c.itemName()), technician());
}

std::optional<Refusal> nothingUnderItIsOpen(const Case &c)
{
    if (!c.item)
        return std::nullopt;
    // What came from a linked job may cover something there.
    const JobState *from = c.item->takenOn ? seenJob(c.job, c.item->takenOn->from) : nullptr;
    for (const JobState *job : {&c.job, from}) {
        if (!job)
            continue;
        // A row that was given away may name it where it is now.
        for (const std::size_t under : united(job->index.under(c.item->listed.id), job->index.sent())) {
            if (auto open = openUnderIt(c, asItIsNow(c.job, *job, job->items[under])))
                return open;
        }
    }
    return std::nullopt;
}

std::optional<Refusal> isJoined(const Case &c)
{
    if (!c.item || c.item->restoration)
        return std::nullopt;
    const QString sentence = c.item->removal ? inWords(QT_TRANSLATE_NOOP("Rule", "%1 is disconnected. Reconnect it first.")) : inWords(QT_TRANSLATE_NOOP("Rule", "%1 was never disconnected in this job."));
    return refusal(c, sentence.arg(c.itemName()), technician());
}

std::optional<Refusal> isNotAccepted(const Case &c)
{
    if (!c.item || c.item->acceptances.empty())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was accepted by %2. If it is worked on again, mark it disturbed first; then it is inspected again.")).arg(c.itemName(), c.reg.nameOf(c.item->acceptances.back().by)), technician());
}

const Rule onTheList{"sequence.listed"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What is not on the list is not missed at the end."), &itemIsListed};
const Rule disconnectedOnce{"sequence.disconnected-once"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Two people logging the same disconnection means that one of them undid something else."), &isNotAlreadyOff};
const Rule accessOff{"sequence.access"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Whatever is in front was taken off first; if the log says otherwise, it lacks an entry."), &accessIsClear};
const Rule reconnectedWhenOff{"sequence.reconnected-when-off"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A reconnection without a disconnection hides one that nobody logged."), &isOff};
const Rule inspectedBeforeCover{"sequence.inspected-before-cover"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What is covered cannot be inspected."), &nothingUnderItIsOpen};
const Rule measuredWhenJoined{"sequence.measured-when-joined"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A reading belongs to a joint that is made."), &isJoined};
const Rule disturbedBeforeMoreWork{"sequence.disturbed-before-more-work"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An inspection is worth nothing once hands were on the item again."), &isNotAccepted};

} // namespace core::rules
