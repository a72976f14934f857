// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include <algorithm>

#include <rapidcheck.h>

#include "core/measure/leak.hpp"

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

SizeBound bound(const QString &inches, Edge edge) { return {*Quantity::parse(inches, u"in"), edge}; }

/// FAA-H-8083-31 ch. 14, fuel leak classification: "less than 3/4", "3/4 to 1 1/2", "1 1/2 to 4", "drips or pools"; after 30 minutes.
LeakScheme faa()
{
    return {u"FAA-H-8083-31 ch. 14"_s,
            {{u"stain"_s, bound(u"0"_s, Edge::Included), bound(u"0.75"_s, Edge::Excluded)},
             {u"seep"_s, bound(u"0.75"_s, Edge::Included), bound(u"1.5"_s, Edge::Included)},
             {u"heavy seep"_s, bound(u"1.5"_s, Edge::Included), bound(u"4"_s, Edge::Included)},
             {u"running leak"_s, std::nullopt, std::nullopt}},
            30,
            u"Fuel leak classification"_s};
}

/// A large jet's maintenance manual, 28-11-0 (15 November 1968): "not over" each size, and anything beyond the last runs.
LeakScheme largeJet()
{
    return {u"28-11-0 (1968)"_s,
            {{u"stain"_s, std::nullopt, bound(u"1.5"_s, Edge::Included)},
             {u"seep"_s, bound(u"1.5"_s, Edge::Excluded), bound(u"4"_s, Edge::Included)},
             {u"heavy seep"_s, bound(u"4"_s, Edge::Excluded), bound(u"6"_s, Edge::Included)},
             {u"running leak"_s, bound(u"6"_s, Edge::Excluded), std::nullopt}},
            std::nullopt,
            {}};
}

/// TM 10-5430-238-12&P WP 0009: by what the drops do.
LeakScheme byDrops()
{
    return {u"TM 10-5430-238-12&P"_s, {{u"class I"_s, std::nullopt, std::nullopt}, {u"class II"_s, std::nullopt, std::nullopt}, {u"class III"_s, std::nullopt, std::nullopt}}, std::nullopt, {}};
}

LeakScheme schemeNamed(const QString &name) { return name == u"FAA" ? faa() : name == u"large jet" ? largeJet() : byDrops(); }

/// Looked at after the FAA's 30 minutes.
LeakLook look(const QString &size, Flow flow = Flow::Still) { return {quantity(size), flow, 30}; }

/// The scheme of the FAA with another class for its second.
LeakScheme withSecond(const LeakClass &second)
{
    LeakScheme scheme = faa();
    scheme.classes[1] = second;
    return scheme;
}

QString textOf(const Measured<Rational> &litres, const QString &unit) { return litres ? shownIn(*litres, *findUnit(unit), 24) : u"refused"_s; }

} // namespace

class TestLeak : public QObject {
    Q_OBJECT

private slots:
    void classes_data()
    {
        QTest::addColumn<QString>("scheme");
        QTest::addColumn<QString>("size");
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("said");
        // Sizes chosen; the classes follow from the printed bounds.
        QTest::newRow("LK-01: FAA-H-8083-31 ch. 14, under 3/4") << u"FAA"_s << u"0.70 in"_s << u"stain"_s << QString();
        QTest::newRow("LK-02: FAA-H-8083-31 ch. 14, a stain is less than 3/4, a seep from 3/4") << u"FAA"_s << u"0.75 in"_s << u"seep"_s << QString();
        QTest::newRow("LK-03: FAA-H-8083-31 ch. 14, two classes name 1 1/2: the worse") << u"FAA"_s << u"1.5 in"_s << u"heavy seep"_s << u"more than one class (seep, heavy seep)"_s;
        QTest::newRow("LK-04: FAA-H-8083-31 ch. 14, 2 in") << u"FAA"_s << u"2.0 in"_s << u"heavy seep"_s << QString();
        QTest::newRow("LK-05: FAA-H-8083-31 ch. 14, between 4 in and dripping: no class printed, the worst") << u"FAA"_s << u"4.5 in"_s << u"running leak"_s << u"names no class for 4.5 in"_s;
        QTest::newRow("LK-06: 28-11-0 (1968), the spot of LK-04") << u"large jet"_s << u"2.0 in"_s << u"seep"_s << QString();
        // Edges.
        QTest::newRow("FAA, one unit in the last place under 3/4") << u"FAA"_s << u"0.749999999999999999 in"_s << u"stain"_s << QString();
        QTest::newRow("FAA, 3/4 in millimetres") << u"FAA"_s << u"19.05 mm"_s << u"seep"_s << QString();
        QTest::newRow("FAA, under 3/4 in millimetres, by the last place") << u"FAA"_s << u"19.0499999999999999 mm"_s << u"stain"_s << QString();
        QTest::newRow("FAA, under 1 1/2 by the last place") << u"FAA"_s << u"1.49999999999999999 in"_s << u"seep"_s << QString();
        QTest::newRow("FAA, over 1 1/2 by the last place") << u"FAA"_s << u"1.50000000000000001 in"_s << u"heavy seep"_s << QString();
        QTest::newRow("FAA, exactly 4") << u"FAA"_s << u"4 in"_s << u"heavy seep"_s << QString();
        QTest::newRow("FAA, over 4 by the last place") << u"FAA"_s << u"4.00000000000000001 in"_s << u"running leak"_s << u"names no class"_s;
        QTest::newRow("large jet, not over 1 1/2") << u"large jet"_s << u"1.5 in"_s << u"stain"_s << QString();
        QTest::newRow("large jet, over 1 1/2 by the last place") << u"large jet"_s << u"1.50000000000000001 in"_s << u"seep"_s << QString();
        QTest::newRow("large jet, no larger than 6") << u"large jet"_s << u"6 in"_s << u"heavy seep"_s << QString();
        QTest::newRow("large jet, anything beyond") << u"large jet"_s << u"6.00000000000000001 in"_s << u"running leak"_s << QString();
        QTest::newRow("dry") << u"FAA"_s << u"0 in"_s << u"dry"_s << QString();
        QTest::newRow("dry, in a scheme without sizes") << u"drops"_s << u"0.00 mm"_s << u"dry"_s << QString();
        QTest::newRow("the least that is not dry") << u"FAA"_s << u"0.000000000000000001 mm"_s << u"stain"_s << QString();
        QTest::newRow("below nought") << u"FAA"_s << u"-0.1 in"_s << u"refused"_s << QString();
        QTest::newRow("a weight for a size") << u"FAA"_s << u"1 lb"_s << u"refused"_s << QString();
        QTest::newRow("a size in a scheme without sizes") << u"drops"_s << u"1 in"_s << u"refused"_s << QString();
    }
    void classes()
    {
        QFETCH(QString, scheme);
        QFETCH(QString, size);
        QFETCH(QString, said);
        const auto found = classOf(look(size), schemeNamed(scheme));
        QTEST(found ? found->name.value_or(u"dry"_s) : u"refused"_s, "name");
        if (found) {
            QCOMPARE(found->said.isEmpty(), said.isEmpty());
            QVERIFY2(found->said.contains(said), qPrintable(found->said));
        }
    }

    /// FAA-H-8083-31 ch. 14, "drips or pools"; TM 10-5430-238-12&P, class III: drops fall.
    void whatDripsOrPoolsIsTheWorst()
    {
        for (const QString &size : {u"0 in"_s, u"0.1 in"_s, u"1.5 in"_s, u"40 in"_s}) {
            QCOMPARE(classOf(look(size, Flow::DripsOrPools), faa())->name, u"running leak"_s);
            QCOMPARE(classOf(look(size, Flow::DripsOrPools), byDrops())->name, u"class III"_s);
        }
        QVERIFY(!classOf(look(u"-1 in"_s, Flow::DripsOrPools), faa()));
    }

    /// FAA-H-8083-31 ch. 14: 30 minutes after wiping dry.
    void lookedTooSoonIsRefused()
    {
        QVERIFY(!classOf({quantity(u"0.5 in"_s), Flow::Still, 29}, faa()));
        QVERIFY(classOf({quantity(u"0.5 in"_s), Flow::Still, 30}, faa()));
        QVERIFY(classOf({quantity(u"0.5 in"_s), Flow::Still, 31}, faa()));
        QVERIFY2(!classOf({quantity(u"0.5 in"_s), Flow::Still, std::nullopt}, faa()), "when it was looked has to be told");
        QVERIFY2(!classOf({quantity(u"0 in"_s), Flow::Still, 29}, faa()), "what was wiped just now is dry");
        QVERIFY2(!classOf({quantity(u"0 in"_s), Flow::DripsOrPools, std::nullopt}, faa()), "not told");
        QVERIFY(classOf({quantity(u"0.5 in"_s), Flow::Still, std::nullopt}, largeJet()));
        QVERIFY(classOf({quantity(u"0.5 in"_s), Flow::Still, 1}, largeJet()));
    }

    void limits_data()
    {
        QTest::addColumn<QString>("found");
        QTest::addColumn<QString>("limit");
        QTest::addColumn<QString>("verdict");
        QTest::newRow("better") << u"stain"_s << u"seep"_s << u"within"_s;
        QTest::newRow("the limit itself") << u"seep"_s << u"seep"_s << u"within"_s;
        QTest::newRow("the next worse") << u"heavy seep"_s << u"seep"_s << u"over"_s;
        QTest::newRow("the worst") << u"running leak"_s << u"stain"_s << u"over"_s;
        QTest::newRow("dry") << QString() << u"stain"_s << u"within"_s;
        QTest::newRow("has to be dry, and is") << QString() << QString() << u"within"_s;
        QTest::newRow("has to be dry, and is not") << u"stain"_s << QString() << u"over"_s;
        QTest::newRow("no such class found") << u"drip"_s << u"seep"_s << u"refused"_s;
        QTest::newRow("no such limit") << u"seep"_s << u"Seep"_s << u"refused"_s;
        QTest::newRow("no such limit, though dry") << QString() << u"drip"_s << u"refused"_s;
    }
    void limits()
    {
        QFETCH(QString, found);
        QFETCH(QString, limit);
        const auto named = [](const QString &name) { return name.isEmpty() ? std::nullopt : std::optional(name); };
        const auto within = measure::isWithin(named(found), named(limit), faa());
        QTEST(!within ? u"refused"_s : *within ? u"within"_s : u"over"_s, "verdict");
    }

    void schemesWithAFault()
    {
        QVERIFY(!faultOf(faa()));
        QVERIFY(!faultOf(largeJet()));
        QVERIFY(!faultOf(byDrops()));
        QVERIFY(!faultOf(withSecond({u"seep"_s, bound(u"1"_s, Edge::Included), bound(u"1.0"_s, Edge::Included)})));
        QVERIFY(faultOf({u"empty"_s, {}, std::nullopt, {}}));
        QVERIFY(faultOf(withSecond({QString(), bound(u"1"_s, Edge::Included), std::nullopt})));
        QVERIFY(faultOf(withSecond({u"stain"_s, bound(u"1"_s, Edge::Included), std::nullopt})));
        QVERIFY(faultOf(withSecond({u"seep"_s, bound(u"1"_s, Edge::Included), bound(u"1"_s, Edge::Excluded)})));
        QVERIFY(faultOf(withSecond({u"seep"_s, bound(u"1"_s, Edge::Excluded), bound(u"1"_s, Edge::Included)})));
        QVERIFY(faultOf(withSecond({u"seep"_s, bound(u"1.1"_s, Edge::Included), bound(u"1"_s, Edge::Included)})));
        QVERIFY(faultOf(withSecond({u"seep"_s, bound(u"-1"_s, Edge::Included), std::nullopt})));
        QVERIFY(faultOf(withSecond({u"seep"_s, std::nullopt, bound(u"-1"_s, Edge::Included)})));
        QVERIFY(faultOf(withSecond({u"seep"_s, bound(u"1.6"_s, Edge::Included), std::nullopt}))); // the next begins at 1.5
        QVERIFY2(faultOf(withSecond({u"seep"_s, std::nullopt, bound(u"0"_s, Edge::Included)})), "a size of 0 is dry");
        QVERIFY(faultOf(withSecond({u"seep"_s, SizeBound{*Quantity::parse(u"1", u"lb"), Edge::Included}, std::nullopt})));
        QVERIFY(faultOf(withSecond({u"seep"_s, std::nullopt, SizeBound{*Quantity::parse(u"1", u"lb"), Edge::Included}})));
        // In other units: 38.1 mm are the 1 1/2 in at which the next begins.
        QVERIFY(!faultOf(withSecond({u"seep"_s, SizeBound{*Quantity::parse(u"38.1", u"mm"), Edge::Included}, std::nullopt})));
        QVERIFY(faultOf(withSecond({u"seep"_s, SizeBound{*Quantity::parse(u"38.2", u"mm"), Edge::Included}, std::nullopt})));
        QVERIFY(!classOf(look(u"1 in"_s), {u"empty"_s, {}, std::nullopt, {}}));
    }

    void drops_data()
    {
        QTest::addColumn<qint64>("drops");
        QTest::addColumn<QString>("perMillilitre");
        QTest::addColumn<QString>("volume");
        QTest::newRow("LK-07: conversion pages, 20 drops to the millilitre; number chosen, exact") << qint64(40) << u"20"_s << u"2 mL"_s;
        QTest::newRow("oil, 15 to the millilitre (conversion pages)") << qint64(45) << u"15"_s << u"3 mL"_s;
        QTest::newRow("none") << qint64(0) << u"20"_s << u"0 mL"_s;
        QTest::newRow("many") << qint64(999999999999999999) << u"0.5"_s << u"1999999999999999998 mL"_s;
        QTest::newRow("below nought") << qint64(-1) << u"20"_s << u"refused"_s;
        QTest::newRow("no drops to the millilitre") << qint64(40) << u"0"_s << u"refused"_s;
        QTest::newRow("fewer than none to the millilitre") << qint64(40) << u"-20"_s << u"refused"_s;
    }
    void drops()
    {
        QFETCH(qint64, drops);
        QFETCH(QString, perMillilitre);
        QTEST(textOf(volumeOfDrops(drops, *Decimal::parse(perMillilitre)), u"mL"_s), "volume");
    }

    void flows_data()
    {
        QTest::addColumn<QString>("rate");
        QTest::addColumn<QString>("perMillilitre");
        QTest::addColumn<QString>("flow");
        QTest::newRow("LK-08: conversion pages, 20 drops to the millilitre; number chosen, exact") << u"12 drops/min"_s << u"20"_s << u"0.6 mL/min"_s;
        QTest::newRow("none") << u"0 drops/min"_s << u"20"_s << u"0 mL/min"_s;
        QTest::newRow("below nought") << u"-1 drops/min"_s << u"20"_s << u"refused"_s;
        QTest::newRow("a flow for drops") << u"12 mL/min"_s << u"20"_s << u"refused"_s;
        QTest::newRow("no drops to the millilitre") << u"12 drops/min"_s << u"0"_s << u"refused"_s;
    }
    void flows()
    {
        QFETCH(QString, rate);
        QFETCH(QString, perMillilitre);
        QTEST(textOf(flowOfDrops(quantity(rate), *Decimal::parse(perMillilitre)), u"mL/min"_s), "flow");
    }

    void rates_data()
    {
        QTest::addColumn<QString>("rate");
        QTest::addColumn<QString>("limit");
        QTest::addColumn<QString>("perMillilitre");
        QTest::addColumn<QString>("verdict");
        QTest::newRow("at the limit") << u"12 drops/min"_s << u"12 drops/min"_s << QString() << u"within"_s;
        QTest::newRow("over it by the last place") << u"12.0000000000000001 drops/min"_s << u"12 drops/min"_s << QString() << u"over"_s;
        QTest::newRow("millilitres at a limit in litres") << u"600 mL/min"_s << u"0.6 L/min"_s << QString() << u"within"_s;
        QTest::newRow("millilitres over it by the last place") << u"600.000000000000001 mL/min"_s << u"0.6 L/min"_s << QString() << u"over"_s;
        QTest::newRow("drops at a limit in millilitres, as LK-08") << u"12 drops/min"_s << u"0.6 mL/min"_s << u"20"_s << u"within"_s;
        QTest::newRow("one drop more") << u"13 drops/min"_s << u"0.6 mL/min"_s << u"20"_s << u"over"_s;
        QTest::newRow("millilitres at a limit in drops") << u"0.6 mL/min"_s << u"12 drops/min"_s << u"20"_s << u"within"_s;
        QTest::newRow("millilitres over a limit in drops by the last place") << u"0.600000000000000001 mL/min"_s << u"12 drops/min"_s << u"20"_s << u"over"_s;
        QTest::newRow("drops against millilitres, not told how large") << u"12 drops/min"_s << u"0.6 mL/min"_s << QString() << u"refused"_s;
        // Conversion pages: the finest tips give 60 drops to the millilitre; that no edge gives fewer than 5 is a rule of this program.
        QTest::newRow("60 to the millilitre") << u"36 drops/min"_s << u"0.6 mL/min"_s << u"60"_s << u"within"_s;
        QTest::newRow("more than 60 by the last place") << u"36 drops/min"_s << u"0.6 mL/min"_s << u"60.00000000000001"_s << u"refused"_s;
        QTest::newRow("5 to the millilitre") << u"3 drops/min"_s << u"0.6 mL/min"_s << u"5"_s << u"within"_s;
        QTest::newRow("fewer than 5 by the last place") << u"0 drops/min"_s << u"0.6 mL/min"_s << u"4.99999999999999"_s << u"refused"_s;
        QTest::newRow("more than 60, a limit in drops") << u"0.6 mL/min"_s << u"36 drops/min"_s << u"61"_s << u"refused"_s;
        QTest::newRow("a number of drops where nothing is turned") << u"12 drops/min"_s << u"12 drops/min"_s << u"20"_s << u"refused"_s;
        QTest::newRow("drops of no size") << u"12 drops/min"_s << u"0.6 mL/min"_s << u"0"_s << u"refused"_s;
        QTest::newRow("none against none") << u"0 drops/min"_s << u"0 drops/min"_s << QString() << u"within"_s;
        QTest::newRow("one against none") << u"1 drops/min"_s << u"0 drops/min"_s << QString() << u"over"_s;
        QTest::newRow("rate below nought") << u"-1 drops/min"_s << u"12 drops/min"_s << QString() << u"refused"_s;
        QTest::newRow("limit below nought") << u"1 drops/min"_s << u"-12 drops/min"_s << QString() << u"refused"_s;
        QTest::newRow("a volume for a rate") << u"1 mL"_s << u"12 drops/min"_s << u"20"_s << u"refused"_s;
        QTest::newRow("a volume for a limit") << u"1 drops/min"_s << u"12 mL"_s << u"20"_s << u"refused"_s;
    }
    void rates()
    {
        QFETCH(QString, rate);
        QFETCH(QString, limit);
        QFETCH(QString, perMillilitre);
        const auto check = rateAgainstLimit(quantity(rate), quantity(limit), Decimal::parse(perMillilitre));
        QTEST(!check ? u"refused"_s : check->isWithin ? u"within"_s : u"over"_s, "verdict");
        const auto working = rateWorking(quantity(rate), quantity(limit), Decimal::parse(perMillilitre));
        QCOMPARE(working.has_value(), check.has_value());
        if (check)
            QCOMPARE(working->answer, check->said);
    }

    void theWorkingSaysWhatWasDecided()
    {
        const auto undecided = leakWorking(look(u"1.5 in"_s), u"seep"_s, faa());
        QVERIFY(undecided);
        QVERIFY2(undecided->answer.contains(u"worse than the limit"_s), qPrintable(undecided->answer));
        QVERIFY(undecided->notes.front().contains(u"more than one class"_s));
        LeakLook timed = look(u"1.5 in"_s);
        timed.minutes = 35;
        QVERIFY(leakWorking(timed, u"seep"_s, faa())->notes.contains(u"Looked at 35 minutes after wiping dry."_s));
        QCOMPARE(undecided->sources, (QStringList{u"FAA-H-8083-31 ch. 14"_s, u"Fuel leak classification"_s}));
        const auto dry = leakWorking(look(u"0 in"_s), std::nullopt, largeJet());
        QVERIFY(dry);
        QCOMPARE(dry->answer, u"\"dry\" is within the limit."_s);
        QVERIFY(leakWorking(look(u"0.1 in"_s, Flow::DripsOrPools), u"seep"_s, faa())->steps.front().numbers.contains(u"drips or pools"_s));
        QVERIFY(!leakWorking(look(u"-1 in"_s), u"seep"_s, faa()));
        QVERIFY(!leakWorking(look(u"1 in"_s), u"drip"_s, faa()));

        const auto drops = rateWorking(quantity(u"12 drops/min"_s), quantity(u"0.001 L/min"_s), Decimal::parse(u"20"));
        QVERIFY(drops);
        QCOMPARE(drops->steps[1].numbers, u"12 drops/min / 20"_s);
        QCOMPARE(drops->steps[1].result, u"0.0006 L/min"_s);
        const auto flow = rateWorking(quantity(u"0.001 L/min"_s), quantity(u"12 drops/min"_s), Decimal::parse(u"20"));
        QCOMPARE(flow->steps[1].numbers, u"1 mL/min · 20"_s);
        QCOMPARE(flow->steps[1].result, u"20 drops/min"_s);
        QCOMPARE(rateWorking(quantity(u"1 mL/min"_s), quantity(u"1 mL/min"_s), std::nullopt)->steps.size(), 2U);
    }

    void theCautionsStandThere()
    {
        const QString all = leakCautions().join(u' ');
        for (const QString &words : {u"no flame, spark"_s, u"under pressure"_s, u"propeller"_s, u"approved maintenance data"_s, u"licensed"_s})
            QVERIFY2(all.contains(words), qPrintable(words));
    }

    void largerIsNeverBetter()
    {
        QVERIFY(rc::check("of two spots the larger is in no better class, in either scheme", [] {
            const auto size = [](qint64 hundredths) { return *Quantity::parse(u"%1.%2"_s.arg(hundredths / 100).arg(hundredths % 100, 2, 10, QLatin1Char('0')), u"in"); };
            const qint64 small = *rc::gen::inRange<qint64>(1, 800);
            const qint64 large = *rc::gen::inRange<qint64>(small, 801);
            for (const LeakScheme &scheme : {faa(), largeJet()}) {
                const auto lesser = classOf({size(small), Flow::Still, 30}, scheme);
                const auto worse = classOf({size(large), Flow::Still, 30}, scheme);
                RC_ASSERT(lesser && worse);
                RC_ASSERT(*measure::isWithin(lesser->name, worse->name, scheme));
            }
        }));
    }

    void dropsAndMillilitresAreExactBothWays()
    {
        QVERIFY(rc::check("drops to flow to drops", [] {
            const auto drops = Quantity::parse(QString::number(*rc::gen::inRange<qint64>(0, 1'000'000'000'000'000'000)), u"drops/min");
            const auto per = Decimal::parse(QString::number(*rc::gen::inRange<qint64>(1, 1000)));
            const auto flow = flowOfDrops(*drops, *per);
            RC_ASSERT(flow.has_value());
            RC_ASSERT(*flow * 1000 * Rational(*per) == drops->coherent());
            RC_ASSERT(*flow == *volumeOfDrops(drops->value().digits(), *per));
        }));
    }
};

QTEST_GUILESS_MAIN(TestLeak)
#include "tst_leak.moc"
