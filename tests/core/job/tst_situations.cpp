// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/job/admit.hpp"
#include "core/job/bursts.hpp"
#include "core/job/doubtful.hpp"
#include "core/job/loose_ends.hpp"
#include "core/list/interface_list.hpp"
#include "tests/support/story.hpp"
#include "tests/support/world.hpp"

using namespace Qt::StringLiterals;
using story::Story;

namespace {

/// The whole list restored and inspected, with nothing loose.
const QString readyToClose = u"Ana disconnects D1; Ana disconnects C1; Ana disconnects B1; Ana disconnects F1; Ana disconnects F2; Ana disconnects A1; Ana disconnects D2; Ana disconnects K1; Ana disconnects M1; Ana disconnects M2;"
                             "Ben reconnects M1; Ben torques M1; Ben reconnects M2; Ben torques M2; Ben reconnects D1; Ben torques D1; Ben safeties D1;"
                             "Ben reconnects C1; Dee reconnects B1; Dee measures B1; Dee reconnects F1; Dee torques F1; Dee reconnects F2; Dee torques F2;"
                             "Dee reconnects D2; Cho accepts D2; Dee reconnects A1; Dee reconnects K1;"
                             "Cho accepts M1; Eva accepts M1; Cho accepts M2; Eva accepts M2; Cho accepts D1; Cho accepts C1; Cho accepts B1; Cho accepts F1; Cho accepts F2; Cho accepts A1; Cho accepts K1"_s;

} // namespace

/// Moments in which a list of ticks goes wrong, each in its shortest form: what was so, what somebody does, what comes of it. All of it is
/// common practice of the trade. The tables of the single rules stand in tests/core/rules. What needs a store, a screen or a second job is
/// shown elsewhere: a sitting left open in app.session.identity, a record altered on disk in app.session.verify_store and the fault tests,
/// a wrench out of tolerance over closed jobs in app.cli.commands, linked jobs in core.rules.links.
class TestSituations : public QObject {
    Q_OBJECT

    /// Tells on, and everything is admitted.
    static void tell(Story &story, const QString &text)
    {
        story.tell(text);
        if (!story.refusedBy().isEmpty())
            qFatal("%s: %s", qPrintable(story.refusedSentence()), qPrintable(story.refusedBy()));
    }
    static QString refusedBy(Story &story, const QString &text)
    {
        story.tell(text);
        return story.refusedBy();
    }

private slots:
    void aTrialFitIsNotDone()
    {
        Story story(u"Ana disconnects K1; Ana states K1 condition=temporary reason=trial_fit"_s);
        QCOMPARE(story.stage(u"K1"_s), u"disconnected"_s);
        QVERIFY(story.looseEnds().contains(u"loose.condition K1"_s));
        QCOMPARE(refusedBy(story, u"Cho accepts K1"_s), u"inspection.secured condition.settled"_s);
        QVERIFY(refusedBy(story, u"Rae closes"_s).contains(u"closure.nothing-loose"_s));
    }

    void slaveHardwareIsNotDone()
    {
        Story story(u"Ana disconnects K1; Ben reconnects K1; Ben states K1 condition=slave_hardware to_come_out=two_old_bolts"_s);
        QCOMPARE(refusedBy(story, u"Cho accepts K1"_s), u"condition.settled"_s);
        tell(story, u"Ben settles K1 condition=slave_hardware; Cho accepts K1"_s);
    }

    void partlyRestoredIsCounted()
    {
        const Story story(u"Ana disconnects D1; Ben reconnects D1; Ben torques D1 fastener=1"_s);
        const core::json::Object told = *core::openAtHandover(story.job()).front().object();
        QCOMPARE(told.text(u"stage"), u"reconnected"_s);
        QCOMPARE(told.integer(u"torqued"), 1);
        QCOMPARE(told.integer(u"of"), 2);
    }

    void aTorqueHalfDoneAtAShiftChange()
    {
        Story story(u"Ana disconnects D1; Ben reconnects D1; Ben torques D1 fastener=1; Ana hands-over; Lee takes-shift"_s);
        QCOMPARE(refusedBy(story, u"Max torques D1 fastener=2"_s), u"torque.half-done"_s);
        tell(story, u"Max takes-over D1; Max torques D1 fastener=2"_s);
        QCOMPARE(story.item(u"D1"_s).torque.front().mark.by.text(), u"Ben"_s); // each fastener keeps its own signer
    }

    void aTorqueInPasses()
    {
        Story story(u"Ana lists L1 requirements=torque torque_fasteners=2 torque_min=20 torque_max=25 torque_unit=N·m torque_passes=50,100; Ana disconnects L1; Ben reconnects L1"_s);
        QVERIFY(refusedBy(story, u"Ben torques L1 fastener=1 pass=2 value=22"_s).contains(u"torque.order"_s));
        tell(story, u"Ben torques L1; Ben torques L1"_s);
        QCOMPARE(story.stage(u"L1"_s), u"secured"_s);
    }

    void whatNeedsNoTorque()
    {
        Story story(u"Ana disconnects C1"_s);
        QCOMPARE(refusedBy(story, u"Ana reconnects C1 aircraft_half= unit_half="_s), u"balance.mate"_s); // its own criterion is asked
        tell(story, u"Ana reconnects C1"_s);
        QCOMPARE(refusedBy(story, u"Ana torques C1 fastener=1 value=0 unit=N·m tool=TW1"_s), u"torque.asked-for tool.range"_s);
    }

    void aReadingOutsideTheBand()
    {
        Story story(u"Ana disconnects D1; Ben reconnects D1"_s);
        QCOMPARE(refusedBy(story, u"Ben torques D1 fastener=1 value=19.9"_s), u"torque.band"_s);
        QCOMPARE(refusedBy(story, u"Ben torques D1 fastener=1 value=25.1"_s), u"torque.band"_s);
        QVERIFY(story.refusals().front().sentence.contains(u"overstressed"_s));
    }

    void unitsMixedUp()
    {
        Story story(u"Ana disconnects D1; Ben reconnects D1"_s);
        QVERIFY(refusedBy(story, u"Ben torques D1 fastener=1 value=22 unit=lbf·in tool=TW5"_s).contains(u"torque.band"_s));
        QVERIFY2(story.refusals().front().sentence.contains(u"22 in N·m would be in the band"_s), qPrintable(story.refusals().front().sentence));
        QVERIFY(refusedBy(story, u"Ben torques D1 fastener=1 value=40 unit=lbf·in tool=TW5"_s).contains(u"torque.band"_s));
        QVERIFY(!story.refusals().front().sentence.contains(u"would be in the band"_s)); // wrong in any unit
    }

    void aValueThatHangsOnTheModificationState()
    {
        Story story(u"Ana disconnects D1; Ana receives configuration=stud_modification_embodied; Cho relists D1 torque_min=10 torque_max=12; Ben reconnects D1"_s);
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(refusedBy(story, u"Ben torques D1 fastener=1 value=22"_s), u"torque.band"_s);
        tell(story, u"Ben torques D1 fastener=1 value=11"_s);
    }

    void theManualRevisedMidJob()
    {
        Story story(u"Ana disconnects K1; Ben reconnects K1; Cho accepts K1; Ana revises revision=13 interfaces=K1"_s);
        QVERIFY(story.item(u"K1"_s).acceptances.empty());
        QCOMPARE(refusedBy(story, u"Cho accepts K1"_s), u"revision.looked-up"_s);
        tell(story, u"Ana relists K1; Cho accepts K1"_s);
    }

    void foundAlreadyDisconnected()
    {
        Story story(u"Ben finds-open K1 evidence=hung_free"_s);
        QCOMPARE(story.item(u"K1"_s).actors.size(), std::size_t(1)); // who of the crew found it handled it, and does not inspect it
        QVERIFY(Story(u"Cho finds-open K1"_s).item(u"K1"_s).actors.empty()); // an inspector from outside the crew did not open it
        QVERIFY(story.looseEnds().contains(u"loose.finding F1"_s) && story.looseEnds().contains(u"loose.disconnected K1"_s));
        tell(story, u"Dee reconnects K1; Cho accepts K1; Cho clears F1"_s);
    }

    void anExtraDisconnectionFoundLate()
    {
        Story story(readyToClose);
        tell(story, u"Ben logs X1"_s);
        QVERIFY(refusedBy(story, u"Rae closes"_s).contains(u"closure.nothing-loose"_s));
        tell(story, u"Ben reconnects X1; Eva details X1; Cho accepts X1; Rae closes"_s);
        QVERIFY(refusedBy(story, u"Ben logs X2"_s).contains(u"job.closed"_s)); // then a job of its own names this one
    }

    void foundDamaged()
    {
        Story story(readyToClose);
        tell(story, u"Ben states K1 condition=damaged reason=chafed; Cho clears F1 disposition=deferred limit=2026-04-01; Ben settles K1 condition=damaged; Cho accepts K1"_s);
        QCOMPARE(refusedBy(story, u"Rae closes"_s), u"closure.limited"_s);
        tell(story, u"Rae closes limitation=F1_until_1_April"_s);
    }

    void aWrongPartFitted()
    {
        Story story(u"Ana disconnects D1; Ben reconnects D1; Ben torques D1; Ben safeties D1; Cho accepts D1; Ben disconnects D1 as_found=damaged; Ben reconnects D1 seal_batch=batch-6"_s);
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(story.stage(u"D1"_s), u"reconnected"_s);
        QVERIFY(story.item(u"D1"_s).torque.empty() && story.item(u"D1"_s).acceptances.empty());
        QCOMPARE(story.fold().said()[12].body.text(u"seal_batch"), u"batch-5"_s); // what was fitted first stays on record
    }

    void twinsCrossed()
    {
        Story story(u"Ana lists T1 twin_group=sense aircraft_half=P7 unit_half=J7; Ana lists T2 twin_group=sense aircraft_half=P8 unit_half=J8; Ana disconnects T1; Ana disconnects T2; Ben reconnects T1; Ben reconnects T2"_s);
        QCOMPARE(refusedBy(story, u"Cho accepts T1"_s), u"twins.verified"_s);
        QCOMPARE(refusedBy(story, u"Ben verifies T1"_s), u"twins.another-person"_s);
        QCOMPARE(refusedBy(story, u"Cho verifies T1 aircraft_halves=P7,P8 unit_halves=J8,J7"_s), u"twins.read"_s);
        tell(story, u"Cho verifies T1; Cho accepts T1; Cho accepts T2; Ben disturbs T1"_s);
        QVERIFY(story.item(u"T2"_s).acceptances.empty()); // changing one reopens both
    }

    void disturbedAfterInspection()
    {
        Story story(u"Ana lists P1 depends_on=K1; Ana disconnects K1; Ben reconnects K1; Cho accepts K1; Ana disconnects P1; Ben reconnects P1; Cho accepts P1; Ana tests R1 covers=K1; Ben disturbs K1"_s);
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(story.stage(u"K1"_s), u"secured"_s);
        QCOMPARE(story.stage(u"P1"_s), u"secured"_s);
        QVERIFY(story.looseEnds().contains(u"loose.test R1"_s));
    }

    void coveredBeforeInspected()
    {
        Story story(u"Ana disconnects A1; Ana disconnects D2; Ana reconnects D2"_s);
        QCOMPARE(refusedBy(story, u"Ana reconnects A1"_s), u"sequence.inspected-before-cover"_s);
        tell(story, u"Cho accepts D2; Ana reconnects A1"_s);
    }

    void theTechnicianIsAlsoInspector_data()
    {
        QTest::addColumn<QString>("work");
        // Ben may work and inspect. Helped, supervised and taught are one: an eye that was there.
        QTest::newRow("undid it") << u"Ben disconnects K1; Ana reconnects K1"_s;
        QTest::newRow("joined it") << u"Ana disconnects K1; Ben reconnects K1"_s;
        QTest::newRow("helped, supervised or taught at its undoing") << u"Ana disconnects K1 helpers=Ben; Ana reconnects K1"_s;
        QTest::newRow("helped, supervised or taught at its joining") << u"Ana disconnects K1; Ana reconnects K1 helpers=Ben"_s;
        QTest::newRow("before the last removal") << u"Ana disconnects K1; Ben reconnects K1; Ana disconnects K1; Ana reconnects K1"_s;
        QTest::newRow("on the shift before") << u"Ben disconnects K1; Ana hands-over; Lee takes-shift; Max reconnects K1"_s;
    }
    void theTechnicianIsAlsoInspector()
    {
        QFETCH(QString, work);
        Story story;
        tell(story, work);
        QCOMPARE(refusedBy(story, u"Ben accepts K1"_s), u"independence.own-work"_s);
    }

    void onlyOnePersonTonight()
    {
        const QString night = u"Ana disconnects K1; Ben reconnects K1"_s;
        Story usual(night);
        QVERIFY(refusedBy(usual, u"Ben repeats K1"_s).contains(u"reinspection.allowed"_s));
        Story allowed(night, {{u"reinspection"_s, u"allowed"_s}, {u"reinspection_pause"_s, 30}});
        QVERIFY(refusedBy(allowed, u"Ben repeats K1"_s).contains(u"reinspection.pause"_s));
        tell(allowed, u"Ben repeats K1 at=2026-03-02T07:00:00.000Z"_s);
        QCOMPARE(allowed.item(u"K1"_s).reinspections.size(), std::size_t(1)); // marked wherever it is shown
    }

    void anAuthorisationThatEndsMidJob()
    {
        Story story(u"Ana disconnects K1; Ben reconnects K1"_s);
        const core::Need before{.authority = core::Authority::Inspect, .kind = u"clamp"_s, .aircraftType = u"TF-2"_s, .at = *core::Instant::parseLedger(u"2026-02-28T23:59:59.000Z")};
        QVERIFY(core::authorisationFor(story.reg(), *core::PersonId::parse(u"Ida"), before)); // what was signed then stays signed
        QCOMPARE(refusedBy(story, u"Ida accepts K1"_s), u"inspection.authorised"_s);
        QVERIFY(story.looseEnds().contains(u"loose.inspection K1"_s)); // and somebody else is still needed
    }

    void anInspectorRejects()
    {
        Story story(u"Ana disconnects K1; Ben reconnects K1; Cho rejects K1 back_to=reconnected"_s);
        QCOMPARE(refusedBy(story, u"Ben strikes entry=14"_s), u"strike.by"_s);
        QCOMPARE(refusedBy(story, u"Eva strikes entry=14"_s), u"strike.by"_s);
        tell(story, u"Eva accepts K1"_s);
        Story overruled(u"Ana disconnects K1; Ben reconnects K1; Cho rejects K1; Ove strikes entry=14"_s);
        QCOMPARE(overruled.refusedBy(), QString());
    }

    void aWrenchFoundOutOfToleranceLater()
    {
        Story story(u"Ana disconnects F1; Ben reconnects F1; Ben torques F1; Cho accepts F1"_s);
        QVERIFY(!core::whyInDoubt(story.item(u"F1"_s), story.reg()));
        core::Register later = story.reg();
        const core::Draft doubt{*core::PersonId::parse(u"Root"), story.job().lines[14].at, u"tool.doubted"_s, u"TW1"_s, {{u"after"_s, u"2026-01-02"_s}, {u"found"_s, u"reads 9 % low"_s}, {u"certificate"_s, u"CC-11"_s}}};
        QVERIFY2(core::admit(later, doubt).empty(), qPrintable(core::admit(later, doubt).empty() ? QString() : core::admit(later, doubt).front().sentence));
        core::fold(later, story::statementOf(doubt, later.head.seq + 1), {});
        QVERIFY(core::whyInDoubt(story.item(u"F1"_s), later));
        QVERIFY(!core::whyInDoubt(story.item(u"F2"_s), later)); // nothing was torqued there
    }

    void aToolOverdueOrNotOnTheList()
    {
        Story story(u"Ana disconnects D1; Ben reconnects D1"_s);
        QCOMPARE(refusedBy(story, u"Ben torques D1 fastener=1 tool=TW2"_s), u"tool.calibration"_s);
        QCOMPARE(refusedBy(story, u"Ben torques D1 fastener=1 tool=TW9"_s), u"tool.calibration"_s);
    }

    void aLostTag()
    {
        Story story(u"Ana disconnects K1 tag=7"_s);
        QVERIFY(refusedBy(story, u"Ana replaces-tag K1 tag=8"_s).contains(u"independence.own-work"_s));
        tell(story, u"Cho replaces-tag K1 tag=8"_s);
        QCOMPARE(refusedBy(story, u"Ana disconnects C1 tag=7"_s), u"balance.tag-unique"_s);
    }

    void aTagOnTheWrongItem()
    {
        Story story(u"Ana disconnects K1 tag=7; Ana disconnects C1 tag=8; Ben confirms-free K1; Ben confirms-free C1"_s);
        tell(story, u"Cho exchanges-tag K1 other=C1"_s);
        QVERIFY(!story.item(u"K1"_s).walkedRound && !story.item(u"C1"_s).walkedRound);
        QCOMPARE(refusedBy(story, u"Ana reconnects K1 tag_recovered=7"_s), u"balance.tag-recovered"_s);
    }

    void leftoverAndShortHardware()
    {
        Story story(uR"(Ana lists L1 hardware=[{"part":"B-3","quantity":4}]; Ana disconnects L1 hardware_removed=[{"part":"B-3","quantity":4}])"_s);
        QVERIFY(refusedBy(story, uR"(Ben reconnects L1 hardware=[{"part":"B-3","reused":3,"renewed":0,"scrapped":0}])"_s).contains(u"hardware."_s));
        QVERIFY(refusedBy(story, uR"(Ben reconnects L1 hardware=[{"part":"B-3","reused":3,"renewed":0,"scrapped":1}])"_s).contains(u"hardware.required"_s));
        tell(story, uR"(Ben reconnects L1 hardware=[{"part":"B-3","reused":3,"renewed":1,"scrapped":1,"batch":"b-7"}])"_s);
    }

    void aBlankMissingAtTheCount()
    {
        Story story(u"Ana disconnects D1 blanks_fitted=1"_s);
        QCOMPARE(refusedBy(story, u"Ben reconnects D1 blanks_removed=0"_s), u"balance.blanks"_s);
        tell(story, u"Ben misses-blank D1"_s);
        QCOMPARE(refusedBy(story, u"Ben reconnects D1"_s), u"blanks.search"_s);
        tell(story, u"Cho clears F1 authority=borescope_report_7; Ben reconnects D1"_s);
    }

    void theJobGivenUp()
    {
        Story story(u"Ana disconnects K1; Ana gives-up"_s);
        QCOMPARE(story.refusedBy(), QString());
        QVERIFY(story.looseEnds().contains(u"loose.disconnected K1"_s)); // nothing is deleted
        QVERIFY(refusedBy(story, u"Rae closes"_s).contains(u"closure.nothing-loose"_s));
    }

    void theWrongUnitOrPosition()
    {
        Story story;
        QCOMPARE(refusedBy(story, u"Cho receives serial=E-100"_s), u"unit.serial"_s);
        tell(story, u"Cho receives serial=E-200"_s);
    }

    void anItemThatDoesNotApply()
    {
        Story story(u"Ben finds-inapplicable K1 reason=not_on_this_unit; Ben finds-inapplicable F1 reason=not_on_this_unit"_s);
        QVERIFY(!story.looseEnds().contains(u" K1"_s));
        QVERIFY(story.looseEnds().contains(u"loose.not-applicable F1"_s)); // critical: a second person agrees
        QCOMPARE(refusedBy(story, u"Ben agrees F1"_s), u"notapplicable.second-person"_s);
        tell(story, u"Dee agrees F1"_s);
    }

    void theClockWasWrong()
    {
        Story story(u"Ana disconnects K1"_s);
        QCOMPARE(refusedBy(story, u"Ana disconnects C1 at=2026-03-02T06:00:30.000Z"_s), u"ledger.clock"_s);
        tell(story, u"Ana disconnects C1; Ben doubts first=12 last=13"_s);
        QCOMPARE(story.job().lines[11].seq, 12); // the order is that of the ledger, and nothing is rewritten
        QVERIFY(core::doubtOfTime(story.job(), 13));
    }

    void anEntryMadeLate()
    {
        Story story;
        QCOMPARE(refusedBy(story, u"Ana disconnects K1 done_at=2026-03-02T05:59:59.000Z"_s), u"entry.done-at"_s); // the job was not open then
        tell(story, u"Ana disconnects K1 done_at=2026-03-02T06:00:30.000Z"_s);
        QVERIFY(story.fold().said()[11].body.contains(u"done_at"));
        QVERIFY(story.job().lines[11].at > *core::Instant::parseLedger(u"2026-03-02T06:00:30.000Z"));
    }

    void aTypingSlipAfterSigning()
    {
        Story story(u"Ana disconnects K1 tag=17"_s);
        QCOMPARE(refusedBy(story, u"Ben strikes entry=12"_s), u"strike.by"_s);
        tell(story, u"Ana strikes entry=12 reason=tag_71,_not_17; Ana disconnects K1 tag=71"_s);
        QCOMPARE(story.fold().said()[11].body.text(u"tag"), u"17"_s); // both can be read
        QCOMPARE(story.item(u"K1"_s).removal->tag, u"71"_s);
    }

    void theLastJobAsATemplate()
    {
        const Story story(readyToClose);
        const QByteArray list = core::writeInterfaceList(story.job());
        QVERIFY(list.contains("D1") && list.contains("S-100"));
        for (const char *reading : {"batch-5", "TW1", "Ben", "sound"})
            QVERIFY2(!list.contains(reading), reading); // what is asked, and nothing that was shown
    }

    void everybodyTicksAtTheEnd()
    {
        QString told;
        for (int i = 1; i <= 12; ++i)
            told += u"Ana lists X%1; Ana disconnects X%1; Ben reconnects X%1; "_s.arg(i);
        for (int i = 1; i <= 12; ++i)
            told += u"Cho accepts X%1 at=2026-03-02T09:00:%2.000Z; "_s.arg(QString::number(i), QString::number(10 + i));
        Story story;
        tell(story, told);
        const auto bursts = core::burstsOfSigning(story.job());
        QCOMPARE(bursts.size(), std::size_t(1)); // told to the auditor, refused to nobody
        QCOMPARE(bursts.front().by.text(), u"Cho"_s);
        QCOMPARE(bursts.front().interfaces, 12);
    }
};

QTEST_GUILESS_MAIN(TestSituations)
#include "tst_situations.moc"
