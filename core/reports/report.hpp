// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLatin1String>
#include <QString>

#include <vector>

#include "core/job/state.hpp"
#include "core/reports/job_record.hpp"

namespace core {

/// A column of a report.
struct ReportColumn {
    QLatin1String name; ///< stable text for files: `calibration_due`
    const char *title;  ///< for screens and paper, marked for translation in context "Report"
    int width;          ///< share of the page's width, relative to the other columns; 0 for files alone
};

struct ReportRow {
    QString group; ///< rows that follow each other with the same group stand under one heading; empty for none
    std::vector<QString> cells;
    Standing standing = Standing::Stands; ///< a struck or fallen row is shown struck through, and legible
    bool operator==(const ReportRow &) const = default;
};

/// One report on a job: rows from its state and entries, shared by paper, CSV and screen.
struct Report {
    QLatin1String name;
    const char *title; ///< marked for translation in context "Report"
    std::vector<ReportColumn> columns;
    std::vector<ReportRow> (*rows)(const JobRecord &);
};

/// Every report, in the order in which the record prints them.
const std::vector<Report> &reports();
const Report *findReport(QStringView name);

/// The report as CSV: the columns' stable names, then the rows; cells guarded against being run as formulas (csv.hpp).
QByteArray reportCsv(const Report &report, const JobRecord &record);

// Rows of the catalogue, one function a file of this folder.
Report factsReport();
Report stillDueReport();
Report linksReport();
Report handedOnReport();
Report signaturesReport();
Report peopleReport();
Report toolsReport();
Report interfacesReport();
Report lifeReport();
Report torqueReport();
Report bondingReport();
Report leaksReport();
Report liftsReport();
Report servicingReport();
Report weightReport();
Report conditionsReport();
Report letAloneReport();
Report inspectionsReport();
Report holdsReport();
Report temporariesReport();
Report unitReport();
Report testsReport();
Report followUpsReport();
Report lessonsReport();
Report hardwareReport();
Report sealsReport();
Report tagsReport();
Report jobToolsReport();
Report findingsReport();
Report handoversReport();
Report handedOverReport();
Report burstsReport();
Report entriesReport();

} // namespace core
