// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/measuring.hpp"

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/job/torque_plan.hpp"
#include "core/requirements/catalogue.hpp"
#include "core/requirements/torque.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString technician() { return inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")); }

std::optional<Quantity> readingOf(const Case &c) { return Quantity::parse(c.text(u"value"), c.text(u"unit")); }

const Tool *toolOf(const Case &c)
{
    const auto id = ToolId::parse(c.text(u"tool"));
    return id ? c.reg.tool(*id) : nullptr;
}

/// What is missing of a torque that comes before the rest, or nothing.
std::optional<QString> torqueInTheWay(const Case &c)
{
    if (!c.item || !c.item->restoration || !asksFor(c.item->listed, "torque"_L1))
        return std::nullopt;
    return missingTorque(*c.item);
}

bool isWithin(const Quantity &value, const Quantity &min, const Quantity &max) { return value >= min && value <= max; }

} // namespace

std::optional<Refusal> torqueIsAskedFor(const Case &c)
{
    if (!c.item || (asksFor(c.item->listed, "torque"_L1) && c.item->listed.torque))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The list asks for no torque on %1. If the maintenance data does, correct the list.")).arg(c.itemName()), technician());
}

std::optional<Refusal> fastenerExists(const Case &c)
{
    if (!c.item || !c.item->listed.torque)
        return std::nullopt;
    const qint64 number = c.draft.body.integer(u"fastener").value_or(0);
    if (number >= 1 && number <= c.item->listed.torque->fasteners)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 has fasteners 1 to %2, not %3.")).arg(c.itemName()).arg(c.item->listed.torque->fasteners).arg(number), technician());
}

std::optional<Refusal> fastenerHasNoReading(const Case &c)
{
    const TorqueStep step = torqueStepOf(c.draft.body);
    const qint64 number = step.fastener;
    if (!c.item || !c.item->listed.torque || startsTorqueAgain(*c.item, c.draft.author, step))
        return std::nullopt;
    const auto &all = c.item->torque;
    const auto at = std::find_if(all.begin(), all.end(), [&](const TorqueReading &r) { return r.fastener == number && r.pass == step.pass; });
    if (at == all.end())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Fastener %1 of %2 was torqued already to %3. If that was wrong, strike entry %4, or mark the item disturbed."))
                          .arg(number).arg(c.itemName(), at->value.text()).arg(at->mark.seq), technician());
}

std::optional<Refusal> torqueIsInBand(const Case &c)
{
    if (!c.item || !c.item->listed.torque)
        return std::nullopt;
    const auto value = readingOf(c);
    if (!value || value->dimension() != Dimension::Torque)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1: %2 is no torque. Check the unit.")).arg(c.itemName(), c.text(u"value") + u' ' + c.text(u"unit")), technician());
    const TorquePlan plan = torquePlan(*c.item->listed.torque, c.job.facts, toolOf(c), dayOfWork(c.draft.body, c.draft.at), c.draft.body);
    const auto judged = measure::judgeTorque(*value, plan.lever, plan.band, plan.deviation, plan.rule);
    if (!judged || !judged->refused) // a lever that has no answer is told by wrench.adapter
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1: %2")).arg(c.itemName(), *judged->refused), technician());
}

std::optional<Refusal> torqueIsNotHalfDoneByAnother(const Case &c)
{
    if (!c.item || !isHalfDoneByAnother(*c.item, c.draft.author) || startsTorqueAgain(*c.item, c.draft.author, torqueStepOf(c.draft.body)))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 torqued %2 of %3 fasteners of %4. Start again from fastener %5, or take over the marked fasteners by signature."))
                          .arg(c.reg.nameOf(c.item->torque.front().mark.by)).arg(c.item->torque.size()).arg(c.item->listed.torque->fasteners).arg(c.itemName())
                          .arg(torqueSteps(*c.item->listed.torque).front().fastener), technician());
}

std::optional<Refusal> thereIsTorqueToTakeOver(const Case &c)
{
    const auto said = c.draft.body.integer(u"fasteners");
    if (!c.item || (isHalfDoneByAnother(*c.item, c.draft.author) && said == static_cast<qint64>(c.item->torque.size())))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 has %2 marked fasteners of another person to take over; the entry says %3.")).arg(c.itemName())
                          .arg(isHalfDoneByAnother(*c.item, c.draft.author) ? c.item->torque.size() : 0).arg(said.value_or(0)), technician());
}

std::optional<Refusal> bondingIsWithinLimit(const Case &c)
{
    if (!c.item)
        return std::nullopt;
    const auto value = readingOf(c);
    const auto &limit = c.item->listed.bondingMax;
    if (!limit)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The list asks for no bonding resistance on %1.")).arg(c.itemName()), technician());
    if (!value)
        return std::nullopt;
    const auto second = quantityIn(c.draft.body, u"second_reading", Dimension::Resistance);
    const measure::BondingLimit asked{*limit, c.item->listed.bondingComparison};
    const auto judged = second ? measure::worseOfTwo(asked, *value, *second) : measure::bondingAgainst(asked, *value);
    if (!judged)
        return refusal(c, judged.error(), technician());
    return judged->isMet ? std::nullopt : std::optional(refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1: %2")).arg(c.itemName(), judged->said), technician()));
}

std::optional<Refusal> bondIsReadAsOftenAsAsked(const Case &c)
{
    if (!c.item || c.item->listed.bondingReadings < 2 || c.draft.body.contains(u"second_reading"))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 asks for two readings: measure again with the leads the other way round.")).arg(c.itemName()), technician());
}

std::optional<Refusal> leadsWereZeroed(const Case &c)
{
    const auto value = readingOf(c);
    const auto zero = quantityIn(c.draft.body, u"lead_zero", Dimension::Resistance);
    const auto second = quantityIn(c.draft.body, u"second_reading", Dimension::Resistance);
    const auto why = value && zero ? measure::whyNotZeroed(*zero, second && *second < *value ? *second : *value) : std::nullopt;
    return why ? std::optional(refusal(c, *why, technician())) : std::nullopt;
}

std::optional<Refusal> toolIsInCalibration(const Case &c)
{
    const Tool *tool = toolOf(c);
    const QString keeper = inWords(QT_TRANSLATE_NOOP("Rule", "an administrator of the register; or take another tool"));
    if (!tool)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The register has no tool \"%1\".")).arg(c.text(u"tool")), keeper);
    if (tool->withdrawn && c.draft.at >= *tool->withdrawn)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Tool %1 was withdrawn on %2.")).arg(tool->id.text(), tool->withdrawn->utcDate().toString(Qt::ISODate)), keeper);
    if (const Doubt *doubt = openDoubt(*tool); doubt && c.draft.at >= doubt->at)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Tool %1 was found out of tolerance (%2) and has not been calibrated since.")).arg(tool->id.text(), doubt->found), keeper);
    // In calibration when it was used, and still when that is signed.
    const auto done = Instant::parseLedger(c.text(u"done_at"));
    const QDate signedOn = c.draft.at.utcDate();
    const QDate day = done && !calibrationOn(*tool, done->utcDate()) ? done->utcDate() : signedOn;
    if (calibrationOn(*tool, day))
        return std::nullopt;
    const QString due = tool->calibrations.empty() ? inWords(QT_TRANSLATE_NOOP("Rule", "never")) : tool->calibrations.back().due.toString(Qt::ISODate);
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Tool %1 is not in calibration on %2; its calibration holds until: %3.")).arg(tool->id.text(), day.toString(Qt::ISODate), due), keeper);
}

std::optional<Refusal> readingIsInToolRange(const Case &c)
{
    const Tool *tool = toolOf(c);
    const auto value = readingOf(c);
    if (!tool || !value)
        return std::nullopt;
    const auto second = quantityIn(c.draft.body, u"second_reading", Dimension::Resistance);
    const auto fits = [&](const Quantity &reading) { return tool->rangeMin && tool->rangeMax && isWithin(reading, *tool->rangeMin, *tool->rangeMax); };
    if (fits(*value) && (!second || fits(*second)))
        return std::nullopt;
    const QString range = tool->rangeMin && tool->rangeMax ? tool->rangeMin->text() + QStringLiteral(" – ") + tool->rangeMax->text() : inWords(QT_TRANSLATE_NOOP("Rule", "none registered"));
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 lies outside the usable range of tool %2 (%3).")).arg((fits(*value) ? *second : *value).text(), tool->id.text(), range),
                   inWords(QT_TRANSLATE_NOOP("Rule", "a technician, with a fitting tool")));
}

std::optional<Refusal> safetyingIsAskedFor(const Case &c)
{
    if (!c.item || (asksFor(c.item->listed, "safetying"_L1) && c.text(u"method") == c.item->listed.safetying))
        return std::nullopt;
    const QString asked = c.item->listed.safetying.isEmpty() ? inWords(QT_TRANSLATE_NOOP("Rule", "no safetying")) : c.item->listed.safetying;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The list asks for %1 on %2; the entry says \"%3\".")).arg(asked, c.itemName(), c.text(u"method")), technician());
}

std::optional<Refusal> torqueIsComplete(const Case &c)
{
    const auto missing = torqueInTheWay(c);
    return missing ? std::optional(refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is safetied after it was torqued. %2")).arg(c.itemName(), *missing), technician())) : std::nullopt;
}

std::optional<Refusal> bondIsMeasuredAfterTorque(const Case &c)
{
    const auto missing = torqueInTheWay(c);
    return missing ? std::optional(refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The bond of %1 is measured after it was torqued. %2")).arg(c.itemName(), *missing), technician())) : std::nullopt;
}

const Rule torqueAsked{"torque.asked-for"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A reading without a specification proves nothing."), &torqueIsAskedFor};
const Rule fastener{"torque.fastener"_L1, QT_TRANSLATE_NOOP("RuleWhy", "One reading a fastener, and every fastener named."), &fastenerExists};
const Rule fastenerOnce{"torque.fastener-once"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A second reading must not paper over the first."), &fastenerHasNoReading};
const Rule torqueBand{"torque.band"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Too little works loose, too much breaks."), &torqueIsInBand};
const Rule torqueTakenOver{"torque.half-done"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Nobody can know how far another's hands had come."), &torqueIsNotHalfDoneByAnother};
const Rule takeOver{"torque.take-over"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Who takes over says how many fasteners were looked at."), &thereIsTorqueToTakeOver};
const Rule bondingLimit{"bonding.limit"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A poor bond lets currents find another way."), &bondingIsWithinLimit};
const Rule bondedAfterTorque{"bonding.after-torque"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What is still to be tightened will bond otherwise."), &bondIsMeasuredAfterTorque};
const Rule bondingTwice{"bonding.readings"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A second reading shows whether the first one touched."), &bondIsReadAsOftenAsAsked};
const Rule bondingZero{"bonding.lead-zero"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Leads that read more than the bond measure themselves."), &leadsWereZeroed};
const Rule toolCalibrated{"tool.calibration"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A reading is as good as the tool on that day."), &toolIsInCalibration};
const Rule toolRange{"tool.range"_L1, QT_TRANSLATE_NOOP("RuleWhy", "At the ends of its scale a tool tells anything."), &readingIsInToolRange};
const Rule safetyingAsked{"safetying.method"_L1, QT_TRANSLATE_NOOP("RuleWhy", "The way of locking is chosen by the maintenance data."), &safetyingIsAskedFor};
const Rule safetiedAfterTorque{"safetying.after-torque"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A locked fastener looks torqued."), &torqueIsComplete};

} // namespace core::rules
