// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/list/csv.hpp"
#include "core/reports/report.hpp"

namespace core {

const std::vector<Report> &reports()
{
    static const std::vector<Report> all = {
        stillDueReport(), factsReport(), linksReport(), handedOnReport(),   signaturesReport(), peopleReport(), toolsReport(), interfacesReport(), conditionsReport(), letAloneReport(), lifeReport(),        torqueReport(),   bondingReport(),
        leaksReport(),   liftsReport(),  servicingReport(), weightReport(), inspectionsReport(), findingsReport(), handoversReport(), handedOverReport(),
        holdsReport(),   temporariesReport(), unitReport(), hardwareReport(), sealsReport(), tagsReport(), jobToolsReport(), testsReport(), followUpsReport(), lessonsReport(), burstsReport(), entriesReport(),
    };
    return all;
}

const Report *findReport(QStringView name)
{
    const auto &all = reports();
    const auto at = std::find_if(all.begin(), all.end(), [&](const Report &report) { return report.name == name; });
    return at == all.end() ? nullptr : &*at;
}

QByteArray reportCsv(const Report &report, const JobRecord &record)
{
    std::vector<std::vector<QString>> records(1);
    for (const ReportColumn &column : report.columns)
        records.front().push_back(column.name);
    for (const ReportRow &row : report.rows(record)) {
        std::vector<QString> cells;
        for (const QString &cell : row.cells)
            cells.push_back(csv::guarded(cell));
        records.push_back(std::move(cells));
    }
    return csv::write(records);
}

} // namespace core
