// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/figures.hpp"

#include "core/job/figures.hpp"
#include "core/measure/servicing.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

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
    if (c.draft.body.contains(u"span") == c.draft.body.contains(u"centre"))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Two lifting points are told by the length between them and by where the centre of gravity lies. Fill in both, or none for a single point.")),
                   inWords(QT_TRANSLATE_NOOP("Rule", "whoever plans the lift")));
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
    const QString recorder = inWords(QT_TRANSLATE_NOOP("Rule", "whoever keeps the weight record"));
    if (c.draft.body.contains(u"aircraft_moment") == c.draft.body.contains(u"aircraft_centre"))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Give the aircraft's moment before, or its centre of gravity: one of them.")), recorder);
    const auto swap = swapIn(c.draft.body);
    const auto changed = swap ? measure::weightChange(*swap) : measure::Measured<measure::WeightChange>(tl::unexpected<QString>(QString()));
    if (!swap || changed)
        return std::nullopt;
    return refusal(c, changed.error(), recorder);
}

const Rule liftSafe{"lift.limits"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What is overloaded does not warn before it parts."), &liftIsSafe};
const Rule liftPoints{"lift.points"_L1, QT_TRANSLATE_NOOP("RuleWhy", "The point nearer to the centre of gravity carries more than half."), &liftingPointsAreTold};
const Rule liftDay{"lift.day"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An inspection that held yesterday says nothing of the day on which the load hangs."), &liftIsStillToCome};
const Rule servicingBand{"servicing.band"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Too little starves, too much foams."), &quantityIsInBand};

const Rule weightSound{"weight.balance"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Where the weight lies decides how the aircraft flies."), &weightsMakeSense};

} // namespace core::rules
