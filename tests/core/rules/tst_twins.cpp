// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "tests/support/rule_table.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::RuleTable;
using story::Story;

/// Look-alikes that could be crossed are verified as a pair, by the designations of both halves of each, by somebody who joined none of them.
/// That each of two crossed lines looks joined, and that only the end labels tell: common practice.
class TestTwins : public QObject {
    Q_OBJECT

private slots:
    void eachRule_data()
    {
        RuleTable::columns();
        const auto row = &RuleTable::row;

        const QString twins = u"Ana lists T1 twin_group=sense aircraft_half=P7 unit_half=J7; Ana lists T2 twin_group=sense aircraft_half=P8 unit_half=J8; Ana disconnects T1; Ana disconnects T2; Ben reconnects T1"_s;
        const QString joined = twins + u"; Ben reconnects T2"_s;
        row("read by somebody who joined none", joined, "Cho verifies T1", "");
        row("read by who undid them", joined, "Ana verifies T2", "");
        row("read by who joined them", joined, "Ben verifies T1", "twins.another-person");
        row("read by who helped to join one", twins + u"; Ben reconnects T2 helpers=Dee"_s, "Dee verifies T1", "twins.another-person");
        row("read by who loosened one since", joined + u"; Dee disturbs T2"_s, "Dee verifies T1", "twins.another-person");
        row("by a stranger", joined, "Out verifies T1", "crew.takes-part");
        row("one of them is off", twins, "Cho verifies T1", "twins.joined");
        row("read in another order, each with its mate", joined, "Cho verifies T1 aircraft_halves=P8,P7 unit_halves=J8,J7", "");
        row("crossed", joined, "Cho verifies T1 aircraft_halves=P7,P8 unit_halves=J8,J7", "twins.read");
        row("one alone", joined, "Cho verifies T1 aircraft_halves=P7 unit_halves=J7", "twins.read");
        row("one twice", joined, "Cho verifies T1 aircraft_halves=P7,P7 unit_halves=J7,J7", "twins.read");
        row("one half not read", joined, "Cho verifies T1 aircraft_halves=P7,P8 unit_halves=J7", "twins.read");
        row("of what has no twin", u"Ana disconnects K1; Ana reconnects K1"_s, "Cho verifies K1 aircraft_halves=P7 unit_halves=J7", "twins.asked-for");
        row("a twin of the same designation", u"Ana lists T1 twin_group=sense aircraft_half=P7 unit_half=J7"_s, "Ana lists T2 twin_group=sense aircraft_half=P8 unit_half=J7", "listing.halves");
        row("the same designation in another group", u"Ana lists T1 twin_group=sense aircraft_half=P7 unit_half=J7"_s, "Ana lists T2 twin_group=other aircraft_half=P7 unit_half=J7", "");
        row("of twins without designations", u"Ana disconnects F1; Ana reconnects F1; Ana disconnects F2; Ana reconnects F2"_s, "Cho verifies F1 aircraft_halves=P7 unit_halves=J7", "twins.asked-for");
        row("accepted before", joined, "Cho accepts T1", "twins.verified");
        row("accepted after", joined + u"; Cho verifies T1"_s, "Cho accepts T2", "");
        row("accepted after the other was disturbed", joined + u"; Cho verifies T1; Ben disturbs T2"_s, "Cho accepts T1", "twins.verified");
        row("accepted after the other was undone and joined again", joined + u"; Cho verifies T1; Ben disconnects T2; Ben reconnects T2"_s, "Cho accepts T1", "twins.verified");
        row("twins without designations, accepted", u"Ana disconnects F1; Ana reconnects F1; Ana torques F1"_s, "Cho accepts F1", "");
        row("the twin does not apply", u"Ana lists T1 twin_group=sense aircraft_half=P7 unit_half=J7; Ana lists T2 twin_group=sense aircraft_half=P8 unit_half=J8; Ana disconnects T1; Ben reconnects T1; Ben finds-inapplicable T2"_s, "Cho accepts T1", "");
    }
    void eachRule() { m_table.ask(); }

    /// A verification is a loose end of each twin that waits for its inspection, and falls with what it rests on.
    void itIsLooseUntilVerified()
    {
        Story story(u"Ana lists T1 twin_group=sense aircraft_half=P7 unit_half=J7; Ana lists T2 twin_group=sense aircraft_half=P8 unit_half=J8; Ana disconnects T1; Ana disconnects T2; Ben reconnects T1; Ben reconnects T2"_s);
        QVERIFY(story.looseEnds().contains(u"loose.twins T1\nloose.inspection T1\nloose.twins T2\nloose.inspection T2"_s));
        story.tell(u"Cho verifies T1"_s);
        QVERIFY(!story.looseEnds().contains(u"loose.twins"_s));
        QVERIFY(story.item(u"T2"_s).twinsVerified);
        const qint64 verified = story.item(u"T2"_s).twinsVerified->seq;
        story.tell(u"Cho accepts T1; Cho accepts T2; Ben disturbs T1"_s);
        QVERIFY(!story.item(u"T2"_s).twinsVerified && story.item(u"T2"_s).acceptances.empty());
        Story struck(u"Ana lists T1 twin_group=sense aircraft_half=P7 unit_half=J7; Ana lists T2 twin_group=sense aircraft_half=P8 unit_half=J8; Ana disconnects T1; Ana disconnects T2; Ben reconnects T1; Ben reconnects T2; Cho verifies T1; Cho accepts T1"_s);
        QCOMPARE(struck.stage(u"T1"_s), u"inspected"_s);
        struck.tell(u"Cho strikes entry=%1"_s.arg(verified));
        QCOMPARE(struck.refusedBy(), QString());
        QCOMPARE(struck.stage(u"T1"_s), u"secured"_s); // the acceptance rested on it
    }

    /// A twin that turns up late is one more that may be crossed.
    void aLateTwinReopens()
    {
        Story story(u"Ana disconnects F1; Ben reconnects F1; Ben torques F1; Cho accepts F1"_s);
        QCOMPARE(story.stage(u"F1"_s), u"inspected"_s);
        story.tell(u"Ana lists F3 twin_group=feed_lines"_s);
        QCOMPARE(story.refusedBy(), QString());
        QVERIFY(story.item(u"F1"_s).acceptances.empty());
        story.tell(u"Cho accepts F1; Ana strikes entry=%1"_s.arg(story.item(u"F3"_s).listedBy.seq));
        QCOMPARE(story.refusedBy(), u"strike.listing strike.back"_s); // it would bring the first inspection back
    }

    /// Runs last.
    void zEveryRuleWasSeenRefusing() { m_table.everyRuleWasSeen(); }

private:
    RuleTable m_table{"twins"_L1};
};

QTEST_GUILESS_MAIN(TestTwins)
#include "tst_twins.moc"
