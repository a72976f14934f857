// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/conditions.hpp"

#include "core/job/stage.hpp"
#include "core/requirements/catalogue.hpp"
#include "core/requirements/torque.hpp"
#include "core/rules/break_points.hpp"
#include "core/rules/people.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString technician() { return inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")); }

std::optional<Condition> conditionOf(const Case &c) { return parseCondition(c.text(u"condition")); }

bool isTightened(const InterfaceState &item) { return item.restoration && !(asksFor(item.listed, "torque"_L1) && missingTorque(item)); }

} // namespace

std::optional<Refusal> conditionFitsTheStage(const Case &c)
{
    const auto condition = conditionOf(c);
    if (!c.item || !condition)
        return std::nullopt;
    const bool isOff = stageOf(*c.item) == Stage::Disconnected;
    switch (*condition) {
    case Condition::Positioned:
    case Condition::Temporary:
        if (isOff)
            return std::nullopt;
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is not off, so it cannot be \"%2\".")).arg(c.itemName(), conditionWord(*condition).toLower()), technician());
    case Condition::HandTight:
        if (isOff || (c.item->restoration && !isTightened(*c.item)))
            return std::nullopt;
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is neither off nor waiting for its torque. If it was loosened, mark it disturbed.")).arg(c.itemName()), technician());
    case Condition::SlaveHardware:
        if (c.item->removal)
            return std::nullopt;
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was never undone in this job. If it was found so, raise a finding.")).arg(c.itemName()), technician());
    case Condition::Damaged:
    case Condition::CannotVerify: return std::nullopt;
    }
    Q_UNREACHABLE();
}

std::optional<Refusal> conditionIsNotSaidYet(const Case &c)
{
    const auto condition = conditionOf(c);
    const ConditionStated *stated = c.item && condition ? standingCondition(*c.item, *condition) : nullptr;
    if (!stated)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 said this of %2 in entry %3, and it stands.")).arg(c.reg.nameOf(stated->mark.by), c.itemName()).arg(stated->mark.seq), technician());
}

std::optional<Refusal> conditionIsExplained(const Case &c)
{
    const auto condition = conditionOf(c);
    if (!condition || !isUnsettling(*condition))
        return std::nullopt;
    const QString author = inWords(QT_TRANSLATE_NOOP("Rule", "whoever fills in the form"));
    if (c.text(u"reason").isEmpty())
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" needs a reason: the next shift acts on it.")).arg(conditionWord(*condition)), author);
    if (*condition == Condition::SlaveHardware && c.text(u"to_come_out").isEmpty())
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Say which pieces have to come out again, and how many.")), author);
    return std::nullopt;
}

std::optional<Refusal> damageRaisesAFinding(const Case &c)
{
    const auto condition = conditionOf(c);
    const bool raises = c.draft.body.contains(u"finding");
    if (!condition || (*condition == Condition::Damaged) == raises)
        return std::nullopt;
    const QString sentence = raises ? inWords(QT_TRANSLATE_NOOP("Rule", "Only damage raises a finding here. Leave its number out, or raise a finding of its own."))
                                    : inWords(QT_TRANSLATE_NOOP("Rule", "Damage raises a finding: give its number."));
    return refusal(c, sentence, inWords(QT_TRANSLATE_NOOP("Rule", "whoever fills in the form")));
}

std::optional<Refusal> conditionStandsToBeCleared(const Case &c)
{
    const auto condition = conditionOf(c);
    if (!c.item || !condition || standingCondition(*c.item, *condition))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Nobody said of %1: \"%2\".")).arg(c.itemName(), conditionWord(*condition).toLower()), technician());
}

std::optional<Refusal> clearedByAWorker(const Case &c)
{
    const auto condition = conditionOf(c);
    if (condition != Condition::Temporary && condition != Condition::SlaveHardware)
        return std::nullopt;
    if (auto refused = authorIsOfTheCrew(c))
        return refused;
    if (auto refused = authorMayWork(c))
        return refused;
    return breakPointWasSeen(c);
}

std::optional<Refusal> damageIsDisposedOf(const Case &c)
{
    const ConditionStated *damage = c.item && conditionOf(c) == Condition::Damaged ? standingCondition(*c.item, Condition::Damaged) : nullptr;
    const Finding *finding = damage && damage->finding ? c.job.finding(*damage->finding) : nullptr;
    if (!finding || finding->closed)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The damage of %1 is finding %2, which is open. An inspector says what becomes of it first.")).arg(c.itemName(), finding->id.text()), inWords(QT_TRANSLATE_NOOP("Rule", "an authorised inspector, by closing the finding")));
}

std::optional<Refusal> nothingIsTemporary(const Case &c)
{
    const ConditionStated *trial = c.item ? standingCondition(*c.item, Condition::Temporary) : nullptr;
    if (!trial)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 joined %2 for the time being (%3). Say how that was undone or made final, then reconnect it.")).arg(c.reg.nameOf(trial->mark.by), c.itemName(), trial->reason), technician());
}

std::optional<Refusal> conditionsAreSettled(const Case &c)
{
    const ConditionStated *stated = c.item ? unsettled(*c.item) : nullptr;
    if (!stated)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 cannot be accepted. %2 (%3, entry %4)")).arg(c.itemName(), inWordsOf(*stated), c.reg.nameOf(stated->mark.by)).arg(stated->mark.seq), technician());
}

const Rule conditionStage{"condition.stage"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A condition that cannot be so hides one that is."), &conditionFitsTheStage};
const Rule conditionOnce{"condition.once"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What is said twice is cleared once."), &conditionIsNotSaidYet};
const Rule conditionExplained{"condition.explained"_L1, QT_TRANSLATE_NOOP("RuleWhy", "The next shift undoes what it knows of."), &conditionIsExplained};
const Rule conditionFinding{"condition.finding"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Damage that is a note alone is nobody's."), &damageRaisesAFinding};
const Rule conditionStands{"condition.stands"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An answer belongs to a question."), &conditionStandsToBeCleared};
const Rule conditionWorker{"condition.worker"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Hardware is changed by those who may work."), &clearedByAWorker};
const Rule conditionRepaired{"condition.repaired"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Damage is not wiped away; somebody decides on it."), &damageIsDisposedOf};
const Rule conditionFinal{"condition.final"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A trial fit looks finished from a metre away."), &nothingIsTemporary};
const Rule conditionSettled{"condition.settled"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What has to come out again is not done, however tight it is."), &conditionsAreSettled};

} // namespace core::rules
