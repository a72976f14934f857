// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QSet>
#include <QtTest>

#include <algorithm>

#include "core/job/loose_ends.hpp"
#include "core/list/csv.hpp"
#include "core/reports/report.hpp"
#include "tests/core/reports/column.hpp"
#include "tests/core/reports/scene.hpp"
#include "tests/core/reports/unasked.hpp"

using namespace core;
using namespace Qt::StringLiterals;

/// The catalogue of reports: each is whole, and says what there is to say of a job that has little.
class ReportsTest : public QObject {
    Q_OBJECT

private slots:
    void everyReportIsWhole();
    void everyReportAsCsv();
    void emptyJob();
    void whatIsOpenSaysSo();
    void factsThatWereNotGiven();
};

void ReportsTest::everyReportIsWhole()
{
    const JobRecord record = scene::closedRecord(25);
    QSet<QString> names;
    QVERIFY(!reports().empty());
    for (const Report &report : reports()) {
        QVERIFY2(!names.contains(report.name), report.name.data());
        names.insert(report.name);
        QVERIFY(QLatin1String(report.title).size() > 0);
        const auto rows = report.rows(record);
        const bool mayBeEmpty = report.name == "off_the_list"_L1 || report.name == "bursts"_L1 || report.name == "linked_jobs"_L1 || report.name == "handed_on"_L1; // this job has none: tst_states, core.rules.revision
        QVERIFY2(!rows.empty() || mayBeEmpty, report.name.data());
        for (const ReportRow &row : rows)
            QCOMPARE(row.cells.size(), report.columns.size());
        const bool isOnPaper = std::any_of(report.columns.begin(), report.columns.end(), [](const ReportColumn &c) { return c.width > 0; });
        QVERIFY2(isOnPaper, report.name.data());
    }
}

void ReportsTest::everyReportAsCsv()
{
    const JobRecord record = scene::closedRecord(10);
    for (const Report &report : reports()) {
        const csv::Table table = csv::read(reportCsv(report, record), report.name);
        QVERIFY(table.faults.empty());
        QCOMPARE(table.records.size(), report.rows(record).size() + 1);
        for (std::size_t i = 0; i < report.columns.size(); ++i)
            QCOMPARE(table.records[0].fields[i].text, QString(report.columns[i].name));
        for (const csv::Record &row : table.records)
            QCOMPARE(row.fields.size(), report.columns.size());
    }
}

void ReportsTest::emptyJob()
{
    const JobRecord record = JobRecord({}, {}, scene::openRecord(1).kinds());
    for (const Report &report : reports())
        QVERIFY(report.name == "facts"_L1 || report.rows(record).empty());
    QVERIFY(!record.entry(0) && !record.entry(1));
    QCOMPARE(column(record, u"facts", "value"_L1), QStringList{u"NOT CLOSED"_s});
}

void ReportsTest::whatIsOpenSaysSo()
{
    scene::Scene scene;
    scene.open(3);
    scene.say(u"ben"_s, u"finding.raised"_s, u"F1"_s, {{u"description"_s, u"Chafed."_s}});
    scene.say(u"lee"_s, u"handover.given"_s, {}, {{u"to"_s, u"mia"_s}, {u"open"_s, openAtHandover(scene.job())}});
    const JobRecord record = scene.record();
    QVERIFY(!record.isClosed());
    QCOMPARE(column(record, u"handovers", "open"_L1), QStringList{u"finding F1 open (Chafed.)"_s});
    QCOMPARE(column(record, u"interfaces", "undone_by"_L1), (QStringList{QString(), QString(), QString()}));
    QCOMPARE(column(record, u"interfaces", "stage"_L1), (QStringList{u"Connected"_s, u"Connected"_s, u"Connected"_s}));
    QVERIFY(column(record, u"facts", "value"_L1).contains(u"NOT CLOSED"_s));
    QCOMPARE(column(record, u"findings", "disposition"_L1), QStringList{u"OPEN"_s});
    QCOMPARE(column(record, u"handovers", "accepted"_L1), QStringList{u"NOT ACCEPTED"_s});
}

void ReportsTest::factsThatWereNotGiven()
{
    Unasked ledgers;
    ledgers.say(u"ana"_s, u"job.opened"_s, {},
                {{u"title"_s, u"Engine change"_s}, {u"follows"_s, u"WO-0"_s}, {u"zones"_s, json::Array{json::Object{{u"name"_s, u"Inboard"_s}, {u"technician"_s, u"ana"_s}}, json::Object{{u"name"_s, u"Outboard"_s}}}}});
    QStringList facts;
    const JobRecord record = ledgers.record();
    for (const ReportRow &row : findReport(u"facts")->rows(record))
        facts << row.cells.front() + u": "_s + row.cells.back();
    QCOMPARE(facts, (QStringList{u"Title: Engine change"_s, u"Follows the closed job: WO-0"_s, u"Torque readings are accepted: anywhere in the band"_s, u"Fasteners are taken: in their order alone"_s, u"Zones: Inboard: ana; Outboard"_s,
                                 u"Opened: ana, 2026-03-02 06:00:00 UTC, entry 1"_s, u"Closed: NOT CLOSED"_s, u"Job ledger: elsewhere"_s}));
    QVERIFY(!findReport(u"weather"));
}

QTEST_GUILESS_MAIN(ReportsTest)
#include "tst_reports.moc"
