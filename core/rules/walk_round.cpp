// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/walk_round.hpp"

#include "core/job/linked.hpp"
#include "core/job/stage.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString technician() { return inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")); }

} // namespace

std::optional<Refusal> isOffForWalkRound(const Case &c)
{
    if (!c.item || stageOf(*c.item) == Stage::Disconnected)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is not logged as disconnected, so there is nothing to look at yet.")).arg(c.itemName()), technician());
}

std::optional<Refusal> isFreeToConfirm(const Case &c)
{
    if (c.item && isHeldInPlace(*c.item))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is held in place: %2. What holds it comes out, or is said to be out, before anybody confirms it free.")).arg(c.itemName(), inWordsOf(c.item->conditions.front())), technician());
    if (!c.item || !c.item->stillAttached)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was found still attached by %2: %3 Whoever frees it says so first.")).arg(c.itemName(), c.reg.nameOf(c.item->stillAttached->mark.by), c.item->stillAttached->what), technician());
}

std::optional<Refusal> wasFoundAttached(const Case &c)
{
    if (!c.item || c.item->stillAttached)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Nobody found %1 still attached.")).arg(c.itemName()), technician());
}

std::optional<Refusal> walkedByAnother(const Case &c)
{
    const auto hand = c.item ? handOf(c.job, *c.item, c.draft.author) : std::nullopt;
    if (!hand)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 had a hand in %2, so a second person has to confirm it free.")).arg(c.authorName(), hand->isElsewhere ? itemInWords(*hand) : c.itemName()), inWords(QT_TRANSLATE_NOOP("Rule", "another technician or an inspector")));
}

const Rule walkOff{"walkround.off"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A walk-round looks at what was said to be undone."), &isOffForWalkRound};
const Rule walkFree{"walkround.free"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What was found holding on is free when somebody has freed it."), &isFreeToConfirm};
const Rule walkAttached{"walkround.attached"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An answer belongs to a question."), &wasFoundAttached};
const Rule walkAnother{"walkround.second-person"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Three people who split the bolts among them each believe that the others had the last one."), &walkedByAnother};

} // namespace core::rules
