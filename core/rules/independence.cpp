// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/independence.hpp"

#include <algorithm>

#include "core/job/doubtful.hpp"
#include "core/job/linked.hpp"
#include "core/job/stage.hpp"
#include "core/requirements/catalogue.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString anotherInspector() { return inWords(QT_TRANSLATE_NOOP("Rule", "another authorised inspector")); }

} // namespace

std::optional<Refusal> isSecured(const Case &c)
{
    if (!c.item)
        return std::nullopt;
    const QString technician = inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew"));
    if (!c.item->restoration)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is %2; there is nothing to accept yet.")).arg(c.itemName(), stageWord(stageOf(*c.item)).toLower()), technician);
    const auto open = stillToShow(*c.item);
    if (open.empty())
        return std::nullopt;
    QStringList sentences;
    for (const auto &[requirement, sentence] : open)
        sentences << sentence;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is not ready for inspection. %2")).arg(c.itemName(), sentences.join(u' ')), technician);
}

std::optional<Refusal> nothingIsInDoubt(const Case &c)
{
    const auto why = c.item ? whyInDoubt(*c.item, c.reg) : std::nullopt;
    return why ? std::optional(refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1: %2")).arg(c.itemName(), *why), inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")))) : std::nullopt;
}

std::optional<Refusal> isJoinedForInspection(const Case &c)
{
    if (!c.item || c.item->restoration)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is not joined; there is nothing to reject.")).arg(c.itemName()), inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")));
}

std::optional<Refusal> inspectorIsAuthorised(const Case &c)
{
    if (!c.item)
        return std::nullopt;
    const Need need{.authority = Authority::Inspect, .kind = c.item->listed.kind, .aircraftType = c.job.facts.aircraftType, .at = c.draft.at};
    if (authorisationFor(c.reg, c.draft.author, need))
        return std::nullopt;
    return refusal(c, whyNotAuthorised(c.reg, c.draft.author, need), anotherInspector());
}

std::optional<Refusal> inspectorHadNoHand(const Case &c)
{
    const auto hand = c.item ? handOf(c.job, *c.item, c.draft.author) : std::nullopt;
    if (!hand)
        return std::nullopt;
    if (hand->isElsewhere)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 had a hand in %2 and cannot inspect %3.")).arg(c.authorName(), itemInWords(*hand), c.itemName()), anotherInspector());
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 had a hand in %2 and cannot inspect it.")).arg(c.authorName(), c.itemName()), anotherInspector());
}

std::optional<Refusal> inspectorHadNoHandInGroup(const Case &c)
{
    if (!c.item || !c.item->listed.critical)
        return std::nullopt;
    const auto hand = handInGroupOf(c.job, *c.item, c.draft.author);
    if (!hand)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is critical, and %2 had a hand in %3 of the same group.")).arg(c.itemName(), c.authorName(), itemInWords(*hand)), anotherInspector());
}

std::optional<Refusal> inspectorIsAnother(const Case &c)
{
    if (!c.item)
        return std::nullopt;
    const auto &marks = c.item->acceptances;
    if (std::none_of(marks.begin(), marks.end(), [&](const Mark &m) { return m.by == c.draft.author; }))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 accepted %2 already; the next inspection is made by somebody else.")).arg(c.authorName(), c.itemName()), anotherInspector());
}

std::optional<Refusal> isNotInspectedYet(const Case &c)
{
    if (!c.item || stageOf(*c.item) != Stage::Inspected)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is inspected; nothing more is asked of it.")).arg(c.itemName()), {});
}

const Rule secured{"inspection.secured"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An inspector signs for a finished joint, not for a promised one."), &isSecured};
const Rule notInDoubt{"inspection.in-doubt"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A reading is as good as the tool turns out to be."), &nothingIsInDoubt};
const Rule somethingToInspect{"inspection.joined"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A rejection says what is wrong with a joint that was made."), &isJoinedForInspection};
const Rule inspectAuthorised{"inspection.authorised"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Each inspector's authorisation has limits and dates."), &inspectorIsAuthorised};
const Rule ownWork{"independence.own-work"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Nobody sees their own mistake; nor the one that they made alike in a linked job, on the other engine say."), &inspectorHadNoHand};
const Rule ownGroup{"independence.own-group"_L1, QT_TRANSLATE_NOOP("RuleWhy", "The same mistake is made twice by the same hands."), &inspectorHadNoHandInGroup};
const Rule secondPerson{"independence.second-person"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Two inspections by one person are one inspection."), &inspectorIsAnother};
const Rule inspectedOnce{"inspection.once"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A signature that nothing asked for hides which one counts."), &isNotInspectedYet};

} // namespace core::rules
