// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/acts/act.hpp"
#include "core/job/working_of.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::Story;

/// What a draft works out to, before anybody signs it.
class TestWorking : public QObject {
    Q_OBJECT

private slots:
    void answers_data()
    {
        QTest::addColumn<QString>("before");
        QTest::addColumn<QString>("draft");
        QTest::addColumn<QString>("answer"); // what it contains; empty where nothing is worked out
        QTest::addColumn<QString>("offer");  // taken over into the form
        const auto row = [](const char *name, const char *before, const char *draft, const char *answer, const char *offer) {
            QTest::newRow(name) << QString::fromUtf8(before) << QString::fromUtf8(draft) << QString::fromUtf8(answer) << QString::fromUtf8(offer);
        };
        const char *joint = "Ana lists X1 requirements=torque torque_fasteners=1 torque_min=133 torque_max=137 torque_unit=lbf·in; Ana disconnects X1; Ben reconnects X1";
        row("nothing is measured", "", "Ana disconnects K1", "", "");
        row("before anything is read", joint, "Ben torques X1 fastener=1 value= tool=TW6", "Set the wrench to 135 lbf·in.", "setting 135 lbf·in");
        // R66 Maintenance Manual (25 Oct 2010) ch. 20 fig. 20-1: 135 lbf·in through 1.5 in on 10 in is set as 117.
        row("through an adapter", joint, "Ben torques X1 fastener=1 value= tool=TW6 wrench_length=10_in extension=1.5_in extension_angle=0_°", "Set the wrench to 117 lbf·in.", "setting 117 lbf·in");
        row("through an adapter, read", joint, "Ben torques X1 fastener=1 value=117 tool=TW6 wrench_length=10_in extension=1.5_in extension_angle=0_°", "134.55 lbf·in is accepted.", "setting 117 lbf·in");
        row("read outside the band", joint, "Ben torques X1 fastener=1 value=138 tool=TW6", "too much", "");
        row("marks too coarse", joint, "Ben torques X1 fastener=1 value= tool=TW7", "finer marks", "");
        row("a tool out of calibration sets nothing", joint, "Ben torques X1 fastener=1 value= tool=TW2", "not in calibration", "");
        row("a withdrawn tool sets nothing", joint, "Ben torques X1 fastener=1 value= tool=TW3", "withdrawn", "");
        row("an adapter told by half sets nothing", joint, "Ben torques X1 fastener=1 value= tool=TW6 wrench_length=10_in extension=1.5_in", "three figures", "");
        const char *selfLocking = "Ana lists X1 requirements=torque torque_fasteners=1 torque_min=50 torque_max=70 torque_unit=lbf·in torque_prevailing=added; Ana disconnects X1; Ben reconnects X1";
        row("a drag that is still to be measured sets nothing", selfLocking, "Ben torques X1 fastener=1 value= tool=TW6", "measure it while the nut is run down", "");
        // AC 43.13-1B (9/8/98) par. 7-40 d: 50 to 70 and 8 of drag is 58 to 78.
        row("with its drag", selfLocking, "Ben torques X1 fastener=1 value= tool=TW6 prevailing=8_lbf·in", "T = T₀ + d = (50 to 70 lbf·in) + 8 lbf·in = 58 to 78 lbf·in", "setting 68 lbf·in");
        const char *passes = "Ana lists X1 requirements=torque torque_fasteners=1 torque_min=100 torque_max=120 torque_unit=lbf·in torque_passes=50,100; Ana disconnects X1; Ben reconnects X1";
        row("of a pass", passes, "Ben torques X1 fastener=1 value= tool=TW6", "T₁ = T₀ · p / 100 = (100 to 120 lbf·in) · 50 / 100 = 50 to 60 lbf·in", "setting 55 lbf·in");
        row("no tool chosen yet", joint, "Ben torques X1 fastener=1 value= tool=", "133 to 137 lbf·in", "");
        row("a bond", "Ana disconnects B1; Ana reconnects B1", "Ben measures B1 value=1.5", "1.5 mΩ", "");
        row("a lift", "", "Ana plans", "540 kg", "");
        row("a lift over its limit", "", "Ana plans hoist_limit=500_kg", "500 kg", "");
        row("servicing", "", "Ana services", "9 L", "");
        row("a weight change", "", "Ana weighs", "6.5 lb", "");
        row("a lift on two points of which only the number is told", "", "Ana plans points=2", "", "");
        row("a lift on one point with a length between two", "", "Ana plans span=2_m centre=1_m", "", "");
        row("a lift on three points", "", "Ana plans points=3", "", "");
        row("drops by the list's number", "Ana lists X1 requirements=leak leak_rate=2_mL/min leak_drops_per_ml=15; Ana disconnects X1; Ben reconnects X1", "Ben checks X1 rate= drops=12_drops/min", "q = n / d = 12 drops/min / 15 = 0.8 mL/min", "");
        row("drops by the checker's own number", "Ana lists X1 requirements=leak leak_rate=2_mL/min; Ana disconnects X1; Ben reconnects X1", "Ben checks X1 rate= drops=12_drops/min drops_per_ml=15", "15 drops to the millilitre is the checker's own number", "");
        row("a rate of leak", "Ana lists X1 requirements=leak leak_rate=2_mL/min; Ana disconnects X1; Ben reconnects X1", "Ben checks X1 rate=1_mL/min", "1 mL/min", "");
    }
    void answers()
    {
        QFETCH(QString, before);
        QFETCH(QString, draft);
        QFETCH(QString, answer);
        QFETCH(QString, offer);
        Story story(before);
        QCOMPARE(story.refusedSentence(), QString());
        const auto working = core::workingOf(story.job(), story.reg(), story.drafts(draft).front());
        QCOMPARE(working.has_value(), !answer.isEmpty());
        if (!working)
            return;
        const QString all = core::measure::linesOf(*working).join(u'\n');
        QVERIFY2(all.contains(answer), qPrintable(all));
        QVERIFY(!working->answer.isEmpty() && !all.contains(u"%1"));
        QCOMPARE(working->offer ? working->offer->field + u' ' + working->offer->value : QString(), offer);
    }

    /// A joint that has a greatest class and a greatest rate: what was seen is judged by both, in one answer.
    void leakByClassAndByRate_data()
    {
        QTest::addColumn<QString>("act");
        QTest::addColumn<bool>("byClass");
        QTest::addColumn<bool>("byRate");
        QTest::newRow("both") << u"Ben checks X1 size=1_in flow=still minutes=30 rate=1_mL/min"_s << true << true;
        QTest::newRow("the class alone") << u"Ben checks X1 size=1_in flow=still minutes=30 rate="_s << true << false;
        QTest::newRow("the rate alone") << u"Ben checks X1 rate=1_mL/min"_s << false << true;
    }
    void leakByClassAndByRate()
    {
        QFETCH(QString, act);
        QFETCH(bool, byClass);
        QFETCH(bool, byRate);
        // FAA-H-8083-31 ch. 14: of 3/4 in to 1 1/2 in half an hour after wiping dry: a seep.
        const core::json::Object facts{{u"leak_scheme"_s, u"FAA-H-8083-31"_s},
                                       {u"leak_classes"_s, core::json::arrayOf({u"stain"_s, u"seep"_s, u"heavy"_s, u"running"_s})},
                                       {u"leak_up_to"_s, core::json::arrayOf({u"under 0.75 in"_s, u"under 1.5 in"_s, u"4 in"_s})},
                                       {u"leak_minutes"_s, 30}};
        Story story(u"Ana lists X1 requirements=leak leak_class=seep leak_rate=2_mL/min; Ana disconnects X1; Ben reconnects X1"_s, facts);
        QCOMPARE(story.refusedSentence(), QString());
        const auto working = core::workingOf(story.job(), story.reg(), story.drafts(act).front());
        QVERIFY(working);
        QVERIFY2(working->answer.contains(u"seep"_s) == byClass, qPrintable(working->answer));
        QVERIFY2(working->answer.contains(u"1 mL/min"_s) == byRate, qPrintable(working->answer));
    }

    /// A form that is still being filled in works nothing out, or says what is missing; it never answers without a figure it needs.
    void halfFilledForms_data()
    {
        QTest::addColumn<QString>("before");
        QTest::addColumn<QString>("draft");
        QTest::newRow("bonding") << u"Ana disconnects B1; Ana reconnects B1"_s << u"Ana measures B1"_s;
        QTest::newRow("lift") << QString() << u"Ana plans points=2 span=2_m centre=1_m"_s;
        QTest::newRow("servicing") << QString() << u"Ana services"_s;
        QTest::newRow("weight") << QString() << u"Ana weighs mac=84_in"_s;
        QTest::newRow("leak") << u"Ana lists X1 requirements=leak leak_rate=2_mL/min; Ana disconnects X1; Ben reconnects X1"_s << u"Ben checks X1 rate=1_mL/min"_s;
    }
    void halfFilledForms()
    {
        QFETCH(QString, before);
        QFETCH(QString, draft);
        Story story(before);
        const core::Draft whole = story.drafts(draft).front();
        const auto all = core::workingOf(story.job(), story.reg(), whole);
        QVERIFY(all);
        int figures = 0;
        for (const core::Field &field : core::findAct(whole.kind)->fields) {
            const bool isFigure = field.type == core::FieldType::Quantity || field.type == core::FieldType::Integer || field.name == u"value";
            if (!isFigure || !whole.body.contains(QString(field.name)))
                continue;
            ++figures;
            core::Draft half = whole;
            half.body.remove(QString(field.name));
            const auto working = core::workingOf(story.job(), story.reg(), half);
            if (field.needed == core::Needed::Always)
                QVERIFY2(!working && !story.ask(half).empty(), field.name.data());
            else
                QVERIFY2(!working || !working->answer.isEmpty(), field.name.data());
        }
        QVERIFY(figures > 0);
    }

    /// The same act on what is not in the list, or where the list asks for nothing of the sort.
    void nothingIsWorkedOutWhereNothingIsAskedFor_data()
    {
        QTest::addColumn<QString>("draft");
        for (const char *draft : {"Ben torques K1 fastener=1 value=20", "Ben measures K1 value=1.5", "Ben checks K1 rate=1_mL/min"})
            QTest::newRow(draft) << QString::fromUtf8(draft);
    }
    void nothingIsWorkedOutWhereNothingIsAskedFor()
    {
        QFETCH(QString, draft);
        Story story;
        core::Draft said = story.drafts(draft).front();
        QVERIFY(!core::workingOf(story.job(), story.reg(), said));
        said.subject = u"Z99"_s;
        QVERIFY(!core::workingOf(story.job(), story.reg(), said));
    }

    /// The answer of a draft that is admitted never says no, and that of one that is refused for its figures never says yes.
    void answersAgreeWithTheRules()
    {
        Story story(u"Ana lists X1 requirements=torque torque_fasteners=1 torque_min=100 torque_max=130 torque_unit=lbf·in; Ana disconnects X1; Ben reconnects X1"_s, {{u"acceptance"_s, u"guarded"_s}});
        for (int tenths = 990; tenths <= 1310; tenths += 3) {
            const core::Draft draft = story.drafts(u"Ben torques X1 fastener=1 value=%1.%2 tool=TW6"_s.arg(tenths / 10).arg(tenths % 10)).front();
            const auto working = core::workingOf(story.job(), story.reg(), draft);
            QVERIFY(working);
            QCOMPARE(working->answer.endsWith(u"is accepted."), story.ask(draft).empty());
        }
    }
};

QTEST_GUILESS_MAIN(TestWorking)
#include "tst_working.moc"
