// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

QString idOf(const std::optional<InterfaceId> &item) { return item ? item->text() : QString(); }

/// What a closed job leaves behind: closure asks that all else is settled. While a job is open its loose ends tell more.
std::vector<ReportRow> stillDueRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    if (!record.isClosed())
        return rows;
    for (const Finding &finding : record.job().findings) {
        if (finding.closed && finding.disposition == u"deferred")
            rows.push_back({{}, {finding.limit.toString(Qt::ISODate), inWords(QT_TRANSLATE_NOOP("Report", "Finding %1, deferred: %2")).arg(finding.id.text(), finding.description), idOf(finding.item), signerOf(record, *finding.closed), QString::number(finding.closed->seq)}});
    }
    for (const FollowUp &one : record.job().followUps) {
        if (!one.done)
            rows.push_back({{}, {one.due.toString(Qt::ISODate), one.text, idOf(one.item), signerOf(record, one.mark), QString::number(one.mark.seq)}});
    }
    return rows;
}

} // namespace

Report stillDueReport()
{
    return {"still_due"_L1,
            QT_TRANSLATE_NOOP("Report", "Still due after this record"),
            {{"due"_L1, QT_TRANSLATE_NOOP("Report", "At the latest on"), 14},
             {"what"_L1, QT_TRANSLATE_NOOP("Report", "What is due"), 52},
             {"interface"_L1, QT_TRANSLATE_NOOP("Report", "Interface"), 10},
             {"set_by"_L1, QT_TRANSLATE_NOOP("Report", "Set by"), 16},
             {"entry"_L1, QT_TRANSLATE_NOOP("Report", "Entry"), 8}},
            &stillDueRows};
}

} // namespace core
