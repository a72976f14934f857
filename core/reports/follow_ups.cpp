// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

std::vector<ReportRow> followUpRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const FollowUp &one : record.job().followUps)
        rows.push_back({{}, {one.due.toString(Qt::ISODate), one.text, one.item ? one.item->text() : QString(), signerOf(record, one.mark), one.done ? inWords(QT_TRANSLATE_NOOP("Report", "done, %1")).arg(signerOf(record, *one.done)) : inWords(QT_TRANSLATE_NOOP("Report", "STILL DUE"))}});
    return rows;
}

} // namespace

Report followUpsReport()
{
    return {"follow_ups"_L1,
            QT_TRANSLATE_NOOP("Report", "Follow-ups"),
            {{"due"_L1, QT_TRANSLATE_NOOP("Report", "Due on, at most"), 14},
             {"what"_L1, QT_TRANSLATE_NOOP("Report", "What is due"), 44},
             {"interface"_L1, QT_TRANSLATE_NOOP("Report", "Interface"), 10},
             {"set_by"_L1, QT_TRANSLATE_NOOP("Report", "Set by"), 16},
             {"state"_L1, QT_TRANSLATE_NOOP("Report", "State"), 16}},
            &followUpRows};
}

} // namespace core
