// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include <rapidcheck.h>

#include "core/measure/bonding.hpp"

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

/// "at most 3 mΩ" or "less than 2.5 mΩ".
BondingLimit limitOf(const QString &text)
{
    if (text.startsWith(u"at most "))
        return {quantity(text.mid(8)), Comparison::AtMost};
    return {quantity(text.mid(10)), Comparison::LessThan};
}

QString verdictOf(const Measured<BondingVerdict> &verdict) { return !verdict ? u"refused"_s : verdict->isMet ? u"met"_s : u"not met"_s; }

} // namespace

class TestBonding : public QObject {
    Q_OBJECT

private slots:
    void readings_data()
    {
        QTest::addColumn<QString>("reading");
        QTest::addColumn<QString>("limit");
        QTest::addColumn<QString>("verdict");
        // Limits and comparisons are printed by the source; readings are chosen.
        QTest::newRow("BO-01: AC 43.13-1B par. 11-189, a jumper's connection does not exceed .003 ohm") << u"3.0 mΩ"_s << u"at most 3 mΩ"_s << u"met"_s;
        QTest::newRow("BO-02: AC 43.13-1B par. 11-188 f, a frame has less than 2.5 milliohms") << u"2.5 mΩ"_s << u"less than 2.5 mΩ"_s << u"not met"_s;
        QTest::newRow("BO-03: AC 43.13-1B par. 11-188 f") << u"2.49 mΩ"_s << u"less than 2.5 mΩ"_s << u"met"_s;
        QTest::newRow("BO-05: 0.003 ohm against 3 milliohms, not over") << u"0.003 Ω"_s << u"at most 3 mΩ"_s << u"met"_s;
        QTest::newRow("BO-05: 0.003 ohm against 3 milliohms, less than") << u"0.003 Ω"_s << u"less than 3 mΩ"_s << u"not met"_s;
        // Edges.
        QTest::newRow("over 3 by the last place") << u"3.00000000000000001 mΩ"_s << u"at most 3 mΩ"_s << u"not met"_s;
        QTest::newRow("over 3 by the last place, in ohms") << u"0.003000000000000001 Ω"_s << u"at most 3 mΩ"_s << u"not met"_s;
        QTest::newRow("under 2.5 by the last place") << u"2.49999999999999999 mΩ"_s << u"less than 2.5 mΩ"_s << u"met"_s;
        QTest::newRow("nought") << u"0 mΩ"_s << u"at most 3 mΩ"_s << u"met"_s;
        QTest::newRow("below nought by the last place") << u"-0.000000000000000001 mΩ"_s << u"at most 3 mΩ"_s << u"refused"_s;
        QTest::newRow("a voltage for a reading") << u"3 mV"_s << u"at most 3 mΩ"_s << u"refused"_s;
        QTest::newRow("no limit") << u"0 mΩ"_s << u"at most 0 mΩ"_s << u"refused"_s;
        QTest::newRow("a limit below nought") << u"0 mΩ"_s << u"at most -3 mΩ"_s << u"refused"_s;
        QTest::newRow("a voltage for a limit") << u"3 mΩ"_s << u"at most 3 mV"_s << u"refused"_s;
        QTest::newRow("eighteen digits") << u"999999999999999999 Ω"_s << u"at most 999999999999999998 Ω"_s << u"not met"_s;
    }
    void readings()
    {
        QFETCH(QString, reading);
        QFETCH(QString, limit);
        QFETCH(QString, verdict);
        QCOMPARE(verdictOf(bondingAgainst(limitOf(limit), quantity(reading))), verdict);
        const auto working = bondingWorking(limitOf(limit), quantity(reading), std::nullopt, std::nullopt);
        QCOMPARE(working.has_value(), verdict != u"refused");
    }

    /// BO-05: the same resistance in two units.
    void ohmsAndMilliohmsAreEqual() { QVERIFY(quantity(u"0.003 Ω"_s) == quantity(u"3 mΩ"_s)); }

    void twoReadings_data()
    {
        QTest::addColumn<QString>("first");
        QTest::addColumn<QString>("second");
        QTest::addColumn<QString>("verdict");
        QTest::addColumn<QString>("counts");
        // Readings chosen, against at most 3 mΩ (AC 43.13-1B par. 11-189). That both have to meet it is common practice.
        QTest::newRow("both within") << u"1.2 mΩ"_s << u"1.4 mΩ"_s << u"met"_s << u"1.4"_s;
        QTest::newRow("the first is worse") << u"3 mΩ"_s << u"0.001 Ω"_s << u"met"_s << u"3"_s;
        QTest::newRow("the first is over") << u"3.01 mΩ"_s << u"1 mΩ"_s << u"not met"_s << u"3.01"_s;
        QTest::newRow("the second is over by the last place") << u"1 mΩ"_s << u"0.003000000000000001 Ω"_s << u"not met"_s << u"3.000000000000001"_s;
        QTest::newRow("the first is below nought") << u"-1 mΩ"_s << u"1 mΩ"_s << u"refused"_s << QString();
        QTest::newRow("the second is below nought") << u"1 mΩ"_s << u"-1 mΩ"_s << u"refused"_s << QString();
        QTest::newRow("the second is a voltage") << u"1 mΩ"_s << u"1 mV"_s << u"refused"_s << QString();
    }
    void twoReadings()
    {
        QFETCH(QString, first);
        QFETCH(QString, second);
        QFETCH(QString, verdict);
        const auto judged = worseOfTwo(limitOf(u"at most 3 mΩ"_s), quantity(first), quantity(second));
        QCOMPARE(verdictOf(judged), verdict);
        QTEST(judged ? inUnit(judged->resistance, *findUnit(u"mΩ")).text(18) : QString(), "counts");
    }

    void drops_data()
    {
        QTest::addColumn<QString>("voltage");
        QTest::addColumn<QString>("current");
        QTest::addColumn<QString>("milliohms");
        QTest::addColumn<QString>("verdict"); // against less than 2.5 mΩ
        QTest::newRow("BO-04: millivolt-drop test, AC 43.13-1B fig. 11-19; inputs chosen, exact") << u"25 mV"_s << u"10 A"_s << u"2.5"_s << u"not met"_s;
        QTest::newRow("less by the last place") << u"24.9999999999999999 mV"_s << u"10 A"_s << u"2.49999999999999999"_s << u"met"_s;
        QTest::newRow("in volts") << u"0.02 V"_s << u"10 A"_s << u"2"_s << u"met"_s;
        QTest::newRow("a third") << u"1 mV"_s << u"3 A"_s << u"0.333333333333333333"_s << u"met"_s;
        QTest::newRow("no drop") << u"0 mV"_s << u"10 A"_s << u"0"_s << u"met"_s;
        QTest::newRow("no current") << u"25 mV"_s << u"0 A"_s << u"refused"_s << u"refused"_s;
        QTest::newRow("current the other way") << u"25 mV"_s << u"-10 A"_s << u"refused"_s << u"refused"_s;
        QTest::newRow("leads the wrong way round") << u"-25 mV"_s << u"10 A"_s << u"refused"_s << u"refused"_s;
        QTest::newRow("a resistance for a voltage") << u"25 mΩ"_s << u"10 A"_s << u"refused"_s << u"refused"_s;
        QTest::newRow("a voltage for a current") << u"25 mV"_s << u"10 V"_s << u"refused"_s << u"refused"_s;
    }
    void drops()
    {
        QFETCH(QString, voltage);
        QFETCH(QString, current);
        QFETCH(QString, verdict);
        const auto ohms = millivoltDrop(quantity(voltage), quantity(current));
        QTEST(ohms ? inUnit(*ohms, *findUnit(u"mΩ")).text(18) : u"refused"_s, "milliohms");
        QCOMPARE(verdictOf(dropAgainst(limitOf(u"less than 2.5 mΩ"_s), quantity(voltage), quantity(current))), verdict);
        QCOMPARE(dropWorking(limitOf(u"less than 2.5 mΩ"_s), quantity(voltage), quantity(current)).has_value(), verdict != u"refused");
    }

    /// Common practice.
    void zerosOfTheLeads_data()
    {
        QTest::addColumn<QString>("zero");
        QTest::addColumn<QString>("second");
        QTest::addColumn<bool>("accepted");
        QTest::newRow("nought") << u"0 mΩ"_s << QString() << true;
        QTest::newRow("small") << u"0.02 mΩ"_s << QString() << true;
        QTest::newRow("as much as the reading") << u"0.001 Ω"_s << QString() << true;
        QTest::newRow("more by the last place") << u"1.00000000000000001 mΩ"_s << QString() << false;
        QTest::newRow("below nought by the last place") << u"-0.000000000000000001 mΩ"_s << QString() << false;
        QTest::newRow("a voltage") << u"0 mV"_s << QString() << false;
        QTest::newRow("as much as the lesser of two readings") << u"0.5 mΩ"_s << u"0.5 mΩ"_s << true;
        QTest::newRow("more than the lesser of two readings") << u"0.6 mΩ"_s << u"0.5 mΩ"_s << false;
        QTest::newRow("between two readings, the first the lesser") << u"1.1 mΩ"_s << u"2 mΩ"_s << false;
    }
    void zerosOfTheLeads()
    {
        QFETCH(QString, zero);
        QFETCH(QString, second);
        QFETCH(bool, accepted);
        const auto other = second.isEmpty() ? std::nullopt : std::optional(quantity(second));
        if (!other)
            QCOMPARE(!whyNotZeroed(quantity(zero), quantity(u"1 mΩ"_s)), accepted);
        const auto working = bondingWorking(limitOf(u"at most 3 mΩ"_s), quantity(u"1 mΩ"_s), other, quantity(zero));
        QCOMPARE(working.has_value(), accepted);
        if (accepted)
            QCOMPARE(working->answer, bondingWorking(limitOf(u"at most 3 mΩ"_s), quantity(u"1 mΩ"_s), other, std::nullopt)->answer); // nothing is subtracted
    }

    void theWorkingShowsWhatWasCompared()
    {
        const auto working = bondingWorking(limitOf(u"less than 2.5 mΩ"_s), quantity(u"2.5 mΩ"_s), quantity(u"2.4 mΩ"_s), quantity(u"0.1 mΩ"_s));
        QStringList lines;
        for (const WorkingStep &step : working->steps)
            lines << step.what + u": "_s + step.result;
        QCOMPARE(lines, (QStringList{u"Reading: 2.5 mΩ"_s, u"Second reading: 2.4 mΩ"_s, u"Zero of the leads, as recorded: 0.1 mΩ"_s, u"Limit: less than 2.5 mΩ"_s}));
        QVERIFY2(working->answer.startsWith(u"2.5 mΩ does not meet the limit, less than 2.5 mΩ."_s), qPrintable(working->answer));

        const auto drop = dropWorking(limitOf(u"at most 0.0025 Ω"_s), quantity(u"25 mV"_s), quantity(u"10 A"_s));
        QCOMPARE(drop->steps.front().formula, u"R = U / I"_s);
        QCOMPARE(drop->steps.front().numbers, u"25 mV / 10 A"_s);
        QCOMPARE(drop->steps.front().result, u"0.0025 Ω"_s);
        QCOMPARE(drop->answer, u"0.0025 Ω meets the limit, at most 0.0025 Ω."_s);
        QVERIFY(drop->sources.join(u' ').contains(u"fig. 11-19"_s));
        QVERIFY(!dropWorking(limitOf(u"at most 0 Ω"_s), quantity(u"25 mV"_s), quantity(u"10 A"_s)));
        for (const QString &words : {u"Isolate"_s, u"spark"_s, u"24 hours"_s, u"approved maintenance data"_s, u"licensed"_s})
            QVERIFY2(bondingCautions().join(u' ').contains(words), qPrintable(words));
    }

    void currentTimesResistanceIsTheDrop()
    {
        QVERIFY(rc::check("R · I = U, exactly, in any unit", [] {
            const auto number = [](qint64 least) { return QString::number(*rc::gen::inRange<qint64>(least, 1'000'000'000'000'000'000)); };
            const auto voltage = Quantity::parse(number(0), *rc::gen::element(u"mV"_s, u"V"_s));
            const auto current = Quantity::parse(number(1), u"A");
            const auto ohms = millivoltDrop(*voltage, *current);
            RC_ASSERT(ohms.has_value());
            RC_ASSERT(*ohms * current->coherent() == voltage->coherent());
        }));
    }
};

QTEST_GUILESS_MAIN(TestBonding)
#include "tst_bonding.moc"
