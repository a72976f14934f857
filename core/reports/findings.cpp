// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

QString dispositionText(const Finding &finding)
{
    return finding.limit.isValid() ? inWords(QT_TRANSLATE_NOOP("Report", "%1 until %2")).arg(finding.disposition, finding.limit.toString(Qt::ISODate)) : finding.disposition;
}

std::vector<ReportRow> findingRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const Finding &finding : record.job().findings) {
        const QString open = inWords(QT_TRANSLATE_NOOP("Report", "OPEN"));
        rows.push_back({{},
                        {finding.id.text(), finding.item ? finding.item->text() : QString(), finding.description,
                         signedText(record, finding.raised), finding.closed ? dispositionText(finding) : open, finding.authority, finding.remarks,
                         finding.closed ? signedText(record, *finding.closed) : QString()}});
    }
    return rows;
}

} // namespace

Report findingsReport()
{
    return {"findings"_L1,
            QT_TRANSLATE_NOOP("Report", "Findings"),
            {{"finding"_L1, QT_TRANSLATE_NOOP("Report", "Finding"), 8},
             {"interface"_L1, QT_TRANSLATE_NOOP("Report", "Interface"), 9},
             {"description"_L1, QT_TRANSLATE_NOOP("Report", "What was found"), 24},
             {"raised"_L1, QT_TRANSLATE_NOOP("Report", "Raised"), 15},
             {"disposition"_L1, QT_TRANSLATE_NOOP("Report", "Disposition"), 12},
             {"authority"_L1, QT_TRANSLATE_NOOP("Report", "Authority reference"), 11},
             {"remarks"_L1, QT_TRANSLATE_NOOP("Report", "Remarks"), 14},
             {"closed"_L1, QT_TRANSLATE_NOOP("Report", "Closed"), 15}},
            &findingRows};
}

} // namespace core
