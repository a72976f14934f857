// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/job/loose_ends.hpp"
#include "tests/support/rule_table.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::RuleTable;
using story::Story;

/// What is physically true of an interface is shown to the next shift, and none of it counts as done. That a trial fit, hardware that has
/// to come out, damage and what nobody can see are no restoration: common practice.
class TestConditions : public QObject {
    Q_OBJECT

private slots:
    void eachRule_data()
    {
        RuleTable::columns();
        const auto row = &RuleTable::row;

        const QString off = u"Ana disconnects K1"_s;
        const QString joined = u"Ana disconnects K1; Ben reconnects K1"_s;
        const QString duct = u"Ana disconnects D1; Ben reconnects D1"_s;
        row("positioned", off, "Ben states K1 condition=positioned", "");
        row("positioned, though it was never undone", {}, "Ben states K1 condition=positioned", "condition.stage");
        row("positioned, though it is joined", joined, "Ben states K1 condition=positioned", "condition.stage");
        row("hand-tight while it is off", off, "Ben states K1 condition=hand-tight", "");
        row("hand-tight, its torque to come", duct, "Ben states D1 condition=hand-tight fasteners=1,_2", "");
        row("hand-tight, though it is torqued", duct + u"; Ben torques D1"_s, "Ben states D1 condition=hand-tight", "condition.stage");
        row("hand-tight, and no torque is asked for", joined, "Ben states K1 condition=hand-tight", "condition.stage");
        row("joined for a trial", off, "Ben states K1 condition=temporary", "");
        row("joined for a trial, without a reason", off, "Ben states K1 condition=temporary reason=", "condition.explained");
        row("for a trial, though it is joined for good", joined, "Ben states K1 condition=temporary", "condition.stage");
        row("slave hardware", joined, "Ben states K1 condition=slave_hardware", "");
        row("slave hardware, no word which", joined, "Ben states K1 condition=slave_hardware to_come_out=", "condition.explained");
        row("slave hardware, no word why", joined, "Ben states K1 condition=slave_hardware reason=", "condition.explained");
        row("slave hardware in what was never undone", {}, "Ben states K1 condition=slave_hardware", "condition.stage");
        row("a finding that is no damage, and raised by itself", off + u"; Ana raises F1"_s, "Ben states K1 condition=positioned", "");
        row("damaged, with its finding", {}, "Eva states K1 condition=damaged", "");
        row("damaged, without", {}, "Eva states K1 condition=damaged finding=", "condition.finding");
        row("damaged, under a number that is taken", u"Ben raises F1"_s, "Eva states K1 condition=damaged finding=F1", "finding.number");
        row("a finding for what is no damage", joined, "Ben states K1 condition=cannot_verify finding=F1", "condition.finding");
        row("cannot be verified", joined, "Ben states K1 condition=cannot_verify", "");
        row("cannot be verified, no word why", joined, "Ben states K1 condition=cannot_verify reason=", "condition.explained");
        row("said twice", joined + u"; Ben states K1 condition=cannot_verify"_s, "Eva states K1 condition=cannot_verify", "condition.once");
        row("two conditions at once", joined + u"; Ben states K1 condition=cannot_verify"_s, "Eva states K1 condition=damaged", "");
        row("by a stranger", joined, "Out states K1 condition=cannot_verify", "crew.takes-part");
        row("of no sort that there is", joined, "Ben states K1 condition=loose", "form.value");

        const QString trial = off + u"; Ben states K1 condition=temporary"_s;
        const QString slave = joined + u"; Ben states K1 condition=slave_hardware"_s;
        row("reconnected while it is joined for a trial", trial, "Ben reconnects K1", "condition.final");
        row("reconnected when the trial is undone", trial + u"; Dee settles K1 condition=temporary"_s, "Ben reconnects K1", "");
        row("the unit off while one is joined for a trial", u"Ana disconnects D1; Ana disconnects C1; Ana disconnects B1; Ana disconnects F1; Ana disconnects F2; Ana disconnects M1; Ana disconnects M2; Ana disconnects A1; Ana disconnects D2; "_s + trial, "Ana takes-off", "unit.free");
        row("accepted on slave hardware", slave, "Cho accepts K1", "condition.settled");
        row("accepted when it is out", slave + u"; Dee settles K1 condition=slave_hardware"_s, "Cho accepts K1", "");
        row("accepted by who took it out", slave + u"; Dee settles K1 condition=slave_hardware helpers=Cho"_s, "Cho accepts K1", "independence.own-work");
        row("accepted damaged", joined + u"; Ben states K1 condition=damaged"_s, "Cho accepts K1", "condition.settled");
        row("accepted though it cannot be verified", joined + u"; Ben states K1 condition=cannot_verify"_s, "Cho accepts K1", "condition.settled");
        row("accepted once it was verified", joined + u"; Ben states K1 condition=cannot_verify; Eva settles K1 condition=cannot_verify"_s, "Cho accepts K1", "");
        row("accepted hand-tight, the torque missing", duct + u"; Ben states D1 condition=hand-tight"_s, "Cho accepts D1", "inspection.secured");

        row("cleared, though nobody said it", joined, "Ben settles K1 condition=slave_hardware", "condition.stands");
        row("slave hardware taken out by an inspector", slave, "Eva settles K1 condition=slave_hardware", "condition.worker");
        row("slave hardware taken out past a break point of another", slave + u"; Ben stops K1"_s, "Dee settles K1 condition=slave_hardware", "condition.worker");
        row("damage cleared while its finding is open", joined + u"; Ben states K1 condition=damaged"_s, "Ben settles K1 condition=damaged", "condition.repaired");
        row("damage cleared when it is disposed of", joined + u"; Ben states K1 condition=damaged; Cho clears F1"_s, "Ben settles K1 condition=damaged", "");
        row("hand-tight, cleared by a word", off + u"; Ben states K1 condition=hand-tight"_s, "Ben settles K1 condition=hand-tight", "form.value");

        const QString under = u"Ana disconnects A1; Ana disconnects D2; Ana reconnects D2; Cho accepts D2"_s;
        row("covered when it is inspected", under, "Ana reconnects A1", "");
        row("covered, though it cannot be verified", under + u"; Ben states D2 condition=cannot_verify"_s, "Ana reconnects A1", "sequence.inspected-before-cover");
        row("covered, never undone, and damaged", u"Ana disconnects A1; Ben states D2 condition=damaged"_s, "Ana reconnects A1", "sequence.inspected-before-cover");
        row("covered, never undone", u"Ana disconnects A1"_s, "Ana reconnects A1", "");
        // Striking the word that set an inspection aside would bring that back.
        row("the word struck that set an inspection aside", joined + u"; Cho accepts K1; Ben states K1 condition=cannot_verify"_s, "Ana strikes entry=15", "strike.by strike.back");
    }
    void eachRule() { m_table.ask(); }

    /// Positioned and hand-tight go by themselves; the rest stays until it is cleared.
    void whatGoesByItself_data()
    {
        QTest::addColumn<QString>("told");
        QTest::addColumn<QString>("stand");
        const auto row = [](const char *name, const char *told, const char *stand) { QTest::newRow(name) << QString::fromLatin1(told) << QString::fromLatin1(stand); };
        row("positioned", "Ana disconnects K1; Ben states K1 condition=positioned", "positioned");
        row("positioned, then reconnected", "Ana disconnects K1; Ben states K1 condition=positioned; Ben reconnects K1", "");
        row("hand-tight, then reconnected, no torque asked for", "Ana disconnects K1; Ben states K1 condition=hand-tight; Ben reconnects K1", "");
        row("hand-tight, then reconnected, one of two torqued", "Ana disconnects D1; Ben states D1 condition=hand-tight; Ben reconnects D1; Ben torques D1 fastener=1", "hand-tight");
        row("hand-tight, then torqued", "Ana disconnects D1; Ben states D1 condition=hand-tight; Ben reconnects D1; Ben torques D1", "");
        row("hand-tight, then undone", "Ana disconnects D1; Ben states D1 condition=hand-tight; Ben reconnects D1; Ben disconnects D1", "");
        row("slave hardware, then torqued", "Ana disconnects D1; Ben states D1 condition=slave_hardware; Ben reconnects D1; Ben torques D1", "slave hardware");
        row("damaged, then undone again", "Ana disconnects K1; Ben reconnects K1; Ben states K1 condition=damaged; Ben disconnects K1", "damaged");
        row("cleared", "Ana disconnects K1; Ben states K1 condition=temporary; Ben settles K1 condition=temporary", "");
    }
    void whatGoesByItself()
    {
        QFETCH(QString, told);
        QFETCH(QString, stand);
        const Story story(told);
        QVERIFY2(story.refusedSentence().isEmpty(), qPrintable(story.refusedBy()));
        QStringList all;
        for (const core::InterfaceState &item : story.job().items) {
            for (const core::ConditionStated &one : item.conditions)
                all << core::conditionText(one.condition);
        }
        QCOMPARE(all.join(u' '), stand);
    }

    /// A trial fit is no reconnection, secured on slave hardware is not secured, and both stand for the next shift to read.
    void noneOfItCountsAsDone()
    {
        Story story(u"Ana disconnects K1; Ben confirms-free K1; Ben states K1 condition=temporary"_s);
        QCOMPARE(story.stage(u"K1"_s), u"disconnected"_s);
        QVERIFY(!story.item(u"K1"_s).walkedRound); // what was confirmed free is held again
        QVERIFY(story.looseEnds().contains(u"loose.condition K1\nloose.disconnected K1"_s));
        story.tell(u"Ben settles K1 condition=temporary; Ben reconnects K1"_s);
        QCOMPARE(story.stage(u"K1"_s), u"secured"_s);
        story.tell(u"Cho accepts K1"_s);
        QCOMPARE(story.stage(u"K1"_s), u"inspected"_s);
        story.tell(u"Dee states K1 condition=slave_hardware"_s);
        QCOMPARE(story.stage(u"K1"_s), u"reconnected"_s);
        QVERIFY(story.item(u"K1"_s).acceptances.empty());
        const core::json::Array open = core::openAtHandover(story.job());
        QCOMPARE(open.size(), 1U);
        QCOMPARE(open.front().object()->texts(u"conditions"), std::vector{u"slave hardware; two bolts of the old mount; parts not delivered"_s});
    }

    /// What is joined for a trial is not free, whoever says so; and once it is undone again somebody has to look again.
    void aTrialIsNotFree()
    {
        Story story(u"Ana disconnects K1; Ana states K1 condition=temporary; Cho confirms-free K1"_s);
        QCOMPARE(story.refusedBy(), u"walkround.free"_s);
        story.tell(u"Ben settles K1 condition=temporary; Cho confirms-free K1"_s);
        QCOMPARE(story.refusedBy(), QString());
        QVERIFY(story.item(u"K1"_s).walkedRound);
        story.tell(u"Ana reconnects K1; Cho rejects K1 back_to=disconnected"_s);
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(story.stage(u"K1"_s), u"disconnected"_s);
        QVERIFY(!story.item(u"K1"_s).walkedRound);
    }

    /// Pieces that come out of a joint take its torque with them.
    void slaveHardwareTakesItsTorqueAlong()
    {
        Story story(u"Ana disconnects F1; Ana reconnects F1; Ana states F1 condition=slave_hardware; Ana torques F1"_s);
        QCOMPARE(story.stage(u"F1"_s), u"reconnected"_s);
        QVERIFY(!story.item(u"F1"_s).torque.empty());
        story.tell(u"Ben settles F1 condition=slave_hardware"_s);
        QVERIFY(story.item(u"F1"_s).torque.empty());
        QVERIFY(story.item(u"F1"_s).disturbed);
        QVERIFY(story.item(u"F1"_s).restoration->joinedBy.contains(*core::PersonId::parse(u"Ben")));
    }

    /// What was looked at while a hold point was passed is not what is there once pieces came out.
    void aHoldPointSeesIt()
    {
        Story story(uR"(Ana sets restored conditions=[{"what":"interfaces","stage":"restored","interfaces":["K1"]}] gates=[{"act":"job.closed"}]; Ana disconnects K1; Ben reconnects K1)"_s);
        story.tell(u"Ben states K1 condition=slave_hardware; Ana passes restored"_s);
        QCOMPARE(story.refusedBy(), u"hold.conditions"_s);
        story.tell(u"Ben settles K1 condition=slave_hardware; Ana passes restored"_s);
        QCOMPARE(story.refusedBy(), QString());
    }

    /// Runs last.
    void zEveryRuleWasSeenRefusing() { m_table.everyRuleWasSeen(); }

private:
    RuleTable m_table{"conditions"_L1};
};

QTEST_GUILESS_MAIN(TestConditions)
#include "tst_conditions.moc"
