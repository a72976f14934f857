// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/unlisted.hpp"

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/acts/listing.hpp"
#include "core/job/linked.hpp"
#include "core/rules/people.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString anybody() { return inWords(QT_TRANSLATE_NOOP("Rule", "a member of the crew or an inspector")); }

/// Everything that has to be off before the interfaces named, at any remove.
bool waitsFor(const JobState &job, std::vector<InterfaceId> named, const InterfaceId &id)
{
    for (std::size_t at = 0; at < named.size(); ++at) {
        if (named[at] == id)
            return true;
        const InterfaceState *item = job.item(named[at]);
        for (const InterfaceId &next : item ? item->listed.access : std::vector<InterfaceId>()) {
            if (std::find(named.begin(), named.end(), next) == named.end())
                named.push_back(next);
        }
    }
    return false;
}

} // namespace

std::optional<Refusal> detailsAreAskedFor(const Case &c)
{
    if (!c.item || isWithoutDetails(*c.item))
        return std::nullopt;
    const QString sentence = c.item->unlisted ? inWords(QT_TRANSLATE_NOOP("Rule", "The details of %1 were given in entry %2. If they are wrong, correct its row of the list.")).arg(c.itemName()).arg(c.item->unlisted->detailed->seq)
                                              : inWords(QT_TRANSLATE_NOOP("Rule", "%1 was listed with its details. If they are wrong, correct its row of the list.")).arg(c.itemName());
    return refusal(c, sentence, anybody());
}

std::optional<Refusal> gatePassedOrInspector(const Case &c)
{
    if (!c.item || !c.item->removal || !isWithoutDetails(*c.item) || mayInspect(c, *c.item))
        return std::nullopt;
    const Listing asTold = listingIn(c.item->listed.id, c.draft.body);
    for (const HoldPoint &hold : c.job.holds) {
        const bool wasHeldBack = std::any_of(hold.gates.begin(), hold.gates.end(), [&](const HoldGate &gate) { return gate.act == u"interface.disconnected" && gate.which.letsThrough(asTold); });
        if (wasHeldBack && !(hold.passed && hold.passed->seq < c.item->removal->mark.seq))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "As what it is said to be, %1 would have waited for the hold point %2 (%3), and was undone before that was passed. An inspector who had no hand in it looks, and gives its details.")).arg(c.itemName(), hold.id.text(), hold.title),
                           inWords(QT_TRANSLATE_NOOP("Rule", "an authorised inspector who had no hand in it")));
    }
    return std::nullopt;
}

std::optional<Refusal> accessHasNoCircle(const Case &c)
{
    if (!c.item || !waitsFor(c.job, interfacesIn(c.draft.body, u"access"), c.item->listed.id))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "What has to be off before %1 waits itself for %1. Leave out one of them.")).arg(c.itemName()), anybody());
}

std::optional<Refusal> detailsAreKnown(const Case &c)
{
    if (!c.item || !isWithoutDetails(*c.item))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was on no list, and nobody has said yet what restoring it has to show. Give its details first.")).arg(c.itemName()), anybody());
}

std::optional<Refusal> dependsOnListed(const Case &c)
{
    for (const InterfaceId &id : interfacesIn(c.draft.body, u"depends_on")) {
        if (id.text() == c.draft.subject.value_or(QString()))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 cannot depend on itself.")).arg(id.text()), anybody());
        const InterfaceState *on = c.job.item(id);
        if (on && isElsewhere(*on))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 cannot depend on %2, which would be disturbed in another job. %3")).arg(c.draft.subject.value_or(QString()), id.text(), whereInWords(c.job, *on)), anybody());
        if (!on)
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\", on which this one depends, is not on the list yet. List it first.")).arg(id.text()), anybody());
    }
    return std::nullopt;
}

const Rule detailAsked{"detail.asked"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What restoring has to show is not changed in passing."), &detailsAreAskedFor};
const Rule detailGate{"detail.gate"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What waits at a gate does not go round it by having no name."), &gatePassedOrInspector};
const Rule detailCircle{"detail.circle"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Two interfaces that wait for each other could never be undone."), &accessHasNoCircle};
const Rule detailKnown{"detail.known"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An inspector looks for what is asked for."), &detailsAreKnown};
const Rule dependsKnown{"listing.depends-on"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A name that nothing answers to would be reopened by nothing."), &dependsOnListed};

} // namespace core::rules
