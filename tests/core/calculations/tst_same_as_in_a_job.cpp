// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include <algorithm>

#include "core/job/working_of.hpp"
#include "tests/core/calculations/calculating.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using core::measure::Working;

/// The calculator says outside a job what the sheet says inside it, step by step.
class TstSameAsInAJob : public QObject {
    Q_OBJECT

    /// All but what the sheet alone has: a setting to take over.
    static QStringList linesOf(const Working &working) { return core::measure::linesOf(working) + working.sources; }

private slots:
    void figures_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("kind");
        QTest::newRow("lift") << u"lift"_s << u"lift.planned"_s;
        QTest::newRow("servicing") << u"servicing"_s << u"servicing.recorded"_s;
        QTest::newRow("weight change") << u"weight-change"_s << u"weight.recorded"_s;
    }
    void figures()
    {
        QFETCH(QString, name);
        QFETCH(QString, kind);
        const core::Calculation &calculation = *core::findCalculation(name);
        const auto example = calculating::exampleOf(calculation);
        const auto outside = calculating::work(calculation, example);
        QVERIFY2(outside, qPrintable(calculating::said(outside)));
        const auto body = core::bodyOf(calculation, example);
        const auto inside = core::workingOf({}, {}, draft(kind, std::nullopt, *body));
        QVERIFY(inside);
        QCOMPARE(linesOf(outside->working), linesOf(*inside));
    }

    void readings_data()
    {
        QTest::addColumn<QString>("listed"); // members of the list's row
        QTest::addColumn<QString>("kind");
        QTest::addColumn<QString>("entry");
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("fields");
        const QString torque = u"requirements=torque torque_fasteners=1 torque_unit=lbf·in torque_min=50 torque_max=70 torque_prevailing=added"_s;
        QTest::newRow("torque") << torque << u"torque.applied"_s << u"fastener=1; value=68; unit=lbf·in; prevailing=8 lbf·in"_s << u"torque-reading"_s
                                << u"least=50 lbf·in; most=70 lbf·in; prevailing=8 lbf·in; indicated=68 lbf·in; acceptance=simple"_s;
        QTest::newRow("torque, too much") << torque << u"torque.applied"_s << u"fastener=1; value=78.1; unit=lbf·in; prevailing=8 lbf·in"_s << u"torque-reading"_s
                                          << u"least=50 lbf·in; most=70 lbf·in; prevailing=8 lbf·in; indicated=78.1 lbf·in; acceptance=simple"_s;
        QTest::newRow("torque, with an adapter") << u"requirements=torque torque_fasteners=1 torque_unit=lbf·in torque_min=50 torque_max=70"_s << u"torque.applied"_s << u"fastener=1; value=60; unit=lbf·in; wrench_length=10 in; extension=1.5 in; extension_angle=45 °"_s
                                                 << u"torque-reading"_s
                                                 << u"least=50 lbf·in; most=70 lbf·in; indicated=60 lbf·in; wrench_length=10 in; extension=1.5 in; extension_angle=45 °; acceptance=simple"_s;
        const QString bond = u"requirements=bonding bonding_max=2.5 bonding_unit=mΩ bonding_comparison=less_than bonding_readings=2"_s;
        QTest::newRow("bonding") << bond << u"bonding.measured"_s << u"value=1.8; unit=mΩ; second_reading=1.9 mΩ; lead_zero=0 mΩ"_s << u"bonding"_s
                                 << u"limit=2.5 mΩ; comparison=less than; reading=1.8 mΩ; second_reading=1.9 mΩ; lead_zero=0 mΩ"_s;
        QTest::newRow("bonding, at what is no longer less") << bond << u"bonding.measured"_s << u"value=2.5; unit=mΩ; lead_zero=0.02 mΩ"_s << u"bonding"_s << u"limit=2.5 mΩ; comparison=less than; reading=2.5 mΩ; lead_zero=0.02 mΩ"_s;
        const QString oil = u"requirements=leak leak_rate=1_mL/min leak_drops_per_ml=15"_s;
        QTest::newRow("leak rate, drops as listed") << oil << u"leak.checked"_s << u"drops=12 drops/min"_s << u"leak-rate"_s << u"drops=12 drops/min; drops_per_ml=15; limit=1 mL/min"_s;
        QTest::newRow("leak rate, told again") << oil << u"leak.checked"_s << u"drops=12 drops/min; drops_per_ml=15"_s << u"leak-rate"_s << u"drops=12 drops/min; drops_per_ml=15; limit=1 mL/min"_s;
        QTest::newRow("leak rate, too much") << oil << u"leak.checked"_s << u"drops=16 drops/min"_s << u"leak-rate"_s << u"drops=16 drops/min; drops_per_ml=15; limit=1 mL/min"_s;
        QTest::newRow("leak rate, measured") << oil << u"leak.checked"_s << u"rate=0.4 mL/min"_s << u"leak-rate"_s << u"rate=0.4 mL/min; limit=1 mL/min"_s;
        const QString unlisted = u"requirements=leak leak_rate=1_mL/min"_s;
        QTest::newRow("leak rate, drops of unknown size") << unlisted << u"leak.checked"_s << u"drops=12 drops/min"_s << u"leak-rate"_s << u"drops=12 drops/min; limit=1 mL/min"_s;
        QTest::newRow("leak rate, drops finer than from any edge") << unlisted << u"leak.checked"_s << u"drops=12 drops/min; drops_per_ml=61"_s << u"leak-rate"_s << u"drops=12 drops/min; drops_per_ml=61; limit=1 mL/min"_s;
        QTest::newRow("leak rate, drops larger than from any edge") << unlisted << u"leak.checked"_s << u"drops=1 drops/min; drops_per_ml=4"_s << u"leak-rate"_s << u"drops=1 drops/min; drops_per_ml=4; limit=1 mL/min"_s;
        QTest::newRow("leak rate, a drop size that nothing needs") << unlisted << u"leak.checked"_s << u"rate=0.4 mL/min; drops_per_ml=20"_s << u"leak-rate"_s << u"rate=0.4 mL/min; drops_per_ml=20; limit=1 mL/min"_s;
    }
    void readings()
    {
        QFETCH(QString, listed);
        QFETCH(QString, kind);
        QFETCH(QString, entry);
        QFETCH(QString, name);
        QFETCH(QString, fields);
        const auto told = story::Story(u"Ana lists X1 "_s + listed);
        core::json::Object body;
        for (const core::TypedField &one : calculating::typed(entry))
            body.set(one.name, one.text);
        const auto inside = core::workingOf(told.job(), told.reg(), draft(kind, u"X1"_s, body));
        QVERIFY(inside);
        const auto outside = calculating::work(name, fields);
        QVERIFY2(outside, qPrintable(calculating::said(outside)));
        QCOMPARE(linesOf(outside->working), linesOf(*inside));
    }

    /// Where the list has no number of drops, the sheet says besides that it is the checker's own.
    void dropsOfTheCheckersOwn()
    {
        const auto told = story::Story(u"Ana lists X1 requirements=leak leak_rate=1_mL/min"_s);
        const auto inside = core::workingOf(told.job(), told.reg(), draft(u"leak.checked"_s, u"X1"_s, {{u"drops"_s, u"12 drops/min"_s}, {u"drops_per_ml"_s, u"20"_s}}));
        QVERIFY(inside);
        auto expected = calculating::work(u"leak-rate"_s, u"drops=12 drops/min; drops_per_ml=20; limit=1 mL/min"_s)->working;
        expected.notes << u"20 drops to the millilitre is the checker's own number; the list has none."_s;
        QCOMPARE(linesOf(*inside), linesOf(expected));
    }

    /// FAA-H-8083-31 ch. 14: less than 3/4 in, to 1 1/2, to 4, drips or pools; after 30 minutes. The job has the sizes as its list of
    /// facts writes them, the calculator has them from the look-up table.
    void leakClasses_data()
    {
        QTest::addColumn<QString>("seen");
        QTest::addColumn<QString>("found");
        QTest::newRow("LK-01") << u"size=0.70 in; flow=still; minutes=30"_s << u"stain"_s;
        QTest::newRow("LK-02: the edge of stain and seep") << u"size=0.75 in; flow=still; minutes=30"_s << u"seep"_s;
        QTest::newRow("LK-03: the edge that the source gives to both") << u"size=1.5 in; flow=still; minutes=45"_s << u"heavy seep"_s;
        QTest::newRow("LK-04") << u"size=2 in; flow=still; minutes=30"_s << u"heavy seep"_s;
        QTest::newRow("LK-05") << u"size=4.5 in; flow=still; minutes=30"_s << u"running leak"_s;
        QTest::newRow("drips") << u"size=0.1 in; flow=drips or pools; minutes=30"_s << u"running leak"_s;
        QTest::newRow("dry") << u"size=0 in; flow=still; minutes=30"_s << u"dry"_s;
        QTest::newRow("too soon") << u"size=0.70 in; flow=still; minutes=29"_s << QString();
    }
    void leakClasses()
    {
        QFETCH(QString, seen);
        QFETCH(QString, found);
        const story::Story told(u"Ana lists X1 requirements=leak leak_class=seep"_s, faa());
        core::json::Object body;
        for (const core::TypedField &one : calculating::typed(seen)) {
            if (one.name == u"minutes"_s)
                body.set(one.name, one.text.toLongLong());
            else
                body.set(one.name, one.text);
        }
        const auto inside = core::workingOf(told.job(), told.reg(), draft(u"leak.checked"_s, u"X1"_s, body));
        QVERIFY(inside);
        const auto outside = calculating::work(u"leak-class"_s, u"scheme=FAA; worst=seep; "_s + seen);
        QVERIFY2(outside, qPrintable(calculating::said(outside)));
        QCOMPARE(inside->answer, outside->working.answer);
        QCOMPARE(core::measure::linesOf(*inside).front(), core::measure::linesOf(outside->working).front());
        QCOMPARE(inside->steps.empty() ? QString() : inside->steps.front().result, found);
    }

    /// Class and rate are both limited: the sheet shows both ways, and answers both.
    void classAndRate()
    {
        const story::Story told(u"Ana lists X1 requirements=leak leak_class=seep leak_rate=1_mL/min"_s, faa());
        const auto inside = core::workingOf(told.job(), told.reg(),
                                            draft(u"leak.checked"_s, u"X1"_s, {{u"size"_s, u"1 in"_s}, {u"flow"_s, u"still"_s}, {u"minutes"_s, 30}, {u"rate"_s, u"0 mL/min"_s}}));
        QVERIFY(inside);
        const Working byClass = calculating::work(u"leak-class"_s, u"scheme=FAA; worst=seep; size=1 in; flow=still; minutes=30"_s)->working;
        const Working byRate = calculating::work(u"leak-rate"_s, u"rate=0 mL/min; limit=1 mL/min"_s)->working;
        QCOMPARE(inside->answer, byClass.answer + u' ' + byRate.answer);
        QCOMPARE(inside->steps.size(), byClass.steps.size() + byRate.steps.size());
        QCOMPARE(inside->steps.back(), byRate.steps.back());
    }

private:
    /// FAA-H-8083-31 ch. 14, as a job is opened with it.
    static core::json::Object faa()
    {
        return {{u"leak_scheme"_s, u"FAA"_s}, {u"leak_classes"_s, core::json::arrayOf({u"stain"_s, u"seep"_s, u"heavy seep"_s, u"running leak"_s})},
                {u"leak_up_to"_s, core::json::arrayOf({u"under 0.75 in"_s, u"under 1.5 in"_s, u"4 in"_s})}, {u"leak_minutes"_s, 30}};
    }

    static core::Draft draft(const QString &kind, const std::optional<QString> &subject, const core::json::Object &body)
    {
        return {*core::PersonId::parse(u"ana"), *core::Instant::parse(u"2026-03-02T08:00:00Z"), kind, subject, body};
    }
};

QTEST_GUILESS_MAIN(TstSameAsInAJob)
#include "tst_same_as_in_a_job.moc"
