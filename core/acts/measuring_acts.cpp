// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/requirements/catalogue.hpp"
#include "core/job/leak_reading.hpp"
#include "core/job/torque_plan.hpp"
#include "core/measure/bonding.hpp"
#include "core/measure/leak.hpp"
#include "core/measure/torque_wrench.hpp"
#include "core/requirements/torque.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

bool applyTorque(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    const auto fastener = said.body.integer(u"fastener");
    const auto value = Quantity::parse(said.body.text(u"value"), said.body.text(u"unit"));
    const auto tool = ToolId::parse(said.body.text(u"tool"));
    if (!item || !item->restoration || !fastener || !value || !tool)
        return false;
    const TorqueStep step = torqueStepOf(said.body);
    if (item->listed.torque && startsTorqueAgain(*item, said.author, step)) {
        item->torque.clear();
        item->torqueTakenOverBy.clear();
    }
    // What another one left half done rests on its taking over: where that was struck, this falls with it.
    if (item->listed.torque && isHalfDoneByAnother(*item, said.author))
        return false;
    // A pass rests on the whole of the one before: where that was struck, this falls with it.
    if (item->listed.torque && step.pass > 1 && !isPassDone(*item, step.pass - 1))
        return false;
    item->torque.push_back({markOf(said), *fastener, *value, *tool, step.pass, leverIn(said.body), quantityIn(said.body, u"setting", Dimension::Torque),
                            quantityIn(said.body, u"prevailing", Dimension::Torque)});
    dropPassingConditions(*item);
    addActors(*item, said);
    return true;
}

bool takeOverTorque(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    if (!item || item->torque.empty())
        return false;
    item->torqueTakenOverBy.insert(said.author);
    addActors(*item, said);
    return true;
}

bool measureBonding(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    const auto value = Quantity::parse(said.body.text(u"value"), said.body.text(u"unit"));
    const auto tool = ToolId::parse(said.body.text(u"tool"));
    if (!item || !item->restoration || !value || !tool || (asksFor(item->listed, "torque"_L1) && missingTorque(*item)))
        return false;
    item->bonding = BondingReading{markOf(said), *value, *tool, quantityIn(said.body, u"second_reading", Dimension::Resistance),
                                   quantityIn(said.body, u"lead_zero", Dimension::Resistance)};
    addActors(*item, said);
    return true;
}

bool checkLeak(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    if (!item || !item->restoration || (asksFor(item->listed, "torque"_L1) && missingTorque(*item)))
        return false;
    const auto seen = leakClassIn(said.body, job.facts.leakScheme);
    const QString flow = said.body.text(u"flow");
    item->leak = LeakReading{.mark = markOf(said),
                             .leakClass = seen ? seen->value_or(said.body.text(u"class")) : said.body.text(u"class"),
                             .rate = leakRateIn(said.body),
                             .how = said.body.text(u"how"),
                             .dropsPerMillilitre = leakDropSizeIn(said.body, item->listed.leak.value_or(LeakLimit{})),
                             .size = quantityIn(said.body, u"size", Dimension::Length),
                             .flow = flow.isEmpty() ? std::nullopt : std::optional(flow == u"still" ? measure::Flow::Still : measure::Flow::DripsOrPools),
                             .minutes = said.body.integer(u"minutes")};
    addActors(*item, said);
    return true;
}

bool applySafetying(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    if (!item || !item->restoration)
        return false;
    // A listing may give torque values without asking for torque; then there is none to wait for.
    if (asksFor(item->listed, "torque"_L1) && missingTorque(*item))
        return false;
    item->safetying = Safetying{markOf(said), said.body.text(u"method")};
    addActors(*item, said);
    return true;
}

/// Common practice.
QStringList safetyingCautions()
{
    return {
        QCoreApplication::translate("Act", "Wear eye protection when lockwire is cut, and catch the ends: they hurt people and find their way into engines."),
        QCoreApplication::translate("Act", "Turn the pigtail in, so that nobody is cut by it."),
        QCoreApplication::translate("Act", "Wire and pins are new each time; how they are fitted the approved maintenance data and the local rules say."),
    };
}

} // namespace

std::vector<Act> measuringActs()
{
    const Field value = field("value"_L1, FieldType::Decimal, Needed::Always, QT_TRANSLATE_NOOP("Field", "Reading"));
    const Field torqueUnit = unitField("unit"_L1, Dimension::Torque, Needed::Always, QT_TRANSLATE_NOOP("Field", "Unit"));
    const Field resistanceUnit = unitField("unit"_L1, Dimension::Resistance, Needed::Always, QT_TRANSLATE_NOOP("Field", "Unit"));
    const Field tool = field("tool"_L1, FieldType::Tool, Needed::Always, QT_TRANSLATE_NOOP("Field", "Tool"), "tool"_L1);
    const Field helpers = field("helpers"_L1, FieldType::People, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Helped, supervised or taught by"), "person"_L1);
    const Field doneAt = field("done_at"_L1, FieldType::Moment, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Done at, if earlier"));
    return {
        {"torque.applied"_L1, LedgerSort::Job, "performed"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Torque"),
         QT_TRANSLATE_NOOP("Act", "Torqued"),
         {field("fastener"_L1, FieldType::Integer, Needed::Always, QT_TRANSLATE_NOOP("Field", "Fastener")),
          field("pass"_L1, FieldType::Integer, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Pass")), value, torqueUnit, tool,
          quantity("setting"_L1, Dimension::Torque, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Wrench set to")),
          quantity("wrench_length"_L1, Dimension::Length, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Wrench length, grip to drive")),
          quantity("extension"_L1, Dimension::Length, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Adapter, drive to fastener")),
          quantity("extension_angle"_L1, Dimension::Angle, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Adapter's angle")),
          quantity("prevailing"_L1, Dimension::Torque, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Drag while the nut was run down")),
          choice("nut"_L1, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Self-locking nut"), {"new"_L1, "used again"_L1}),
          quantity("turn"_L1, Dimension::Angle, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Turned after the torque")),
          field("skip_reason"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Why out of order")), helpers, doneAt},
         &applyTorque, &measure::torqueCautions, {{"value"_L1, "thread_torque"_L1}, {"prevailing"_L1, "locknut_drag"_L1}}},
        {"torque.taken_over"_L1, LedgerSort::Job, "performed"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Take over the torque"),
         QT_TRANSLATE_NOOP("Act", "Torque taken over"),
         {field("fasteners"_L1, FieldType::Integer, Needed::Always, QT_TRANSLATE_NOOP("Field", "Marked fasteners accepted")),
          field("how_checked"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "How they were checked"))},
         &takeOverTorque, &noCautions, {}},
        {"bonding.measured"_L1, LedgerSort::Job, "performed"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Measure bonding"),
         QT_TRANSLATE_NOOP("Act", "Bonding measured"),
         {value, resistanceUnit, tool, quantity("second_reading"_L1, Dimension::Resistance, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Second reading")),
          quantity("lead_zero"_L1, Dimension::Resistance, Needed::Always, QT_TRANSLATE_NOOP("Field", "Leads together showed")), helpers, doneAt},
         &measureBonding, &measure::bondingCautions, {{"value"_L1, "bonding_limits"_L1}}},
        {"leak.checked"_L1, LedgerSort::Job, "performed"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Check for leaks"),
         QT_TRANSLATE_NOOP("Act", "Checked for leaks"),
         {field("how"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "How: pressure, run, time watched")),
          quantity("size"_L1, Dimension::Length, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Wet area, across; 0: dry")),
          choice("flow"_L1, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "The liquid"), {"still"_L1, "drips or pools"_L1}),
          field("minutes"_L1, FieldType::Integer, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Minutes after wiping dry")),
          field("class"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Leak class seen, where the scheme has no sizes")),
          quantity("rate"_L1, Dimension::VolumeRate, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Leak measured")),
          quantity("drops"_L1, Dimension::DropRate, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Drops counted")),
          field("drops_per_ml"_L1, FieldType::Decimal, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Drops in a millilitre")), helpers, doneAt},
         &checkLeak, &measure::leakCautions, {{"class"_L1, "leak_classes"_L1}}},
        {"safetying.applied"_L1, LedgerSort::Job, "performed"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Safety"),
         QT_TRANSLATE_NOOP("Act", "Safetied"),
         {field("method"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Method")), helpers, doneAt}, &applySafetying, &safetyingCautions,
         {{"method"_L1, "lockwire_twists"_L1}, {"method"_L1, "lockwire_wire"_L1}}},
    };
}

} // namespace core
