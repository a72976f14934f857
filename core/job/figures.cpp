// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/figures.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/acts/act.hpp"

namespace core {

namespace {

std::optional<Quantity> mass(const json::Object &body, QStringView name) { return quantityIn(body, name, Dimension::Mass); }
std::optional<Quantity> length(const json::Object &body, QStringView name) { return quantityIn(body, name, Dimension::Length); }
std::optional<Quantity> volume(const json::Object &body, QStringView name) { return quantityIn(body, name, Dimension::Volume); }
QDate date(const json::Object &body, QStringView name) { return QDate::fromString(body.text(name), Qt::ISODate); }

std::optional<measure::TwoPoints> pointsIn(const json::Object &body)
{
    const auto span = length(body, u"span");
    const auto centre = length(body, u"centre");
    if (!span || !centre)
        return std::nullopt;
    return measure::TwoPoints{*span, *centre};
}

} // namespace

std::optional<measure::LiftPlan> liftIn(const json::Object &body, QDate signedOn)
{
    // No inspection that is over when the plan is signed holds on the day of the lift.
    const QDate day = body.contains(u"day") ? std::max(date(body, u"day"), signedOn) : signedOn;
    const auto unit = mass(body, u"unit_weight");
    const auto rigging = mass(body, u"rigging_weight");
    const auto hoist = mass(body, u"hoist_limit");
    const auto sling = mass(body, u"sling_limit");
    const auto legs = body.integer(u"legs");
    const auto angle = quantityIn(body, u"angle_from_horizontal", Dimension::Angle);
    if (!unit || !rigging || !hoist || !sling || !legs || !angle)
        return std::nullopt;
    return measure::LiftPlan{*unit, *rigging, *hoist, date(body, u"hoist_due"), *sling, date(body, u"sling_due"), *legs, measure::AngleFromHorizontal{angle->value()}, pointsIn(body), day};
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
    return measure::UnitSwap{{QCoreApplication::translate("Measure", "outgoing unit"), *outWeight, *outArm},
                             {QCoreApplication::translate("Measure", "incoming unit"), *inWeight, *inArm}, *aircraft, *balance};
}

} // namespace core
