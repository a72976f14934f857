// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/figures.hpp"

#include "core/calculations/parts.hpp"
#include "core/measure/servicing.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace calculation;

std::vector<Field> ofAct(QStringView act, const std::vector<QLatin1String> &names)
{
    std::vector<Field> fields;
    for (const QLatin1String name : names)
        fields.push_back(calculation::ofAct(act, name));
    return fields;
}

std::vector<Field> liftFields()
{
    return joined({field("day"_L1, FieldType::Date, Needed::Always, QT_TRANSLATE_NOOP("Field", "Day of the lift"))},
                  ofAct(u"lift.planned", std::vector{"unit_weight"_L1, "rigging_weight"_L1, "hoist_limit"_L1, "hoist_due"_L1, "sling_limit"_L1, "sling_due"_L1, "points"_L1, "legs"_L1,
                                                     "angle_from_horizontal"_L1, "span"_L1, "centre"_L1}));
}

Result<Calculated> lift(const json::Object &body, const LookUpTables &)
{
    if (const auto fault = faultOfLiftingPoints(body))
        return badField(calculation::ofAct(u"lift.planned", fault->field), fault->sentence);
    const measure::LiftPlan plan = *liftIn(body, QDate::fromString(body.text(u"day"), Qt::ISODate));
    return judged(measure::liftWorking(plan), measure::checkLift(plan).isAllowed());
}

Result<Calculated> servicing(const json::Object &body, const LookUpTables &)
{
    const ServicingFigure figure = *servicingIn(body);
    const auto level = measure::servicing(figure.quantity, figure.least, figure.most);
    return judged(measure::servicingWorking(figure.quantity, figure.least, figure.most), level && level->level == measure::Level::Within);
}

Result<Calculated> weightChange(const json::Object &body, const LookUpTables &)
{
    if (const auto fault = faultOfBalance(body))
        return badField(calculation::ofAct(u"weight.recorded", fault->field), fault->sentence);
    const measure::UnitSwap swap = *swapIn(body);
    const auto lines = measure::weightRecordEntry(swap);
    const auto working = measure::weightChangeWorking(swap);
    return working && lines ? answered(*working, *lines) : answeredOr(working);
}

} // namespace

std::vector<Calculation> figureCalculations()
{
    return {
        {"lift"_L1,
         QT_TRANSLATE_NOOP("Calculation", "Lift with hoist and slings"),
         QT_TRANSLATE_NOOP("Calculation", "What hoist and legs carry, and whether a limit or an inspection speaks against the lift."),
         liftFields(),
         {{"angle_from_horizontal"_L1, "sling_angles"_L1, {}}},
         {{"day"_L1, "2026-03-02"}, {"unit_weight"_L1, "1290 lb"}, {"rigging_weight"_L1, "110 lb"}, {"hoist_limit"_L1, "2000 lb"}, {"hoist_due"_L1, "2026-09-30"}, {"sling_limit"_L1, "1500 lb"},
          {"sling_due"_L1, "2026-06-30"}, {"points"_L1, "2"}, {"legs"_L1, "1"}, {"angle_from_horizontal"_L1, "60 °"}, {"span"_L1, "48 in"}, {"centre"_L1, "22 in"}},
         &measure::liftingCautions,
         &lift},
        {"servicing"_L1,
         QT_TRANSLATE_NOOP("Calculation", "Servicing quantity"),
         QT_TRANSLATE_NOOP("Calculation", "Whether what was filled in lies in its band, in any unit of volume."),
         ofAct(u"servicing.recorded", std::vector{"quantity"_L1, "least"_L1, "most"_L1}),
         {},
         {{"quantity"_L1, "2.3 US gal"}, {"least"_L1, "8 L"}, {"most"_L1, "9 L"}},
         &measure::servicingCautions,
         &servicing},
        {"weight-change"_L1,
         QT_TRANSLATE_NOOP("Calculation", "Change of weight and balance"),
         QT_TRANSLATE_NOOP("Calculation", "Empty weight, moment and centre of gravity after one unit went out and another in, with the lines for the weight record."),
         ofAct(u"weight.recorded", std::vector{"outgoing_weight"_L1, "outgoing_arm"_L1, "incoming_weight"_L1, "incoming_arm"_L1, "aircraft_weight"_L1, "aircraft_moment"_L1, "aircraft_centre"_L1, "mac"_L1}),
         {{"aircraft_weight"_L1, "weight_change"_L1, {}}},
         {{"outgoing_weight"_L1, "612.0 lb"}, {"outgoing_arm"_L1, "120.0 in"}, {"incoming_weight"_L1, "618.5 lb"}, {"incoming_arm"_L1, "120.0 in"}, {"aircraft_weight"_L1, "41250 lb"},
          {"aircraft_centre"_L1, "118.2 in"}, {"mac"_L1, "84 in"}},
         &noCautions,
         &weightChange},
    };
}

} // namespace core
