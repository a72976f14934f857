// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/figures.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/acts/act.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

std::optional<Quantity> mass(const json::Object &body, QStringView name) { return quantityIn(body, name, Dimension::Mass); }
std::optional<Quantity> length(const json::Object &body, QStringView name) { return quantityIn(body, name, Dimension::Length); }
std::optional<Quantity> volume(const json::Object &body, QStringView name) { return quantityIn(body, name, Dimension::Volume); }
QDate date(const json::Object &body, QStringView name) { return QDate::fromString(body.text(name), Qt::ISODate); }

QString tr(const char *text) { return QCoreApplication::translate("Measure", text); }

std::optional<measure::TwoPoints> twoPointsIn(const json::Object &body)
{
    const auto span = length(body, u"span");
    const auto centre = length(body, u"centre");
    if (!span || !centre)
        return std::nullopt;
    return measure::TwoPoints{*span, *centre};
}

} // namespace

std::optional<FieldFault> faultOfLiftingPoints(const json::Object &body)
{
    const auto points = body.integer(u"points");
    const bool hasSpan = body.contains(u"span");
    const bool hasCentre = body.contains(u"centre");
    if (!points)
        return std::nullopt;
    if (*points != 1 && *points != 2)
        return FieldFault{"points"_L1, tr(QT_TRANSLATE_NOOP("Measure", "A load is reckoned on 1 or 2 lifting points, not on %1. Give 1 or 2; what hangs on more is planned by the maintenance data and somebody qualified for it.")).arg(*points)};
    if (*points == 1 && (hasSpan || hasCentre))
        return FieldFault{hasSpan ? "span"_L1 : "centre"_L1,
                          tr(QT_TRANSLATE_NOOP("Measure", "With 1 lifting point there is no length between two, and the load hangs with its centre of gravity below that point. Empty both fields, or give 2 points."))};
    if (*points == 2 && !(hasSpan && hasCentre))
        return FieldFault{hasSpan ? "centre"_L1 : "span"_L1,
                          tr(QT_TRANSLATE_NOOP("Measure", "2 lifting points are told by the length between them and by where the centre of gravity lies, for the nearer one carries more. Fill in both."))};
    return std::nullopt;
}

std::optional<measure::LiftPlan> liftIn(const json::Object &body, QDate signedOn)
{
    // No inspection that is over when the plan is signed holds on the day of the lift.
    const QDate day = body.contains(u"day") ? std::max(date(body, u"day"), signedOn) : signedOn;
    const auto unit = mass(body, u"unit_weight");
    const auto rigging = mass(body, u"rigging_weight");
    const auto hoist = mass(body, u"hoist_limit");
    const auto sling = mass(body, u"sling_limit");
    const auto legs = body.integer(u"legs");
    const auto points = body.integer(u"points");
    const auto angle = quantityIn(body, u"angle_from_horizontal", Dimension::Angle);
    const auto two = twoPointsIn(body);
    if (!unit || !rigging || !hoist || !sling || !legs || !points || !angle || faultOfLiftingPoints(body) || two.has_value() != (*points == 2))
        return std::nullopt;
    return measure::LiftPlan{*unit, *rigging, *hoist, date(body, u"hoist_due"), *sling, date(body, u"sling_due"), *legs, measure::AngleFromHorizontal{angle->value()}, two, day};
}

std::optional<ServicingFigure> servicingIn(const json::Object &body)
{
    const auto quantity = volume(body, u"quantity");
    const auto least = volume(body, u"least");
    const auto most = volume(body, u"most");
    if (!quantity || !least || !most)
        return std::nullopt;
    return ServicingFigure{*quantity, *least, *most};
}

std::optional<FieldFault> faultOfBalance(const json::Object &body)
{
    if (body.contains(u"aircraft_moment") != body.contains(u"aircraft_centre"))
        return std::nullopt;
    return FieldFault{"aircraft_moment"_L1, tr(QT_TRANSLATE_NOOP("Measure", "Give the aircraft's moment before, or its centre of gravity: one of them, as the weight record has it."))};
}

std::optional<measure::UnitSwap> swapIn(const json::Object &body)
{
    const auto outWeight = mass(body, u"outgoing_weight");
    const auto outArm = length(body, u"outgoing_arm");
    const auto inWeight = mass(body, u"incoming_weight");
    const auto inArm = length(body, u"incoming_arm");
    const auto aircraft = mass(body, u"aircraft_weight");
    const auto moment = quantityIn(body, u"aircraft_moment", Dimension::Moment);
    const auto balance = moment ? moment : length(body, u"aircraft_centre");
    if (!outWeight || !outArm || !inWeight || !inArm || !aircraft || !balance)
        return std::nullopt;
    return measure::UnitSwap{{tr(QT_TRANSLATE_NOOP("Measure", "outgoing unit")), *outWeight, *outArm},
                             {tr(QT_TRANSLATE_NOOP("Measure", "incoming unit")), *inWeight, *inArm}, *aircraft, *balance, length(body, u"mac")};
}

std::vector<const JobFigure *> figuresOf(const JobState &job, QStringView kind)
{
    std::vector<const JobFigure *> of;
    for (const JobFigure &figure : job.figures) {
        if (figure.kind == kind)
            of.push_back(&figure);
    }
    return of;
}

} // namespace core
