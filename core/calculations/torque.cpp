// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>

#include "core/calculations/parts.hpp"
#include "core/measure/acceptance.hpp"
#include "core/measure/nut_drag.hpp"
#include "core/measure/tool_check.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace calculation;

constexpr auto always = Needed::Always;
constexpr auto known = Needed::IfKnown;

QString tr(const char *text) { return QCoreApplication::translate("Calculation", text); }

Quantity torqueOf(const json::Object &body, QStringView name) { return *quantityIn(body, name, Dimension::Torque); }

Field torqueField(QLatin1String name, Needed needed, const char *label) { return quantity(name, Dimension::Torque, needed, label); }

Field rangeMinField() { return torqueField("range_min"_L1, always, QT_TRANSLATE_NOOP("Field", "Wrench usable from")); }
Field rangeMaxField() { return torqueField("range_max"_L1, always, QT_TRANSLATE_NOOP("Field", "Wrench usable to")); }
Field graduationField() { return torqueField("graduation"_L1, always, QT_TRANSLATE_NOOP("Field", "One step of its scale")); }
Field indicatedField() { return torqueField("indicated"_L1, always, QT_TRANSLATE_NOOP("Field", "The wrench showed")); }

std::vector<FromTable> bandTables()
{
    return {{"least"_L1, "thread_torque"_L1, "tension_least"_L1}, {"least"_L1, "thread_torque"_L1, "shear_least"_L1},
            {"most"_L1, "thread_torque"_L1, "tension_most"_L1},   {"most"_L1, "thread_torque"_L1, "shear_most"_L1},
            {"prevailing"_L1, "locknut_drag"_L1, {}}};
}

Result<measure::WrenchScale> scaleIn(const json::Object &body)
{
    const measure::WrenchScale scale{torqueOf(body, u"range_min"), torqueOf(body, u"range_max"), torqueOf(body, u"graduation")};
    if (scale.least.value().isNegative())
        return badField(rangeMinField(), tr(QT_TRANSLATE_NOOP("Calculation", "%1 is below 0. Give what is marked on the wrench.")).arg(scale.least.text()));
    if (scale.most.coherent() <= 0 || scale.least > scale.most)
        return badField(rangeMaxField(), tr(QT_TRANSLATE_NOOP("Calculation", "From %1 to %2 there is no range. Give what is marked on the wrench.")).arg(scale.least.text(), scale.most.text()));
    if (scale.graduation->coherent() <= 0)
        return badField(graduationField(), tr(QT_TRANSLATE_NOOP("Calculation", "%1 is no step. Give what lies between two marks of the scale.")).arg(scale.graduation->text()));
    return scale;
}

/// With how the band came about before the rest.
measure::Working withSteps(const measure::AskedTorque &asked, measure::Working working)
{
    const auto steps = asked.steps();
    working.steps.insert(working.steps.begin(), steps.begin(), steps.end());
    return working;
}

Result<Calculated> wrenchSetting(const json::Object &body, const LookUpTables &)
{
    const auto band = bandIn(body);
    if (!band)
        return failure(band.error());
    const auto lever = adapterIn(body);
    if (!lever)
        return failure(lever.error());
    const auto scale = scaleIn(body);
    if (!scale)
        return failure(scale.error());
    const auto setting = measure::settingFor(band->band(), *lever, *scale);
    if (!setting)
        return refused(setting.error());
    measure::Working working = withSteps(*band, setting->working);
    if (!band->drag)
        working.notes << tr(QT_TRANSLATE_NOOP("Calculation", "No drag was added. Where the nut locks itself and the maintenance data says so, it is."));
    return answered(working);
}

Result<Calculated> torqueReading(const json::Object &body, const LookUpTables &)
{
    const auto band = bandIn(body);
    if (!band)
        return failure(band.error());
    const auto lever = adapterIn(body);
    if (!lever)
        return failure(lever.error());
    const auto deviation = deviationIn(body);
    if (!deviation)
        return failure(deviation.error());
    const Quantity indicated = torqueOf(body, u"indicated");
    if (indicated.value().isNegative())
        return badField(indicatedField(), tr(QT_TRANSLATE_NOOP("Calculation", "%1 is below 0. Give what the wrench showed.")).arg(indicated.text()));
    const auto rule = body.text(u"acceptance") == u"guarded" ? measure::DecisionRule::Guarded : measure::DecisionRule::Simple;
    if (rule == measure::DecisionRule::Guarded && !*deviation)
        return badField(deviationField(known), tr(QT_TRANSLATE_NOOP("Calculation", "A guard band is as wide as what the tool may be off. Give it, or accept without a guard band.")));
    const auto judgement = measure::judgeTorque(indicated, *lever, band->band(), *deviation, rule);
    if (!judgement)
        return refused(judgement.error());
    const measure::Working working = withSteps(*band, judgement->working);
    return judgement->refused ? refused(working) : answered(working);
}

Result<Calculated> nutDrag(const json::Object &body, const LookUpTables &)
{
    const auto drag = measure::nutDrag(torqueOf(body, u"prevailing"), torqueOf(body, u"least"));
    if (!drag)
        return refused(drag.error());
    return drag->refused ? refused(drag->working) : answered(drag->working);
}

Result<Calculated> toolCheck(const json::Object &body, const LookUpTables &)
{
    const auto deviation = deviationIn(body);
    if (!deviation)
        return failure(deviation.error());
    return answeredOr(measure::toolCheckWorking(torqueOf(body, u"range_max"), quantityIn(body, u"range_min", Dimension::Torque), torqueOf(body, u"setting"), **deviation));
}

} // namespace

std::vector<Calculation> torqueCalculations()
{
    return {
        {"wrench-setting"_L1,
         QT_TRANSLATE_NOOP("Calculation", "Setting of a torque wrench"),
         QT_TRANSLATE_NOOP("Calculation", "What to set the wrench to so that the fastener gets a torque of its band, with or without an adapter."),
         joined(joined(bandFields(), adapterFields()), std::vector{rangeMinField(), rangeMaxField(), graduationField()}),
         bandTables(),
         {{"least"_L1, "130 lbf·in"}, {"most"_L1, "140 lbf·in"}, {"wrench_length"_L1, "10 in"}, {"extension"_L1, "1.5 in"}, {"extension_angle"_L1, "0 °"},
          {"range_min"_L1, "30 lbf·in"}, {"range_max"_L1, "150 lbf·in"}, {"graduation"_L1, "1 lbf·in"}},
         &measure::torqueCautions,
         &wrenchSetting},
        {"torque-reading"_L1,
         QT_TRANSLATE_NOOP("Calculation", "Reading of a torque wrench"),
         QT_TRANSLATE_NOOP("Calculation", "Whether what the wrench showed lies in the band, with what the tool may be off."),
         joined(joined(bandFields(), std::vector{indicatedField()}), joined(adapterFields(), std::vector{deviationField(known), ofAct(u"job.opened", "acceptance"_L1, always)})),
         joined(bandTables(), std::vector<FromTable>{{"deviation"_L1, "torque_tool_deviation"_L1, "deviation"_L1}}),
         {{"least"_L1, "50 lbf·in"}, {"most"_L1, "70 lbf·in"}, {"prevailing"_L1, "8 lbf·in"}, {"indicated"_L1, "68 lbf·in"}, {"deviation"_L1, "4"}, {"acceptance"_L1, "guarded"}},
         &measure::torqueCautions,
         &torqueReading},
        {"nut-drag"_L1,
         QT_TRANSLATE_NOOP("Calculation", "Drag of a self-locking nut"),
         QT_TRANSLATE_NOOP("Calculation", "Whether a nut still locks well enough to be used again."),
         {ofAct(u"torque.applied", "prevailing"_L1, always), torqueField("least"_L1, always, QT_TRANSLATE_NOOP("Field", "Least drag for its size"))},
         {{"least"_L1, "locknut_drag"_L1, "drag_least"_L1}},
         {{"prevailing"_L1, "9 lbf·in"}, {"least"_L1, "8 lbf·in"}},
         &measure::torqueCautions,
         &nutDrag},
        {"tool-check"_L1,
         QT_TRANSLATE_NOOP("Calculation", "What a torque tool may be off"),
         QT_TRANSLATE_NOOP("Calculation", "What the tool may give at a setting, and at the points at which it is verified."),
         {torqueField("range_max"_L1, always, QT_TRANSLATE_NOOP("Field", "Greatest torque of the tool")),
          torqueField("range_min"_L1, known, QT_TRANSLATE_NOOP("Field", "Lowest mark of its scale")), torqueField("setting"_L1, always, QT_TRANSLATE_NOOP("Field", "Setting")), deviationField(always)},
         {{"deviation"_L1, "torque_tool_deviation"_L1, "deviation"_L1}},
         {{"range_max"_L1, "100 N·m"}, {"setting"_L1, "50 N·m"}, {"deviation"_L1, "4"}},
         &noCautions,
         &toolCheck},
    };
}

} // namespace core
