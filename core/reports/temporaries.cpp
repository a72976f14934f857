// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

std::vector<ReportRow> temporaryRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const TemporaryItem &item : record.job().temporaries) {
        QString removed = item.removed ? signedText(record, *item.removed) : inWords(QT_TRANSLATE_NOOP("Report", "STILL APPLIED"));
        if (!item.removedBecause.isEmpty())
            removed = inWords(QT_TRANSLATE_NOOP("Report", "%1; because: %2")).arg(removed, item.removedBecause);
        rows.push_back({{}, {item.id.text(), record.kinds().nameOf(temporaryKindId(item.sort)), item.name, item.zone, item.tag, signedText(record, item.applied), removed}});
    }
    return rows;
}

std::vector<ReportRow> unitRows(const JobRecord &record)
{
    const UnitChange &unit = record.job().unit;
    std::vector<ReportRow> rows;
    const auto add = [&](const QString &what, const QString &serial, const QString &told, const Mark &mark) { rows.push_back({{}, {what, serial, told, signedText(record, mark)}}); };
    if (unit.off) {
        QString told = inWords(QT_TRANSLATE_NOOP("Report", "%1 openings blanked; tagged unserviceable with %2")).arg(unit.off->openingsBlanked).arg(unit.off->tag);
        if (!unit.off->stand.isEmpty())
            told = inWords(QT_TRANSLATE_NOOP("Report", "%1; on %2")).arg(told, unit.off->stand);
        if (!unit.off->staysOn.empty())
            told = inWords(QT_TRANSLATE_NOOP("Report", "%1; leaves with it: %2")).arg(told, QStringList(unit.off->staysOn.begin(), unit.off->staysOn.end()).join(u", "_s));
        add(inWords(QT_TRANSLATE_NOOP("Report", "Outgoing unit off")), unit.off->serial, told, unit.off->mark);
    }
    if (unit.in)
        add(inWords(QT_TRANSLATE_NOOP("Report", "Incoming unit received")), unit.in->serial,
            inWords(QT_TRANSLATE_NOOP("Report", "certificate %1; %2 shipping blanks; %3")).arg(unit.in->certificate).arg(unit.in->shippingBlanks).arg(unit.in->configuration), unit.in->mark);
    if (unit.up)
        add(inWords(QT_TRANSLATE_NOOP("Report", "Incoming unit in its place")), unit.up->serial, inWords(QT_TRANSLATE_NOOP("Report", "%1 shipping blanks removed")).arg(unit.up->shippingBlanksRemoved), unit.up->mark);
    if (record.job().reversed)
        add(inWords(QT_TRANSLATE_NOOP("Report", "CHANGE GIVEN UP")), record.job().facts.outgoingSerial, inWords(QT_TRANSLATE_NOOP("Report", "the outgoing unit goes back on")), *record.job().reversed);
    for (const Accessory &accessory : record.job().accessories) {
        const QString part = inWords(QT_TRANSLATE_NOOP("Report", "%1, part %2")).arg(accessory.name, accessory.part);
        QString where = accessory.moved  ? inWords(QT_TRANSLATE_NOOP("Report", "moved to the incoming unit"))
                        : accessory.left ? inWords(QT_TRANSLATE_NOOP("Report", "left with the outgoing unit: %1")).arg(accessory.leftBecause)
                                         : inWords(QT_TRANSLATE_NOOP("Report", "NOT PLACED"));
        if (!accessory.replacement.isEmpty())
            where = inWords(QT_TRANSLATE_NOOP("Report", "%1; serial number %2 instead")).arg(where, accessory.replacement);
        add(part, accessory.serial, where, accessory.moved ? *accessory.moved : accessory.left ? *accessory.left : accessory.listed);
    }
    return rows;
}

} // namespace

Report temporariesReport()
{
    return {"temporary_items"_L1,
            QT_TRANSLATE_NOOP("Report", "Applied for the job"),
            {{"item"_L1, QT_TRANSLATE_NOOP("Report", "Number"), 7},
             {"sort"_L1, QT_TRANSLATE_NOOP("Report", "Sort"), 10},
             {"name"_L1, QT_TRANSLATE_NOOP("Report", "What, and where"), 27},
             {"zone"_L1, QT_TRANSLATE_NOOP("Report", "Zone"), 6},
             {"tag"_L1, QT_TRANSLATE_NOOP("Report", "Tag"), 6},
             {"applied"_L1, QT_TRANSLATE_NOOP("Report", "Applied"), 22},
             {"removed"_L1, QT_TRANSLATE_NOOP("Report", "Removed"), 22}},
            &temporaryRows};
}

Report unitReport()
{
    return {"unit"_L1,
            QT_TRANSLATE_NOOP("Report", "The unit"),
            {{"step"_L1, QT_TRANSLATE_NOOP("Report", "Step"), 20},
             {"serial"_L1, QT_TRANSLATE_NOOP("Report", "Serial number"), 14},
             {"told"_L1, QT_TRANSLATE_NOOP("Report", "What was looked at"), 46},
             {"signed"_L1, QT_TRANSLATE_NOOP("Report", "Signed"), 20}},
            &unitRows};
}

} // namespace core
