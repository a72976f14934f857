// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"
#include "core/job/bursts.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

std::vector<ReportRow> burstRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const Burst &burst : burstsOfSigning(record.job())) {
        const qint64 seconds = (burst.to.milliseconds() - burst.from.milliseconds()) / 1000;
        rows.push_back({{}, {record.registerAt(burst.first).nameOf(burst.by), meaningInWords(QString(burst.meaning)), QString::number(burst.interfaces), QString::number(seconds), momentText(record.job(), burst.first, burst.from),
                             inWords(QT_TRANSLATE_NOOP("Report", "%1 to %2")).arg(burst.first).arg(burst.last), burst.struck > 0 ? QString::number(burst.struck) : QString()}});
    }
    return rows;
}

} // namespace

Report burstsReport()
{
    return {"bursts"_L1,
            QT_TRANSLATE_NOOP("Report", "Many signatures in a short time"),
            {{"signed_by"_L1, QT_TRANSLATE_NOOP("Report", "Signed by"), 20},
             {"meaning"_L1, QT_TRANSLATE_NOOP("Report", "Signed as"), 24},
             {"interfaces"_L1, QT_TRANSLATE_NOOP("Report", "Interfaces"), 10},
             {"seconds"_L1, QT_TRANSLATE_NOOP("Report", "Within seconds"), 12},
             {"from"_L1, QT_TRANSLATE_NOOP("Report", "From"), 20},
             {"entries"_L1, QT_TRANSLATE_NOOP("Report", "Entries"), 14},
             {"struck"_L1, QT_TRANSLATE_NOOP("Report", "Of these struck"), 10}},
            &burstRows};
}

} // namespace core
