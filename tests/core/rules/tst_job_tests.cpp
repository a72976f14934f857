// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/job/job_test.hpp"
#include "tests/support/rule_table.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::RuleTable;
using story::Story;

namespace {

const QString restored = u"Ana disconnects D1; Ben reconnects D1; Ben torques D1; Ben safeties D1; Ana disconnects K1; Ben reconnects K1"_s;
const QString tested = restored + u"; Ana tests R1 covers=D1,K1"_s;

} // namespace

/// Runs and checks of what was restored: what they may cover, and what makes them void.
class TestJobTests : public QObject {
    Q_OBJECT

private slots:
    void eachRule_data()
    {
        RuleTable::columns();
        const auto row = &RuleTable::row;

        row("passed, of what is restored", restored, u"Ana tests R1 covers=D1,K1"_s, "");
        row("of what is not restored", restored + u"; Ana disconnects C1"_s, u"Ana tests R1 covers=D1,C1"_s, "test.covers");
        row("of what is joined, not safetied", u"Ana disconnects D1; Ben reconnects D1; Ben torques D1"_s, u"Ana tests R1 covers=D1"_s, "test.covers");
        row("of everything, while something is open", restored, u"Ana tests R1"_s, "test.covers");
        row("of what is not on the list", restored, u"Ana tests R1 covers=Z9"_s, "test.covers");
        row("twice under one number", tested, u"Ana tests R1 covers=D1"_s, "test.new");
        row("again under another", tested, u"Ana tests R2 covers=D1,K1"_s, "");
        row("by a stranger", restored, u"Out tests R1 covers=D1"_s, "crew.member");

        // A limit belongs to the test that it allows: at it, and one in the last place beyond.
        row("a value at its most", restored, uR"(Ana tests R1 covers=D1 values=[{"name":"oil","read":"4.5\u0020L","most":"4.5\u0020L"}])"_s, "");
        row("a value over its most", restored, uR"(Ana tests R1 covers=D1 values=[{"name":"oil","read":"4.51\u0020L","most":"4.5\u0020L"}])"_s, "test.values");
        row("a value over its most, of a failed test", restored, uR"(Ana tests R1 covers=D1 result=failed reopens=D1 values=[{"name":"oil","read":"4.51\u0020L","most":"4.5\u0020L"}])"_s, "");
        row("a value under its least", restored, uR"(Ana tests R1 covers=D1 values=[{"name":"oil","read":"3.9\u0020L","least":"4\u0020L","most":"4.5\u0020L"}])"_s, "test.values");
        row("a value without a limit", restored, uR"(Ana tests R1 covers=D1 values=[{"name":"oil","read":"4\u0020L"}])"_s, "test.values");
        row("a value without a unit", restored, uR"(Ana tests R1 covers=D1 values=[{"name":"oil","read":"4","most":"5\u0020L"}])"_s, "test.values");
        row("a limit of another kind", restored, uR"(Ana tests R1 covers=D1 values=[{"name":"oil","read":"4\u0020L","most":"5\u0020kg"}])"_s, "test.values");
        row("a value that says more", restored, uR"(Ana tests R1 covers=D1 values=[{"name":"oil","read":"4\u0020L","most":"5\u0020L","mood":"fine"}])"_s, "test.values");

        row("failed, and says what is worked on again", restored, u"Ana tests R1 covers=D1,K1 result=failed reopens=D1"_s, "");
        row("failed, and says nothing", restored, u"Ana tests R1 covers=D1,K1 result=failed"_s, "test.reopens");
        row("passed, and reopens", restored, u"Ana tests R1 covers=D1,K1 reopens=D1"_s, "test.reopens");

        const QString accepted = restored + u"; Cho accepts K1"_s;
        row("a failed test struck that reopened nothing inspected", accepted + u"; Ana tests R1 covers=D1,K1 result=failed reopens=D1"_s, u"Ana strikes entry=20"_s, "strike.warning strike.back");
        row("a failed test struck that set an inspection aside", accepted + u"; Ana tests R1 covers=D1,K1 result=failed reopens=K1"_s, u"Cho strikes entry=20"_s, "strike.back");
        row("the same by the named level", accepted + u"; Ana tests R1 covers=D1,K1 result=failed reopens=K1"_s, u"Ove strikes entry=20"_s, "");
    }
    void eachRule() { m_table.ask(); }

    /// A test says what was so; whatever is touched afterwards takes it away. Common practice: the leak check follows the last disturbance.
    void whatMakesItVoid_data()
    {
        QTest::addColumn<QString>("since");
        QTest::addColumn<bool>("isVoid");
        QTest::newRow("nothing") << QString() << false;
        QTest::newRow("inspected") << u"Cho accepts D1"_s << false;
        QTest::newRow("opened again") << u"Ana disconnects K1"_s << true;
        QTest::newRow("opened and restored again") << u"Ana disconnects K1; Ana reconnects K1"_s << true;
        QTest::newRow("disturbed") << u"Ben disturbs K1"_s << true;
        QTest::newRow("disturbed and torqued again") << u"Ben disturbs D1; Ben torques D1; Ben safeties D1"_s << true;
        QTest::newRow("another one opened") << u"Ana disconnects C1"_s << false;
        QTest::newRow("opened, and that was struck") << u"Ana disconnects K1; Ove strikes entry=20"_s << false;
    }
    void whatMakesItVoid()
    {
        QFETCH(QString, since);
        QFETCH(bool, isVoid);
        Story story(tested);
        QCOMPARE(story.refusedSentence(), QString());
        story.tell(since);
        QVERIFY2(story.refusedSentence().isEmpty(), qPrintable(story.refusedSentence() + story.refusedBy()));
        QCOMPARE(core::whyVoid(story.job(), story.job().tests.front()).has_value(), isVoid);
        QCOMPARE(story.looseEnds().contains(u"loose.test R1"), isVoid);
    }

    /// What made it fail is open until it is restored; then the test is made again, and the last one counts.
    void failedReopensAndIsMadeAgain()
    {
        Story story(restored + u"; Ana tests R1 covers=D1,K1 result=failed reopens=D1"_s);
        QCOMPARE(story.stage(u"D1"_s), u"reconnected"_s);
        QCOMPARE(story.stage(u"K1"_s), u"secured"_s);
        QVERIFY(story.looseEnds().contains(u"loose.test R1"));
        story.tell(u"Ben torques D1; Ben safeties D1; Ana tests R2 covers=D1,K1"_s);
        QCOMPARE(story.refusedSentence(), QString());
        QVERIFY(!story.looseEnds().contains(u"loose.test"));
    }

    /// A good test never stands for an inspection.
    void aGoodTestInspectsNothing()
    {
        const Story story(tested);
        QCOMPARE(story.stage(u"D1"_s), u"secured"_s);
        QVERIFY(story.looseEnds().contains(u"loose.inspection D1"));
    }

    /// Runs last.
    void zEveryRuleWasSeenRefusing() { m_table.everyRuleWasSeen(); }

private:
    RuleTable m_table{"job_tests"_L1};
};

QTEST_GUILESS_MAIN(TestJobTests)
#include "tst_job_tests.moc"
