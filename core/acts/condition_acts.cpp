// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

#include "core/acts/reopen.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

/// True where saying it means that somebody had their hands on the interface.
bool isDoneByHand(Condition condition)
{
    switch (condition) {
    case Condition::Positioned:
    case Condition::HandTight:
    case Condition::Temporary:
    case Condition::SlaveHardware: return true;
    case Condition::Damaged:
    case Condition::CannotVerify: return false;
    }
    Q_UNREACHABLE();
}

bool state(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    const auto condition = parseCondition(said.body.text(u"condition"));
    if (!item || !condition || standingCondition(*item, *condition))
        return false;
    if ((*condition == Condition::Positioned || *condition == Condition::Temporary) && !isOff(*item))
        return false;
    const auto finding = FindingId::parse(said.body.text(u"finding"));
    item->conditions.push_back({markOf(said), *condition, said.body.text(u"reason"), said.body.text(u"fasteners"), said.body.text(u"to_come_out"), finding});
    if (finding && !job.finding(*finding))
        job.findings.push_back({*finding, markOf(said), item->listed.id, said.body.text(u"reason"), std::nullopt, {}, {}, {}});
    if (isDoneByHand(*condition)) {
        item->actors.insert(PersonId::parse(said.body.text(u"done_by")).value_or(said.author));
        item->walkedRound.reset(); // what was confirmed free is held again
    }
    if (isUnsettling(*condition)) {
        takeBackAcceptances(*item);
        reopenTwins(job, *item);
    }
    return true;
}

/// Pieces that come out of a joint leave nothing of it shown.
bool clear(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    const auto condition = parseCondition(said.body.text(u"condition"));
    if (!item || !condition || !standingCondition(*item, *condition))
        return false;
    std::erase_if(item->conditions, [&](const ConditionStated &one) { return one.condition == *condition; });
    item->settled = markOf(said);
    if (isDoneByHand(*condition)) {
        addActors(*item, said);
        item->walkedRound.reset();
    }
    if (*condition == Condition::SlaveHardware && item->restoration) {
        for (const PersonId &helper : peopleIn(said.body, u"helpers"))
            item->restoration->joinedBy.insert(helper);
        item->restoration->joinedBy.insert(said.author);
        disturb(job, item->listed.id, markOf(said));
    }
    return true;
}

} // namespace

/// What is physically true of an interface, said plainly because the next shift reads it.
std::vector<Act> conditionActs()
{
    const auto known = Needed::IfKnown;
    return {
        {"condition.stated"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "State its condition"), QT_TRANSLATE_NOOP("Act", "Condition stated"),
         {choice("condition"_L1, Needed::Always, QT_TRANSLATE_NOOP("Field", "Condition"), conditionTexts(Which::All)),
          field("reason"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Why, or what was seen")),
          field("fasteners"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Which fasteners")),
          field("to_come_out"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Slave hardware: the pieces that have to come out")),
          field("finding"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Damaged: finding number")),
          field("done_by"_L1, FieldType::Person, known, QT_TRANSLATE_NOOP("Field", "By whom, if not you"), "person"_L1)},
         &state, &noCautions, {}},
        {"condition.cleared"_L1, LedgerSort::Job, "performed"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Clear its condition"), QT_TRANSLATE_NOOP("Act", "Condition cleared"),
         {choice("condition"_L1, Needed::Always, QT_TRANSLATE_NOOP("Field", "Condition"), conditionTexts(Which::Unsettling)),
          field("how"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "How it was undone, made final, repaired or verified")),
          field("helpers"_L1, FieldType::People, known, QT_TRANSLATE_NOOP("Field", "Helped, supervised or taught by"), "person"_L1)},
         &clear, &noCautions, {}},
    };
}

} // namespace core
