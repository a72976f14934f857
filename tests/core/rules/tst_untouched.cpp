// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/holds/standing.hpp"
#include "tests/support/rule_table.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::RuleTable;
using story::Story;

/// What is on the list and was never touched, or does not apply. That a line which does not apply is marked so by somebody, with a reason, and
/// never left blank: common practice.
class TestUntouched : public QObject {
    Q_OBJECT

private slots:
    void eachRule_data()
    {
        RuleTable::columns();
        const auto row = &RuleTable::row;

        row("undisturbed, seen by a technician", {}, "Ben finds-undisturbed K1", "");
        row("undisturbed, seen by an inspector", {}, "Eva finds-undisturbed K1", "");
        row("undisturbed, no word what was looked at", {}, "Ben finds-undisturbed K1 seen=", "form.missing");
        row("undisturbed, by a stranger", {}, "Out finds-undisturbed K1", "crew.takes-part");
        row("undisturbed, though it is off", u"Ana disconnects K1"_s, "Ben finds-undisturbed K1", "untouched.never-undone");
        row("undisturbed, though it was off", u"Ana disconnects K1; Ana reconnects K1"_s, "Ben finds-undisturbed K1", "untouched.never-undone");
        row("undisturbed, though somebody stopped in it", u"Ana stops K1"_s, "Ben finds-undisturbed K1", "untouched.never-undone");
        row("undisturbed, said twice", u"Ben finds-undisturbed K1"_s, "Eva finds-undisturbed K1", "untouched.once");
        row("undisturbed, critical, by an inspector", {}, "Eva finds-undisturbed M1", "");
        row("undisturbed, critical, by a technician", {}, "Ana finds-undisturbed M1", "untouched.inspector");
        row("undisturbed, critical, by an inspector of ducts", {}, "Tim finds-undisturbed M1", "untouched.inspector");
        row("not applicable", {}, "Ben finds-inapplicable K1", "");
        row("not applicable, without a reason", {}, "Ben finds-inapplicable K1 reason=", "form.missing");
        row("not applicable, though it is off", u"Ana disconnects K1"_s, "Ben finds-inapplicable K1", "untouched.never-undone");
        row("not applicable, said twice", u"Ben finds-inapplicable K1"_s, "Ana finds-inapplicable K1", "untouched.once");
        row("not applicable, critical, agreed by another", u"Ben finds-inapplicable M1"_s, "Ana agrees M1", "");
        row("not applicable, critical, agreed by the same", u"Ben finds-inapplicable M1"_s, "Ben agrees M1", "notapplicable.second-person");
        row("agreed, though nobody said it", {}, "Ana agrees M1", "notapplicable.stated");
        row("agreed twice", u"Ben finds-inapplicable M1; Ana agrees M1"_s, "Eva agrees M1", "notapplicable.stated");
        row("off, though it was said to be not applicable", u"Ben finds-inapplicable K1"_s, "Ana disconnects K1", "");
        row("what is in front does not apply", u"Ben finds-inapplicable A1"_s, "Ana disconnects D2", "");
        row("what is in front is undisturbed", u"Ben finds-undisturbed A1"_s, "Ana disconnects D2", "sequence.access");

        const QString off = u"Ana disconnects D1; Ana disconnects C1; Ana disconnects B1; Ana disconnects F1; Ana disconnects F2; Ana disconnects M1; Ana disconnects M2; Ana disconnects A1; Ana disconnects D2"_s;
        row("the unit off, one not applicable", off + u"; Ben finds-inapplicable K1"_s, "Ana takes-off", "");
        row("the unit off, one undisturbed", off + u"; Ben finds-undisturbed K1"_s, "Ana takes-off", "unit.free");
    }
    void eachRule() { m_table.ask(); }

    /// Loose ends, and when what was said ends.
    void whatIsLoose_data()
    {
        QTest::addColumn<QString>("told");
        QTest::addColumn<QString>("loose");
        const auto row = [](const char *name, const char *told, const char *loose) { QTest::newRow(name) << QString::fromLatin1(told) << QString::fromLatin1(loose); };
        row("never touched, nobody looked", "", "loose.untouched M1");
        row("confirmed undisturbed", "Eva finds-undisturbed M1", "");
        row("then undone after all", "Eva finds-undisturbed M1; Ana disconnects M1", "loose.disconnected M1");
        row("then undone, and that struck", "Eva finds-undisturbed M1; Ana disconnects M1; Ana strikes entry=13", "loose.untouched M1");
        row("looked at again by an inspector", "Eva finds-undisturbed M1; Ana disconnects M1; Ana strikes entry=13; Eva finds-undisturbed M1", "");
        row("not applicable after that, by one person", "Ana disconnects K1; Ana strikes entry=12; Ben finds-inapplicable M1; Ana agrees M1", "");
        row("not applicable, critical, one person", "Ben finds-inapplicable M1", "loose.not-applicable M1");
        row("agreed by a second", "Ben finds-inapplicable M1; Ana agrees M1", "");
        row("agreed, and what it agrees to struck", "Ben finds-inapplicable M1; Ana agrees M1; Ben strikes entry=12", "loose.untouched M1");
        row("then found open after all", "Ben finds-inapplicable M1; Ana agrees M1; Dee finds-open M1", "loose.disconnected M1");
        row("undisturbed and damaged", "Eva finds-undisturbed M1; Dee states M1 condition=damaged", "loose.condition M1");
    }
    void whatIsLoose()
    {
        QFETCH(QString, told);
        QFETCH(QString, loose);
        const Story story(told);
        QVERIFY2(story.refusedSentence().isEmpty(), qPrintable(story.refusedBy()));
        QCOMPARE(story.looseEnds().split(u'\n').filter(u" M1"_s).join(u'\n'), loose);
    }

    /// Which stages of hold points what was let alone has come to.
    void stagesOfHoldPoints_data()
    {
        QTest::addColumn<QString>("told");
        QTest::addColumn<QString>("stage");
        QTest::addColumn<bool>("isMet");
        for (const char *stage : {"disconnected", "walked_round", "reconnected", "torqued", "restored", "inspected"}) {
            const bool isOff = QLatin1String(stage) == "disconnected"_L1 || QLatin1String(stage) == "walked_round"_L1;
            QTest::addRow("not applicable, %s", stage) << u"Ben finds-inapplicable K1"_s << QString::fromLatin1(stage) << true;
            QTest::addRow("undisturbed, %s", stage) << u"Ben finds-undisturbed K1"_s << QString::fromLatin1(stage) << !isOff;
            QTest::addRow("untouched, %s", stage) << QString() << QString::fromLatin1(stage) << false;
        }
    }
    void stagesOfHoldPoints()
    {
        QFETCH(QString, told);
        QFETCH(QString, stage);
        QFETCH(bool, isMet);
        Story story(uR"(Ana sets x conditions=[{"what":"interfaces","stage":"%1","interfaces":["K1"]}] gates=[{"act":"job.closed"}];)"_s.arg(stage) + told);
        QVERIFY2(story.refusedSentence().isEmpty(), qPrintable(story.refusedBy()));
        QCOMPARE(core::standingOf(story.job(), story.job().holds.front()).areConditionsMet(), isMet);
    }

    /// Runs last.
    void zEveryRuleWasSeenRefusing() { m_table.everyRuleWasSeen(); }

private:
    RuleTable m_table{"untouched"_L1};
};

QTEST_GUILESS_MAIN(TestUntouched)
#include "tst_untouched.moc"
