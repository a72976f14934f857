// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/job/loose_ends.hpp"
#include "tests/support/rule_table.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::RuleTable;
using story::Story;

/// Where somebody stopped in the middle. That interrupted work is carried on from a known point, seen by who carries on: common practice.
class TestBreakPoints : public QObject {
    Q_OBJECT

private slots:
    void eachRule_data()
    {
        RuleTable::columns();
        const auto row = &RuleTable::row;

        const QString half = u"Ana disconnects D1; Ben reconnects D1; Ben torques D1 fastener=1"_s;
        const QString left = half + u"; Ben stops D1 fastener=2"_s;
        row("stopped", half, "Ben stops D1", "");
        row("stopped, without a word", half, "Ben stops D1 word=", "form.missing");
        row("stopped by an inspector", half, "Eva stops D1", "crew.member crew.authorised");
        row("stopped in finished work", u"Ana disconnects K1; Ana reconnects K1; Cho accepts K1"_s, "Ana stops K1", "break.under-way");
        row("stopped before it is off", {}, "Ana stops K1", "");
        row("carried on by the same person", left, "Ben torques D1 fastener=2", "");
        row("carried on by another", left, "Dee takes-over D1", "break.seen");
        row("taken up, then carried on by another", left + u"; Dee resumes D1"_s, "Dee takes-over D1", "");
        row("carried on by a third", left + u"; Dee resumes D1"_s, "Ana takes-over D1", "break.seen");
        row("undone by another", left, "Dee disconnects D1", "break.seen");
        row("stopped again by another", left, "Dee stops D1", "break.seen");
        row("reconnected by another", u"Ana disconnects K1; Ana stops K1"_s, "Ben reconnects K1", "break.seen");
        row("reconnected by the same", u"Ana disconnects K1; Ana stops K1"_s, "Ana reconnects K1", "");
        row("measured by another", u"Ana disconnects B1; Ana reconnects B1; Ana stops B1"_s, "Ben measures B1", "break.seen");
        row("safetied by another", half + u"; Ben torques D1 fastener=2; Ben stops D1"_s, "Dee safeties D1", "break.seen");
        row("disturbed by another, which has to be sayable", left, "Dee disturbs D1", "");
        row("taken up, though nobody stopped", half, "Dee resumes D1", "break.there");
        row("taken up twice", left + u"; Dee resumes D1"_s, "Dee resumes D1", "break.there");
        row("taken up after somebody worked on", left + u"; Ben torques D1 fastener=2"_s, "Dee resumes D1", "break.there");
        row("accepted where somebody stopped", u"Ana disconnects K1; Ana reconnects K1; Ana stops K1"_s, "Cho accepts K1", "break.over");
        row("accepted when it was taken up and nothing was left to do", u"Ana disconnects K1; Ana reconnects K1; Ana stops K1; Ben resumes K1"_s, "Cho accepts K1", "");
    }
    void eachRule() { m_table.ask(); }

    /// It stands for the next shift until somebody works on, and its place is worked out from the torque.
    void itStandsUntilSomebodyWorksOn()
    {
        Story story(u"Ana disconnects D1; Ben reconnects D1"_s);
        QVERIFY(!core::breakPointOf(story.item(u"D1"_s))); // no torque is begun
        story.tell(u"Ben torques D1 fastener=1"_s);
        QCOMPARE(core::breakPointOf(story.item(u"D1"_s))->fastener, 2);
        QCOMPARE(core::breakPointOf(story.item(u"D1"_s))->pass, 1);
        story.tell(u"Ben stops D1 fastener=2"_s);
        QVERIFY(story.looseEnds().contains(u"loose.stopped D1"_s));
        QCOMPARE(core::openAtHandover(story.job()).front().object()->text(u"stopped"), u"two of four bolts in."_s);
        story.tell(u"Dee resumes D1"_s);
        QVERIFY(!story.looseEnds().contains(u"loose.stopped D1"_s));
        QVERIFY(story.item(u"D1"_s).stopped);
        story.tell(u"Dee takes-over D1; Dee torques D1 fastener=2"_s);
        QCOMPARE(story.refusedBy(), QString());
        QVERIFY(!story.item(u"D1"_s).stopped);
        QVERIFY(!core::breakPointOf(story.item(u"D1"_s))); // all are torqued
    }

    /// Runs last.
    void zEveryRuleWasSeenRefusing() { m_table.everyRuleWasSeen(); }

private:
    RuleTable m_table{"break_points"_L1};
};

QTEST_GUILESS_MAIN(TestBreakPoints)
#include "tst_break_points.moc"
