// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/job/torque_plan.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

QString rangeText(const Tool &tool)
{
    const bool isRanged = tool.rangeMin && tool.rangeMax;
    return isRanged ? inWords(QT_TRANSLATE_NOOP("Report", "%1 to %2")).arg(tool.rangeMin->value().text(), tool.rangeMax->text()) : QString();
}

/// What guard band, setting and adapter were reckoned with.
QString deviationText(const Tool &tool, QDate day)
{
    const auto deviation = deviationOn(tool, day);
    if (!deviation)
        return {};
    const Calibration *calibration = calibrationOn(tool, day);
    const QString source = calibration && calibration->deviation ? inWords(QT_TRANSLATE_NOOP("Report", "certificate")) : tool.deviationSource;
    return source.isEmpty() ? inWords(QT_TRANSLATE_NOOP("Report", "± %1 %")).arg(deviation->text()) : inWords(QT_TRANSLATE_NOOP("Report", "± %1 %, %2")).arg(deviation->text(), source);
}

QString typeText(const Tool &tool) { return tool.torqueType ? torqueToolTypeText(*tool.torqueType) : QString(); }

QString textOf(const std::optional<Quantity> &quantity) { return quantity ? quantity->text() : QString(); }

/// The tool as the entry found it: with the calibration that covered that day.
ReportRow rowOf(const Tool &tool, QDate day)
{
    const Calibration *calibration = calibrationOn(tool, day);
    const QString none = inWords(QT_TRANSLATE_NOOP("Report", "none that covers %1")).arg(day.toString(Qt::ISODate));
    return {{},
            {tool.id.text(), tool.name, rangeText(tool), calibration ? calibration->on.toString(Qt::ISODate) : none,
             calibration ? calibration->due.toString(Qt::ISODate) : QString(), calibration ? calibration->certificate : QString(), typeText(tool), textOf(tool.graduation), deviationText(tool, day), textOf(tool.length)}};
}

std::vector<ReportRow> toolRows(const JobRecord &record)
{
    // One row for each tool and calibration that readings were taken under, so a tool calibrated meanwhile has two.
    std::vector<ReportRow> rows;
    for (const Entry &entry : record.entries()) {
        const auto id = ToolId::parse(entry.said.body.text(u"tool"));
        const Tool *tool = id ? record.registerAt(entry.said.seq).tool(*id) : nullptr;
        if (!tool)
            continue;
        ReportRow row = rowOf(*tool, dayOfWork(entry.said.body, entry.said.at));
        if (std::find(rows.begin(), rows.end(), row) == rows.end())
            rows.push_back(std::move(row));
    }
    std::stable_sort(rows.begin(), rows.end(), [](const ReportRow &a, const ReportRow &b) { return a.cells.front() < b.cells.front(); });
    return rows;
}

} // namespace

Report toolsReport()
{
    return {"tools"_L1,
            QT_TRANSLATE_NOOP("Report", "Tools and their calibration"),
            {{"tool"_L1, QT_TRANSLATE_NOOP("Report", "Tool"), 14},
             {"name"_L1, QT_TRANSLATE_NOOP("Report", "Name"), 26},
             {"range"_L1, QT_TRANSLATE_NOOP("Report", "Usable range"), 18},
             {"calibrated"_L1, QT_TRANSLATE_NOOP("Report", "Calibrated"), 14},
             {"calibration_due"_L1, QT_TRANSLATE_NOOP("Report", "Calibration due"), 14},
             {"certificate"_L1, QT_TRANSLATE_NOOP("Report", "Certificate"), 14},
             {"torque_type"_L1, QT_TRANSLATE_NOOP("Report", "Torque tool"), 0},
             {"graduation"_L1, QT_TRANSLATE_NOOP("Report", "Graduation"), 0},
             {"deviation"_L1, QT_TRANSLATE_NOOP("Report", "May be off by"), 0},
             {"length"_L1, QT_TRANSLATE_NOOP("Report", "Length, grip to drive"), 0}},
            &toolRows};
}

} // namespace core
