// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

/// What a reading is worth today: struck, fallen, or voided by what came after it.
QString worthText(const JobRecord &record, const EntryOnItem &on, bool counts)
{
    if (on.line->standing != Standing::Stands)
        return standingText(record, *on.line);
    return counts ? inWords(QT_TRANSLATE_NOOP("Report", "counts")) : inWords(QT_TRANSLATE_NOOP("Report", "voided later"));
}

/// Tool, last day of its calibration on the day of the entry, certificate.
std::vector<QString> toolCells(const JobRecord &record, const Entry &entry)
{
    const QString text = entry.said.body.text(u"tool");
    const auto id = ToolId::parse(text);
    const Tool *tool = id ? record.registerAt(entry.said.seq).tool(*id) : nullptr;
    const Calibration *calibration = tool ? calibrationOn(*tool, entry.said.at.utcDate()) : nullptr;
    const QString none = inWords(QT_TRANSLATE_NOOP("Report", "not in calibration"));
    return {text, calibration ? calibration->due.toString(Qt::ISODate) : none, calibration ? calibration->certificate : QString()};
}

QString readingText(const Entry &entry) { return entry.said.body.text(u"value") + u' ' + entry.said.body.text(u"unit"); }

/// Reading, then tool, then who, when and which entry, then its worth: what every measurement ends with.
ReportRow rowOf(const JobRecord &record, const EntryOnItem &on, std::vector<QString> first, bool counts)
{
    std::vector<QString> cells = std::move(first);
    cells.push_back(readingText(*on.entry));
    for (QString &cell : toolCells(record, *on.entry))
        cells.push_back(std::move(cell));
    cells.push_back(signerOf(record, markOf(on.entry->said)));
    cells.push_back(momentText(on.entry->said.at));
    cells.push_back(QString::number(on.entry->said.seq));
    cells.push_back(worthText(record, on, counts));
    const Standing standing = on.line->standing == Standing::Stands && !counts ? Standing::Fallen : on.line->standing;
    return {itemText(on.item, *on.entry), std::move(cells), standing};
}

QString bandText(const InterfaceState *item)
{
    if (!item || !item->listed.torque)
        return {};
    const TorqueSpec &spec = *item->listed.torque;
    return inWords(QT_TRANSLATE_NOOP("Report", "%1 to %2")).arg(spec.min.value().text(), spec.max.text());
}

std::vector<ReportRow> torqueRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const EntryOnItem &on : entriesOfKind(record, u"torque.applied")) {
        const auto isThisEntry = [&](const TorqueReading &reading) { return reading.mark.seq == on.entry->said.seq; };
        const bool counts = on.item && std::any_of(on.item->torque.begin(), on.item->torque.end(), isThisEntry);
        rows.push_back(rowOf(record, on,
                             {on.entry->said.subject.value_or(QString()), QString::number(on.entry->said.body.integer(u"fastener").value_or(0)),
                              bandText(on.item)},
                             counts));
    }
    return rows;
}

std::vector<ReportRow> bondingRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const EntryOnItem &on : entriesOfKind(record, u"bonding.measured")) {
        const bool counts = on.item && on.item->bonding && on.item->bonding->mark.seq == on.entry->said.seq;
        const bool isLimited = on.item && on.item->listed.bondingMax;
        const QString limit = isLimited ? inWords(QT_TRANSLATE_NOOP("Report", "at most %1")).arg(on.item->listed.bondingMax->text()) : QString();
        rows.push_back(rowOf(record, on, {on.entry->said.subject.value_or(QString()), limit}, counts));
    }
    return rows;
}

std::vector<ReportColumn> columnsAfter(std::vector<ReportColumn> first)
{
    const std::vector<ReportColumn> rest = {{"reading"_L1, QT_TRANSLATE_NOOP("Report", "Reading"), 12},
                                            {"tool"_L1, QT_TRANSLATE_NOOP("Report", "Tool"), 8},
                                            {"calibration_due"_L1, QT_TRANSLATE_NOOP("Report", "Last day of use"), 12},
                                            {"certificate"_L1, QT_TRANSLATE_NOOP("Report", "Certificate"), 0},
                                            {"by"_L1, QT_TRANSLATE_NOOP("Report", "By"), 14},
                                            {"at"_L1, QT_TRANSLATE_NOOP("Report", "Time"), 23},
                                            {"entry"_L1, QT_TRANSLATE_NOOP("Report", "Entry"), 7},
                                            {"worth"_L1, QT_TRANSLATE_NOOP("Report", "Worth"), 12}};
    first.insert(first.end(), rest.begin(), rest.end());
    return first;
}

} // namespace

Report torqueReport()
{
    return {"torque"_L1, QT_TRANSLATE_NOOP("Report", "Torque"),
            columnsAfter({{"interface"_L1, QT_TRANSLATE_NOOP("Report", "Interface"), 0},
                          {"fastener"_L1, QT_TRANSLATE_NOOP("Report", "Fastener"), 10},
                          {"specified"_L1, QT_TRANSLATE_NOOP("Report", "Specified"), 15}}),
            &torqueRows};
}

Report bondingReport()
{
    return {"bonding"_L1, QT_TRANSLATE_NOOP("Report", "Bonding resistance"),
            columnsAfter({{"interface"_L1, QT_TRANSLATE_NOOP("Report", "Interface"), 0},
                          {"limit"_L1, QT_TRANSLATE_NOOP("Report", "Limit"), 20}}),
            &bondingRows};
}

} // namespace core
