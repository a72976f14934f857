// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "tests/support/rule_table.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::RuleTable;
using story::Story;

namespace {

// Twelve is the first entry after the list.
const QString undone = u"Ana disconnects D1"_s;                                                  // 12
const QString joined = undone + u"; Ana reconnects D1"_s;                                        // 13
const QString torqued = joined + u"; Ana torques D1; Ana safeties D1"_s;                         // 14, 15, 16
const QString clamp = u"Ana disconnects K1; Ana reconnects K1"_s;                                // 12, 13
const QString clampAccepted = clamp + u"; Cho accepts K1"_s;                                     // 14
const QString isolation = u"Ben applies T1"_s;                                                   // 12
const QString twins = u"Ana lists T1 twin_group=sense aircraft_half=P7 unit_half=J7; Ana lists T2 twin_group=sense aircraft_half=P8 unit_half=J8"_s; // 12, 13
const QString ran = joined + u"; Ana torques D1; Ana safeties D1; Ana tests R1 covers=D1"_s;     // the test is 17

} // namespace

/// A strike takes back what was said. It does not take back whose hands were there, what was counted, what was voided, or what somebody
/// else said to be in the way.
class TestStrikes : public QObject {
    Q_OBJECT

private slots:
    void eachRule_data()
    {
        RuleTable::columns();
        const auto row = &RuleTable::row;

        // Whose hands were there.
        row("accepted by a helper whose entry was struck", u"Ana disconnects K1 helpers=Cho; Ana strikes entry=12; Ben disconnects K1; Ben reconnects K1"_s, "Cho accepts K1", "independence.own-work");
        row("accepted by another inspector", u"Ana disconnects K1 helpers=Cho; Ana strikes entry=12; Ben disconnects K1; Ben reconnects K1"_s, "Eva accepts K1", "");
        row("accepted by a helper whose entry fell", u"Ana disconnects K1; Ana reconnects K1 helpers=Cho; Ana strikes entry=12; Ben disconnects K1; Ben reconnects K1"_s, "Cho accepts K1", "independence.own-work");
        row("accepted by one who never helped, says the named level", u"Ana disconnects K1 helpers=Cho; Ana reconnects K1; Ana strikes entry=12; Ben disconnects K1; Ben reconnects K1"_s, "Cho accepts K1", "independence.own-work");
        row("accepted by a helper's group", u"Ana disconnects M2 helpers=Cho; Ana strikes entry=12; Ben disconnects M1; Ben reconnects M1; Ben torques M1"_s, "Cho accepts M1", "independence.own-group");
        row("gone round by a helper whose entry was struck", u"Ana disconnects K1 helpers=Cho; Ana strikes entry=12; Ana disconnects K1"_s, "Cho confirms-free K1", "walkround.second-person");
        row("twins read by who joined one, struck since", twins + u"; Ana disconnects T1; Ben disconnects T2; Ana reconnects T1; Ana strikes entry=16; Ben reconnects T1; Ben reconnects T2"_s, "Ana verifies T1", "twins.another-person");
        row("twins read by who only undid one", twins + u"; Ana disconnects T1; Ben disconnects T2; Ben reconnects T1; Ben reconnects T2"_s, "Ana verifies T1", "");
        row("nothing of it was so, by the named level", u"Ben raises F9; Ana disconnects K1"_s, "Ove strikes entry=13 never_was=yes", "");
        row("nothing of it was so, by the lead", u"Ben disconnects K1"_s, "Ana strikes entry=12 never_was=yes", "strike.never-was");
        row("struck already, and nothing of it was so", u"Ana disconnects K1 helpers=Cho; Ana strikes entry=12"_s, "Ove strikes entry=12 never_was=yes", "");
        row("struck already, by one whom it does not name", u"Ana disconnects K1 helpers=Cho; Ana strikes entry=12; Ove strikes entry=12 never_was=yes; Ben disconnects K1; Ben reconnects K1"_s, "Cho accepts K1", "");
        row("struck already, and struck again", u"Ana disconnects K1; Ana strikes entry=12"_s, "Ove strikes entry=12", "strike.stands");
        row("nothing of it was so, by its author", undone, "Ana strikes entry=12 never_was=yes", "strike.never-was");
        row("nothing of an inspection was so, by the named level", clampAccepted, "Ove strikes entry=14 never_was=yes", "");

        // What comes back.
        row("a disturbance struck, and a torque would come back", torqued + u"; Ana disturbs D1"_s, "Ana strikes entry=17", "strike.back");
        row("the same by the named level", torqued + u"; Ana disturbs D1"_s, "Ove strikes entry=17", "");
        row("undone again, struck, and a torque would come back", torqued + u"; Ana disconnects D1"_s, "Ana strikes entry=17", "strike.back");
        row("undone again, struck, and the joint would come back", clamp + u"; Ana disconnects K1"_s, "Ana strikes entry=14", "strike.back");
        row("the same by the named level", clamp + u"; Ana disconnects K1"_s, "Ove strikes entry=14", "");
        row("inspected after that", clamp + u"; Ana disconnects K1 blanks_fitted=2; Ove strikes entry=14"_s, "Cho accepts K1", "untouched.in-question");
        row("inspected where it never was so", clamp + u"; Ana disconnects K1 blanks_fitted=2; Ove strikes entry=14 never_was=yes"_s, "Cho accepts K1", "");
        row("inspected when it was undone and joined anew", clamp + u"; Ana disconnects K1; Ove strikes entry=14; Ana disconnects K1; Ana reconnects K1"_s, "Cho accepts K1", "");
        row("joined, struck after it was undone again", clamp + u"; Ana disconnects K1"_s, "Ana strikes entry=13", "strike.undone");
        row("a disturbance struck, and a safetying would come back", u"Ana lists X1 requirements=safetying safetying=lockwire; Ana disconnects X1; Ana reconnects X1; Ana safeties X1; Ana disturbs X1"_s, "Ana strikes entry=16", "strike.back");
        row("a disturbance struck, and a bond would come back", u"Ana disconnects B1; Ana reconnects B1; Ana measures B1; Ana disturbs B1"_s, "Ana strikes entry=15", "strike.back");
        row("a disturbance struck, and a leak check would come back", u"Ana lists X1 requirements=leak leak_rate=2_mL/min; Ana disconnects X1; Ana reconnects X1; Ana checks X1; Ana disturbs X1"_s, "Ana strikes entry=16", "strike.back");
        row("a disturbance struck, and twins would come back", twins + u"; Ana disconnects T1; Ana disconnects T2; Ana reconnects T1; Ana reconnects T2; Ben verifies T1; Ana disturbs T1"_s, "Ana strikes entry=19", "strike.back");
        row("a disturbance struck, and a test would come back", ran + u"; Ana disturbs D1"_s, "Ana strikes entry=18", "strike.back");
        row("a disconnection struck, and a hold point would come back", uR"(Ana sets h conditions=[{"what":"interfaces","stage":"reconnected","kinds":["clamp"]}] gates=[{"act":"job.closed"}]; Ana disconnects K1; Ana reconnects K1; Ana passes h; Ana disconnects K1)"_s, "Ana strikes entry=16", "strike.back");
        row("a second bonding reading struck", u"Ana disconnects B1; Ana reconnects B1; Ana measures B1; Ana measures B1"_s, "Ana strikes entry=15", "");
        row("a torque struck that began it anew", u"Ana disconnects D1; Ana reconnects D1; Ana torques D1 fastener=1; Ben torques D1 fastener=1"_s, "Ben strikes entry=15", "strike.back");

        // What was said to be undone.
        row("found untouched by who said it to be undone", u"Ben disconnects K1; Ben strikes entry=12"_s, "Ben finds-undisturbed K1", "untouched.struck");
        row("found untouched by a colleague", u"Ben disconnects K1; Ben strikes entry=12"_s, "Ana finds-undisturbed K1", "untouched.struck");
        row("found untouched by an inspector", u"Ben disconnects K1; Ben strikes entry=12"_s, "Cho finds-undisturbed K1", "");
        row("found untouched by an inspector who helped", u"Ben disconnects K1 helpers=Cho; Ben strikes entry=12"_s, "Cho finds-undisturbed K1", "untouched.struck");
        row("never said to be undone", {}, "Ben finds-undisturbed K1", "");
        row("not applicable, agreed by a colleague", u"Ben disconnects K1; Ben strikes entry=12; Ben finds-inapplicable K1"_s, "Ana agrees K1", "untouched.struck");
        row("not applicable, agreed by an inspector", u"Ben disconnects K1; Ben strikes entry=12; Ben finds-inapplicable K1"_s, "Cho agrees K1", "");
        row("fewer blanks the second time", u"Ben disconnects D1 blanks_fitted=3; Ben strikes entry=12"_s, "Ben disconnects D1 blanks_fitted=2", "removal.counted");
        row("as many the second time", u"Ben disconnects D1 blanks_fitted=3; Ben strikes entry=12"_s, "Ben disconnects D1 blanks_fitted=3", "");
        row("fewer on the unit's end", u"Ben disconnects D1 unit_blanks_fitted=1; Ben strikes entry=12"_s, "Ben disconnects D1", "removal.counted");
        row("fewer pieces", uR"(Ben disconnects K1 hardware_removed=[{"part":"B-1","quantity":2}]; Ben strikes entry=12)"_s, uR"(Ben disconnects K1 hardware_removed=[{"part":"B-1","quantity":1}])"_s, "removal.counted");
        row("fewer, found open", u"Ben disconnects D1 blanks_fitted=3; Ben strikes entry=12"_s, "Ben finds-open D1", "removal.counted");
        row("fewer once it was joined in between", u"Ben disconnects D1 blanks_fitted=3; Ben strikes entry=12; Ben disconnects D1 blanks_fitted=3; Ben reconnects D1"_s, "Ben disconnects D1", "");
        row("fewer, unlisted", u"Ben logs X1 blanks_fitted=1; Cho strikes entry=12"_s, "Ben logs X1", "removal.counted");

        // What was raised against the job.
        row("one's own finding struck", u"Dee raises F9"_s, "Dee strikes entry=12", "strike.warning");
        row("another's finding struck by the lead", u"Ben raises F9"_s, "Ana strikes entry=12", "strike.warning");
        row("a finding struck by an inspector", u"Ben raises F9"_s, "Cho strikes entry=12", "");
        row("a finding struck by an inspector who had a hand in it", u"Ana disconnects K1 helpers=Cho; Ben raises F9 interface=K1"_s, "Cho strikes entry=13", "strike.warning");
        row("an inspector's finding struck by the lead", u"Cho raises F9"_s, "Ana strikes entry=12", "strike.warning");
        row("an inspector's finding struck by another", u"Cho raises F9"_s, "Eva strikes entry=12", "strike.warning");
        row("an inspector's finding struck by that inspector", u"Cho raises F9"_s, "Cho strikes entry=12", "");
        row("found open, struck", u"Dee finds-open K1"_s, "Dee strikes entry=12", "strike.warning");
        row("a finding struck by an inspector of the crew", u"Dee raises F9"_s, "Ben strikes entry=12", "strike.warning");
        row("a finding struck by an inspector with a hand in the group", u"Ana disconnects M2 helpers=Cho; Dee raises F9 interface=M1"_s, "Cho strikes entry=13", "strike.warning");
        row("a failed test struck", torqued + u"; Ana tests R1 covers=D1 result=failed reopens=D1"_s, "Ana strikes entry=17", "strike.warning strike.back");
        row("a passed test struck", ran, "Ana strikes entry=17", "");
        row("a missing tool struck", u"Dee issues T-1; Dee misses T-1"_s, "Dee strikes entry=13", "strike.warning");
        row("a missing tool struck by an inspector", u"Dee issues T-1; Dee misses T-1"_s, "Cho strikes entry=13", "strike.warning");
        row("a missing tool struck by the named level", u"Dee issues T-1; Dee misses T-1"_s, "Ove strikes entry=13", "");
        row("a missing blank struck", u"Dee disconnects D1 blanks_fitted=1; Dee misses-blank D1"_s, "Dee strikes entry=13", "strike.warning");
        row("a revision struck by an inspector who worked on it", u"Ana disconnects K1 helpers=Cho; Ana revises interfaces=K1"_s, "Cho strikes entry=13", "strike.warning");
        row("a revision struck by the lead", u"Ana revises interfaces=K1"_s, "Ana strikes entry=12", "strike.warning");
        row("a revision struck by an inspector", u"Ana revises interfaces=K1"_s, "Cho strikes entry=12", "");

        // What others said to be in the way.
        row("another's isolation struck by the lead", isolation, "Ana strikes entry=12", "strike.by strike.lockout");
        row("one's own isolation struck", isolation, "Ben strikes entry=12", "strike.lockout");
        row("one's own isolation struck when it is off", isolation + u"; Ben removes T1"_s, "Ben strikes entry=12", "");
        row("an isolation that never was, by the named level", isolation, "Ove strikes entry=12 never_was=yes", "");
        row("one's own platform struck", u"Ben applies P1 sort=platform"_s, "Ben strikes entry=12", "");
        row("a lockout's handover struck by who gave it", isolation + u"; Ben gives T1 to=Ana"_s, "Ben strikes entry=13", "strike.lockout");
        row("one's own isolation struck, given to another", isolation + u"; Ben gives T1 to=Ana"_s, "Ben strikes entry=12", "strike.lockout");
        row("another's platform struck by the lead", u"Ben applies P1 sort=platform"_s, "Ana strikes entry=12", "strike.by");
        row("another's platform that is off struck by the lead", u"Ben applies P1 sort=platform; Ben removes P1"_s, "Ana strikes entry=12", "strike.by");
        row("still attached, struck by the lead", u"Ana disconnects M1; Ben finds-attached M1"_s, "Ana strikes entry=13", "strike.by");
        row("stopped in the middle, struck by the lead", u"Ana disconnects D1; Ana reconnects D1; Ben stops D1"_s, "Ana strikes entry=14", "strike.by");
        row("times in doubt, struck by the lead", u"Ben doubts first=2 last=3"_s, "Ana strikes entry=12", "strike.by");
        row("still attached, said by an inspector, struck by the lead", u"Ana disconnects M1; Cho finds-attached M1"_s, "Ana strikes entry=13", "strike.by");
        row("another's tool struck by the lead", u"Ben issues T-1"_s, "Ana strikes entry=12", "strike.by");
        row("a follow-up of an inspector struck by the lead", u"Cho follows-up what=torque_again due=2026-03-02"_s, "Ana strikes entry=12", "strike.by");
        row("another's accessory struck by the lead", u"Ben lists-accessory AC1"_s, "Ana strikes entry=12", "strike.by");
        row("another's disconnection struck by the lead", u"Ben disconnects K1"_s, "Ana strikes entry=12", "");
        row("a deferral struck by the crew", u"Ben raises F9; Cho clears F9 disposition=deferred limit=2026-03-02"_s, "Ana strikes entry=13", "strike.by");

        // What is asked for.
        row("a stricter row struck by the lead", u"Ana relists K1 requirements=safetying safetying=lockwire"_s, "Ana strikes entry=12", "strike.less");
        row("a stricter row struck by an inspector", u"Ana relists K1 requirements=safetying safetying=lockwire"_s, "Cho strikes entry=12", "");
        row("a row struck that asks as much", u"Ana relists K1 note=x"_s, "Ana strikes entry=12", "");
        row("an inspector's row struck by the lead", u"Cho relists K1 note=x"_s, "Ana strikes entry=12", "strike.by");
        row("a listing struck under an inspector's correction", u"Ana lists X1; Cho relists X1 requirements=safetying safetying=lockwire"_s, "Ana strikes entry=12", "strike.listing");
        row("a handover struck before anybody worked under it", u"Ana hands-over; Lee takes-shift"_s, "Lee strikes entry=13", "");
        row("a handover struck when somebody had", u"Ana hands-over; Lee takes-shift; Max disconnects K1"_s, "Ana strikes entry=12", "strike.handover");
        row("an acceptance struck when somebody had", u"Ana hands-over; Lee takes-shift; Max disconnects K1"_s, "Lee strikes entry=13", "strike.handover");
        row("half undone, struck, and found untouched", u"Ben stops K1 word=two_bolts_out; Ben strikes entry=12"_s, "Ben finds-undisturbed K1", "untouched.struck");
        row("giving up struck at once", u"Ana gives-up"_s, "Ana strikes entry=12", "");
        row("giving up struck when an accessory went back", u"Ben lists-accessory AC1; Ana gives-up; Ana moves AC1"_s, "Ana strikes entry=13", "strike.reversal");
    }
    void eachRule() { m_table.ask(); }

    /// Listed, struck, and listed again with less: an inspector signs that, and does not judge it alone.
    void aRowThatComesBackWeaker()
    {
        const QString strict = u"Ana lists X1 requirements=safetying safetying=lockwire; Ana strikes entry=12"_s;
        Story weaker(strict);
        weaker.tell(u"Ana lists X1"_s);
        QCOMPARE(weaker.refusedBy(), u"relist.less"_s);
        Story same(strict + u"; Ana lists X1 requirements=safetying safetying=lockwire"_s);
        QCOMPARE(same.refusedBy(), QString());
        Story byInspector(strict + u"; Cho lists X1; Ana disconnects X1; Ana reconnects X1"_s);
        QCOMPARE(byInspector.refusedBy(), QString());
        byInspector.tell(u"Cho accepts X1"_s);
        QCOMPARE(byInspector.refusedBy(), u"relist.accept"_s);
        byInspector.tell(u"Eva accepts X1"_s);
        QCOMPARE(byInspector.refusedBy(), QString());
        // Nor by a strike of the stricter row, nor after two strikes.
        Story byStrike(u"Ana relists K1 requirements=safetying safetying=lockwire; Cho strikes entry=12; Ana disconnects K1; Ana reconnects K1"_s);
        QCOMPARE(byStrike.refusedBy(), QString());
        byStrike.tell(u"Cho accepts K1"_s);
        QCOMPARE(byStrike.refusedBy(), u"relist.accept"_s);
        Story twice(u"Ana lists X1 requirements=safetying safetying=lockwire; Cho strikes entry=12; Cho lists X1; Cho strikes entry=14"_s);
        QCOMPARE(twice.refusedBy(), QString());
        twice.tell(u"Ana lists X1"_s);
        QCOMPARE(twice.refusedBy(), u"relist.less"_s);
    }

    /// What another one left half done was taken over; without that, what followed rests on nothing.
    void readingsFallWithTheTakingOver()
    {
        Story story(u"Ana disconnects D1; Ana reconnects D1; Ana torques D1 fastener=1; Ben takes-over D1; Ben torques D1 fastener=2"_s);
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(story.item(u"D1"_s).torque.size(), std::size_t(2));
        story.tell(u"Ben strikes entry=15"_s);
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(story.item(u"D1"_s).torque.size(), std::size_t(1));
        QCOMPARE(story.job().lines.back().standing, core::Standing::Stands);
        QCOMPARE(story.job().lines[15].standing, core::Standing::Fallen);
    }

    /// The unit was off, or somebody says that it never was.
    void aUnitThatWasOffIsNotTalkedOn()
    {
        Story story(u"Ana disconnects D1; Ana disconnects C1; Ana disconnects B1; Ana disconnects F1; Ana disconnects F2; Ana disconnects M1; Ana disconnects M2; Ana disconnects A1; Ana disconnects D2; Ana disconnects K1; Ana takes-off; Ana strikes entry=22"_s);
        QCOMPARE(story.refusedBy(), QString());
        QVERIFY(story.looseEnds().contains(u"loose.unit"_s));
        Story never = story;
        never.tell(u"Ove strikes entry=22 never_was=yes"_s);
        QCOMPARE(never.refusedBy(), QString());
        QVERIFY(!never.looseEnds().contains(u"loose.unit"_s));
    }

    /// The finding of a missing blank stands though what it was counted from was struck.
    void aMissingBlankStaysMissing()
    {
        Story story(u"Ben disconnects D1 blanks_fitted=1; Ben misses-blank D1; Ben strikes entry=12"_s);
        QCOMPARE(story.refusedBy(), QString());
        QVERIFY(story.looseEnds().contains(u"loose.finding"_s));
        QVERIFY(story.looseEnds().contains(u"loose.untouched D1"_s));
        story.tell(u"Ana tests R1 covers=A1"_s);
        QVERIFY(story.refusedBy().contains(u"blanks.running"_s));
    }

    /// Said by the named level, nothing is left: neither hands nor counts, nor somebody to look.
    void nothingWasSo()
    {
        Story story(u"Ana disconnects K1 helpers=Cho blanks_fitted=2; Ana reconnects K1; Eva rejects K1 back_to=reconnected; Ana disconnects K1"_s);
        QCOMPARE(story.refusedBy(), QString());
        QVERIFY(story.item(u"K1"_s).actors.contains(*core::PersonId::parse(u"Cho")));
        story.tell(u"Ove strikes entry=15; Ana strikes entry=12"_s);
        QCOMPARE(story.refusedBy(), QString());
        QVERIFY(story.item(u"K1"_s).left.undoing.has_value());
        QVERIFY(story.item(u"K1"_s).actors.contains(*core::PersonId::parse(u"Cho")));
    }

    void zEveryRuleWasSeenRefusing() { m_table.everyRuleWasSeen(); }

private:
    RuleTable m_table{"strikes"_L1};
};

QTEST_GUILESS_MAIN(TestStrikes)
#include "tst_strikes.moc"
