// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/tightening.hpp"

#include <QStringList>

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/job/torque_plan.hpp"
#include "core/measure/nut_drag.hpp"
#include "core/rules/measuring.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString technician() { return inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")); }

/// The specification that the draft is held against, when there is one.
const TorqueSpec *specOf(const Case &c) { return c.item && c.item->listed.torque ? &*c.item->listed.torque : nullptr; }

std::optional<Refusal> refuse(const Case &c, const QString &sentence) { return refusal(c, sentence, technician()); }

TorquePlan planOf(const Case &c, const TorqueSpec &spec)
{
    const auto tool = ToolId::parse(c.text(u"tool"));
    return torquePlan(spec, c.job.facts, tool ? c.reg.tool(*tool) : nullptr, dayOfWork(c.draft.body, c.draft.at), c.draft.body);
}

QString stepText(const TorqueStep &step, const TorqueSpec &spec)
{
    return passesOf(spec) == 1 ? inWords(QT_TRANSLATE_NOOP("Rule", "fastener %1")).arg(step.fastener)
                               : inWords(QT_TRANSLATE_NOOP("Rule", "fastener %1 in pass %2")).arg(step.fastener).arg(step.pass);
}

} // namespace

std::optional<Refusal> passExists(const Case &c)
{
    const TorqueSpec *spec = specOf(c);
    if (!spec)
        return std::nullopt;
    const qint64 passes = passesOf(*spec);
    const auto said = c.draft.body.integer(u"pass");
    if (!said && passes > 1)
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is tightened in %2 passes; say which this was.")).arg(c.itemName()).arg(passes));
    if (said && (*said < 1 || *said > passes))
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 has passes 1 to %2, not %3.")).arg(c.itemName()).arg(passes).arg(*said));
    return std::nullopt;
}

std::optional<Refusal> fastenerIsNext(const Case &c)
{
    const TorqueSpec *spec = specOf(c);
    if (!spec || passExists(c))
        return std::nullopt;
    const TorqueStep step = torqueStepOf(c.draft.body);
    if (step.fastener < 1 || step.fastener > spec->fasteners || startsTorqueAgain(*c.item, c.draft.author, step))
        return std::nullopt;
    const auto left = torqueStepsLeft(*c.item);
    const auto next = nextTorqueSteps(*c.item);
    // Done already, or another's: rules of their own.
    if (std::find(left.begin(), left.end(), step) == left.end() || isHalfDoneByAnother(*c.item, c.draft.author))
        return std::nullopt;
    if (std::find(next.begin(), next.end(), step) != next.end())
        return std::nullopt;
    const QString due = stepText(next.back(), *spec);
    if (step.pass != next.front().pass)
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "Pass %1 of %2 is not finished: %3 comes next.")).arg(next.front().pass).arg(c.itemName(), due));
    if (!c.job.facts.maySkipFasteners)
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "The fasteners of %1 are tightened in their order: %2 comes next, not %3.")).arg(c.itemName(), due, stepText(step, *spec)));
    if (!c.text(u"skip_reason").isEmpty())
        return std::nullopt;
    return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "The fasteners of %1 are tightened in their order: %2 comes next. To take %3 first, say why.")).arg(c.itemName(), due, stepText(step, *spec)));
}

std::optional<Refusal> dragIsMeasured(const Case &c)
{
    const TorqueSpec *spec = specOf(c);
    const auto drag = quantityIn(c.draft.body, u"prevailing", Dimension::Torque);
    if (!spec)
        return std::nullopt;
    if (drag) {
        auto why = measure::whyNoDragToAdd(*drag, spec->min);
        if (!why && spec->prevailingMax)
            why = measure::whyTooMuchDrag(*drag, *spec->prevailingMax);
        return why ? refuse(c, *why) : std::nullopt;
    }
    if (spec->prevailing != Prevailing::Added)
        return std::nullopt;
    return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "The drag of the self-locking nut is added to the torque of %1: measure it while the nut is run down, before it bears, and record it.")).arg(c.itemName()));
}

std::optional<Refusal> dragIsTheOneMeasured(const Case &c)
{
    const TorqueStep step = torqueStepOf(c.draft.body);
    if (!specOf(c) || step.pass == 1)
        return std::nullopt;
    const auto first = std::find_if(c.item->torque.begin(), c.item->torque.end(), [&](const TorqueReading &one) { return one.fastener == step.fastener && one.drag; });
    const auto drag = quantityIn(c.draft.body, u"prevailing", Dimension::Torque);
    if (first == c.item->torque.end() || (drag && *drag == *first->drag))
        return std::nullopt;
    return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "The drag of fastener %1 was measured as %2 in entry %3, before the nut seated. Give that figure in the later passes as well.")).arg(step.fastener).arg(first->drag->text()).arg(first->mark.seq));
}

std::optional<Refusal> nutLocks(const Case &c)
{
    const TorqueSpec *spec = specOf(c);
    // A nut of which nobody says that it is new has to show that it locks, where the list says how much.
    const bool isUnsaid = c.text(u"nut").isEmpty();
    if (!spec || c.text(u"nut") == u"new" || (isUnsaid && !spec->prevailingMin))
        return std::nullopt;
    const auto drag = quantityIn(c.draft.body, u"prevailing", Dimension::Torque);
    if (!drag)
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "A self-locking nut that is used again shows by its drag that it still locks: measure and record it.")));
    if (!spec->prevailingMin)
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "The list gives no least drag for the nuts of %1, so none of them can be used again. Fit a new nut.")).arg(c.itemName()));
    const auto why = measure::whyNotReused(*drag, *spec->prevailingMin);
    return why ? refuse(c, *why) : std::nullopt;
}

std::optional<Refusal> adapterIsTold(const Case &c)
{
    const TorqueSpec *spec = specOf(c);
    if (!spec)
        return std::nullopt;
    if (isLeverHalfTold(c.draft.body))
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "An adapter is told by three figures: the wrench's length, the adapter's length and its angle. Fill in all, or none.")));
    const TorquePlan plan = planOf(c, *spec);
    if (!plan.lever)
        return std::nullopt;
    if (const auto ratio = measure::leverRatio(*plan.lever); !ratio)
        return refuse(c, ratio.error());
    const auto id = ToolId::parse(c.text(u"tool"));
    const Tool *tool = id ? c.reg.tool(*id) : nullptr;
    if (tool && !tool->length)
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "The register does not say how long tool %1 is, and with an adapter all depends on it. Have its length registered, or take another wrench.")).arg(tool->id.text()));
    if (tool && tool->length && *tool->length != plan.lever->length)
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "Tool %1 is registered with a length of %2; the entry says %3.")).arg(tool->id.text(), tool->length->text(), plan.lever->length.text()));
    if (c.draft.body.contains(u"setting"))
        return std::nullopt;
    return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "With an adapter the wrench does not show the torque at the fastener. Say what it was set to.")));
}

std::optional<Refusal> settingServes(const Case &c)
{
    const TorqueSpec *spec = specOf(c);
    const auto id = ToolId::parse(c.text(u"tool"));
    const Tool *tool = id ? c.reg.tool(*id) : nullptr;
    auto set = quantityIn(c.draft.body, u"setting", Dimension::Torque);
    if (spec && tool && tool->torqueType == TorqueToolType::Setting) {
        // It tells nothing but that it came to what it was set to.
        const auto clicked = Quantity::parse(c.text(u"value"), c.text(u"unit"));
        if (set && clicked && clicked->dimension() == Dimension::Torque && *set != *clicked)
            return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "Tool %1 clicks at what it is set to, %2; it cannot have shown %3. Correct the one that is wrong.")).arg(tool->id.text(), set->text(), clicked->text()));
        if (!set && torqueIsInBand(c)) // which says all there is to say
            return std::nullopt;
        set = clicked;
    }
    if (!spec || !set || set->dimension() != Dimension::Torque)
        return std::nullopt;
    const TorquePlan plan = planOf(c, *spec);
    // A lever without an answer, and a tool that is not known or has no range, are told by rules of their own.
    if (!plan.scale || (plan.lever && !measure::leverRatio(*plan.lever)))
        return std::nullopt;
    const auto why = measure::whyNotSet(*set, plan.band, plan.lever, *plan.scale);
    return why ? refuse(c, *why) : std::nullopt;
}

std::optional<Refusal> turnIsInBand(const Case &c)
{
    const TorqueSpec *spec = specOf(c);
    if (!spec)
        return std::nullopt;
    const auto turned = quantityIn(c.draft.body, u"turn", Dimension::Angle);
    // The turn comes after the last pass.
    if (!spec->turn || torqueStepOf(c.draft.body).pass != passesOf(*spec)) {
        if (!turned)
            return std::nullopt;
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 asks for no turn here, and a fastener that was turned by %2 after its torque may be stretched. Follow the maintenance data, and raise a finding.")).arg(c.itemName(), turned->text()));
    }
    if (turned && turned->value() >= spec->turn->least && turned->value() <= spec->turn->most)
        return std::nullopt;
    const QString said = turned ? turned->value().text() + u'°' : inWords(QT_TRANSLATE_NOOP("Rule", "nothing"));
    return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 asks for a turn of %2° to %3° after the torque; the entry says %4.")).arg(c.itemName(), spec->turn->least.text(), spec->turn->most.text(), said));
}

const Rule torquePass{"torque.pass"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Passes bring the faces together evenly."), &passExists};
const Rule torqueOrder{"torque.order"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Tightened out of order, a flange stands askew and leaks."), &fastenerIsNext};
const Rule torqueDrag{"torque.drag"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What the nut eats up does not clamp."), &dragIsMeasured};
const Rule torqueDragKept{"torque.drag-kept"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Once the nut has seated, nobody can measure its drag."), &dragIsTheOneMeasured};
const Rule torqueNut{"torque.nut"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A worn self-locking nut backs off."), &nutLocks};
const Rule wrenchAdapter{"wrench.adapter"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An adapter changes what arrives at the fastener."), &adapterIsTold};
const Rule wrenchSetting{"wrench.setting"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A wrong setting clicks as nicely as a right one."), &settingServes};
const Rule torqueTurn{"torque.turn"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Where the turn stretches the bolt, the torque alone does not."), &turnIsInBand};

} // namespace core::rules
