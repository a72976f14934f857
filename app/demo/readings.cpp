// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/demo/readings.hpp"

#include <QCoreApplication>

namespace demo {

namespace {

/// In hundredths of the unit; the story's limits have at most one decimal.
qint64 hundredths(const core::Decimal &value) { return qRound64(value.approximate() * 100); }

QString tenthsText(qint64 value100)
{
    const qint64 tenths = value100 / 10;
    return QStringLiteral("%1.%2").arg(tenths / 10).arg(tenths % 10);
}

core::Result<core::ToolId> toolFor(const core::Quantity &least, const core::Quantity &most, const core::Register &reg, QDate day)
{
    for (const auto &[id, tool] : reg.tools) {
        const bool fits = tool.rangeMin && tool.rangeMax && tool.rangeMin->unit() == least.unit() && *tool.rangeMin <= least && *tool.rangeMax >= most;
        if (fits && !tool.withdrawn && core::calibrationOn(tool, day))
            return id;
    }
    return core::failure(core::ErrorCode::NotFound,
                         QCoreApplication::translate("Demo", "The demo has no tool in calibration for %1 to %2.").arg(least.text(), most.text()));
}

core::Result<Reading> reading(qint64 value100, const core::Quantity &least, const core::Quantity &most, const core::Register &reg, QDate day)
{
    const auto tool = toolFor(least, most, reg, day);
    if (!tool)
        return core::failure(tool.error());
    return Reading{tenthsText(value100), most.unit(), *tool};
}

} // namespace

core::Result<Reading> torqueReading(const core::TorqueSpec &spec, qint64 fastener, const core::Register &reg, QDate day)
{
    const qint64 min = hundredths(spec.min.value());
    const qint64 band = hundredths(spec.max.value()) - min;
    // Between three tenths and seven tenths of the band, as a careful hand comes out.
    return reading(min + band * (3 + fastener % 5) / 10, spec.min, spec.max, reg, day);
}

core::Result<Reading> bondingReading(const core::Quantity &most, qint64 turn, const core::Register &reg, QDate day)
{
    const qint64 value = hundredths(most.value()) * (3 + turn % 4) / 10;
    const auto seen = core::Quantity::parse(tenthsText(value), most.unit());
    Q_ASSERT(seen);
    return reading(value, *seen, *seen, reg, day);
}

} // namespace demo
