// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QtTest>

#include "core/reports/figures.hpp"
#include "core/reports/report.hpp"
#include "tests/core/reports/column.hpp"
#include "tests/core/reports/scene.hpp"
#include "tests/core/reports/unasked.hpp"

using namespace core;
using namespace Qt::StringLiterals;

/// Readings and worked-out figures, each beside what it was judged by.
class FiguresTest : public QObject {
    Q_OBJECT

private slots:
    void whatReadingsWereJudgedBy();
    void torqueWithAllThatWasTold();
    void torqueWithoutAnAdapter();
    void bondingByItsLimit_data();
    void bondingByItsLimit();
    void leaksAgainstTheirLimit();
    void leaksBySize();
    void liftsAsPlanned();
    void liftsOfAnotherMaking();
    void servicingAgainstItsBand_data();
    void servicingAgainstItsBand();
    void weightAndBalance();
};

/// What the readings were judged by stands in the record: without it nobody can judge them again from the paper.
void FiguresTest::whatReadingsWereJudgedBy()
{
    Unasked ledgers;
    ledgers.say(u"ana"_s, u"job.opened"_s, {},
                {{u"title"_s, u"Engine change"_s}, {u"acceptance"_s, u"guarded"_s}, {u"torque_skips"_s, u"asked"_s}, {u"leak_scheme"_s, u"FAA"_s}, {u"leak_classes"_s, json::arrayOf({u"stain"_s, u"seep"_s})},
                 {u"leak_up_to"_s, json::arrayOf({u"under 0.75 in"_s})}, {u"leak_minutes"_s, 30}});
    ledgers.onRegister(u"tool.registered"_s, u"TW8"_s,
                       {{u"name"_s, u"Wrench"_s}, {u"range_min"_s, u"20"_s}, {u"range_max"_s, u"100"_s}, {u"unit"_s, u"N·m"_s}, {u"torque_type"_s, u"indicating"_s}, {u"graduation"_s, u"0.5"_s}, {u"deviation"_s, u"4"_s}, {u"deviation_source"_s, u"class A"_s}, {u"length"_s, u"320 mm"_s}});
    ledgers.say(u"ana"_s, u"torque.applied"_s, u"E1"_s, {{u"tool"_s, u"TW8"_s}});
    const JobRecord record = ledgers.record();
    QStringList facts;
    for (const ReportRow &row : findReport(u"facts")->rows(record))
        facts << row.cells.front() + u": "_s + row.cells.back();
    QVERIFY2(facts.contains(u"Torque readings are accepted: with a guard band as wide as what the tool may be off"_s), qPrintable(facts.join(u'\n')));
    QVERIFY2(facts.contains(u"Fasteners are taken: out of their order with a reason"_s), qPrintable(facts.join(u'\n')));
    QVERIFY2(facts.contains(u"Leak classes, the least first: FAA: stain (under 0.75 in), seep; 30 minutes after wiping dry"_s), qPrintable(facts.join(u'\n')));
    QCOMPARE(column(record, u"tools", "graduation"_L1), QStringList{u"0.5 N·m"_s});
    QCOMPARE(column(record, u"tools", "deviation"_L1), QStringList{u"± 4 %, class A"_s});
    QCOMPARE(column(record, u"tools", "length"_L1), QStringList{u"320 mm"_s});
}

/// Everything that a torque entry may tell has a column. The wrench: AC 43.13-1B (9/8/98) par. 7-40 h turned round, T = Y · (L + E) / L:
/// 100 lbf·in on a 10 in arm with 1.5 in in line are 115 lbf·in at the fastener.
void FiguresTest::torqueWithAllThatWasTold()
{
    Unasked ledgers;
    ledgers.onRegister(u"tool.registered"_s, u"TW1"_s, {{u"name"_s, u"Torque wrench"_s}, {u"range_min"_s, u"20"_s}, {u"range_max"_s, u"200"_s}, {u"unit"_s, u"lbf·in"_s}, {u"torque_type"_s, u"indicating"_s}});
    ledgers.say(u"ana"_s, u"interface.listed"_s, u"E1"_s,
                {{u"name"_s, u"Clamp"_s}, {u"requirements"_s, json::arrayOf({u"torque"_s})}, {u"torque_fasteners"_s, 2}, {u"torque_min"_s, u"110.0"_s}, {u"torque_max"_s, u"120"_s},
                 {u"torque_unit"_s, u"lbf·in"_s}, {u"torque_prevailing"_s, u"added"_s}, {u"torque_passes"_s, json::arrayOf({u"50"_s, u"100"_s})}});
    ledgers.say(u"ana"_s, u"interface.disconnected"_s, u"E1"_s, {});
    ledgers.say(u"ana"_s, u"interface.reconnected"_s, u"E1"_s, {});
    json::Object body{{u"fastener"_s, 2}, {u"pass"_s, 1}, {u"value"_s, u"52.0"_s}, {u"unit"_s, u"lbf·in"_s}, {u"tool"_s, u"TW1"_s}, {u"skip_reason"_s, u"Bracket in the way."_s}};
    ledgers.say(u"ana"_s, u"torque.applied"_s, u"E1"_s, body);
    body = {{u"fastener"_s, 2}, {u"pass"_s, 2}, {u"value"_s, u"100"_s}, {u"unit"_s, u"lbf·in"_s}, {u"tool"_s, u"TW1"_s}, {u"setting"_s, u"100 lbf·in"_s},
            {u"wrench_length"_s, u"10 in"_s}, {u"extension"_s, u"1.5 in"_s}, {u"extension_angle"_s, u"0 °"_s}, {u"prevailing"_s, u"3 lbf·in"_s},
            {u"nut"_s, u"used again"_s}, {u"turn"_s, u"60 °"_s}};
    ledgers.say(u"ana"_s, u"torque.applied"_s, u"E1"_s, body);
    const JobRecord record = ledgers.record();
    const auto cells = [&](QLatin1String name) { return column(record, u"torque", name); };
    QCOMPARE(cells("pass"_L1), (QStringList{u"1 of 2"_s, u"2 of 2"_s}));
    // Half of the band in the first pass; the whole with the drag of 3 lbf·in on both ends in the second.
    QCOMPARE(cells("specified"_L1), (QStringList{u"110.0 to 120 lbf·in"_s, u"110.0 to 120 lbf·in"_s}));
    QCOMPARE(cells("asked"_L1), (QStringList{u"55 to 60 lbf·in"_s, u"113 to 123 lbf·in"_s}));
    QCOMPARE(cells("setting"_L1), (QStringList{QString(), u"100 lbf·in"_s}));
    QCOMPARE(cells("adapter"_L1), (QStringList{QString(), u"arm 10 in + 1.5 in at 0 °"_s}));
    QCOMPARE(cells("at_fastener"_L1), (QStringList{QString(), u"115 lbf·in"_s}));
    QCOMPARE(cells("drag"_L1), (QStringList{QString(), u"3 lbf·in"_s}));
    QCOMPARE(cells("nut"_L1), (QStringList{QString(), u"used again"_s}));
    QCOMPARE(cells("turn"_L1), (QStringList{QString(), u"60 °"_s}));
    QCOMPARE(cells("skip_reason"_L1), (QStringList{u"Bracket in the way."_s, QString()}));
}

/// One pass and no adapter: the band as it was typed, and nothing that nobody told. An adapter told by half gives no torque.
void FiguresTest::torqueWithoutAnAdapter()
{
    Unasked ledgers;
    ledgers.say(u"ana"_s, u"interface.listed"_s, u"E1"_s,
                {{u"name"_s, u"Clamp"_s}, {u"torque_fasteners"_s, 1}, {u"torque_min"_s, u"22.0"_s}, {u"torque_max"_s, u"26.50"_s}, {u"torque_unit"_s, u"N·m"_s}});
    const json::Object body{{u"fastener"_s, 1}, {u"value"_s, u"24"_s}, {u"unit"_s, u"N·m"_s}, {u"tool"_s, u"TW1"_s}};
    ledgers.say(u"ana"_s, u"torque.applied"_s, u"E1"_s, body);
    json::Object half = body;
    half.set(u"extension"_s, u"30 mm"_s);
    ledgers.say(u"ana"_s, u"torque.applied"_s, u"E1"_s, half);
    json::Object behind = half; // an adapter that reaches back to the grip: core/measure refuses, in its own words
    behind.set(u"wrench_length"_s, u"30 mm"_s);
    behind.set(u"extension_angle"_s, u"180 °"_s);
    ledgers.say(u"ana"_s, u"torque.applied"_s, u"E1"_s, behind);
    const JobRecord record = ledgers.record();
    const auto cells = [&](QLatin1String name) { return column(record, u"torque", name); };
    QCOMPARE(cells("specified"_L1), (QStringList{u"22.0 to 26.50 N·m"_s, u"22.0 to 26.50 N·m"_s, u"22.0 to 26.50 N·m"_s}));
    QCOMPARE(cells("pass"_L1), (QStringList{QString(), QString(), QString()}));
    QCOMPARE(cells("adapter"_L1), (QStringList{QString(), u"30 mm"_s, u"arm 30 mm + 30 mm at 180 °"_s}));
    QCOMPARE(cells("at_fastener"_L1).mid(0, 2), (QStringList{QString(), QString()}));
    QVERIFY(!cells("at_fastener"_L1).at(2).isEmpty());
}

void FiguresTest::bondingByItsLimit_data()
{
    QTest::addColumn<QString>("comparison");
    QTest::addColumn<QString>("limit");
    // AC 43.13-1B (9/8/98) par. 11-189 and 11-188 f print both.
    QTest::addRow("the list does not say") << QString() << u"at most 2.5 mΩ"_s;
    QTest::addRow("at most") << u"at most"_s << u"at most 2.5 mΩ"_s;
    QTest::addRow("less than") << u"less than"_s << u"less than 2.5 mΩ"_s;
}

void FiguresTest::bondingByItsLimit()
{
    QFETCH(QString, comparison);
    QFETCH(QString, limit);
    Unasked ledgers;
    json::Object listing{{u"name"_s, u"Lead"_s}, {u"bonding_max"_s, u"2.5"_s}, {u"bonding_unit"_s, u"mΩ"_s}};
    if (!comparison.isEmpty())
        listing.set(u"bonding_comparison"_s, comparison);
    ledgers.say(u"ana"_s, u"interface.listed"_s, u"E1"_s, listing);
    ledgers.say(u"ana"_s, u"bonding.measured"_s, u"E1"_s, {{u"value"_s, u"1.5"_s}, {u"unit"_s, u"mΩ"_s}, {u"tool"_s, u"BM1"_s}});
    ledgers.say(u"ana"_s, u"bonding.measured"_s, u"E1"_s,
                {{u"value"_s, u"1.5"_s}, {u"unit"_s, u"mΩ"_s}, {u"tool"_s, u"BM1"_s}, {u"second_reading"_s, u"1.62 mΩ"_s}, {u"lead_zero"_s, u"0.02 mΩ"_s}});
    const JobRecord record = ledgers.record();
    QCOMPARE(column(record, u"bonding", "limit"_L1), (QStringList{limit, limit}));
    QCOMPARE(column(record, u"bonding", "second_reading"_L1), (QStringList{QString(), u"1.62 mΩ"_s}));
    QCOMPARE(column(record, u"bonding", "lead_zero"_L1), (QStringList{QString(), u"0.02 mΩ"_s}));
}

void FiguresTest::leaksAgainstTheirLimit()
{
    Unasked ledgers;
    ledgers.say(u"ana"_s, u"interface.listed"_s, u"E1"_s,
                {{u"name"_s, u"Fuel line"_s}, {u"requirements"_s, json::arrayOf({u"leak"_s})}, {u"leak_class"_s, u"stain"_s}, {u"leak_rate"_s, u"5 mL/min"_s}});
    ledgers.say(u"ana"_s, u"interface.listed"_s, u"E2"_s, {{u"name"_s, u"Drain"_s}});
    ledgers.say(u"ana"_s, u"interface.disconnected"_s, u"E1"_s, {});
    ledgers.say(u"ana"_s, u"interface.reconnected"_s, u"E1"_s, {});
    ledgers.say(u"ana"_s, u"leak.checked"_s, u"E1"_s, {{u"how"_s, u"Pump on."_s}, {u"class"_s, u"stain"_s}, {u"drops"_s, u"6 drops/min"_s}, {u"drops_per_ml"_s, u"20"_s}});
    ledgers.say(u"ana"_s, u"leak.checked"_s, u"E1"_s, {{u"how"_s, u"Idle run."_s}, {u"class"_s, u"dry"_s}, {u"rate"_s, u"0 mL/min"_s}});
    ledgers.say(u"ana"_s, u"leak.checked"_s, u"E2"_s, {{u"how"_s, u"Looked."_s}});
    const JobRecord record = ledgers.record();
    const auto cells = [&](QLatin1String name) { return column(record, u"leaks", name); };
    QCOMPARE(cells("how"_L1), (QStringList{u"Pump on."_s, u"Idle run."_s, u"Looked."_s}));
    QCOMPARE(cells("limit"_L1), (QStringList{u"stain at worst, at most 5 mL/min"_s, u"stain at worst, at most 5 mL/min"_s, QString()}));
    QCOMPARE(cells("class"_L1), (QStringList{u"stain"_s, u"dry"_s, QString()}));
    QCOMPARE(cells("rate"_L1), (QStringList{u"6 drops/min, 20 to the millilitre"_s, u"0 mL/min"_s, QString()}));
    QCOMPARE(cells("worth"_L1).mid(0, 2), (QStringList{u"voided later"_s, u"counts"_s})); // the later check is the one that counts
}

/// What was seen stands beside the class that follows from it: FAA-H-8083-31 ch. 14, less than 3/4 in is a stain.
void FiguresTest::leaksBySize()
{
    Unasked ledgers;
    ledgers.say(u"ana"_s, u"job.opened"_s, {},
                {{u"leak_scheme"_s, u"FAA"_s}, {u"leak_classes"_s, json::arrayOf({u"stain"_s, u"seep"_s})}, {u"leak_up_to"_s, json::arrayOf({u"under 0.75 in"_s})}, {u"leak_minutes"_s, 30}});
    ledgers.say(u"ana"_s, u"interface.listed"_s, u"E1"_s,
                {{u"name"_s, u"Fuel line"_s}, {u"requirements"_s, json::arrayOf({u"leak"_s})}, {u"leak_class"_s, u"stain"_s}, {u"leak_rate"_s, u"5 mL/min"_s}, {u"leak_drops_per_ml"_s, u"15"_s}});
    ledgers.say(u"ana"_s, u"leak.checked"_s, u"E1"_s, {{u"how"_s, u"Pump on."_s}, {u"size"_s, u"0.7 in"_s}, {u"flow"_s, u"still"_s}, {u"minutes"_s, 31}, {u"drops"_s, u"6 drops/min"_s}});
    ledgers.say(u"ana"_s, u"leak.checked"_s, u"E1"_s, {{u"how"_s, u"Pump on."_s}, {u"size"_s, u"0 in"_s}, {u"flow"_s, u"still"_s}, {u"minutes"_s, 30}, {u"rate"_s, u"0 mL/min"_s}});
    ledgers.say(u"ana"_s, u"leak.checked"_s, u"E1"_s, {{u"how"_s, u"Pump on."_s}, {u"size"_s, u"0.1 in"_s}, {u"flow"_s, u"drips or pools"_s}, {u"minutes"_s, 30}});
    const JobRecord record = ledgers.record();
    QCOMPARE(column(record, u"leaks", "class"_L1), (QStringList{u"stain; 0.7 in, still; 31 min after wiping dry"_s, u"dry; 0 in, still; 30 min after wiping dry"_s,
                                                                u"seep; 0.1 in, drips or pools; 30 min after wiping dry"_s}));
    QCOMPARE(column(record, u"leaks", "limit"_L1).front(), u"stain at worst, at most 5 mL/min, 15 drops to the millilitre"_s);
    QCOMPARE(column(record, u"leaks", "rate"_L1), (QStringList{u"6 drops/min, 15 to the millilitre"_s, u"0 mL/min"_s, QString()}));
}

/// R = W · (L − x) / L at the left point, T = R / n straight down: 360 kg, 400 of 1200 mm from the left, one leg at each.
void FiguresTest::liftsAsPlanned()
{
    const JobRecord record = scene::closedRecord(5);
    const auto cells = [&](QLatin1String name) { return column(record, u"lifts", name); };
    QCOMPARE(cells("unit"_L1), (QStringList{u"outgoing unit"_s, u"outgoing unit"_s, u"incoming unit"_s}));
    QCOMPARE(cells("hoist_load"_L1), (QStringList{u"370 kg"_s, u"400 kg"_s, u"406 kg"_s}));
    QCOMPARE(cells("hoist_margin"_L1), (QStringList{u"63 %"_s, u"60 %"_s, u"59.4 %"_s}));
    QCOMPARE(cells("shares"_L1), (QStringList{u"220 kg / 110 kg"_s, u"240 kg / 120 kg"_s, u"244 kg / 122 kg"_s}));
    QCOMPARE(cells("tensions"_L1), (QStringList{u"220 kg / 110 kg"_s, u"240 kg / 120 kg"_s, u"244 kg / 122 kg"_s}));
    QCOMPARE(cells("leg_margin"_L1), (QStringList{u"≈ 26.7 %"_s, u"20 %"_s, u"≈ 18.7 %"_s}));
    QVERIFY2(cells("worth"_L1).at(0).contains(u"Weighed without its exhaust"_s), qPrintable(cells("worth"_L1).at(0)));
    QCOMPARE(cells("worth"_L1).mid(1), (QStringList{u"counts"_s, u"counts"_s}));
    const auto rows = findReport(u"lifts")->rows(record);
    QCOMPARE(rows.at(0).standing, Standing::Struck);
    QCOMPARE(rows.at(1).standing, Standing::Stands);
    // The state knows the two that stand.
    QCOMPARE(record.job().figures.size(), 4U);
    QCOMPARE(figureAbout(record.job().figures.at(0)), u"outgoing unit"_s);
    QCOMPARE(figureResult(record.job().figures.at(0)), u"margin of the hoist 60 %, of a leg 20 %"_s);
}

/// What a rule would have refused is told, and what has no numbers stays empty.
void FiguresTest::liftsOfAnotherMaking()
{
    Unasked ledgers;
    ledgers.say(u"ana"_s, u"lift.planned"_s, {}, {{u"unit"_s, u"outgoing"_s}, {u"unit_weight"_s, u"heavy"_s}});
    ledgers.say(u"ana"_s, u"lift.planned"_s, {},
                {{u"unit"_s, u"incoming"_s}, {u"unit_weight"_s, u"900 kg"_s}, {u"rigging_weight"_s, u"50 kg"_s}, {u"hoist_limit"_s, u"900 kg"_s}, {u"hoist_due"_s, u"2027-01-01"_s},
                 {u"sling_limit"_s, u"1000 kg"_s}, {u"sling_due"_s, u"2027-01-01"_s}, {u"points"_s, 1}, {u"legs"_s, 1}, {u"angle_from_horizontal"_s, u"90 °"_s}});
    const JobRecord record = ledgers.record();
    QCOMPARE(column(record, u"lifts", "hoist_load"_L1), (QStringList{QString(), u"950 kg"_s}));
    QCOMPARE(column(record, u"lifts", "hoist_margin"_L1), (QStringList{QString(), u"≈ -5.6 %"_s}));
    QCOMPARE(column(record, u"lifts", "shares"_L1), (QStringList{QString(), u"900 kg"_s}));
    QCOMPARE(figureResult(record.job().figures.at(0)), u"cannot be worked out from what was entered"_s);
    QVERIFY2(figureResult(record.job().figures.at(1)).startsWith(u"Do not lift. The hoist would carry 950 kg"_s), qPrintable(figureResult(record.job().figures.at(1))));
}

void FiguresTest::servicingAgainstItsBand_data()
{
    QTest::addColumn<QString>("quantity");
    QTest::addColumn<QString>("level");
    QTest::addRow("the least belongs to the band") << u"9.0 L"_s << u"within"_s;
    QTest::addRow("so does the most") << u"9.5 L"_s << u"within"_s;
    // 0.946352946 L to the quart: NIST SP 811 (2008) appendix B. 9.51 of them are 8.9998 L.
    QTest::addRow("in another unit") << u"9.52 US qt"_s << u"within"_s;
    QTest::addRow("a touch less in another unit") << u"9.51 US qt"_s << u"too little"_s;
    QTest::addRow("a touch less") << u"8.99 L"_s << u"too little"_s;
    QTest::addRow("a touch more") << u"9.51 L"_s << u"too much"_s;
}

void FiguresTest::servicingAgainstItsBand()
{
    QFETCH(QString, quantity);
    QFETCH(QString, level);
    Unasked ledgers;
    ledgers.say(u"ana"_s, u"servicing.recorded"_s, {},
                {{u"system"_s, u"Engine oil"_s}, {u"fluid"_s, u"Turbine oil"_s}, {u"batch"_s, u"TO-77"_s}, {u"quantity"_s, quantity}, {u"least"_s, u"9 L"_s}, {u"most"_s, u"9.5 L"_s}});
    const JobRecord record = ledgers.record();
    QCOMPARE(column(record, u"servicing", "level"_L1), QStringList{level});
    QCOMPARE(column(record, u"servicing", "band"_L1), QStringList{u"9 L to 9.5 L"_s});
    QCOMPARE(figureAbout(record.job().figures.at(0)), u"Engine oil, Turbine oil"_s);
    QCOMPARE(figureResult(record.job().figures.at(0)), u"%1, %2 (9 L to 9.5 L)"_s.arg(quantity, level));
}

/// 366 − 360 = 6 kg; 6 · 6.5 = 39 kg·m; (12000 · 7 + 39) / 12006 = 6.99975 m. 6 kg are more than the 2 lb of AC 43.13-1B
/// (9/27/01, change 1) par. 10-2 c for 5000 to 50 000 lb.
void FiguresTest::weightAndBalance()
{
    const JobRecord record = scene::closedRecord(5);
    const auto cell = [&](QLatin1String name) { return column(record, u"weight", name).join(u'|'); };
    QCOMPARE(cell("outgoing"_L1), u"360 kg at 6.5 m"_s);
    QCOMPARE(cell("incoming"_L1), u"366 kg at 6.5 m"_s);
    QCOMPARE(cell("difference"_L1), u"+6 kg"_s);
    QCOMPARE(cell("moment"_L1), u"+39 kg·m"_s);
    QCOMPARE(cell("weight_after"_L1), u"12006 kg"_s);
    QCOMPARE(cell("centre_after"_L1), u"≈ 6.9998 m"_s);
    QVERIFY2(cell("verdict"_L1).startsWith(u"Not negligible"), qPrintable(cell("verdict"_L1)));
    QCOMPARE(cell("remarks"_L1), u"Weighed on the day."_s);
    QVERIFY(figureResult(record.job().figures.back()).startsWith(u"+6 kg, +39 kg·m. Not negligible"_s));
}

QTEST_GUILESS_MAIN(FiguresTest)
#include "tst_figures.moc"
