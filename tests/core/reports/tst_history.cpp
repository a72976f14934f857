// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QtTest>

#include <algorithm>

#include "core/job/loose_ends.hpp"
#include "core/reports/report.hpp"
#include "tests/core/reports/column.hpp"
#include "tests/core/reports/scene.hpp"
#include "tests/core/reports/unasked.hpp"

using namespace core;
using namespace Qt::StringLiterals;

/// What was done to the items, what was taken back or became void, and what was handed over.
class HistoryTest : public QObject {
    Q_OBJECT

private slots:
    void struckEntriesAreMarked();
    void voidedReadingsDoNotCount();
    void lifeTellsEveryEntryOfAnItem();
    void undoneByWhoHadItInHand();
    void halfDoneIsHandedOverAsSuch();
    void whatRestsOnNothing();
    void anInspectionThatWasDisturbed();
    void handoverOfAnotherMaking();
    void sealsWithTheirBatches();
};

void HistoryTest::struckEntriesAreMarked()
{
    const JobRecord record = scene::closedRecord(5);
    const auto rows = findReport(u"entries")->rows(record);
    const auto struck = std::count_if(rows.begin(), rows.end(), [](const ReportRow &row) { return row.standing == Standing::Struck; });
    QCOMPARE(struck, 2);
    const QStringList why = column(record, u"entries", "standing"_L1).filter(u"Struck by entry"_s);
    QCOMPARE(why.size(), 2);
    QVERIFY2(why[0].contains(u"wrong lead"_s), qPrintable(why[0]));
    QVERIFY2(why[1].contains(u"without its exhaust"_s), qPrintable(why[1]));
}

void HistoryTest::voidedReadingsDoNotCount()
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

void HistoryTest::lifeTellsEveryEntryOfAnItem()
{
    const JobRecord record = scene::closedRecord(5);
    const auto isAboutItem = [](const Entry &entry) { return entry.said.subject && entry.said.subject->startsWith(u'E'); };
    const auto expected = std::count_if(record.entries().begin(), record.entries().end(), isAboutItem);
    QCOMPARE(static_cast<qsizetype>(findReport(u"life")->rows(record).size()), expected);
}

void HistoryTest::undoneByWhoHadItInHand()
{
    // Eva sent E001 back to disconnected; Ana is who had undone it.
    const JobRecord record = scene::closedRecord(1);
    QCOMPARE(column(record, u"interfaces", "undone_by"_L1), QStringList{u"Ana Ruiz"_s});
    QCOMPARE(column(record, u"interfaces", "inspected_by"_L1), QStringList{u"Cho Min"_s});
    QCOMPARE(column(record, u"interfaces", "stage"_L1), QStringList{u"Inspected"_s});
}

/// What is joined and not secured: the incoming lead reads what is still to show.
void HistoryTest::halfDoneIsHandedOverAsSuch()
{
    scene::Scene scene;
    scene.open(3);
    scene.say(u"ana"_s, u"interface.disconnected"_s, u"E001"_s, {{u"tag"_s, u"1"_s}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}});
    scene.say(u"ana"_s, u"interface.reconnected"_s, u"E001"_s, {{u"tag_recovered"_s, u"1"_s}, {u"blanks_removed"_s, 0}, {u"seal_part"_s, u"SL-2204"_s}, {u"seal_batch"_s, u"B-1"_s}});
    scene.say(u"ana"_s, u"interface.disconnected"_s, u"E002"_s, {{u"tag"_s, u"2"_s}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}});
    scene.say(u"lee"_s, u"handover.given"_s, {}, {{u"to"_s, u"mia"_s}, {u"crew"_s, json::arrayOf({u"ben"_s, u"mia"_s})}, {u"open"_s, openAtHandover(scene.job())}});
    scene.say(u"mia"_s, u"handover.accepted"_s, {}, {{u"given"_s, json::Value(qint64(scene.job().lines.size()))}});
    scene.say(u"mia"_s, u"handover.given"_s, {}, {{u"to"_s, u"lee"_s}, {u"open"_s, openAtHandover(scene.job())}, {u"remarks"_s, u"No change."_s}});
    const JobRecord record = scene.record();
    const QString open = u"E001 reconnected, still to show: torque, leak; E002 disconnected"_s;
    QCOMPARE(column(record, u"handovers", "open"_L1), (QStringList{open, open}));
    QCOMPARE(column(record, u"handovers", "to"_L1), (QStringList{u"Mia Sand, Ben Ortiz"_s, u"Lee Park"_s})); // each once
}

/// Entries about an interface that no entry lists, or about none: each is shown by what it says, and counts for nothing.
void HistoryTest::whatRestsOnNothing()
{
    Unasked ledgers;
    ledgers.say(u"ana"_s, u"job.opened"_s, {}, {{u"zones"_s, json::Array{json::Object{{u"name"_s, u"Inboard"_s}}}}});
    ledgers.say(u"ana"_s, u"interface.listed"_s, u"E1"_s, {{u"name"_s, u"Clamp"_s}, {u"kind"_s, u"clamp"_s}, {u"zone"_s, u"Inboard"_s}, {u"critical"_s, true}, {u"inspections"_s, 2}});
    ledgers.say(u"ana"_s, u"interface.listed"_s, u"E2"_s, {{u"name"_s, u"Hose"_s}, {u"kind"_s, u"hose of another house"_s}, {u"zone"_s, u"Inboard"_s}});
    ledgers.say(u"ana"_s, u"interface.disconnected"_s, u"E1"_s, {});
    ledgers.say(u"ana"_s, u"interface.disconnected"_s, {}, {});
    ledgers.say(u"ana"_s, u"interface.found_open"_s, u"E2"_s, {{u"as_found"_s, u"loose"_s}});
    ledgers.say(u"ana"_s, u"interface.reconnected"_s, u"E1"_s, {});
    for (const QString &kind : {u"torque.applied"_s, u"bonding.measured"_s, u"inspection.accepted"_s, u"inspection.rejected"_s, u"interface.polished"_s}) {
        for (const QString &subject : {u"E1"_s, u"Z9"_s, QString()})
            ledgers.say(u"cho"_s, kind, subject, {{u"value"_s, u"5"_s}, {u"unit"_s, u"mΩ"_s}, {u"tool"_s, u"BM1"_s}, {u"reason"_s, u"gap"_s}});
    }
    ledgers.say(u"ana"_s, u"entry.struck"_s, {}, {{u"entry"_s, 16}, {u"reason"_s, u"wrong item"_s}}); // an acceptance of nothing
    const JobRecord record = ledgers.record();
    QCOMPARE(column(record, u"torque", "interface"_L1), (QStringList{u"E1"_s, u"Z9"_s, QString()}));
    QCOMPARE(column(record, u"torque", "specified"_L1), (QStringList{QString(), QString(), QString()}));
    QCOMPARE(column(record, u"bonding", "limit"_L1), (QStringList{QString(), QString(), QString()}));
    QCOMPARE(column(record, u"bonding", "worth"_L1).at(0), u"voided later"_s); // the rejection took it
    QVERIFY(column(record, u"bonding", "worth"_L1).at(1).startsWith(u"Fell"));
    QCOMPARE(column(record, u"inspections", "interface"_L1), (QStringList{u"E1 Clamp"_s, u"E1 Clamp"_s, u"Z9"_s, QString(), u"Z9"_s, QString()}));
    QCOMPARE(column(record, u"inspections", "authorisation"_L1).count(u"none found"_s), 6);
    QCOMPARE(column(record, u"interfaces", "undone_by"_L1), (QStringList{u"ana"_s, u"ana"_s}));
    QCOMPARE(column(record, u"interfaces", "kind"_L1), (QStringList{u"Clamp"_s, u"hose of another house"_s}));
    const auto life = findReport(u"life")->rows(record);
    QVERIFY2(life.front().group.endsWith(u"critical, 2 inspections"), qPrintable(life.front().group));
    QVERIFY(!record.kindOf(*InterfaceId::parse(u"E2")) && !record.kindOf(*InterfaceId::parse(u"Z9")));
    QVERIFY(record.kindOf(*InterfaceId::parse(u"E1")));
    const QStringList standing = column(record, u"entries", "standing"_L1);
    QCOMPARE(standing.filter(u"Struck by entry 23: wrong item"_s).size(), 1);
    QCOMPARE(column(record, u"entries", "statement"_L1).filter(u"does not know: interface.polished"_s).size(), 3);
}

/// It stands on the record, struck through, beside the one that was made anew.
void HistoryTest::anInspectionThatWasDisturbed()
{
    Unasked ledgers;
    ledgers.say(u"ana"_s, u"interface.listed"_s, u"E1"_s, {{u"name"_s, u"Lead"_s}, {u"requirements"_s, json::arrayOf({u"bonding"_s})}, {u"bonding_max"_s, u"2.5"_s}, {u"bonding_unit"_s, u"mΩ"_s}});
    ledgers.say(u"ana"_s, u"interface.disconnected"_s, u"E1"_s, {});
    ledgers.say(u"ana"_s, u"interface.reconnected"_s, u"E1"_s, {});
    const json::Object reading{{u"value"_s, u"1.5"_s}, {u"unit"_s, u"mΩ"_s}, {u"tool"_s, u"BM1"_s}};
    ledgers.say(u"ana"_s, u"bonding.measured"_s, u"E1"_s, reading);
    ledgers.say(u"ana"_s, u"bonding.measured"_s, u"E1"_s, reading); // the later reading is the one that counts
    ledgers.say(u"cho"_s, u"inspection.accepted"_s, u"E1"_s, {});
    QCOMPARE(column(ledgers.record(), u"bonding", "worth"_L1), (QStringList{u"voided later"_s, u"counts"_s}));
    QCOMPARE(column(ledgers.record(), u"inspections", "worth"_L1), QStringList{u"counts"_s});
    ledgers.say(u"ben"_s, u"interface.disturbed"_s, u"E1"_s, {});
    ledgers.say(u"ana"_s, u"bonding.measured"_s, u"E1"_s, reading);
    ledgers.say(u"cho"_s, u"inspection.accepted"_s, u"E1"_s, {});
    QCOMPARE(column(ledgers.record(), u"inspections", "worth"_L1), (QStringList{u"voided later"_s, u"counts"_s}));
    QCOMPARE(findReport(u"inspections")->rows(ledgers.record()).front().standing, Standing::Fallen);
}

/// The list of what was open, as another program might have written it.
void HistoryTest::handoverOfAnotherMaking()
{
    Unasked ledgers;
    const auto handOver = [&](const json::Object &body) {
        json::Object whole = body;
        whole.set(u"to"_s, u"mia"_s);
        ledgers.say(u"lee"_s, u"handover.given"_s, {}, whole);
        ledgers.say(u"mia"_s, u"handover.accepted"_s, {}, {});
    };
    handOver({});
    handOver({{u"open"_s, u"all of it"_s}});
    handOver({{u"open"_s, json::Array{u"E1"_s, json::Object{{u"interface"_s, u"E2"_s}, {u"stage"_s, u"disconnected"_s}}}}});
    QCOMPARE(column(ledgers.record(), u"handovers", "open"_L1), (QStringList{u"nothing"_s, u"nothing"_s, u"E2 disconnected"_s}));
}

/// Also one that came out again, since the item was sent back.
void HistoryTest::sealsWithTheirBatches()
{
    scene::Scene scene;
    scene.open(2);
    scene.work();
    const QString duct = u"E001 Bleed duct, station 1"_s;
    QCOMPARE(column(scene.record(), u"seals", "interface"_L1), (QStringList{duct, duct}));
    QCOMPARE(column(scene.record(), u"seals", "part"_L1), (QStringList{u"SL-2204"_s, u"SL-2204"_s}));
    QCOMPARE(column(scene.record(), u"seals", "batch"_L1), (QStringList{u"B-7719"_s, u"B-7719"_s}));
    QCOMPARE(column(scene.record(), u"seals", "worth"_L1), (QStringList{u"voided later"_s, u"counts"_s}));
}

QTEST_GUILESS_MAIN(HistoryTest)
#include "tst_history.moc"
