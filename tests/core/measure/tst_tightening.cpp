// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include <algorithm>

#include <rapidcheck.h>

#include "core/measure/tightening.hpp"

using namespace Qt::StringLiterals;
using namespace core;
using measure::crossPattern;

namespace {

QString textOf(const std::vector<qint64> &order)
{
    QStringList numbers;
    for (const qint64 number : order)
        numbers << QString::number(number);
    return numbers.join(u'-');
}

std::vector<Decimal> decimals(const QString &words)
{
    std::vector<Decimal> all;
    for (const QString &word : words.split(u' ', Qt::SkipEmptyParts))
        all.push_back(*Decimal::parse(word));
    return all;
}

Quantity quantity(const QString &text)
{
    const qsizetype blank = text.indexOf(u' ');
    return *Quantity::parse(text.first(blank), text.sliced(blank + 1));
}

/// The targets in the unit of the final torque, or "refused".
QString targetsText(const QString &finalTorque, const QString &percents)
{
    const auto targets = measure::passTargets(quantity(finalTorque), decimals(percents));
    if (!targets)
        return u"refused"_s;
    QStringList texts;
    for (const measure::PassTarget &target : *targets)
        texts << inUnit(target.torque, *findUnit(quantity(finalTorque).unit())).text(24);
    return texts.join(u' ');
}

/// How many places lie between two fasteners, the shorter way round.
qint64 apart(qint64 a, qint64 b, qint64 fasteners)
{
    const qint64 way = std::abs(a - b);
    return std::min(way, fasteners - way);
}

} // namespace

class TestTightening : public QObject {
    Q_OBJECT

private slots:
    void publishedOrders_data()
    {
        QTest::addColumn<qint64>("fasteners");
        QTest::addColumn<QString>("order");
        // Computed from the rule that the source prints: opposite pairs (12, 6, 3, 9 o'clock), then half the angle (1:30, 7:30 and so on).
        QTest::newRow("gasket maker's instructions, 4, clockwise") << qint64(4) << u"1-3-2-4"_s;
        QTest::newRow("BS-01: gasket maker's instructions, 8, clockwise") << qint64(8) << u"1-5-3-7-2-6-4-8"_s;
        // Printed by the source, but remembered.
        QTest::newRow("ASME PCC-1 (2010, 2013), cross-pattern table, 12 (from memory)") << qint64(12) << u"1-7-4-10-2-8-5-11-3-9-6-12"_s;
        QTest::newRow("ASME PCC-1 (2010, 2013), cross-pattern table, 16 (from memory)") << qint64(16) << u"1-9-5-13-3-11-7-15-2-10-6-14-4-12-8-16"_s;
        QTest::newRow("ASME PCC-1 (2010, 2013), cross-pattern table, 20 (from memory)") << qint64(20) << u"1-11-6-16-3-13-8-18-5-15-10-20-2-12-7-17-4-14-9-19"_s;
        QTest::newRow("ASME PCC-1 (2010, 2013), cross-pattern table, 24 (from memory)")
            << qint64(24) << u"1-13-7-19-4-16-10-22-2-14-8-20-5-17-11-23-3-15-9-21-6-18-12-24"_s;
        // Common practice.
        QTest::newRow("one") << qint64(1) << u"1"_s;
        QTest::newRow("two") << qint64(2) << u"1-2"_s;
        QTest::newRow("three") << qint64(3) << u"1-2-3"_s;
        QTest::newRow("five: the star of a wheel") << qint64(5) << u"1-3-5-2-4"_s;
        QTest::newRow("six") << qint64(6) << u"1-4-2-5-3-6"_s;
        QTest::newRow("seven") << qint64(7) << u"1-4-7-3-6-2-5"_s;
        QTest::newRow("none") << qint64(0) << QString();
        QTest::newRow("fewer than none") << qint64(-4) << QString();
    }
    void publishedOrders()
    {
        QFETCH(qint64, fasteners);
        QTEST(textOf(crossPattern(fasteners)), "order");
    }

    void everyFastenerStandsOnceForAnyNumber()
    {
        for (qint64 fasteners = 1; fasteners <= 200; ++fasteners) {
            std::vector<qint64> order = crossPattern(fasteners);
            std::sort(order.begin(), order.end());
            QCOMPARE(static_cast<qint64>(order.size()), fasteners);
            for (qint64 number = 1; number <= fasteners; ++number)
                QCOMPARE(order[static_cast<std::size_t>(number - 1)], number);
        }
    }

    void everyOtherOneIsFollowedByItsOpposite()
    {
        for (qint64 fasteners = 2; fasteners <= 200; fasteners += 2) {
            const std::vector<qint64> order = crossPattern(fasteners);
            for (std::size_t i = 0; i < order.size(); i += 2)
                QCOMPARE(apart(order[i], order[i + 1], fasteners), fasteners / 2);
        }
    }

    void withAnOddNumberTheNextIsTheNearestToOpposite()
    {
        for (qint64 fasteners = 3; fasteners < 200; fasteners += 2) {
            const std::vector<qint64> order = crossPattern(fasteners);
            for (std::size_t i = 1; i < order.size(); ++i)
                QCOMPARE(apart(order[i - 1], order[i], fasteners), (fasteners - 1) / 2);
        }
    }

    void targets_data()
    {
        QTest::addColumn<QString>("finalTorque");
        QTest::addColumn<QString>("percents");
        QTest::addColumn<QString>("expected");
        // Numbers computed from the percents that the sources print; the final torque is chosen. Exact.
        QTest::newRow("BS-02: flange torque pages, 30, 60, 100 %") << u"400 lbf·in"_s << u"30 60 100"_s << u"120 240 400"_s;
        QTest::newRow("BS-03: piping design page, 12 bolts, 20, 40, 80, 100 %") << u"500 lbf·in"_s << u"20 40 80 100"_s << u"100 200 400 500"_s;
        QTest::newRow("once more round at the end") << u"400 lbf·in"_s << u"30 60 100 100"_s << u"120 240 400 400"_s;
        QTest::newRow("ASME PCC-1, upper ends of its passes (from memory)") << u"90 N·m"_s << u"30 70 100"_s << u"27 63 90"_s;
        QTest::newRow("one pass") << u"23.5 N·m"_s << u"100"_s << u"23.5"_s;
        QTest::newRow("eighteen digits") << u"0.000000000000000007 N·m"_s << u"33.3 100.00"_s << u"0.000000000000000002331 0.000000000000000007"_s;
        QTest::newRow("the least of a percent") << u"1 N·m"_s << u"0.000000000000000001 100"_s << u"0.00000000000000000001 1"_s;
        QTest::newRow("nought percent") << u"400 lbf·in"_s << u"0 100"_s << u"refused"_s;
        QTest::newRow("below nought") << u"400 lbf·in"_s << u"-30 100"_s << u"refused"_s;
        QTest::newRow("one unit in the last place over 100") << u"400 lbf·in"_s << u"30 100.000000000000001"_s << u"refused"_s;
        QTest::newRow("one unit in the last place short of 100") << u"400 lbf·in"_s << u"30 99.9999999999999999"_s << u"refused"_s;
        QTest::newRow("falling") << u"400 lbf·in"_s << u"60 30 100"_s << u"refused"_s;
        QTest::newRow("no passes") << u"400 lbf·in"_s << QString() << u"refused"_s;
        QTest::newRow("no torque") << u"0 lbf·in"_s << u"30 100"_s << u"refused"_s;
        QTest::newRow("a torque below nought") << u"-4 lbf·in"_s << u"30 100"_s << u"refused"_s;
        QTest::newRow("no torque but a weight") << u"400 lb"_s << u"30 100"_s << u"refused"_s;
    }
    void targets()
    {
        QFETCH(QString, finalTorque);
        QFETCH(QString, percents);
        QTEST(targetsText(finalTorque, percents), "expected");
    }

    void theWorkingShowsPassesAndOrder()
    {
        const auto working = measure::tighteningWorking(5, quantity(u"400 lbf·in"_s), decimals(u"33.3333 100"_s));
        QVERIFY(working);
        QCOMPARE(working->steps.size(), 2U);
        QCOMPARE(working->steps[0].numbers, u"400 lbf·in · 33.3333 / 100"_s);
        QCOMPARE(working->steps[0].result, u"133.3332 lbf·in"_s);
        QVERIFY2(working->answer.contains(u"1-3-5-2-4"_s), qPrintable(working->answer));
        QVERIFY(!working->sources.isEmpty());
        QVERIFY(!measure::tighteningWorking(0, quantity(u"400 lbf·in"_s), decimals(u"100"_s)));
        QVERIFY(!measure::tighteningWorking(5, quantity(u"400 lbf·in"_s), decimals(u"90"_s)));
    }

    /// A pass to p % and one to (100 − p) % make the whole, in any unit.
    void passesAreExact()
    {
        QVERIFY(rc::check("p and the rest make the whole", [] {
            const qint64 hundredths = *rc::gen::inRange<qint64>(1, 10000);
            const QString unit = *rc::gen::element(u"N·m"_s, u"lbf·in"_s, u"lbf·ft"_s, u"kgf·m"_s);
            const auto torque = Quantity::parse(QString::number(*rc::gen::inRange<qint64>(1, 1'000'000'000'000'000'000)), unit);
            const auto percent = [](qint64 of) { return *Decimal::parse(u"%1.%2"_s.arg(of / 100).arg(of % 100, 2, 10, QLatin1Char('0'))); };
            const auto some = measure::passTargets(*torque, {percent(hundredths), percent(10000)});
            const auto rest = measure::passTargets(*torque, {percent(10000 - hundredths), percent(10000)});
            RC_ASSERT(some && rest);
            RC_ASSERT(some->front().torque + rest->front().torque == torque->coherent());
            RC_ASSERT(some->back().torque == torque->coherent());
        }));
    }
};

QTEST_GUILESS_MAIN(TestTightening)
#include "tst_tightening.moc"
