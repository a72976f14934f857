// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QStringList>

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/job/torque_plan.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

const Tool *toolOf(const JobRecord &record, const Entry &entry)
{
    const auto id = ToolId::parse(entry.said.body.text(u"tool"));
    return id ? record.registerAt(entry.said.seq).tool(*id) : nullptr;
}

/// Tool, last day of its calibration on the day of the work, certificate.
std::vector<QString> toolCells(const JobRecord &record, const Entry &entry)
{
    const Tool *tool = toolOf(record, entry);
    const Calibration *calibration = tool ? calibrationOn(*tool, dayOfWork(entry.said.body, entry.said.at)) : nullptr;
    const QString none = inWords(QT_TRANSLATE_NOOP("Report", "not in calibration"));
    return {entry.said.body.text(u"tool"), calibration ? calibration->due.toString(Qt::ISODate) : none, calibration ? calibration->certificate : QString()};
}

QString readingText(const Entry &entry) { return entry.said.body.text(u"value") + u' ' + entry.said.body.text(u"unit"); }

std::vector<ReportColumn> withTool(std::vector<ReportColumn> first)
{
    first.insert(first.end(), {{"tool"_L1, QT_TRANSLATE_NOOP("Report", "Tool"), 8},
                               {"calibration_due"_L1, QT_TRANSLATE_NOOP("Report", "Calibration due"), 13},
                               {"certificate"_L1, QT_TRANSLATE_NOOP("Report", "Certificate"), 0}});
    return first;
}

void addTool(std::vector<QString> &cells, const JobRecord &record, const Entry &entry)
{
    for (QString &cell : toolCells(record, entry))
        cells.push_back(std::move(cell));
}

/// The pass in words where there are several: `2 of 3`.
QString passText(const TorqueSpec *spec, const json::Object &body)
{
    if (spec && spec->passes.size() > 1)
        return inWords(QT_TRANSLATE_NOOP("Report", "%1 of %2")).arg(torqueStepOf(body).pass).arg(spec->passes.size());
    const auto pass = body.integer(u"pass");
    return pass ? QString::number(*pass) : QString();
}

/// As the list gives it, digit for digit.
QString specifiedText(const TorqueSpec &spec) { return inWords(QT_TRANSLATE_NOOP("Report", "%1 to %2")).arg(spec.min.value().text(), spec.max.text()); }

/// What pass and drag make of it; empty where they make nothing.
QString askedText(const measure::AskedTorque &asked) { return asked.percent || asked.drag ? asked.band().text() : QString(); }

/// `arm 10 in + 1.5 in at 0 °`; of one that was told by half, what was told.
QString adapterText(const json::Object &body)
{
    const QString arm = body.text(u"wrench_length");
    const QString extension = body.text(u"extension");
    const QString angle = body.text(u"extension_angle");
    if (!arm.isEmpty() && !extension.isEmpty() && !angle.isEmpty())
        return inWords(QT_TRANSLATE_NOOP("Report", "arm %1 + %2 at %3")).arg(arm, extension, angle);
    QStringList told{arm, extension, angle};
    told.removeAll(QString());
    return told.join(u", "_s);
}

/// What the fastener got where an adapter stood between it and the wrench.
QString atFastenerText(const json::Object &body, const std::optional<measure::Lever> &lever)
{
    const auto shown = Quantity::parse(body.text(u"value"), body.text(u"unit"));
    if (!lever || !shown || shown->dimension() != Dimension::Torque)
        return {};
    const auto torque = measure::torqueAtFastener(*shown, lever);
    return torque ? measure::shownIn(*torque, *findUnit(shown->unit())) : torque.error();
}

std::vector<QString> torqueCells(const JobRecord &record, const EntryOnItem &on)
{
    const Entry &entry = *on.entry;
    const json::Object &body = entry.said.body;
    const TorqueSpec *spec = on.item && on.item->listed.torque ? &*on.item->listed.torque : nullptr;
    QString asked;
    QString atFastener;
    if (spec) {
        const TorquePlan plan = torquePlan(*spec, record.job().facts, toolOf(record, entry), dayOfWork(body, entry.said.at), body);
        asked = askedText(plan.asked);
        atFastener = atFastenerText(body, plan.lever);
    }
    std::vector<QString> cells{entry.said.subject.value_or(QString()), QString::number(body.integer(u"fastener").value_or(0)), passText(spec, body), spec ? specifiedText(*spec) : QString(), readingText(entry)};
    addTool(cells, record, entry);
    for (const QString &cell : {asked, body.text(u"setting"), adapterText(body), atFastener, body.text(u"prevailing"), body.text(u"nut"), body.text(u"turn"), body.text(u"skip_reason")})
        cells.push_back(cell);
    return cells;
}

std::vector<ReportRow> torqueRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const EntryOnItem &on : entriesOfKind(record, u"torque.applied")) {
        const auto isThisEntry = [&](const TorqueReading &reading) { return reading.mark.seq == on.entry->said.seq; };
        const bool counts = on.item && std::any_of(on.item->torque.begin(), on.item->torque.end(), isThisEntry);
        rows.push_back(closedRow(record, on, torqueCells(record, on), counts ? Counts::Yes : Counts::No));
    }
    return rows;
}

std::vector<ReportRow> bondingRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const EntryOnItem &on : entriesOfKind(record, u"bonding.measured")) {
        const bool counts = on.item && on.item->bonding && on.item->bonding->mark.seq == on.entry->said.seq;
        const bool isLimited = on.item && on.item->listed.bondingMax;
        const QString limit = isLimited ? measure::BondingLimit{*on.item->listed.bondingMax, on.item->listed.bondingComparison}.text() : QString();
        const json::Object &body = on.entry->said.body;
        std::vector<QString> cells{on.entry->said.subject.value_or(QString()), limit, readingText(*on.entry), body.text(u"second_reading")};
        addTool(cells, record, *on.entry);
        cells.push_back(body.text(u"lead_zero"));
        rows.push_back(closedRow(record, on, std::move(cells), counts ? Counts::Yes : Counts::No));
    }
    return rows;
}

} // namespace

Report torqueReport()
{
    auto columns = withTool({{"interface"_L1, QT_TRANSLATE_NOOP("Report", "Interface"), 0},
                             {"fastener"_L1, QT_TRANSLATE_NOOP("Report", "Fastener"), 12},
                             {"pass"_L1, QT_TRANSLATE_NOOP("Report", "Pass"), 7},
                             {"specified"_L1, QT_TRANSLATE_NOOP("Report", "Specified"), 16},
                             {"reading"_L1, QT_TRANSLATE_NOOP("Report", "Reading"), 10}});
    columns.insert(columns.end(), {{"asked"_L1, QT_TRANSLATE_NOOP("Report", "Asked for here"), 0},
                                   {"setting"_L1, QT_TRANSLATE_NOOP("Report", "Wrench set to"), 0},
                                   {"adapter"_L1, QT_TRANSLATE_NOOP("Report", "Adapter"), 0},
                                   {"at_fastener"_L1, QT_TRANSLATE_NOOP("Report", "At the fastener"), 0},
                                   {"drag"_L1, QT_TRANSLATE_NOOP("Report", "Drag"), 0},
                                   {"nut"_L1, QT_TRANSLATE_NOOP("Report", "Self-locking nut"), 0},
                                   {"turn"_L1, QT_TRANSLATE_NOOP("Report", "Turned"), 0},
                                   {"skip_reason"_L1, QT_TRANSLATE_NOOP("Report", "Out of order"), 0}});
    return {"torque"_L1, QT_TRANSLATE_NOOP("Report", "Torque"), withClosing(std::move(columns)), &torqueRows};
}

Report bondingReport()
{
    auto columns = withTool({{"interface"_L1, QT_TRANSLATE_NOOP("Report", "Interface"), 0},
                             {"limit"_L1, QT_TRANSLATE_NOOP("Report", "Limit"), 17},
                             {"reading"_L1, QT_TRANSLATE_NOOP("Report", "Reading"), 11},
                             {"second_reading"_L1, QT_TRANSLATE_NOOP("Report", "Second"), 11}});
    columns.push_back({"lead_zero"_L1, QT_TRANSLATE_NOOP("Report", "Leads together showed"), 0});
    return {"bonding"_L1, QT_TRANSLATE_NOOP("Report", "Bonding resistance"), withClosing(std::move(columns)), &bondingRows};
}

} // namespace core
