// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include <algorithm>

#include <rapidcheck.h>

#include "core/measure/lifting.hpp"

using namespace Qt::StringLiterals;
using namespace core;
using namespace core::measure;

namespace {

Quantity quantity(const QString &text)
{
    const qsizetype blank = text.indexOf(u' ');
    const auto read = Quantity::parse(text.first(blank), text.sliced(blank + 1));
    if (!read)
        qFatal("no quantity: %s", qPrintable(text));
    return *read;
}

AngleFromHorizontal angle(const QString &degrees) { return {*Decimal::parse(degrees)}; }

/// "60" is an angle from the horizontal, "120 in / 96 in" a leg's length and height.
LegSlope slope(const QString &text)
{
    const QStringList parts = text.split(u" / "_s);
    if (parts.size() == 2)
        return LegLengths{quantity(parts[0]), quantity(parts[1])};
    return angle(text);
}

/// An invented lift of an engine that breaks no rule and is near none: each row of a test changes one thing of it.
LiftPlan goodLift()
{
    return {.unitWeight = quantity(u"480 kg"_s),
            .riggingWeight = quantity(u"45 kg"_s),
            .hoistLimit = quantity(u"1000 kg"_s),
            .hoistInspectionDue = QDate(2026, 9, 30),
            .slingLimit = quantity(u"500 kg"_s),
            .slingInspectionDue = QDate(2026, 6, 30),
            .legsPerPoint = 1,
            .slope = angle(u"60"_s),
            .points = TwoPoints{quantity(u"1.6 m"_s), quantity(u"0.6 m"_s)},
            .day = QDate(2026, 3, 2)};
}

/// Changes as words: `unit=480 kg; hoist=1000 kg; legs=1; slope=30; points=none`.
LiftPlan changed(const QString &changes)
{
    LiftPlan plan = goodLift();
    for (const QString &change : changes.split(u"; "_s, Qt::SkipEmptyParts)) {
        const QString what = change.section(u'=', 0, 0);
        const QString to = change.section(u'=', 1);
        if (what == u"unit")
            plan.unitWeight = quantity(to);
        else if (what == u"rigging")
            plan.riggingWeight = quantity(to);
        else if (what == u"hoist")
            plan.hoistLimit = quantity(to);
        else if (what == u"hoist due")
            plan.hoistInspectionDue = QDate::fromString(to, Qt::ISODate);
        else if (what == u"sling")
            plan.slingLimit = quantity(to);
        else if (what == u"sling due")
            plan.slingInspectionDue = QDate::fromString(to, Qt::ISODate);
        else if (what == u"legs")
            plan.legsPerPoint = to.toLongLong();
        else if (what == u"slope")
            plan.slope = slope(to);
        else if (what == u"span")
            plan.points->span = quantity(to);
        else if (what == u"centre")
            plan.points->centreFromLeft = quantity(to);
        else if (what == u"points")
            plan.points = std::nullopt;
        else if (what == u"day")
            plan.day = QDate::fromString(to, Qt::ISODate);
        else
            qFatal("no such part of a plan: %s", qPrintable(what));
    }
    return plan;
}

/// Whether a value lies within so much of the expected one, exactly.
bool isNear(const Rational &value, const QString &expected, const QString &tolerance)
{
    const Rational off = value - Rational(*Decimal::parse(expected));
    const Rational most(*Decimal::parse(tolerance));
    return off <= most && -off <= most;
}

Rational inPounds(const Rational &kilograms) { return inUnit(kilograms, *findUnit(u"lb")); }

/// Each sentence is known by some words of it.
bool tells(const QStringList &sentences, const QString &words)
{
    return std::any_of(sentences.begin(), sentences.end(), [&](const QString &sentence) { return sentence.contains(words); });
}

} // namespace

class TestLifting : public QObject {
    Q_OBJECT

private slots:
    void sharesOfThePoints_data()
    {
        QTest::addColumn<QString>("load");
        QTest::addColumn<QString>("span");
        QTest::addColumn<QString>("centre");
        QTest::addColumn<QString>("shares");
        // Published, exact. Pound-force is written as the pound that it is under gravity.
        QTest::newRow("LI-01: sling maker's page on the centre of gravity, 8 and 2 from the points") << u"10000 lb"_s << u"10 ft"_s << u"8 ft"_s << u"2000 8000"_s;
        QTest::newRow("LI-02: rigging calculator page, worked example") << u"2000 lb"_s << u"8 ft"_s << u"3 ft"_s << u"1250 750"_s;
        // Inputs chosen.
        QTest::newRow("LI-12: centre of gravity left of the span, refused and not computed") << u"2000 lb"_s << u"8 ft"_s << u"-1 ft"_s << u"refused"_s;
        QTest::newRow("right of the span") << u"2000 lb"_s << u"8 ft"_s << u"9 ft"_s << u"refused"_s;
        QTest::newRow("under the left point") << u"2000 lb"_s << u"8 ft"_s << u"0 ft"_s << u"2000 0"_s;
        QTest::newRow("under the right point, in another unit") << u"2000 lb"_s << u"8 ft"_s << u"96 in"_s << u"0 2000"_s;
        QTest::newRow("one unit in the last place outside") << u"2000 lb"_s << u"8 ft"_s << u"8.00000000000000001 ft"_s << u"refused"_s;
        QTest::newRow("one unit in the last place before the left point") << u"2000 lb"_s << u"8 ft"_s << u"-0.000000000000000001 ft"_s << u"refused"_s;
        QTest::newRow("no span") << u"2000 lb"_s << u"0 ft"_s << u"0 ft"_s << u"refused"_s;
        QTest::newRow("a span below nought") << u"2000 lb"_s << u"-8 ft"_s << u"-3 ft"_s << u"refused"_s;
        QTest::newRow("no load") << u"0 lb"_s << u"8 ft"_s << u"3 ft"_s << u"refused"_s;
        QTest::newRow("a weight for a span") << u"2000 lb"_s << u"8 lb"_s << u"3 ft"_s << u"refused"_s;
        QTest::newRow("a weight for a place") << u"2000 lb"_s << u"8 ft"_s << u"3 lb"_s << u"refused"_s;
        QTest::newRow("a length for a load") << u"2000 in"_s << u"8 ft"_s << u"3 ft"_s << u"refused"_s;
        QTest::newRow("eighteen digits") << u"100000000000000001 lb"_s << u"4 ft"_s << u"1 ft"_s << u"75000000000000000.75 25000000000000000.25"_s;
    }
    void sharesOfThePoints()
    {
        QFETCH(QString, load);
        QFETCH(QString, span);
        QFETCH(QString, centre);
        const auto shares = sharesOfTwoPoints(quantity(load), {quantity(span), quantity(centre)});
        QTEST(shares ? inPounds(shares->left).text(6) + u' ' + inPounds(shares->right).text(6) : u"refused"_s, "shares");
    }

    /// Sling makers' angle charts print the factor to three places; ours is 1 / sin a to forty.
    void tensionFactors_data()
    {
        QTest::addColumn<QString>("leg");
        QTest::addColumn<QString>("factor");
        QTest::addColumn<QString>("tolerance");
        for (const auto &[degrees, factor] : {std::pair{u"80"_s, u"1.015"_s}, {u"75"_s, u"1.035"_s}, {u"70"_s, u"1.064"_s}, {u"60"_s, u"1.155"_s}, {u"50"_s, u"1.305"_s}, {u"45"_s, u"1.414"_s}})
            QTest::addRow("sling maker's angle chart, published, rounded: %s from the horizontal", qPrintable(degrees)) << degrees << factor << u"0.0005"_s;
        QTest::addRow("sling maker's angle chart, published, rounded up by the source: 65") << u"65"_s << u"1.104"_s << u"0.001"_s;
        QTest::addRow("sling maker's angle chart, published, rounded: 55") << u"55"_s << u"1.221"_s << u"0.0005"_s;
        QTest::addRow("sling maker's angle chart, published, cut off by the source: 40") << u"40"_s << u"1.555"_s << u"0.001"_s;
        QTest::addRow("sling maker's angle chart, published, from the rounded sine: 35") << u"35"_s << u"1.742"_s << u"0.002"_s;
        QTest::addRow("sling maker's angle chart, published, exact: 30, the flattest allowed") << u"30"_s << u"2"_s << u"0"_s;
        QTest::addRow("sling maker's angle chart, published, exact: 90") << u"90"_s << u"1"_s << u"0"_s;
        QTest::addRow("LI-06: sling maker's page, leg 120 in at height 96 in, published, exact") << u"120 in / 96 in"_s << u"1.25"_s << u"0"_s;
        QTest::addRow("LI-10: 86, within 5 of the vertical, 29 CFR 1910.184(b), input chosen") << u"86"_s << u"1"_s << u"0"_s;
        QTest::addRow("29 CFR 1910.184(b): 85, the last that counts as vertical") << u"85"_s << u"1"_s << u"0"_s;
        QTest::addRow("one unit in the last place outside 5 of the vertical") << u"84.9999999999999999"_s << u"1.003820"_s << u"0.000001"_s;
        QTest::addRow("a leg as long as it is high") << u"1 m / 1000 mm"_s << u"1"_s << u"0"_s;
        QTest::addRow("a leg that leans by less than 5, by its lengths") << u"1003 mm / 1 m"_s << u"1"_s << u"0"_s;
        QTest::addRow("a leg that leans by a little more than 5") << u"1004 mm / 1 m"_s << u"1.004"_s << u"0"_s;
        QTest::addRow("a leg of twice its height: 30") << u"2 m / 1 m"_s << u"2"_s << u"0"_s;
    }
    void tensionFactors()
    {
        QFETCH(QString, leg);
        QFETCH(QString, factor);
        QFETCH(QString, tolerance);
        const auto computed = tensionFactor(slope(leg));
        QVERIFY2(computed, computed ? "" : qPrintable(computed.error()));
        QVERIFY2(isNear(*computed, factor, tolerance), qPrintable(computed->text(12)));
    }

    void slopesThatAreRefused_data()
    {
        QTest::addColumn<QString>("leg");
        QTest::newRow("LI-09: 25 from the horizontal; OSHA guidance, netting maker's chart: under 30 not used") << u"25"_s;
        QTest::newRow("one unit in the last place under 30") << u"29.9999999999999999"_s;
        QTest::newRow("netting maker's chart: 15, efficiency 25.8 %") << u"15"_s;
        QTest::newRow("flat") << u"0"_s;
        QTest::newRow("below the horizontal") << u"-60"_s;
        QTest::newRow("one unit in the last place over 90") << u"90.0000000000000001"_s;
        QTest::newRow("a leg longer than twice its height by the last place") << u"2.00000000000000001 m / 1 m"_s;
        QTest::newRow("a leg shorter than its height") << u"95 in / 96 in"_s;
        QTest::newRow("a leg of no length") << u"0 in / 96 in"_s;
        QTest::newRow("no height") << u"120 in / 0 in"_s;
        QTest::newRow("both below nought") << u"-120 in / -96 in"_s;
        QTest::newRow("weights for lengths") << u"120 lb / 96 lb"_s;
        QTest::newRow("a weight for a height") << u"120 in / 1 kg"_s;
    }
    void slopesThatAreRefused()
    {
        QFETCH(QString, leg);
        QVERIFY(!tensionFactor(slope(leg)));
    }

    void tensionOfALeg_data()
    {
        QTest::addColumn<QString>("share");
        QTest::addColumn<qint64>("legs");
        QTest::addColumn<QString>("leg");
        QTest::addColumn<QString>("tension");
        QTest::addColumn<QString>("tolerance");
        QTest::newRow("LI-04: wire-rope supplier's page, published, rounded") << u"1000 lb"_s << qint64(2) << u"60"_s << u"577"_s << u"0.5"_s;
        QTest::newRow("LI-05: wire-rope supplier's page, published, rounded") << u"1000 lb"_s << qint64(2) << u"45"_s << u"707"_s << u"0.5"_s;
        QTest::newRow("LI-06: sling maker's page, published, exact") << u"1200 lb"_s << qint64(1) << u"120 in / 96 in"_s << u"1500"_s << u"0"_s;
        QTest::newRow("LI-08: university page, published, rounded; it counts 30 from the vertical") << u"1000 lb"_s << qint64(1) << u"60"_s << u"1154"_s << u"1"_s;
        QTest::newRow("LI-08: university page, published; it counts 60 from the vertical") << u"1000 lb"_s << qint64(1) << u"30"_s << u"2000"_s << u"0"_s;
        QTest::newRow("LI-10: 86 counts as vertical, input chosen") << u"1000 lb"_s << qint64(1) << u"86"_s << u"1000"_s << u"0"_s;
        QTest::newRow("three legs, exact") << u"999999999999999999 lb"_s << qint64(3) << u"30"_s << u"666666666666666666"_s << u"0"_s;
    }
    void tensionOfALeg()
    {
        QFETCH(QString, share);
        QFETCH(qint64, legs);
        QFETCH(QString, leg);
        QFETCH(QString, tension);
        QFETCH(QString, tolerance);
        const auto computed = legTension(quantity(share).coherent(), legs, *tensionFactor(slope(leg)));
        QVERIFY(computed);
        QVERIFY2(isNear(inPounds(*computed), tension, tolerance), qPrintable(inPounds(*computed).text(12)));
    }

    void legsBelowOneAreRefused()
    {
        QVERIFY(!legTension(1, 0, 1));
        QVERIFY(!legTension(1, -2, 1));
        QVERIFY(legTension(1, 1, 1));
    }

    /// LI-13: 29 CFR 1926.251(a)(4), 125 % of the rated load; input chosen.
    void proofLoads()
    {
        QCOMPARE(inPounds(*proofLoad(quantity(u"4000 lb"_s))), Rational(5000));
        QVERIFY(!proofLoad(quantity(u"0 lb"_s)));
        QVERIFY(!proofLoad(quantity(u"-1 lb"_s)));
        QVERIFY(!proofLoad(quantity(u"4000 in"_s)));
    }

    void theGoodLiftIsAllowed()
    {
        const LiftCheck check = checkLift(goodLift());
        QVERIFY2(check.isAllowed(), qPrintable(check.refusals.join(u' ')));
        QCOMPARE(check.warnings, QStringList());
        QCOMPARE(check.hoist->load, Rational(525));
        QCOMPARE(check.hoist->margin.text(6), u"47.5"_s);
        QCOMPARE(check.points.size(), 2U);
        QCOMPARE(check.points[0].share, Rational(300));
        QCOMPARE(check.points[1].share, Rational(180));
        QCOMPARE(check.points[0].legTension.text(3), u"346.41"_s); // 300 / sin 60° is two hundred times the root of 3
        QCOMPARE(check.points[0].margin.text(3), u"30.718"_s);      // (500 − 346.41) / 500
        QCOMPARE(check.points[1].legTension.text(3), u"207.846"_s); // 180 / sin 60°
    }

    void whatForbidsALift_data()
    {
        QTest::addColumn<QString>("changes");
        QTest::addColumn<QString>("refusal"); // words of the only sentence; empty: allowed
        const QString load = u"over its working load limit"_s;
        const QString weight = u"Give a weight above 0"_s;
        QTest::newRow("hoist exactly at its limit") << u"hoist=525 kg"_s << QString();
        QTest::newRow("hoist over it by the last place") << u"hoist=524.999999999999999 kg"_s << load;
        QTest::newRow("hoist over it by the rigging alone") << u"hoist=500 kg"_s << load;
        QTest::newRow("pounds against kilograms, exactly at the limit: 100 lb are 45.359237 kg")
            << u"unit=80 lb; rigging=20 lb; hoist=45.359237 kg"_s << QString();
        QTest::newRow("pounds against kilograms, over by the last place") << u"unit=80 lb; rigging=20 lb; hoist=45.3592369999999999 kg"_s << load;
        QTest::newRow("LI-11: a leg carries 1443 of 1400; wire-rope supplier's page, 29 CFR 1926.251(a)(2); inputs chosen")
            << u"unit=2500 lb; points=none; legs=2; sling=1400 lb; hoist=2000 kg"_s << load;
        QTest::newRow("the same leg within its limit") << u"unit=2500 lb; points=none; legs=2; sling=1444 lb; hoist=2000 kg"_s << QString();
        QTest::newRow("a leg exactly at its limit: 300 / sin 30°") << u"slope=30; sling=600 kg"_s << QString();
        QTest::newRow("a leg over it by the last place") << u"slope=30; sling=599.999999999999999 kg"_s << load;
        QTest::newRow("LI-09: slings at 25 from the horizontal") << u"slope=25"_s << u"under 30°"_s;
        QTest::newRow("slings at 91 from the horizontal") << u"slope=91"_s << u"at most 90°"_s;
        QTest::newRow("LI-12: centre of gravity outside the span") << u"centre=-0.2 m"_s << u"pulled up"_s;
        QTest::newRow("no span") << u"span=0 m"_s << u"make no sense"_s;
        QTest::newRow("hoist due on the day") << u"hoist due=2026-03-02"_s << QString();
        QTest::newRow("hoist due the day before") << u"hoist due=2026-03-01"_s << u"The hoist: its inspection held until 2026-03-01"_s;
        QTest::newRow("sling due on the day") << u"sling due=2026-03-02"_s << QString();
        QTest::newRow("sling due the day before") << u"sling due=2026-03-01"_s << u"The sling: its inspection held until 2026-03-01"_s;
        QTest::newRow("hoist without a date") << u"hoist due="_s << u"The hoist: there is no date"_s;
        QTest::newRow("sling without a date") << u"sling due="_s << u"The sling: there is no date"_s;
        QTest::newRow("no day") << u"day="_s << u"day of the lift"_s;
        QTest::newRow("a unit of no weight") << u"unit=0 kg"_s << weight;
        QTest::newRow("a unit below nought") << u"unit=-480 kg"_s << weight;
        QTest::newRow("rigging of no weight") << u"rigging=0 kg"_s << weight;
        QTest::newRow("rigging below nought") << u"rigging=-1 kg"_s << weight;
        QTest::newRow("hoist without a limit") << u"hoist=0 kg"_s << weight;
        QTest::newRow("sling without a limit") << u"sling=-500 kg"_s << weight;
        QTest::newRow("a length for a weight") << u"unit=480 mm"_s << weight;
        QTest::newRow("no legs") << u"legs=0"_s << u"legs at each lifting point"_s;
        // The left leg carries 480 · (1.6 − 0.6) / 1.6 / sin 30° = 600 kg, one leg of it or four; on a single point two legs carry 480 / (2 sin 30°) = 480 kg.
        QTest::newRow("two legs at each of two points, a leg exactly at its limit") << u"legs=2; slope=30; sling=600 kg"_s << QString();
        QTest::newRow("two legs at each of two points, over by the last place") << u"legs=2; slope=30; sling=599.999999999999999 kg"_s << load;
        QTest::newRow("four legs at each of two points, over by the last place") << u"legs=4; slope=30; sling=599.999999999999999 kg"_s << load;
        QTest::newRow("four legs at a single point, two of them exactly at their limit") << u"points=none; legs=4; slope=30; sling=480 kg"_s << QString();
        QTest::newRow("four legs at a single point, over by the last place") << u"points=none; legs=4; slope=30; sling=479.999999999999999 kg"_s << load;
        QTest::newRow("eighteen digits at the limit") << u"unit=999999999999999998 kg; rigging=1 kg; hoist=999999999999999999 kg; sling=999999999999999999 kg"_s << QString();
        QTest::newRow("eighteen digits over the limit") << u"unit=999999999999999998 kg; rigging=1 kg; hoist=999999999999999998 kg; sling=999999999999999999 kg"_s << load;
    }
    void whatForbidsALift()
    {
        QFETCH(QString, changes);
        QFETCH(QString, refusal);
        const LiftCheck check = checkLift(changed(changes));
        QCOMPARE(check.isAllowed(), refusal.isEmpty());
        if (!refusal.isEmpty()) {
            QCOMPARE(check.refusals.size(), 1);
            QVERIFY2(check.refusals.front().contains(refusal), qPrintable(check.refusals.front()));
        }
        const Working working = liftWorking(changed(changes));
        QCOMPARE(working.answer.startsWith(u"Do not lift."_s), !refusal.isEmpty());
    }

    void allThatForbidsIsSaidAtOnce()
    {
        const LiftCheck check = checkLift(changed(u"hoist=500 kg; hoist due=2026-01-01; sling due=2026-01-01; slope=20; centre=2 m; legs=0"_s));
        QCOMPARE(check.refusals.size(), 6);
        QVERIFY(check.points.empty());
        QVERIFY(!check.factor);
        QCOMPARE(check.hoist->load, Rational(525));
    }

    /// A margin of 20 % and the number of legs that hold a stiff load: common practice.
    void whatIsWarnedOf_data()
    {
        QTest::addColumn<QString>("changes");
        QTest::addColumn<QString>("warning");
        const QString little = u"under 20 %"_s;
        QTest::newRow("hoist with exactly 20 % left") << u"hoist=656.25 kg"_s << QString();
        QTest::newRow("hoist with less by the last place") << u"hoist=656.249999999999999 kg"_s << little;
        QTest::newRow("hoist with nothing left") << u"hoist=525 kg"_s << little;
        QTest::newRow("leg with exactly 20 % left") << u"slope=30; sling=750 kg"_s << QString();
        QTest::newRow("leg with less by the last place") << u"slope=30; sling=749.999999999999999 kg"_s << little;
        QTest::newRow("one leg at each of two points") << u"legs=1"_s << QString();
        QTest::newRow("two legs at each of two points") << u"legs=2"_s << u"at each of two points one leg is reckoned with"_s;
        QTest::newRow("two legs at a single point") << u"points=none; legs=2"_s << QString();
        QTest::newRow("three legs at a single point") << u"points=none; legs=3"_s << u"two are reckoned with"_s;
        QTest::newRow("centre of gravity under a point") << u"centre=0 m; sling=1000 kg"_s << u"Nothing would hang on the right point"_s;
        QTest::newRow("centre of gravity near a point") << u"centre=0.001 m; sling=1000 kg"_s << QString();
    }
    void whatIsWarnedOf()
    {
        QFETCH(QString, changes);
        QFETCH(QString, warning);
        const LiftCheck check = checkLift(changed(changes));
        QVERIFY(check.isAllowed());
        QCOMPARE(check.warnings.size(), warning.isEmpty() ? 0 : 1);
        if (!warning.isEmpty())
            QVERIFY2(check.warnings.front().contains(warning), qPrintable(check.warnings.front()));
    }

    void theWorkingShowsEveryStep()
    {
        const Working working = liftWorking(changed(u"slope=2 m / 1 m; sling=1000 kg"_s));
        QStringList lines;
        for (const WorkingStep &step : working.steps)
            lines << step.formula + u" | "_s + step.numbers + u" | "_s + step.result;
        QCOMPARE(lines, (QStringList{
                            u"H = W + G | 480 kg + 45 kg | 525 kg"_s,
                            u"(WLL − H) / WLL · 100 | (1000 kg − 525 kg) / 1000 kg · 100 | 47.5 %"_s,
                            u"k = l / h | 2 m / 1 m | 2"_s,
                            u"R = W · (L − x) / L | 480 kg · (1.6 m − 0.6 m) / 1.6 m | 300 kg"_s,
                            u"T = R · k / n | 300 kg · k / 1 | 600 kg"_s,
                            u"(WLL − T) / WLL · 100 | (1000 kg − 600 kg) / 1000 kg · 100 | 40 %"_s,
                            u"R = W · x / L | 480 kg · 0.6 m / 1.6 m | 180 kg"_s,
                            u"T = R · k / n | 180 kg · k / 1 | 360 kg"_s,
                            u"(WLL − T) / WLL · 100 | (1000 kg − 360 kg) / 1000 kg · 100 | 64 %"_s,
                        }));
        QVERIFY(tells(working.sources, u"29 CFR 1926.251"_s));
        QVERIFY(tells({liftWorking(changed(u"slope=86"_s)).steps[2].numbers}, u"counted as vertical"_s));
        QVERIFY(tells({liftWorking(goodLift()).steps[2].numbers}, u"60° from the horizontal"_s));
        QCOMPARE(liftWorking(changed(u"points=none"_s)).steps.size(), 5U);
        QCOMPARE(liftWorking(changed(u"points=none; legs=4"_s)).steps[3].numbers, u"480 kg · k / 2"_s);
        QCOMPARE(liftWorking(changed(u"legs=4"_s)).steps[4].numbers, u"300 kg · k / 1"_s);
        QCOMPARE(liftWorking(changed(u"unit=0 kg"_s)).steps.size(), 0U);
    }

    /// One number of places wherever a load is shown, and what is compared is not rounded: 300 / sin 60° is 346.410161….
    void loadsAreShownToTwoPlaces()
    {
        QCOMPARE(loadText(checkLift(goodLift()).points[0].legTension, goodLift().slingLimit), u"≈ 346.41 kg"_s);
        QCOMPARE(liftWorking(goodLift()).steps[4].result, u"≈ 346.41 kg"_s);
        QCOMPARE(loadText(*legTension(quantity(u"346.41 lb"_s).coherent(), 1, 1), quantity(u"1 lb"_s)), u"346.41 lb"_s);
        QCOMPARE(marginText(checkLift(goodLift()).points[0].margin), u"≈ 30.7 %"_s);
        QVERIFY(checkLift(changed(u"sling=346.4101616 kg"_s)).isAllowed());
        QVERIFY(!checkLift(changed(u"sling=346.4101615 kg"_s)).isAllowed());
    }

    /// Common practice: a stiff load may hang on two of all its legs.
    void twoOfAllLegsAreReckonedWith_data()
    {
        QTest::addColumn<QString>("changes");
        QTest::addColumn<qint64>("carrying");
        QTest::addColumn<QString>("tension"); // of the left or only point, in kg: at 30° twice 300, or twice 480, over the legs that carry
        QTest::newRow("two points, a leg each") << u"legs=1"_s << qint64(1) << u"600"_s;
        QTest::newRow("two points, two legs each") << u"legs=2"_s << qint64(1) << u"600"_s;
        QTest::newRow("two points, four legs each") << u"legs=4"_s << qint64(1) << u"600"_s;
        QTest::newRow("one point, two legs") << u"points=none; legs=2"_s << qint64(2) << u"480"_s;
        QTest::newRow("one point, three legs") << u"points=none; legs=3"_s << qint64(2) << u"480"_s;
        QTest::newRow("one point, four legs") << u"points=none; legs=4"_s << qint64(2) << u"480"_s;
        QTest::newRow("one point, one leg") << u"points=none; legs=1"_s << qint64(1) << u"960"_s;
    }
    void twoOfAllLegsAreReckonedWith()
    {
        QFETCH(QString, changes);
        const LiftPlan plan = changed(u"slope=30; "_s + changes);
        QTEST(carryingLegs(plan), "carrying");
        QTEST(checkLift(plan).points.front().legTension.text(6), "tension");
    }

    void theCautions()
    {
        for (const QString &words : {u"under the load"_s, u"taglines"_s, u"above the centre of gravity"_s, u"first inches"_s, u"approved maintenance data"_s, u"licensed"_s}) {
            QVERIFY2(tells(liftingCautions(), words), qPrintable(words));
        }
    }

    void sharesAddToTheLoad()
    {
        QVERIFY(rc::check("shares of two points add to the load, and balance about the centre of gravity", [] {
            const auto number = [](qint64 least) { return QString::number(*rc::gen::inRange<qint64>(least, 1'000'000'000'000'000'000)); };
            const auto load = Quantity::parse(number(1), *rc::gen::element(u"kg"_s, u"lb"_s));
            const auto span = Quantity::parse(number(1), *rc::gen::element(u"mm"_s, u"in"_s));
            const auto centre = Quantity::parse(QString::number(*rc::gen::inRange<qint64>(0, span->value().digits() + 1)), span->unit());
            const auto shares = sharesOfTwoPoints(*load, {*span, *centre});
            RC_ASSERT(shares.has_value());
            RC_ASSERT(shares->left + shares->right == load->coherent());
            RC_ASSERT(shares->left * centre->coherent() == shares->right * (span->coherent() - centre->coherent()));
        }));
    }

    /// A lift told in pounds, inches and feet is the same lift, to the last digit.
    void unitsDoNotMatter()
    {
        QVERIFY(rc::check("converted and back", [] {
            const auto value = Quantity::parse(QString::number(*rc::gen::inRange<qint64>(1, 1'000'000'000'000'000'000)), *rc::gen::element(u"kg"_s, u"lb"_s));
            const Unit &other = *findUnit(*rc::gen::element(u"kg"_s, u"lb"_s));
            RC_ASSERT(inUnit(value->coherent(), other) * Rational(other.factor) == value->coherent());
            RC_ASSERT(inUnit(value->coherent(), *findUnit(value->unit())) == Rational(value->value()));
        }));
    }
};

QTEST_GUILESS_MAIN(TestLifting)
#include "tst_lifting.moc"
