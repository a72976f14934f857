// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/twins.hpp"

#include <algorithm>

#include "core/job/twins.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString another() { return inWords(QT_TRANSLATE_NOOP("Rule", "somebody of the job who joined none of them")); }

} // namespace

std::optional<Refusal> twinsCanBeTold(const Case &c)
{
    if (!c.item || asksForTwinCheck(c.job, *c.item))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The list names no twins of %1 that could be told apart by the designations of their halves.")).arg(c.itemName()), {});
}

std::optional<Refusal> twinsAreJoined(const Case &c)
{
    const InterfaceState *off = c.item ? twinThatIsOff(c.job, *c.item) : nullptr;
    if (!off)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 (%2) is off. Twins are verified when all of them are joined.")).arg(off->listed.id.text(), off->listed.name), inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")));
}

std::optional<Refusal> halvesReadAreThePairs(const Case &c)
{
    if (!c.item || !asksForTwinCheck(c.job, *c.item))
        return std::nullopt;
    std::vector<HalfPair> listed = listedPairs(c.job, *c.item);
    std::vector<HalfPair> read = readPairs(c.draft.body);
    const auto wrong = std::find_if(read.begin(), read.end(), [&](const HalfPair &pair) { return std::find(listed.begin(), listed.end(), pair) == listed.end(); });
    if (wrong != read.end())
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Read was \"%1\" joined to \"%2\", and the list has no such pair. Read again; if it is so, they are crossed: undo them.")).arg(wrong->first, wrong->second), another());
    std::sort(listed.begin(), listed.end());
    std::sort(read.begin(), read.end());
    if (listed == read)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The group has %1 pairs; read both halves of each, once.")).arg(listed.size()), another());
}

std::optional<Refusal> verifierJoinedNone(const Case &c)
{
    if (!c.item)
        return std::nullopt;
    for (const InterfaceState *twin : twinsOf(c.job, *c.item)) {
        if (hadAHandInJoining(*twin, c.draft.author))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 had a hand in joining %2 (%3), so somebody else verifies the twins.")).arg(c.authorName(), twin->listed.id.text(), twin->listed.name), another());
    }
    return std::nullopt;
}

std::optional<Refusal> twinsWereVerified(const Case &c)
{
    if (!c.item || c.item->twinsVerified || !c.item->restoration || !asksForTwinCheck(c.job, *c.item))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 has look-alikes (%2). Both halves of each are read and verified as a pair first, by somebody who joined none of them.")).arg(c.itemName(), c.item->listed.twinGroup), another());
}

std::optional<Refusal> halvesDifferFromTheTwins(const Case &c)
{
    const QString group = c.text(u"twin_group");
    for (const std::size_t at : c.job.index.twins(group)) {
        const InterfaceState &other = c.job.items[at];
        if (other.listed.id.text() == c.draft.subject.value_or(QString()))
            continue;
        for (const auto &[half, theirs] : {std::pair(c.text(u"aircraft_half"), other.listed.aircraftHalf), std::pair(c.text(u"unit_half"), other.listed.unitHalf)}) {
            if (!half.isEmpty() && half == theirs)
                return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" is a half of %2 (%3) too, which is of the same twin group: nobody could tell them apart by it.")).arg(half, other.listed.id.text(), other.listed.name), inWords(QT_TRANSLATE_NOOP("Rule", "the lead")));
        }
    }
    return std::nullopt;
}

const Rule twinHalves{"listing.halves"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Two of one name are one to whoever reads them."), &halvesDifferFromTheTwins};
const Rule twinsAsked{"twins.asked-for"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What carries no designations cannot be told apart by them."), &twinsCanBeTold};
const Rule twinsJoined{"twins.joined"_L1, QT_TRANSLATE_NOOP("RuleWhy", "One half alone cannot be seen to be crossed."), &twinsAreJoined};
const Rule twinsRead{"twins.read"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Two crossed lines both look joined."), &halvesReadAreThePairs};
const Rule twinsAnother{"twins.another-person"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Whoever crossed them believes that they are right."), &verifierJoinedNone};
const Rule twinsVerified{"twins.verified"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Each of two crossed lines passes an inspection of its own."), &twinsWereVerified};

} // namespace core::rules
