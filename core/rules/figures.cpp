// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/figures.hpp"

#include "core/acts/act.hpp"
#include "core/job/figures.hpp"
#include "core/measure/servicing.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

/// What a weight record says that a unit weighs: `outgoing` or `incoming`.
std::optional<Quantity> weightOfUnit(const json::Object &record, const QString &unit)
{
    if (unit == u"outgoing")
        return quantityIn(record, u"outgoing_weight", Dimension::Mass);
    return unit == u"incoming" ? quantityIn(record, u"incoming_weight", Dimension::Mass) : std::nullopt;
}

QString unitName(const QString &unit)
{
    return unit == u"outgoing" ? inWords(QT_TRANSLATE_NOOP("Rule", "The outgoing unit")) : inWords(QT_TRANSLATE_NOOP("Rule", "The incoming unit"));
}

QString weightRecorder() { return inWords(QT_TRANSLATE_NOOP("Rule", "whoever keeps the weight record")); }

} // namespace

std::optional<Refusal> liftIsSafe(const Case &c)
{
    const auto plan = liftIn(c.draft.body, c.draft.at.utcDate());
    if (!plan)
        return std::nullopt;
    const measure::LiftCheck checked = measure::checkLift(*plan);
    if (checked.isAllowed())
        return std::nullopt;
    return refusal(c, checked.refusals.join(u' '), inWords(QT_TRANSLATE_NOOP("Rule", "whoever plans the lift, with other equipment")));
}

std::optional<Refusal> liftIsStillToCome(const Case &c)
{
    const QDate day = QDate::fromString(c.text(u"day"), Qt::ISODate);
    // Where the crew works it may still be yesterday.
    if (!day.isValid() || day >= c.draft.at.utcDate().addDays(-1))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The lift is on %1, which is past. Plan a lift before it is made; leave the day out when it is today.")).arg(c.text(u"day")),
                   inWords(QT_TRANSLATE_NOOP("Rule", "whoever plans the lift")));
}

std::optional<Refusal> liftingPointsAreTold(const Case &c)
{
    const auto fault = faultOfLiftingPoints(c.draft.body);
    return fault ? std::optional(refusal(c, fault->sentence, inWords(QT_TRANSLATE_NOOP("Rule", "whoever plans the lift")))) : std::nullopt;
}

std::optional<Refusal> liftCarriesWhatIsRecorded(const Case &c)
{
    const QString unit = c.text(u"unit");
    const auto planned = quantityIn(c.draft.body, u"unit_weight", Dimension::Mass);
    for (const JobFigure *record : figuresOf(c.job, u"weight.recorded")) {
        const auto recorded = weightOfUnit(record->body, unit);
        if (planned && recorded && *planned < *recorded)
            return refusal(c,
                           inWords(QT_TRANSLATE_NOOP("Rule", "%1 is planned with %2, and the weight record of entry %3 gives it %4. Plan the lift with what it weighs, or strike the record if that is wrong."))
                               .arg(unitName(unit), planned->text(), QString::number(record->mark.seq), recorded->text()),
                           inWords(QT_TRANSLATE_NOOP("Rule", "whoever plans the lift")));
    }
    return std::nullopt;
}

std::optional<Refusal> quantityIsInBand(const Case &c)
{
    const auto figure = servicingIn(c.draft.body);
    if (!figure)
        return std::nullopt;
    const auto checked = measure::servicing(figure->quantity, figure->least, figure->most);
    const QString technician = inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew"));
    if (!checked)
        return refusal(c, checked.error(), technician);
    return checked->level == measure::Level::Within ? std::nullopt : std::optional(refusal(c, checked->said, technician));
}

std::optional<Refusal> weightsMakeSense(const Case &c)
{
    if (const auto fault = faultOfBalance(c.draft.body))
        return refusal(c, fault->sentence, weightRecorder());
    const auto swap = swapIn(c.draft.body);
    const auto changed = swap ? measure::weightChange(*swap) : measure::Measured<measure::WeightChange>(tl::unexpected<QString>(QString()));
    if (!swap || changed)
        return std::nullopt;
    return refusal(c, changed.error(), weightRecorder());
}

std::optional<Refusal> weightIsRecordedOnce(const Case &c)
{
    const auto standing = figuresOf(c.job, u"weight.recorded");
    if (standing.empty())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The weight change of this job stands in entry %1 already. Strike that entry before you record it anew.")).arg(standing.front()->mark.seq),
                   weightRecorder());
}

std::optional<Refusal> weightsAreAsLifted(const Case &c)
{
    QStringList sentences;
    for (const JobFigure *plan : figuresOf(c.job, u"lift.planned")) {
        const QString unit = plan->body.text(u"unit");
        const auto lifted = quantityIn(plan->body, u"unit_weight", Dimension::Mass);
        const auto recorded = weightOfUnit(c.draft.body, unit);
        if (lifted && recorded && *recorded > *lifted)
            sentences << inWords(QT_TRANSLATE_NOOP("Rule", "%1 is recorded with %2, and the lift of entry %3 was planned with %4 only. Strike that plan and plan the lift with what it weighs, or correct the weight."))
                             .arg(unitName(unit), recorded->text(), QString::number(plan->mark.seq), lifted->text());
    }
    if (sentences.isEmpty())
        return std::nullopt;
    return refusal(c, sentences.join(u' '), weightRecorder());
}

const Rule liftSafe{"lift.limits"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What is overloaded does not warn before it parts."), &liftIsSafe};
const Rule liftPoints{"lift.points"_L1, QT_TRANSLATE_NOOP("RuleWhy", "The point nearer to the centre of gravity carries more than half."), &liftingPointsAreTold};
const Rule liftDay{"lift.day"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An inspection that held yesterday says nothing of the day on which the load hangs."), &liftIsStillToCome};
const Rule liftWeight{"lift.weight"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Hoist and slings carry what the unit weighs, not what was thought of it."), &liftCarriesWhatIsRecorded};
const Rule servicingBand{"servicing.band"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Too little starves, too much foams."), &quantityIsInBand};

const Rule weightSound{"weight.balance"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Where the weight lies decides how the aircraft flies."), &weightsMakeSense};
const Rule weightOnce{"weight.once"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Two weight records of one change leave it open which of them counts."), &weightIsRecordedOnce};
const Rule weightAsLifted{"weight.as-lifted"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Where record and lift differ, one of them is wrong, and the lift may have been too light."), &weightsAreAsLifted};

} // namespace core::rules
