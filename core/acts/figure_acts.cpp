// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

#include "core/measure/lifting.hpp"
#include "core/measure/servicing.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

bool keep(JobState &job, const Statement &said)
{
    job.figures.push_back({markOf(said), said.kind, said.body});
    return true;
}

Act figure(QLatin1String kind, QLatin1String meaning, const char *verb, const char *done, std::vector<Field> fields,
           QStringList (*cautions)(), const std::vector<FromTable> &tables = {})
{
    fields.push_back(field("reference"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Maintenance data reference")));
    fields.push_back(field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks")));
    return {kind, LedgerSort::Job, meaning, SubjectSort::Nothing, verb, done, std::move(fields), &keep, cautions, tables};
}

} // namespace

/// Figures of the whole job: what is lifted, filled in and weighed.
std::vector<Act> figureActs()
{
    constexpr auto mass = Dimension::Mass;
    constexpr auto length = Dimension::Length;
    constexpr auto volume = Dimension::Volume;
    constexpr auto always = Needed::Always;
    constexpr auto known = Needed::IfKnown;
    return {
        figure("lift.planned"_L1, "recorded"_L1, QT_TRANSLATE_NOOP("Act", "Plan a lift"), QT_TRANSLATE_NOOP("Act", "Lift planned"),
               {field("day"_L1, FieldType::Date, known, QT_TRANSLATE_NOOP("Field", "Day of the lift, if not today")),
                choice("unit"_L1, always, QT_TRANSLATE_NOOP("Field", "Which unit"), {"outgoing"_L1, "incoming"_L1}),
                quantity("unit_weight"_L1, mass, always, QT_TRANSLATE_NOOP("Field", "Weight of the unit")),
                quantity("rigging_weight"_L1, mass, always, QT_TRANSLATE_NOOP("Field", "Weight of the rigging")),
                field("hoist"_L1, FieldType::Text, always, QT_TRANSLATE_NOOP("Field", "Hoist, as marked on it")),
                quantity("hoist_limit"_L1, mass, always, QT_TRANSLATE_NOOP("Field", "Working load limit on the hoist's plate")),
                field("hoist_due"_L1, FieldType::Date, always, QT_TRANSLATE_NOOP("Field", "Hoist inspected until")),
                field("sling"_L1, FieldType::Text, always, QT_TRANSLATE_NOOP("Field", "Sling, as marked on it")),
                quantity("sling_limit"_L1, mass, always, QT_TRANSLATE_NOOP("Field", "Working load limit of one leg, on its tag")),
                field("sling_due"_L1, FieldType::Date, always, QT_TRANSLATE_NOOP("Field", "Sling inspected until")),
                field("points"_L1, FieldType::Integer, always, QT_TRANSLATE_NOOP("Field", "Number of lifting points")),
                field("legs"_L1, FieldType::Integer, always, QT_TRANSLATE_NOOP("Field", "Legs at each lifting point")),
                quantity("angle_from_horizontal"_L1, Dimension::Angle, always, QT_TRANSLATE_NOOP("Field", "Angle of the legs from the horizontal")),
                quantity("span"_L1, length, known, QT_TRANSLATE_NOOP("Field", "Between the two lifting points")),
                quantity("centre"_L1, length, known, QT_TRANSLATE_NOOP("Field", "Centre of gravity from the left point"))},
               &measure::liftingCautions, {{"angle_from_horizontal"_L1, "sling_angles"_L1}}),
        figure("servicing.recorded"_L1, "performed"_L1, QT_TRANSLATE_NOOP("Act", "Record servicing"), QT_TRANSLATE_NOOP("Act", "Serviced"),
               {field("system"_L1, FieldType::Text, always, QT_TRANSLATE_NOOP("Field", "System")),
                field("fluid"_L1, FieldType::Text, always, QT_TRANSLATE_NOOP("Field", "Fluid")),
                field("batch"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Batch"), "batch"_L1),
                quantity("quantity"_L1, volume, always, QT_TRANSLATE_NOOP("Field", "Quantity")),
                quantity("least"_L1, volume, always, QT_TRANSLATE_NOOP("Field", "Least")),
                quantity("most"_L1, volume, always, QT_TRANSLATE_NOOP("Field", "Most"))},
               &measure::servicingCautions),
        figure("weight.recorded"_L1, "recorded"_L1, QT_TRANSLATE_NOOP("Act", "Record the weight change"), QT_TRANSLATE_NOOP("Act", "Weight change recorded"),
               {quantity("outgoing_weight"_L1, mass, always, QT_TRANSLATE_NOOP("Field", "Weight of the outgoing unit")),
                quantity("outgoing_arm"_L1, length, always, QT_TRANSLATE_NOOP("Field", "Arm of the outgoing unit")),
                quantity("incoming_weight"_L1, mass, always, QT_TRANSLATE_NOOP("Field", "Weight of the incoming unit")),
                quantity("incoming_arm"_L1, length, always, QT_TRANSLATE_NOOP("Field", "Arm of the incoming unit")),
                quantity("aircraft_weight"_L1, mass, always, QT_TRANSLATE_NOOP("Field", "Empty weight before")),
                quantity("aircraft_moment"_L1, Dimension::Moment, known, QT_TRANSLATE_NOOP("Field", "Empty moment before")),
                quantity("aircraft_centre"_L1, length, known, QT_TRANSLATE_NOOP("Field", "Centre of gravity before")),
                quantity("mac"_L1, length, known, QT_TRANSLATE_NOOP("Field", "Mean aerodynamic chord, if known"))},
               &noCautions, {{"aircraft_weight"_L1, "weight_change"_L1}}),
    };
}

} // namespace core
