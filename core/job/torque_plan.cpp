// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/torque_plan.hpp"

#include <algorithm>

#include "core/acts/act.hpp"

namespace core {

namespace {

std::optional<measure::WrenchScale> scaleOf(const Tool *tool)
{
    if (!tool || !tool->rangeMin || !tool->rangeMax)
        return std::nullopt;
    return measure::WrenchScale{*tool->rangeMin, *tool->rangeMax, tool->graduation};
}

} // namespace

std::optional<measure::Lever> leverIn(const json::Object &body)
{
    const auto length = quantityIn(body, u"wrench_length", Dimension::Length);
    const auto extension = quantityIn(body, u"extension", Dimension::Length);
    const auto angle = quantityIn(body, u"extension_angle", Dimension::Angle);
    if (!length || !extension || !angle)
        return std::nullopt;
    return measure::Lever{*length, *extension, angle->value()};
}

TorqueStep torqueStepOf(const json::Object &body) { return {body.integer(u"pass").value_or(1), body.integer(u"fastener").value_or(0)}; }

QDate dayOfWork(const json::Object &body, Instant at)
{
    const auto done = Instant::parseLedger(body.text(u"done_at"));
    return done ? done->utcDate() : at.utcDate();
}

TorquePlan torquePlan(const TorqueSpec &spec, const JobFacts &facts, const Tool *tool, QDate day, const json::Object &body)
{
    const TorqueStep step = torqueStepOf(body);
    measure::AskedTorque asked{measure::torqueBand(spec.min, spec.max), std::nullopt, std::nullopt};
    if (step.pass >= 1 && step.pass <= static_cast<qint64>(spec.passes.size()))
        asked.percent = spec.passes[static_cast<std::size_t>(step.pass - 1)];
    if (spec.prevailing == Prevailing::Added)
        asked.drag = quantityIn(body, u"prevailing", Dimension::Torque);
    return {step, asked, asked.band(), leverIn(body), scaleOf(tool), tool ? deviationOn(*tool, day) : std::nullopt,
            facts.acceptsGuarded ? measure::DecisionRule::Guarded : measure::DecisionRule::Simple};
}

bool isLeverHalfTold(const json::Object &body)
{
    const int told = body.contains(u"wrench_length") + body.contains(u"extension") + body.contains(u"extension_angle");
    return told != 0 && told != 3;
}

} // namespace core
