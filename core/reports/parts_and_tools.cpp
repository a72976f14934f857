// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/hardware_of.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

QString countText(qint64 count) { return count == 0 ? QString() : QString::number(count); }

/// What of a part was renewed, and of which batches: `L-7 (2), L-8 (2)`.
QString batchesOf(const InterfaceState &item, const QString &part)
{
    QStringList batches;
    for (const HardwareUse &line : item.restoration ? item.restoration->hardware : std::vector<HardwareUse>()) {
        if (line.part == part && line.renewed > 0)
            batches << inWords(QT_TRANSLATE_NOOP("Report", "%1 (%2)")).arg(line.batch, QString::number(line.renewed));
    }
    return batches.join(u", "_s);
}

QString standingOf(const InterfaceState &item, const HardwareBalance &part)
{
    switch (hardwareStanding(item, part)) {
    case HardwareStanding::NotUndone: return inWords(QT_TRANSLATE_NOOP("Report", "not undone"));
    case HardwareStanding::Open: return inWords(QT_TRANSLATE_NOOP("Report", "OPEN"));
    case HardwareStanding::Even: return inWords(QT_TRANSLATE_NOOP("Report", "even"));
    case HardwareStanding::NotEven: return inWords(QT_TRANSLATE_NOOP("Report", "NOT EVEN"));
    }
    Q_UNREACHABLE();
}

std::vector<ReportRow> hardwareRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const InterfaceState &item : record.job().items) {
        for (const HardwareBalance &one : hardwareOf(item)) {
            rows.push_back({{}, {item.listed.id.text() + u' ' + item.listed.name, one.part, one.mustBeNew ? inWords(QT_TRANSLATE_NOOP("Report", "always")) : QString(), countText(one.required),
                                 item.removal ? QString::number(one.removed) : QString(), countText(one.reused), countText(one.renewed), countText(one.scrapped), batchesOf(item, one.part), standingOf(item, one)}});
        }
    }
    return rows;
}

std::vector<ReportRow> tagRows(const JobRecord &record)
{
    const TagControl &tags = record.job().tags;
    std::vector<ReportRow> rows;
    for (const TagBlock &block : tags.blocks) {
        QStringList lost;
        for (const LostTag &one : tags.lost) {
            if (blockOf(tags, one.tag) == &block)
                lost << inWords(QT_TRANSLATE_NOOP("Report", "%1 on %2, replaced by %3: %4 (%5)")).arg(one.tag, one.item.text(), one.replacement, one.why, signedText(record, one.mark));
        }
        rows.push_back({{}, {blockText(block), QString::number(block.size()), lost.join(u"; "_s), signedText(record, block.issued), block.returned ? signedText(record, *block.returned) : inWords(QT_TRANSLATE_NOOP("Report", "STILL OUT"))}});
    }
    return rows;
}

std::vector<ReportRow> toolRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const JobTool &tool : record.job().tools.issues) {
        const Tool *registered = record.reg().tool(tool.marking);
        QString became = tool.returned ? signedText(record, *tool.returned) : inWords(QT_TRANSLATE_NOOP("Report", "STILL OUT"));
        if (tool.missing)
            became = tool.returned ? inWords(QT_TRANSLATE_NOOP("Report", "missing since %1, finding %2; back: %3")).arg(signedText(record, tool.missing->mark), tool.missing->finding.text(), became)
                                   : inWords(QT_TRANSLATE_NOOP("Report", "MISSING since %1, finding %2")).arg(signedText(record, tool.missing->mark), tool.missing->finding.text());
        const QString name = tool.name.isEmpty() && registered ? registered->name : tool.name;
        rows.push_back({{}, {tool.marking.text(), QCoreApplication::translate("Choice", jobToolSortText(tool.sort).data()), name, tool.sort == JobToolSort::Kit ? QString::number(tool.pieces) : QString(),
                             tool.holder ? personText(record.reg(), *tool.holder) : QString(), signedText(record, tool.issued), became}});
    }
    return rows;
}

} // namespace

Report hardwareReport()
{
    return {"hardware"_L1,
            QT_TRANSLATE_NOOP("Report", "Hardware"),
            {{"interface"_L1, QT_TRANSLATE_NOOP("Report", "Interface"), 22},
             {"part"_L1, QT_TRANSLATE_NOOP("Report", "Part number"), 13},
             {"new"_L1, QT_TRANSLATE_NOOP("Report", "New"), 7},
             {"required"_L1, QT_TRANSLATE_NOOP("Report", "Required"), 8},
             {"removed"_L1, QT_TRANSLATE_NOOP("Report", "Came off"), 8},
             {"reused"_L1, QT_TRANSLATE_NOOP("Report", "Reused"), 7},
             {"renewed"_L1, QT_TRANSLATE_NOOP("Report", "Renewed"), 8},
             {"scrapped"_L1, QT_TRANSLATE_NOOP("Report", "Scrapped"), 8},
             {"batches"_L1, QT_TRANSLATE_NOOP("Report", "Batch (number)"), 11},
             {"balance"_L1, QT_TRANSLATE_NOOP("Report", "Balance"), 8}},
            &hardwareRows};
}

Report tagsReport()
{
    return {"tags"_L1,
            QT_TRANSLATE_NOOP("Report", "Tags"),
            {{"block"_L1, QT_TRANSLATE_NOOP("Report", "Tags"), 12},
             {"number"_L1, QT_TRANSLATE_NOOP("Report", "Number"), 8},
             {"lost"_L1, QT_TRANSLATE_NOOP("Report", "Lost and replaced"), 36},
             {"issued"_L1, QT_TRANSLATE_NOOP("Report", "Issued"), 22},
             {"returned"_L1, QT_TRANSLATE_NOOP("Report", "Returned"), 22}},
            &tagRows};
}

Report jobToolsReport()
{
    return {"tools_issued"_L1,
            QT_TRANSLATE_NOOP("Report", "Tools issued to the job"),
            {{"tool"_L1, QT_TRANSLATE_NOOP("Report", "Marking"), 12},
             {"sort"_L1, QT_TRANSLATE_NOOP("Report", "Sort"), 12},
             {"name"_L1, QT_TRANSLATE_NOOP("Report", "What it is"), 22},
             {"pieces"_L1, QT_TRANSLATE_NOOP("Report", "Pieces"), 6},
             {"holder"_L1, QT_TRANSLATE_NOOP("Report", "Who had it"), 12},
             {"issued"_L1, QT_TRANSLATE_NOOP("Report", "Issued"), 18},
             {"returned"_L1, QT_TRANSLATE_NOOP("Report", "Returned"), 18}},
            &toolRows};
}

} // namespace core
