// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/break_points.hpp"

#include "core/job/stage.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString technician() { return inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")); }

QString whereItStands(const Case &c, const BreakPoint &stopped)
{
    return inWords(QT_TRANSLATE_NOOP("Rule", "%1 stopped on %2 (entry %3): %4")).arg(c.reg.nameOf(stopped.mark.by), c.itemName()).arg(stopped.mark.seq).arg(stopped.word);
}

} // namespace

std::optional<Refusal> workIsUnderWay(const Case &c)
{
    if (!c.item || stageOf(*c.item) != Stage::Inspected)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is inspected; there is nothing to stop in. If it was worked on again, mark it disturbed.")).arg(c.itemName()), technician());
}

std::optional<Refusal> breakPointWasSeen(const Case &c)
{
    if (!c.item || !c.item->stopped || hasSeen(*c.item->stopped, c.draft.author))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 Take it up by signature, then work on.")).arg(whereItStands(c, *c.item->stopped)), c.authorName());
}

std::optional<Refusal> breakPointIsThere(const Case &c)
{
    if (!c.item || (c.item->stopped && !c.item->stopped->seenBy.contains(c.draft.author)))
        return std::nullopt;
    const QString sentence = c.item->stopped ? inWords(QT_TRANSLATE_NOOP("Rule", "%1 took %2 up already.")).arg(c.authorName(), c.itemName())
                                             : inWords(QT_TRANSLATE_NOOP("Rule", "Nobody stopped in the middle of %1; there is nothing to take up.")).arg(c.itemName());
    return refusal(c, sentence, {});
}

std::optional<Refusal> nobodyStopped(const Case &c)
{
    if (!c.item || !c.item->stopped || !c.item->stopped->seenBy.empty())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 Somebody takes it up and says that it is finished, then it is inspected.")).arg(whereItStands(c, *c.item->stopped)), technician());
}

const Rule breakUnderWay{"break.under-way"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A break point in finished work would be read as unfinished work."), &workIsUnderWay};
const Rule breakSeen{"break.seen"_L1, QT_TRANSLATE_NOOP("RuleWhy", "The step that was left out is the one that the next pair of hands took for done."), &breakPointWasSeen};
const Rule breakThere{"break.there"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What is taken up was put down."), &breakPointIsThere};
const Rule breakOver{"break.over"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Work that was interrupted is finished before it is inspected."), &nobodyStopped};

} // namespace core::rules
