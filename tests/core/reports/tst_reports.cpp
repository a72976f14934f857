// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/report.hpp"

#include <QSet>
#include <QtTest>

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/list/csv.hpp"
#include "core/reports/timeline.hpp"
#include "tests/core/reports/scene.hpp"

using namespace core;
using namespace Qt::StringLiterals;

namespace {

/// The cells of one column of a report, by its name.
QStringList column(const JobRecord &record, QStringView report, QLatin1String name)
{
    const Report *found = findReport(report);
    const auto at = std::find_if(found->columns.begin(), found->columns.end(), [&](const ReportColumn &c) { return c.name == name; });
    QStringList cells;
    for (const ReportRow &row : found->rows(record))
        cells << row.cells[static_cast<std::size_t>(at - found->columns.begin())];
    return cells;
}

Statement statement(const QString &kind, const QString &subject, const json::Object &body)
{
    return {*LedgerId::parse(u"job"), 1, Instant::fromMilliseconds(0), *PersonId::parse(u"ana"), {}, u"performed"_s, kind,
            subject.isEmpty() ? std::nullopt : std::optional(subject), body, std::nullopt, {}};
}

Register twoPeople()
{
    scene::Scene scene;
    return scene.reg();
}

} // namespace

class ReportsTest : public QObject {
    Q_OBJECT

private slots:
    void everyReportIsWhole();
    void everyReportAsCsv();
    void sentences_data();
    void sentences();
    void everyActHasASentence();
    void kindsHaveTheirOwnWords();
    void momentsNameTheirZone();
    void registerIsReadAsPinned();
    void struckEntriesAreMarked();
    void voidedReadingsDoNotCount();
    void lifeTellsEveryEntryOfAnItem();
    void undoneByWhoHadItInHand();
    void whatIsOpenSaysSo();
    void emptyJob();
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
        QVERIFY2(!rows.empty(), report.name.data());
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

void ReportsTest::sentences_data()
{
    QTest::addColumn<QString>("kind");
    QTest::addColumn<QString>("subject");
    QTest::addColumn<json::Object>("body");
    QTest::addColumn<QString>("sentence");
    QTest::addRow("texts and numbers") << u"interface.disconnected"_s << u"E12"_s
                                       << json::Object{{u"tag"_s, u"17"_s}, {u"blanks_fitted"_s, 2}, {u"as_found"_s, u"sound"_s}}
                                       << u"Disconnected E12. Tag: 17; Blanks fitted: 2; As found: sound."_s;
    QTest::addRow("unit and tool") << u"torque.applied"_s << u"E12"_s
                                   << json::Object{{u"fastener"_s, 3}, {u"value"_s, u"23.50"_s}, {u"unit"_s, u"N·m"_s}, {u"tool"_s, u"TW1"_s}}
                                   << u"Torqued E12. Fastener: 3; Reading: 23.50 N·m; Tool: TW1 (Torque wrench)."_s;
    QTest::addRow("people by name") << u"safetying.applied"_s << u"E12"_s
                                    << json::Object{{u"method"_s, u"lockwire"_s}, {u"helpers"_s, json::arrayOf({u"ben"_s, u"zoe"_s})}}
                                    << u"Safetied E12. Method: lockwire; Helped, supervised or taught by: Ben Ortiz, zoe."_s;
    QTest::addRow("one unit for two") << u"interface.listed"_s << u"E1"_s
                                      << json::Object{{u"name"_s, u"Clamp"_s}, {u"torque_min"_s, u"3"_s}, {u"torque_max"_s, u"4"_s}, {u"torque_unit"_s, u"N·m"_s}, {u"critical"_s, true}}
                                      << u"Listed E1. Name: Clamp; Torque, least: 3 N·m; Torque, most: 4 N·m; Critical: yes."_s;
    QTest::addRow("no body") << u"inspection.accepted"_s << u"E12"_s << json::Object() << u"Inspected and accepted E12."_s;
    QTest::addRow("records") << u"handover.given"_s << QString()
                             << json::Object{{u"to"_s, u"mia"_s}, {u"open"_s, json::Array{json::Value(json::Object{{u"interface"_s, u"E1"_s}, {u"stage"_s, u"disconnected"_s}})}}}
                             << u"Handed over. To the incoming lead: Mia Sand; Open and half done: E1 (disconnected)."_s;
    QTest::addRow("nothing open") << u"handover.given"_s << QString() << json::Object{{u"to"_s, u"mia"_s}, {u"open"_s, json::Array()}}
                                  << u"Handed over. To the incoming lead: Mia Sand; Open and half done: none."_s;
    QTest::addRow("full stop once") << u"finding.raised"_s << u"F1"_s << json::Object{{u"description"_s, u"Chafed."_s}}
                                    << u"Finding raised F1. What was found: Chafed."_s;
    QTest::addRow("kind of a later version") << u"interface.polished"_s << u"E12"_s << json::Object()
                                             << u"An entry of a kind that this version does not know: interface.polished."_s;
}

void ReportsTest::sentences()
{
    QFETCH(QString, kind);
    QFETCH(QString, subject);
    QFETCH(json::Object, body);
    QFETCH(QString, sentence);
    QCOMPARE(describe(statement(kind, subject, body), twoPeople()), sentence);
}

void ReportsTest::everyActHasASentence()
{
    for (const Act &act : acts()) {
        const QString sentence = describe(statement(act.kind, {}, {}), Register());
        QVERIFY2(sentence.startsWith(QLatin1String(act.done)), qPrintable(sentence));
        QVERIFY(sentence.endsWith(u'.'));
    }
}

void ReportsTest::kindsHaveTheirOwnWords()
{
    const JobRecord record = scene::openRecord(5);
    const Kind *mount = record.kinds().find(u"mount");
    QCOMPARE(describe(statement(u"interface.disconnected"_s, u"M1"_s, {}), Register(), mount), u"Released M1."_s);
    QCOMPARE(describe(statement(u"interface.reconnected"_s, u"M1"_s, {}), Register(), mount), u"Fitted M1."_s);
    QCOMPARE(describe(statement(u"interface.disturbed"_s, u"M1"_s, {}), Register(), mount), u"Disturbed M1."_s);
}

void ReportsTest::momentsNameTheirZone()
{
    QCOMPARE(momentText(*Instant::parseLedger(u"2026-03-02T08:14:31.120Z")), u"2026-03-02 08:14:31 UTC"_s);
}

void ReportsTest::registerIsReadAsPinned()
{
    // The scene calibrates TW1 anew before its first reading, so every reading stands under the new certificate; the register as
    // the first entry pinned it knows the old one alone.
    const JobRecord record = scene::closedRecord(5);
    const ToolId wrench = *ToolId::parse(u"TW1");
    QCOMPARE(record.registerAt(1).tool(wrench)->calibrations.size(), 1U);
    QCOMPARE(record.reg().tool(wrench)->calibrations.size(), 2U);
    QCOMPARE(column(record, u"tools", "certificate"_L1), (QStringList{u"CC-1002"_s, u"CC-1188"_s}));
    QVERIFY(column(record, u"torque", "calibration_due"_L1).contains(u"2027-02-28"_s));
    QVERIFY(column(record, u"inspections", "authorisation"_L1).contains(u"cho-inspect (QM-4/cho)"_s));
}

void ReportsTest::struckEntriesAreMarked()
{
    const JobRecord record = scene::closedRecord(5);
    const auto rows = findReport(u"entries")->rows(record);
    const auto struck = std::count_if(rows.begin(), rows.end(), [](const ReportRow &row) { return row.standing == Standing::Struck; });
    QCOMPARE(struck, 1);
    const QStringList why = column(record, u"entries", "standing"_L1).filter(u"Struck by entry"_s);
    QCOMPARE(why.size(), 1);
    QVERIFY2(why[0].contains(u"wrong lead"_s), qPrintable(why[0]));
}

void ReportsTest::voidedReadingsDoNotCount()
{
    // E001 was sent back after its four fasteners had been torqued: four readings are void, four count.
    const JobRecord record = scene::closedRecord(1);
    const QStringList worth = column(record, u"torque", "worth"_L1);
    QCOMPARE(worth, (QStringList{u"voided later"_s, u"voided later"_s, u"voided later"_s, u"voided later"_s, u"counts"_s, u"counts"_s, u"counts"_s, u"counts"_s}));
    QCOMPARE(column(record, u"inspections", "worth"_L1), (QStringList{u"sent back"_s, u"counts"_s}));
    // On paper they are struck through as well.
    const auto rows = findReport(u"torque")->rows(record);
    QCOMPARE(std::count_if(rows.begin(), rows.begin() + 4, [](const ReportRow &row) { return row.standing == Standing::Fallen; }), 4);
    QCOMPARE(std::count_if(rows.begin() + 4, rows.end(), [](const ReportRow &row) { return row.standing == Standing::Stands; }), 4);
}

void ReportsTest::lifeTellsEveryEntryOfAnItem()
{
    const JobRecord record = scene::closedRecord(5);
    const auto isAboutItem = [](const Entry &entry) { return entry.said.subject && entry.said.subject->startsWith(u'E'); };
    const auto expected = std::count_if(record.entries().begin(), record.entries().end(), isAboutItem);
    QCOMPARE(static_cast<qsizetype>(findReport(u"life")->rows(record).size()), expected);
}

void ReportsTest::undoneByWhoHadItInHand()
{
    // Eva sent E001 back to disconnected; Ana is who had undone it.
    const JobRecord record = scene::closedRecord(1);
    QCOMPARE(column(record, u"interfaces", "undone_by"_L1), QStringList{u"Ana Ruiz"_s});
    QCOMPARE(column(record, u"interfaces", "inspected_by"_L1), QStringList{u"Cho Min"_s});
    QCOMPARE(column(record, u"interfaces", "stage"_L1), QStringList{u"Inspected"_s});
}

void ReportsTest::whatIsOpenSaysSo()
{
    scene::Scene scene;
    scene.open(3);
    scene.say(u"ben"_s, u"finding.raised"_s, u"F1"_s, {{u"description"_s, u"Chafed."_s}});
    scene.say(u"lee"_s, u"handover.given"_s, {}, {{u"to"_s, u"mia"_s}, {u"open"_s, json::Array()}});
    const JobRecord record = scene.record();
    QVERIFY(!record.isClosed());
    QVERIFY(column(record, u"facts", "value"_L1).contains(u"NOT CLOSED"_s));
    QCOMPARE(column(record, u"findings", "disposition"_L1), QStringList{u"OPEN"_s});
    QCOMPARE(column(record, u"handovers", "accepted"_L1), QStringList{u"NOT ACCEPTED"_s});
}

void ReportsTest::emptyJob()
{
    const JobRecord record = JobRecord({}, {}, scene::openRecord(1).kinds());
    for (const Report &report : reports())
        QVERIFY(report.name == "facts"_L1 || report.rows(record).empty());
    QVERIFY(!record.entry(0) && !record.entry(1));
}

QTEST_GUILESS_MAIN(ReportsTest)
#include "tst_reports.moc"
