// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/demo/readings.hpp"

#include <QCoreApplication>

#include "core/job/torque_plan.hpp"

namespace demo {

namespace {

using namespace Qt::StringLiterals;
using core::Rational;
using core::json::Object;

const core::Unit &unitOf(const core::Quantity &quantity) { return *core::findUnit(quantity.unit()); }

/// The first tool that reads from `least` to `most` in that unit.
core::Result<const core::Tool *> toolFor(const Rational &least, const Rational &most, const core::Unit &unit, const Reader &reader)
{
    for (const auto &[id, tool] : reader.reg.tools) {
        const bool fits = tool.rangeMin && tool.rangeMax && tool.rangeMin->unit() == unit.symbol && tool.rangeMin->coherent() <= least && tool.rangeMax->coherent() >= most;
        if (fits && !tool.withdrawn && core::calibrationOn(tool, reader.day))
            return &tool;
    }
    return core::failure(core::ErrorCode::NotFound, QCoreApplication::translate("Demo", "The demo has no tool in calibration for %1 to %2 %3.")
                                                        .arg(core::inUnit(least, unit).text(2), core::inUnit(most, unit).text(2), unit.symbol));
}

/// Between three and seven tenths of a band, as a careful hand comes out; each turn another one.
Rational within(const Rational &least, const Rational &most, qint64 turn) { return least + (most - least) * Rational(3 + turn % 5) / 10; }

/// As finely as its display shows it.
QString asShown(const Rational &value, const core::Unit &unit, int places) { return core::inUnit(value, unit).text(places); }

} // namespace

core::Result<Object> torqueReading(const core::TorqueSpec &spec, const core::TorqueStep &step, const std::optional<core::Quantity> &adapter, const Reader &reader)
{
    Object body{{u"fastener"_s, step.fastener}};
    if (core::passesOf(spec) > 1)
        body.set(u"pass"_s, step.pass);
    if (spec.prevailing != core::Prevailing::None && spec.prevailingMin) {
        const core::Unit &unit = unitOf(*spec.prevailingMin);
        const Rational least = spec.prevailingMin->coherent();
        body.set(u"prevailing"_s, asShown(within(least, least * 2, step.fastener), unit, 1) + u' ' + unit.symbol);
        body.set(u"nut"_s, u"new"_s);
    }
    // The band says which tool, the tool how far it may be off.
    const core::TorquePlan bare = core::torquePlan(spec, reader.facts, nullptr, reader.day, body);
    const core::Unit &unit = *bare.band.unit;
    const auto tool = toolFor(bare.band.least, bare.band.most, unit, reader);
    if (!tool)
        return core::failure(tool.error());
    if (adapter && (*tool)->length) {
        body.set(u"wrench_length"_s, (*tool)->length->text());
        body.set(u"extension"_s, adapter->text());
        body.set(u"extension_angle"_s, u"0 °"_s);
    }
    const core::TorquePlan plan = core::torquePlan(spec, reader.facts, *tool, reader.day, body);
    const Rational off = Rational(plan.deviation.value_or(*core::Decimal::parse(u"0"))) / 100;
    const auto ratio = plan.lever ? core::measure::leverRatio(*plan.lever) : core::measure::Measured<Rational>(Rational(1));
    Q_ASSERT(ratio);
    const Rational aimed = within(plan.band.least / (1 - off), plan.band.most / (1 + off), step.fastener) / *ratio;
    body.set(u"value"_s, asShown(aimed, unit, aimed < 10 ? 2 : 1));
    body.set(u"unit"_s, unit.symbol);
    body.set(u"tool"_s, (*tool)->id.text());
    if (plan.scale && plan.scale->graduation) {
        const auto setting = core::measure::settingFor(plan.band, plan.lever, *plan.scale);
        if (!setting)
            return core::failure(core::ErrorCode::Refused, setting.error());
        body.set(u"setting"_s, setting->set.text());
        body.set(u"value"_s, setting->set.value().text()); // it clicks at what it was set to
    }
    return body;
}

core::Result<Object> bondingReading(const core::Listing &listed, qint64 turn, const Reader &reader)
{
    const core::Unit &unit = unitOf(*listed.bondingMax);
    const Rational value = listed.bondingMax->coherent() * Rational(3 + turn % 4) / 10;
    const auto tool = toolFor(value, value, unit, reader);
    if (!tool)
        return core::failure(tool.error());
    Object body{{u"value"_s, asShown(value, unit, 2)}, {u"unit"_s, unit.symbol}, {u"tool"_s, (*tool)->id.text()}, {u"lead_zero"_s, u"0.02 mΩ"_s}};
    if (listed.bondingReadings > 1)
        body.set(u"second_reading"_s, asShown(value * Rational(11) / 10, unit, 2) + u' ' + unit.symbol);
    return body;
}

} // namespace demo
