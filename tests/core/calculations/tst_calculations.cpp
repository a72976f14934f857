// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QRegularExpression>
#include <QSet>
#include <QTest>

#include <algorithm>

#include "core/calculations/leak_scheme.hpp"
#include "core/tables/catalogue.hpp"
#include "core/calculations/as_text.hpp"
#include "tests/core/calculations/calculating.hpp"

using namespace Qt::StringLiterals;
using namespace calculating;
using core::Calculation;

namespace {

void eachCalculation()
{
    QTest::addColumn<QString>("name");
    for (const Calculation &one : core::calculations())
        QTest::newRow(one.name.data()) << QString(one.name);
}

/// The first number of a text, exact; `≈` and unit apart.
std::optional<core::Rational> numberIn(const QString &text)
{
    const auto number = core::Decimal::parse(QRegularExpression(u"-?[0-9]+(\\.[0-9]+)?"_s).match(text).captured());
    return number ? std::optional(core::Rational(*number)) : std::nullopt;
}

bool isNear(const core::Rational &found, const QString &expected, const QString &tolerance)
{
    const core::Rational off = found - core::Rational(*core::Decimal::parse(expected));
    const core::Rational most(*core::Decimal::parse(tolerance));
    return off <= most && -off <= most;
}

bool fits(const core::Field &field, const core::LookUpColumn &column, const core::LookUpTable &table)
{
    switch (field.type) {
    case core::FieldType::Quantity: {
        const core::Unit *unit = core::findUnit(column.unit);
        return unit && unit->dimension == field.dimension;
    }
    case core::FieldType::Decimal: return column.unit == u"%";
    case core::FieldType::Choice:
        return std::all_of(table.rows.begin(), table.rows.end(), [&](const core::LookUpRow &row) {
            return std::any_of(field.choices.begin(), field.choices.end(), [&](QLatin1String choice) { return choice == table.text(row, column.id); });
        });
    case core::FieldType::Text: return column.unit.isEmpty();
    default: return false;
    }
}

} // namespace

class TstCalculations : public QObject {
    Q_OBJECT

private slots:
    void exampleAnswers_data() { eachCalculation(); }
    void exampleAnswers()
    {
        QFETCH(QString, name);
        const Calculation &calculation = *core::findCalculation(name);
        const auto result = work(calculation, exampleOf(calculation));
        QVERIFY2(result && result->verdict == core::Verdict::Answered, qPrintable(said(result)));
        QVERIFY(!result->working.steps.empty());
        QVERIFY(!result->working.answer.isEmpty());
        QVERIFY(!result->working.sources.isEmpty());
        QVERIFY(*calculation.title && *calculation.summary);
        for (const QString &caution : calculation.cautions())
            QVERIFY2(!result->working.notes.contains(caution), "a caution is shown once and from the start, not among the notes");
        QVERIFY(!result->working.notes.contains(core::measure::dataGoverns()));
    }

    void linesTellEverything_data() { eachCalculation(); }
    void linesTellEverything()
    {
        QFETCH(QString, name);
        const Calculation &calculation = *core::findCalculation(name);
        const auto body = core::bodyOf(calculation, exampleOf(calculation));
        const auto result = core::calculate(calculation, *body, tables());
        const QStringList lines = core::linesOf(calculation, *body, *result);
        QCOMPARE(lines.front(), QString::fromUtf8(calculation.title));
        QCOMPARE(lines.back(), core::measure::dataGoverns());
        const QString all = lines.join(u'\n');
        const auto tells = [&](const QString &words) { return all.contains(u"  "_s + words) || all.contains(words + u'\n'); };
        for (const QString &caution : calculation.cautions())
            QVERIFY2(tells(caution), qPrintable(all));
        QCOMPARE(core::givenIn(calculation, *body).size(), calculation.example.size());
        for (const core::Given &given : core::givenIn(calculation, *body))
            QVERIFY2(all.contains(given.label) && all.contains(given.text), qPrintable(given.label));
        for (const core::measure::WorkingStep &step : result->working.steps)
            QVERIFY2(all.contains(step.what + u": "_s) && all.contains(step.numbers) && tells(step.result), qPrintable(all));
        for (const QString &line : result->working.notes + result->working.sources + result->forRecord + QStringList(result->working.answer))
            QVERIFY2(tells(line), qPrintable(line));
        QVERIFY(lines.contains(u"Answer:"_s) && !lines.contains(u"No:"_s));
    }

    void linesOfANoSayNo()
    {
        const Calculation &calculation = *core::findCalculation(u"servicing");
        const auto body = core::bodyOf(calculation, typed(u"quantity=3 L; least=1 L; most=2 L"_s));
        const QStringList lines = core::linesOf(calculation, *body, *core::calculate(calculation, *body, tables()));
        QVERIFY(lines.contains(u"No:"_s) && !lines.contains(u"Answer:"_s));
    }

    void namesAreTheirOwn()
    {
        QSet<QString> names;
        for (const Calculation &one : core::calculations()) {
            QVERIFY2(!names.contains(one.name), one.name.data());
            names.insert(one.name);
            QSet<QString> fields;
            for (const core::Field &field : one.fields) {
                QVERIFY2(!fields.contains(field.name), field.name.data());
                fields.insert(field.name);
            }
        }
        QVERIFY(names.size() >= 13);
        QVERIFY(!core::findCalculation(u"no-such"));
    }

    void missingFieldIsNamed_data() { eachCalculation(); }
    void missingFieldIsNamed()
    {
        QFETCH(QString, name);
        const Calculation &calculation = *core::findCalculation(name);
        for (const core::Field &field : calculation.fields) {
            if (field.needed != core::Needed::Always)
                continue;
            auto fields = exampleOf(calculation);
            const auto removed = std::erase_if(fields, [&](const core::TypedField &one) { return one.name == field.name; });
            QCOMPARE(removed, std::size_t{1});
            const auto result = work(calculation, fields);
            QVERIFY2(!result && result.error().code == core::ErrorCode::BadInput && result.error().message.contains(u"(%1) is missing."_s.arg(field.name)), qPrintable(said(result)));
        }
        const auto nothing = work(calculation, {});
        QVERIFY(!nothing);
        for (const core::Field &field : calculation.fields)
            QCOMPARE(nothing.error().message.contains(u"(%1) is missing."_s.arg(field.name)), field.needed == core::Needed::Always);
    }

    void wrongDimensionIsRefused_data() { eachCalculation(); }
    void wrongDimensionIsRefused()
    {
        QFETCH(QString, name);
        const Calculation &calculation = *core::findCalculation(name);
        for (const core::Field &field : calculation.fields) {
            if (field.type != core::FieldType::Quantity)
                continue;
            for (const core::Unit &unit : core::units()) {
                if (unit.dimension == *field.dimension)
                    continue;
                auto fields = exampleOf(calculation);
                std::erase_if(fields, [&](const core::TypedField &one) { return one.name == field.name; });
                fields.push_back({field.name, u"1 "_s + unit.symbol});
                const auto result = work(calculation, fields);
                QVERIFY2(!result && result.error().message.contains(u"(%1): "_s.arg(field.name)), qPrintable(said(result)));
            }
        }
    }

    void badInputIsToldInWords_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("fields");
        QTest::addColumn<QString>("field");
        QTest::addColumn<QString>("says");
        const auto row = [](const char *title, const char *name, const char *fields, const char *field, const char *says) {
            QTest::newRow(title) << QString::fromUtf8(name) << QString::fromUtf8(fields) << QString::fromUtf8(field) << QString::fromUtf8(says);
        };
        row("forty digits", "servicing", "quantity=1234567890123456789012345678901234567890 L; least=1 L; most=2 L", "quantity", "at most 18 digits");
        row("forty digits to convert", "convert", "quantity=1234567890123456789012345678901234567890 L; unit=mL", "quantity", "at most 18 digits");
        row("a comma", "servicing", "quantity=1,5 L; least=1 L; most=2 L", "quantity", "comma");
        row("no unit", "servicing", "quantity=1.5; least=1 L; most=2 L", "quantity", "no unit");
        row("an absurd unit", "servicing", "quantity=1.5 barrels; least=1 L; most=2 L", "quantity", "not known");
        row("an absurd unit to convert", "convert", "quantity=3 furlongs; unit=m", "quantity", "not known");
        row("into an absurd unit", "convert", "quantity=3 m; unit=furlong", "unit", "one of the units");
        row("a unit that could mean two", "convert", "quantity=3 in-lb; unit=N·m", "quantity", "not known");
        row("an unknown field", "servicing", "litres=3", "litres", "it has quantity, least, most");
        row("given twice", "servicing", "quantity=3 L; quantity=4 L", "quantity", "twice");
        row("half an adapter", "wrench-setting", "least=50 N·m; most=60 N·m; range_min=10 N·m; range_max=100 N·m; graduation=1 N·m; wrench_length=10 in", "extension", "all three or none");
        row("a band the wrong way round", "wrench-setting", "least=60.1 N·m; most=60 N·m; range_min=10 N·m; range_max=100 N·m; graduation=1 N·m", "least", "above the most");
        row("a least below nought", "torque-reading", "least=-1 N·m; most=60 N·m; indicated=20 N·m; acceptance=simple", "least", "below 0");
        row("a most of nought", "torque-reading", "least=0 N·m; most=0 N·m; indicated=0 N·m; acceptance=simple", "most", "no torque");
        row("a drag below nought", "torque-reading", "least=1 N·m; most=60 N·m; prevailing=-1 N·m; indicated=20 N·m; acceptance=simple", "prevailing", "is none");
        row("a reading below nought", "torque-reading", "least=1 N·m; most=60 N·m; indicated=-20 N·m; acceptance=simple", "indicated", "below 0");
        row("a deviation below nought", "torque-reading", "least=1 N·m; most=60 N·m; indicated=20 N·m; deviation=-4; acceptance=simple", "deviation", "No tool may be off");
        row("a deviation of all", "tool-check", "range_max=100 N·m; setting=50 N·m; deviation=100", "deviation", "No tool may be off");
        row("another acceptance", "torque-reading", "least=1 N·m; most=60 N·m; indicated=20 N·m; acceptance=generous", "acceptance", "one of: simple, guarded");
        row("no range", "wrench-setting", "least=50 N·m; most=60 N·m; range_min=100 N·m; range_max=10 N·m; graduation=1 N·m", "range_max", "no range");
        row("a step of nought", "wrench-setting", "least=50 N·m; most=60 N·m; range_min=10 N·m; range_max=100 N·m; graduation=0 N·m", "graduation", "no step");
        row("passes in words", "fastener-order", "fasteners=8; final_torque=40 N·m; passes=30, sixty, 100", "passes", "\"sixty\"");
        row("more fasteners than a ring has", "fastener-order", "fasteners=9007199254740991; final_torque=40 N·m; passes=100", "fasteners", "too many");
        row("fewer than none", "fastener-order", "fasteners=-1; final_torque=40 N·m; passes=100", "fasteners", "0 or more");
        row("two points and no length between them", "lift", "day=2026-03-02; unit_weight=100 kg; rigging_weight=1 kg; hoist_limit=500 kg; hoist_due=2026-09-30; sling_limit=500 kg; sling_due=2026-09-30; points=2; legs=1; angle_from_horizontal=60 °; centre=1 m", "span", "Fill in both");
        row("two points and no centre of gravity", "lift", "day=2026-03-02; unit_weight=100 kg; rigging_weight=1 kg; hoist_limit=500 kg; hoist_due=2026-09-30; sling_limit=500 kg; sling_due=2026-09-30; points=2; legs=1; angle_from_horizontal=60 °; span=1 m", "centre", "Fill in both");
        row("one point and a length between two", "lift", "day=2026-03-02; unit_weight=100 kg; rigging_weight=1 kg; hoist_limit=500 kg; hoist_due=2026-09-30; sling_limit=500 kg; sling_due=2026-09-30; points=1; legs=2; angle_from_horizontal=60 °; span=1 m; centre=0.5 m", "span", "Empty both");
        row("three points", "lift", "day=2026-03-02; unit_weight=100 kg; rigging_weight=1 kg; hoist_limit=500 kg; hoist_due=2026-09-30; sling_limit=500 kg; sling_due=2026-09-30; points=3; legs=1; angle_from_horizontal=60 °", "points", "1 or 2");
        row("a day that is none", "lift", "day=2026-02-30", "day", "a date such as");
        row("both rates", "leak-rate", "rate=1 mL/min; drops=2 drops/min; limit=1 mL/min", "rate", "either");
        row("no limit", "leak-rate", "rate=1 mL/min", "limit", "either");
        row("a scheme that the table does not have", "leak-class", "scheme=NASA; size=1 in; flow=still", "scheme", "FAA, large jet 1968");
        row("no minutes where the scheme has them", "leak-class", "scheme=FAA; size=1 in; flow=still; worst=seep", "minutes", "30 minutes");
        row("a class of another scheme", "leak-class", "scheme=FAA; size=1 in; flow=still; worst=class II", "worst", "no class");
        row("moment and centre", "weight-change", "outgoing_weight=612 lb; outgoing_arm=120 in; incoming_weight=618 lb; incoming_arm=120 in; aircraft_weight=41250 lb; aircraft_centre=118 in; aircraft_moment=1 lb·in", "aircraft_moment", "one of them");
    }
    void badInputIsToldInWords()
    {
        QFETCH(QString, name);
        QFETCH(QString, fields);
        QFETCH(QString, field);
        QFETCH(QString, says);
        const auto result = work(name, fields);
        QVERIFY2(!result && result.error().code == core::ErrorCode::BadInput, qPrintable(said(result)));
        QVERIFY2(result.error().message.contains(field) && result.error().message.contains(says), qPrintable(said(result)));
        QVERIFY(result.error().message.endsWith(u'.'));
    }

    void keyboardsAreUnderstood_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("fields");
        QTest::addColumn<QString>("answer");
        QTest::newRow("lbf.in, deg") << u"wrench-setting"_s << u"least=135 lbf.in; most=135 lbf*in; wrench_length=10in; extension=1.5 in; extension_angle=180 deg; range_min=1 lbf.in; range_max=200 lbf.in; graduation=1 lbf.in"_s
                                     << u"refused"_s;
        QTest::newRow("a band that holds a mark") << u"wrench-setting"_s << u"least=130 lbf.in; most=140 lbf*in; wrench_length=10in; extension=1.5 in; extension_angle=180 deg; range_min=1 lbf.in; range_max=200 lbf.in; graduation=1 lbf.in"_s
                                                  << u"answer: Set the wrench to 159 lbf·in."_s;
        QTest::newRow("ohm") << u"bonding"_s << u"limit=0.003 ohm; comparison=at most; reading=3 mohm"_s << u"answer: 3 mΩ meets the limit, at most 0.003 Ω."_s;
        QTest::newRow("without a blank") << u"convert"_s << u"quantity=2ft; unit=in"_s << u"answer: 2 ft = 24 in"_s;
    }
    void keyboardsAreUnderstood()
    {
        QFETCH(QString, name);
        QFETCH(QString, fields);
        QFETCH(QString, answer);
        const QString found = said(work(name, fields));
        QVERIFY2(found.startsWith(answer), qPrintable(found));
    }

    /// Numbers against the figures of their sources.
    void workedExamples_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("fields");
        QTest::addColumn<int>("step"); // whose result is compared
        QTest::addColumn<QString>("expected");
        QTest::addColumn<QString>("tolerance");
        const auto row = [](const char *title, const char *name, const QString &fields, int step, const char *expected, const char *tolerance) {
            QTest::newRow(title) << QString::fromUtf8(name) << fields << step << QString::fromLatin1(expected) << QString::fromLatin1(tolerance);
        };
        // Steps of a setting with an adapter: band, setting, marks, at the fastener. A fine scale, so that the marks take nothing away.
        const auto setting = [](const QString &torque, const QString &unit, const QString &length, const QString &extension, const QString &angle) {
            const QString least = QString::number(torque.toDouble() - 0.00001, 'f', 5);
            return u"least=%1 %2; most=%3 %2; wrench_length=%4; extension=%5; extension_angle=%6 °; range_min=0 %2; range_max=1000 %2; graduation=0.000001 %2"_s.arg(least, unit, torque, length, extension, angle);
        };
        row("TX-01 published, rounded: TM 1-1500-204-23-9 (31 July 1992) ch. 8, fig. 8-16", "wrench-setting", setting(u"300"_s, u"lbf·in"_s, u"10 in"_s, u"4 in"_s, u"0"_s), 1, "214", "0.5");
        row("TX-02 computed from its inputs: NAVEDTRA 14315 ch. 3, fig. 3-44", "wrench-setting", setting(u"100"_s, u"lbf·in"_s, u"12 in"_s, u"6 in"_s, u"0"_s), 1, "66.67", "0.01");
        row("TX-03 published: TM 9-2350-277-40&P WP 0004", "wrench-setting", setting(u"40"_s, u"lbf·ft"_s, u"12 in"_s, u"4 in"_s, u"0"_s), 1, "30", "0.0001");
        row("TX-04 published, rounded: TM 5-3805-274-13&P WP 0051", "wrench-setting", setting(u"19"_s, u"lbf·ft"_s, u"22 in"_s, u"3 in"_s, u"0"_s), 1, "17", "0.5");
        row("TX-05 published, set to 117: R66 maintenance manual (25 October 2010) ch. 20, fig. 20-1", "wrench-setting", setting(u"135"_s, u"lbf·in"_s, u"10 in"_s, u"1.5 in"_s, u"0"_s), 1, "117.39", "0.005");
        row("TX-12 published: table of angles, 0°", "wrench-setting", setting(u"100"_s, u"lbf·ft"_s, u"18 in"_s, u"3 in"_s, u"0"_s), 1, "85.71", "0.005");
        row("TX-14 published: NAVEDTRA 14008 ch. 2, at a right angle nothing changes", "wrench-setting", setting(u"100"_s, u"lbf·ft"_s, u"18 in"_s, u"3 in"_s, u"90"_s), 1, "100", "0.005");
        row("TX-15 computed: NAVEDTRA 14008 ch. 2, pointing back", "wrench-setting", setting(u"100"_s, u"lbf·ft"_s, u"18 in"_s, u"3 in"_s, u"180"_s), 1, "120", "0.0002");
        row("TX-16 computed: TM 9-254 par. 4-1 d, fig. 4-6, 135°", "wrench-setting", setting(u"100"_s, u"lbf·ft"_s, u"18 in"_s, u"3 in"_s, u"135"_s), 1, "113.3596", "0.0002");
        row("TP-07 computed: AC 43.13-1B (9/8/98) par. 7-40 d, then h", "wrench-setting", setting(u"50"_s, u"lbf·in"_s, u"10 in"_s, u"1.5 in"_s, u"0"_s) + u"; prevailing=8 lbf·in"_s, 3, "50.4348", "0.0002");
        // Steps of a reading with an adapter: band, shown, at the fastener.
        row("TX-07 published: TM 9-254 par. 4-1 d, fig. 4-5", "torque-reading", u"least=60 lbf·in; most=80 lbf·in; indicated=60 lbf·in; wrench_length=12 in; extension=2 in; extension_angle=0 °; acceptance=simple"_s, 2, "70", "0");
        // Steps of a conversion: two factors, coherent, result.
        row("TU-01 NIST SP 811 (2008) app. B, by the definitions", "convert", u"quantity=1 lbf·in; unit=N·m; places=17"_s, 3, "0.1129848290276167", "0");
        row("TU-02 NIST SP 811 (2008) app. B, by the definitions", "convert", u"quantity=1 lbf·ft; unit=N·m; places=17"_s, 3, "1.3558179483314004", "0");
        row("TU-03 published: NIST SP 811 (2008) app. B", "convert", u"quantity=1 kgf·m; unit=N·m; places=17"_s, 3, "9.80665", "0");
        row("TU-04 inverse of TU-01", "convert", u"quantity=1 N·m; unit=lbf·in; places=17"_s, 3, "8.850745791327184", "0.000000000000001");
        row("TU-05 inverse of TU-02", "convert", u"quantity=1 N·m; unit=lbf·ft; places=17"_s, 3, "0.7375621492772654", "0.000000000000001");
        row("TU-06 ratio of TU-03 and TU-02", "convert", u"quantity=1 kgf·m; unit=lbf·ft; places=17"_s, 3, "7.233013851209894", "0.00000000000001");
        row("TU-07 computed by TU-01", "convert", u"quantity=50 lbf·in; unit=N·m; places=17"_s, 3, "5.649241451380835", "0");
        row("TU-08 published, rounded: TM 5-3805-274-13&P", "convert", u"quantity=19 lbf·ft; unit=N·m"_s, 3, "25.8", "0.05");
        row("TU-09 by the definitions: 12 in = 1 ft", "convert", u"quantity=12 lbf·in; unit=lbf·ft; places=17"_s, 3, "1", "0");
        // Steps of a tool: off by, at the setting, then the points.
        row("TT-01 computed: ISO 6789 type II class A, 4 %", "tool-check", u"range_max=100 N·m; setting=50 N·m; deviation=4"_s, 1, "48", "0");
        row("TT-02 computed: ISO 6789 type II class A, up to 10 N·m, 6 %", "tool-check", u"range_max=8 N·m; setting=5 N·m; deviation=6"_s, 1, "4.7", "0.000001");
        // Steps of a leak rate: seen, as a flow, limit.
        row("LK-08 computed: conversion pages, 20 drops to the millilitre", "leak-rate", u"drops=12 drops/min; limit=1 mL/min; drops_per_ml=20"_s, 1, "0.6", "0");
        row("BO-04 computed: R = U / I, AC 43.13-1B (9/8/98) fig. 11-19", "voltage-drop", u"limit=3 mΩ; comparison=at most; voltage=25 mV; current=10 A"_s, 0, "2.5", "0");
        row("BS-02 computed: flange torque pages, 60 % of 400 lbf·in", "fastener-order", u"fasteners=8; final_torque=400 lbf·in; passes=30, 60, 100"_s, 1, "240", "0");
        row("BS-03 computed: piping design page, 40 % of 500 lbf·in", "fastener-order", u"fasteners=12; final_torque=500 lbf·in; passes=20, 40, 80, 100"_s, 1, "200", "0");
    }
    void workedExamples()
    {
        QFETCH(QString, name);
        QFETCH(QString, fields);
        QFETCH(int, step);
        QFETCH(QString, expected);
        QFETCH(QString, tolerance);
        const auto result = work(name, fields);
        const QString text = resultOf(result, step);
        QVERIFY2(result && result->verdict == core::Verdict::Answered, qPrintable(said(result)));
        const auto number = numberIn(text);
        QVERIFY2(number && isNear(*number, expected, tolerance), qPrintable(text));
    }

    /// What is said, yes or no: published limits and the nearest case beyond them.
    void verdicts_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("fields");
        QTest::addColumn<QString>("begins");
        const auto row = [](const char *title, const char *name, const char *fields, const char *begins) {
            QTest::newRow(title) << QString::fromUtf8(name) << QString::fromUtf8(fields) << QString::fromUtf8(begins);
        };
        row("TX-17 computed: an adapter of the wrench's length, pointing back", "wrench-setting",
            "least=90 N·m; most=110 N·m; wrench_length=10 in; extension=10 in; extension_angle=180 °; range_min=10 N·m; range_max=200 N·m; graduation=1 N·m", "refused: The adapter");
        row("one in the last place shorter", "wrench-setting",
            "least=0.00000000009 N·m; most=0.00000000011 N·m; wrench_length=10 in; extension=9.99999999999 in; extension_angle=180 °; range_min=10 N·m; range_max=200 N·m; graduation=1 N·m", "answer: Set the wrench to 100 N·m.");
        row("a wrench of no length", "wrench-setting", "least=90 N·m; most=110 N·m; wrench_length=0 in; extension=1 in; extension_angle=0 °; range_min=10 N·m; range_max=200 N·m; graduation=1 N·m", "refused: The wrench's length is 0 in.");
        row("an adapter below nought", "wrench-setting", "least=90 N·m; most=110 N·m; wrench_length=9 in; extension=-1 in; extension_angle=0 °; range_min=10 N·m; range_max=200 N·m; graduation=1 N·m", "refused: The adapter's length is -1 in.");
        row("an adapter of no length", "wrench-setting", "least=90 N·m; most=110 N·m; wrench_length=9 in; extension=0 in; extension_angle=0 °; range_min=10 N·m; range_max=200 N·m; graduation=1 N·m", "answer: Set the wrench to 100 N·m.");
        row("marks that take more digits than are kept", "wrench-setting", "least=900000 kgf·m; most=900001 kgf·m; range_min=10 N·m; range_max=999999999 kgf·m; graduation=0.00000000000000001 N·m", "refused: A graduation of");
        row("out of the range", "wrench-setting", "least=201 N·m; most=210 N·m; range_min=10 N·m; range_max=200 N·m; graduation=1 N·m", "refused: The wrench would have to be set to");
        row("at the end of the range", "wrench-setting", "least=200 N·m; most=210 N·m; range_min=10 N·m; range_max=200 N·m; graduation=1 N·m", "answer: Set the wrench to 200 N·m.");
        row("TT-04 computed: usable from 20 % of 100 N·m", "tool-check", "range_max=100 N·m; setting=15 N·m; deviation=4", "refused: 15 N·m lies outside");
        row("at the lowest point", "tool-check", "range_max=100 N·m; setting=20 N·m; deviation=4", "answer: Set to 20 N·m");
        row("below it by the last place", "tool-check", "range_max=100 N·m; setting=19.999999999999999 N·m; deviation=4", "refused: ");
        row("over the greatest by the last place", "tool-check", "range_max=100 N·m; setting=100.000000000000001 N·m; deviation=4", "refused: ");
        row("TP-05 computed: AC 43.13-1B (9/8/98) par. 7-40 f, at the most with its drag", "torque-reading", "least=50 lbf·in; most=70 lbf·in; prevailing=8 lbf·in; indicated=78.0 lbf·in; acceptance=simple", "answer: 78 lbf·in is accepted.");
        row("TP-06 computed: over it by a tenth", "torque-reading", "least=50 lbf·in; most=70 lbf·in; prevailing=8 lbf·in; indicated=78.1 lbf·in; acceptance=simple", "refused: 78.1 lbf·in is too much");
        row("over it by the last place", "torque-reading", "least=50 lbf·in; most=70 lbf·in; prevailing=8 lbf·in; indicated=78.0000000000000001 lbf·in; acceptance=simple", "refused: ");
        row("TP-01 computed: at the least with its drag", "torque-reading", "least=50 lbf·in; most=70 lbf·in; prevailing=8 lbf·in; indicated=58 lbf·in; acceptance=simple", "answer: ");
        row("under it by the last place", "torque-reading", "least=50 lbf·in; most=70 lbf·in; prevailing=8 lbf·in; indicated=57.9999999999999999 lbf·in; acceptance=simple", "refused: ");
        row("DR-07 computed: ILAC-G8:09/2019, A = TL - w with 1.5 N·m below 70 N·m", "torque-reading", "least=10 N·m; most=70 N·m; indicated=68.5 N·m; deviation=2.1897810218978102; acceptance=guarded", "answer: ");
        row("nearer to the edge than the tool may be off", "torque-reading", "least=10 N·m; most=70 N·m; indicated=68.5000000000001 N·m; deviation=2.1897810218978102; acceptance=guarded", "refused: ");
        row("the same without a guard", "torque-reading", "least=10 N·m; most=70 N·m; indicated=68.5000000000001 N·m; deviation=2.1897810218978102; acceptance=simple", "answer: ");
        row("guarded, by a tool of unknown deviation", "torque-reading", "least=10 N·m; most=70 N·m; indicated=40 N·m; acceptance=guarded", "bad input: \"The tool may be off by, % of the reading\" (deviation): ");
        row("TP-02 computed: AC 43.13-1B (9/8/98) table 7-2, 7/16-20, below", "nut-drag", "prevailing=7 lbf·in; least=8 lbf·in", "refused: The nut turns with 7 lbf·in");
        row("TP-03 computed: at the least", "nut-drag", "prevailing=8 lbf·in; least=8 lbf·in", "answer: 8 lbf·in is enough drag");
        row("below it by the last place", "nut-drag", "prevailing=7.99999999999999999 lbf·in; least=8 lbf·in", "refused: ");
        row("a least of nought", "nut-drag", "prevailing=8 lbf·in; least=0 lbf·in", "refused: A least drag of");
        row("a drag below nought", "nut-drag", "prevailing=-8 lbf·in; least=8 lbf·in", "refused: A drag of");
        row("BO-01 computed: AC 43.13-1B (9/8/98) par. 11-189", "bonding", "limit=3 mΩ; comparison=at most; reading=3.0 mΩ", "answer: ");
        row("BO-02 computed: AC 43.13-1B (9/8/98) par. 11-188 f", "bonding", "limit=2.5 mΩ; comparison=less than; reading=2.5 mΩ", "refused: ");
        row("BO-03 computed: AC 43.13-1B (9/8/98) par. 11-188 f", "bonding", "limit=2.5 mΩ; comparison=less than; reading=2.49 mΩ", "answer: ");
        row("the worse of two counts", "bonding", "limit=2.5 mΩ; comparison=less than; reading=2.4 mΩ; second_reading=2.6 mΩ", "refused: 2.6 mΩ does not meet");
        row("leads that were not set to zero", "bonding", "limit=2.5 mΩ; comparison=less than; reading=2.4 mΩ; lead_zero=2.5 mΩ", "refused: The zero of the leads");
        row("no current", "voltage-drop", "limit=3 mΩ; comparison=at most; voltage=25 mV; current=0 A", "refused: ");
        row("a drop over the limit", "voltage-drop", "limit=2.5 mΩ; comparison=less than; voltage=25 mV; current=10 A", "refused: ");
        row("LK-01 computed: FAA-H-8083-31 ch. 14", "leak-class", "scheme=FAA; size=0.70 in; flow=still; minutes=30; worst=stain", "answer: \"stain\"");
        row("LK-02 computed: FAA-H-8083-31 ch. 14, 3/4 in is no stain", "leak-class", "scheme=FAA; size=0.75 in; flow=still; minutes=30; worst=stain", "refused: \"seep\" is worse");
        row("LK-03 computed: 1 1/2 in stands in two classes", "leak-class", "scheme=FAA; size=1.5 in; flow=still; minutes=30; worst=heavy seep", "answer: \"heavy seep\"");
        row("LK-04 computed: FAA-H-8083-31 ch. 14", "leak-class", "scheme=FAA; size=2.0 in; flow=still; minutes=30; worst=heavy seep", "answer: \"heavy seep\"");
        row("LK-05 computed: beyond the text", "leak-class", "scheme=FAA; size=4.5 in; flow=still; minutes=30; worst=heavy seep", "refused: \"running leak\"");
        row("LK-06 computed: large jet, 28-11-0 (1968): the spot of LK-04", "leak-class", "scheme=large jet 1968; size=2.0 in; flow=still; worst=seep", "answer: \"seep\"");
        row("looked at too soon", "leak-class", "scheme=FAA; size=0.7 in; flow=still; minutes=29; worst=stain", "refused: \"FAA\" classes what shows 30 minutes");
        row("dry", "leak-class", "scheme=FAA; size=0 in; flow=still; minutes=30", "answer: \"dry\"");
        row("not dry", "leak-class", "scheme=FAA; size=0.01 in; flow=still; minutes=30", "refused: \"stain\" is worse than the limit, \"dry\"");
        row("drops, by a scheme without sizes", "leak-class", "scheme=US Army checks; size=1 in; flow=drips or pools; worst=class III", "answer: \"class III\"");
        row("28-11-0 (1968): not over 1 1/2 in is a stain", "leak-class", "scheme=large jet 1968; size=1.5 in; flow=still; worst=stain", "answer: \"stain\"");
        row("28-11-0 (1968): over it is not", "leak-class", "scheme=large jet 1968; size=1.51 in; flow=still; worst=stain", "refused: \"seep\" is worse");
        row("28-11-0 (1968): no larger than 6 in is a heavy seep", "leak-class", "scheme=large jet 1968; size=6 in; flow=still; worst=heavy seep", "answer: \"heavy seep\"");
        row("28-11-0 (1968): beyond it runs", "leak-class", "scheme=large jet 1968; size=6.01 in; flow=still; worst=heavy seep", "refused: \"running leak\"");
        row("finer drops than any edge gives", "leak-rate", "drops=12 drops/min; drops_per_ml=60.1; limit=1 mL/min", "refused: 60.1 drops to the millilitre");
        row("drops of the finest tips", "leak-rate", "drops=60 drops/min; drops_per_ml=60; limit=1 mL/min", "answer:");
        row("a size, by a scheme without sizes", "leak-class", "scheme=US Army checks; size=1 in; flow=still; worst=class III", "refused: The scheme \"US Army checks\" does not class by size");
        row("drops and a flow, their number not known", "leak-rate", "drops=12 drops/min; limit=1 mL/min", "refused: ");
        row("drops at a limit in drops", "leak-rate", "drops=12 drops/min; drop_limit=12 drops/min", "answer: ");
        row("a flow over a limit in drops", "leak-rate", "rate=0.61 mL/min; drop_limit=12 drops/min; drops_per_ml=20", "refused: ");
        row("at the least", "servicing", "quantity=8 L; least=8 L; most=9 L", "answer: ");
        row("at the most, in other units", "servicing", "quantity=1 US gal; least=1 L; most=3.785411784 L", "answer: ");
        row("over it by the last place", "servicing", "quantity=3.78541178400000001 L; least=1 L; most=1 US gal", "refused: Too much");
        row("LI-09 computed: under 30° from the horizontal", "lift", "day=2026-03-02; unit_weight=100 kg; rigging_weight=1 kg; hoist_limit=500 kg; hoist_due=2026-09-30; sling_limit=500 kg; sling_due=2026-09-30; points=1; legs=2; angle_from_horizontal=25 °", "refused: Do not lift. The slings lie under 30°");
        row("LI-11 computed: 1443 on a leg of 1400", "lift", "day=2026-03-02; unit_weight=1443 lb; rigging_weight=1 lb; hoist_limit=5000 lb; hoist_due=2026-09-30; sling_limit=1400 lb; sling_due=2026-09-30; points=1; legs=1; angle_from_horizontal=90 °", "refused: Do not lift.");
        row("at the limit of the leg", "lift", "day=2026-03-02; unit_weight=1400 lb; rigging_weight=1 lb; hoist_limit=5000 lb; hoist_due=2026-09-30; sling_limit=1400 lb; sling_due=2026-09-30; points=1; legs=1; angle_from_horizontal=90 °", "answer: ");
        row("inspected until the day", "lift", "day=2026-03-02; unit_weight=100 kg; rigging_weight=1 kg; hoist_limit=500 kg; hoist_due=2026-03-02; sling_limit=500 kg; sling_due=2026-03-02; points=1; legs=2; angle_from_horizontal=60 °", "answer: ");
        row("overdue by a day", "lift", "day=2026-03-03; unit_weight=100 kg; rigging_weight=1 kg; hoist_limit=500 kg; hoist_due=2026-03-02; sling_limit=500 kg; sling_due=2026-09-30; points=1; legs=2; angle_from_horizontal=60 °", "refused: ");
        row("LI-12 computed: the centre outside the span", "lift", "day=2026-03-02; unit_weight=2000 lb; rigging_weight=1 lb; hoist_limit=5000 lb; hoist_due=2026-09-30; sling_limit=5000 lb; sling_due=2026-09-30; points=2; legs=1; angle_from_horizontal=90 °; span=8 ft; centre=-1 ft", "refused: ");
        row("BS-01 computed: gasket makers' rule", "fastener-order", "fasteners=8; final_torque=400 lbf·in; passes=30, 60, 100", "answer: Tighten in the order 1-5-3-7-2-6-4-8");
        row("the last pass under 100 %", "fastener-order", "fasteners=8; final_torque=400 lbf·in; passes=30, 60", "refused: ");
        row("nothing to tighten", "fastener-order", "fasteners=0; final_torque=400 lbf·in; passes=100", "refused: ");
        row("a length into a torque", "convert", "quantity=1 in; unit=N·m", "refused: 1 in is a length");
        row("a torque into a moment of weight", "convert", "quantity=1 lbf·in; unit=lb·in", "refused: ");
        row("nineteen places", "convert", "quantity=1 in; unit=mm; places=19", "refused: ");
        row("WB-05 computed: AC 43.13-1B (9/27/01, change 1) par. 10-2 c", "weight-change", "outgoing_weight=612.0 lb; outgoing_arm=120.0 in; incoming_weight=618.5 lb; incoming_arm=120.0 in; aircraft_weight=41250 lb; aircraft_centre=118.2 in", "answer: ");
    }
    void verdicts()
    {
        QFETCH(QString, name);
        QFETCH(QString, fields);
        QFETCH(QString, begins);
        const QString found = said(work(name, fields));
        QVERIFY2(found.startsWith(begins), qPrintable(found));
    }

    void otherNumbersOfTheSources()
    {
        // TT-01 computed: the other end. TT-06 computed: ISO 6789 points of a wrench of 40 to 200 N·m: 40, 120, 200.
        QCOMPARE(resultOf(work(u"tool-check"_s, u"range_max=100 N·m; setting=50 N·m; deviation=4"_s), 1), u"48 to 52 N·m"_s);
        const auto points = work(u"tool-check"_s, u"range_max=200 N·m; setting=50 N·m; deviation=4"_s);
        QVERIFY(points);
        QStringList verified;
        for (std::size_t i = 2; i < points->working.steps.size(); ++i)
            verified << points->working.steps[i].numbers;
        QCOMPARE(verified.join(u", "_s), u"40 N·m, 120 N·m, 200 N·m"_s);
        // Lowest marked value: ISO 6789-1:2017 (from memory).
        QCOMPARE(work(u"tool-check"_s, u"range_max=200 N·m; range_min=25 N·m; setting=25 N·m; deviation=4"_s)->working.steps[2].numbers, u"25 N·m"_s);
        // TP-01 computed: AC 43.13-1B (9/8/98) par. 7-40 d, f with table 7-1: 58 to 78.
        QCOMPARE(resultOf(work(u"torque-reading"_s, u"least=50 lbf·in; most=70 lbf·in; prevailing=8 lbf·in; indicated=60 lbf·in; acceptance=simple"_s), 1), u"58 to 78 lbf·in"_s);
        // WB-05 computed: +6.5 lb, +780 lb·in, not negligible.
        const auto change = work(u"weight-change"_s, u"outgoing_weight=612.0 lb; outgoing_arm=120.0 in; incoming_weight=618.5 lb; incoming_arm=120.0 in; aircraft_weight=41250 lb; aircraft_centre=118.2 in"_s);
        QVERIFY(change);
        const QString lines = change->forRecord.join(u'\n');
        QVERIFY2(lines.contains(u"+6.5 lb"_s) && lines.contains(u"+780 lb·in"_s), qPrintable(lines));
        QCOMPARE(change->forRecord.size(), 9);
    }

    void tablesFitTheirFields()
    {
        for (const Calculation &calculation : core::calculations()) {
            for (const core::FromTable &from : calculation.tables) {
                const core::LookUpTable *table = tables().find(QString(from.table));
                QVERIFY2(table, from.table.data());
                const auto field = std::find_if(calculation.fields.begin(), calculation.fields.end(), [&](const core::Field &one) { return one.name == from.field; });
                QVERIFY2(field != calculation.fields.end(), from.field.data());
                if (from.column.isEmpty())
                    continue;
                const auto column = std::find_if(table->columns.begin(), table->columns.end(), [&](const core::LookUpColumn &one) { return one.id == from.column; });
                QVERIFY2(column != table->columns.end(), from.column.data());
                QVERIFY2(fits(*field, *column, *table), from.field.data());
            }
        }
    }

    /// The sheets of a job only show their tables: what is signed comes from the work and the maintenance data.
    void tablesOfActsAreThereToBeRead()
    {
        for (const core::Act &act : core::acts()) {
            for (const core::FromTable &from : act.tables) {
                QVERIFY2(tables().find(QString(from.table)), from.table.data());
                QVERIFY2(std::any_of(act.fields.begin(), act.fields.end(), [&](const core::Field &one) { return one.name == from.field; }), from.field.data());
                QVERIFY2(from.column.isEmpty(), from.column.data());
            }
        }
        QCOMPARE(core::findAct(u"lift.planned")->tables.size(), 1U);
    }

    /// A calculation outside a job warns of what the act warns of.
    void cautionsAreThoseOfTheJob_data()
    {
        QTest::addColumn<QString>("calculation");
        QTest::addColumn<QString>("act");
        QTest::newRow("torque") << u"wrench-setting"_s << u"torque.applied"_s;
        QTest::newRow("bonding") << u"bonding"_s << u"bonding.measured"_s;
        QTest::newRow("leak") << u"leak-class"_s << u"leak.checked"_s;
        QTest::newRow("lift") << u"lift"_s << u"lift.planned"_s;
        QTest::newRow("servicing") << u"servicing"_s << u"servicing.recorded"_s;
    }
    void cautionsAreThoseOfTheJob()
    {
        QFETCH(QString, calculation);
        QFETCH(QString, act);
        QVERIFY(!core::findAct(act)->cautions().isEmpty());
        QCOMPARE(core::findCalculation(calculation)->cautions(), core::findAct(act)->cautions());
    }

    void leakSchemesAreSound()
    {
        const QStringList names = core::leakSchemesIn(tables());
        QVERIFY(names.size() >= 4);
        for (const QString &name : names) {
            const auto scheme = core::leakSchemeNamed(name, tables());
            QVERIFY(scheme);
            QVERIFY2(!core::measure::faultOf(*scheme), qPrintable(name));
            QVERIFY(scheme->classes.size() >= 3);
            QVERIFY(!scheme->note.isEmpty());
        }
        QCOMPARE(core::leakSchemeNamed(u"FAA"_s, tables())->minutes, std::optional<qint64>(30));
        QVERIFY(core::leakSchemeNamed(u"US Air Force"_s, tables())->note.contains(u"from memory"_s));
        QVERIFY(!core::leakSchemeNamed(u"faa"_s, tables()));
    }
};

QTEST_GUILESS_MAIN(TstCalculations)
#include "tst_calculations.moc"
