// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/job/loose_ends.hpp"
#include "tests/support/rule_table.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::RuleTable;
using story::Story;

/// What is put on for the job, and the round that a second person walks.
class TestTemporary : public QObject {
    Q_OBJECT

private slots:
    void eachRule_data()
    {
        RuleTable::columns();
        const auto row = &RuleTable::row;

        row("applied", "", "Ben applies I1", "");
        row("applied under a number that is taken", "Ben applies I1", "Ana applies I1", "temporary.new");
        row("applied under a number that was taken and is off", "Ben applies I1; Ben removes I1", "Ana applies I1", "temporary.new");
        row("applied in a zone of the job", "", "Ben applies I1 zone=left", "");
        row("applied in no zone of the job", "", "Ben applies I1 zone=tail", "temporary.new");
        row("of no sort that there is", "", "Ben applies I1 sort=ladder", "form.value");
        row("applied by a stranger", "", "Out applies I1", "crew.member");
        row("removed", "Ben applies I1", "Ben removes I1", "");
        row("removed, though never applied", "", "Ben removes I1", "temporary.applied");
        row("removed twice", "Ben applies I1; Ben removes I1", "Ben removes I1", "temporary.applied");
        // 29 CFR 1910.147(e)(3): removed by the employee who applied it; where that one is away, under the employer's direction.
        row("another's isolation", "Ben applies I1", "Dee removes I1", "lockout.own");
        row("another's warning tag", "Ben applies I1 sort=warning_tag", "Dee removes I1", "lockout.own");
        row("another's safety pin", "Ben applies I1 sort=safety_pin", "Dee removes I1", "lockout.own");
        row("another's stand", "Ben applies I1 sort=stand", "Dee removes I1", "");
        row("another's isolation, by the lead with a reason", "Ben applies I1", "Ana removes I1 reason=Ben_went_home_and_was_asked", "");
        row("another's isolation, by the lead without", "Ben applies I1", "Ana removes I1", "lockout.own");
        row("another's isolation, with a reason, not by the lead", "Ben applies I1", "Dee removes I1 reason=in_the_way", "lockout.own");
        // 29 CFR 1910.147(f)(4): shift change, an orderly transfer from off-going to oncoming employees.
        row("handed over by its owner", "Ben applies I1", "Ben gives I1 to=Dee", "");
        row("handed over by another", "Ben applies I1", "Ana gives I1 to=Dee", "lockout.to");
        row("handed over to oneself", "Ben applies I1", "Ben gives I1 to=Ben", "lockout.to");
        row("handed over to a stranger", "Ben applies I1", "Ben gives I1 to=Out", "lockout.to");
        row("handed over, then removed by the new owner", "Ben applies I1; Ben gives I1 to=Dee", "Dee removes I1", "");
        row("handed over, then removed by the old owner", "Ben applies I1; Ben gives I1 to=Dee", "Ben removes I1", "lockout.own");

        row("confirmed free by a second person", "Ana disconnects D1", "Ben confirms-free D1", "");
        row("confirmed free by an inspector", "Ana disconnects D1", "Eva confirms-free D1", "");
        row("confirmed free by who undid it", "Ana disconnects D1", "Ana confirms-free D1", "walkround.second-person");
        row("confirmed free by who helped", "Ana disconnects D1 helpers=Ben", "Ben confirms-free D1", "walkround.second-person");
        row("confirmed free, though still on", "", "Ben confirms-free D1", "walkround.off");
        row("confirmed free, though joined again", "Ana disconnects D1; Ana reconnects D1", "Ben confirms-free D1", "walkround.off");
        row("found still attached", "Ana disconnects D1", "Ben finds-attached D1", "");
        row("found still attached after it was confirmed", "Ana disconnects D1; Ben confirms-free D1", "Ben finds-attached D1", "");
        row("found still attached, never undone", "", "Ben finds-attached D1", "walkround.off");
        row("confirmed free while it is still attached", "Ana disconnects D1; Ben finds-attached D1", "Ben confirms-free D1", "walkround.free");
        row("freed", "Ana disconnects D1; Ben finds-attached D1", "Ana frees D1", "");
        row("freed, though it was free", "Ana disconnects D1", "Ana frees D1", "walkround.attached");
        row("freed by an inspector", "Ana disconnects D1; Ben finds-attached D1", "Eva frees D1", "crew.member crew.authorised");
        row("confirmed by who freed it", "Ana disconnects D1; Ben finds-attached D1; Dee frees D1", "Dee confirms-free D1", "walkround.second-person");
        row("confirmed by another than who freed it", "Ana disconnects D1; Ben finds-attached D1; Dee frees D1", "Ben confirms-free D1", "");

        const char *off = "Ana disconnects D1; Ana disconnects C1; Ana disconnects B1; Ana disconnects F1; Ana disconnects F2; Ana disconnects M1; Ana disconnects M2; Ana disconnects A1; Ana disconnects D2; Ana disconnects K1";
        const QByteArray away = QByteArray(off) + "; Ana takes-off";
        row("the unit off, everything free", off, "Ana takes-off", "");
        row("the unit off, one interface still on", QByteArray(off).replace("; Ana disconnects K1", "").constData(), "Ana takes-off", "unit.free");
        row("the unit off, one found still attached", (QByteArray(off) + "; Ben finds-attached K1").constData(), "Ana takes-off", "unit.free");
        row("the unit off, another plate", off, "Ana takes-off serial=X-1", "unit.serial");
        row("the unit off twice", away.constData(), "Ana takes-off", "unit.order");
        row("the incoming unit received", "", "Cho receives", "");
        row("another unit received", "", "Cho receives serial=X-1", "unit.serial");
        row("received twice", "Cho receives", "Ana receives", "unit.order");
        row("in its place", (away + "; Ana receives").constData(), "Ben positions", "");
        row("in its place before it was received", away.constData(), "Ben positions", "unit.order");
        row("in its place before the other is off", "Ana receives", "Ben positions", "unit.order");
        row("received again, a blank fewer", u"Ana receives shipping_blanks=6; Ana strikes entry=12"_s, "Ana receives shipping_blanks=5", "unit.counted");
        row("received again, a blank fewer, by an inspector", u"Ana receives shipping_blanks=6; Ana strikes entry=12"_s, "Cho receives shipping_blanks=5", "");
        row("received again, as many", u"Ana receives shipping_blanks=6; Ana strikes entry=12"_s, "Ana receives shipping_blanks=6", "");
        row("a mount joined where no unit is", away.constData(), "Ana reconnects M1", "unit.there");
        row("a mount joined where the next unit is there", (away + "; Ben receives").constData(), "Ana reconnects M1", "");
        const QByteArray fitted = away + "; Ben receives; Ben positions; Ana reconnects M1; Ana reconnects M2";
        row("a mount undone again on the unit that is up", fitted.constData(), "Ana disconnects M1", "unit.carried");
        row("the same with a stand in the shop", (fitted + "; Ben applies S1 sort=stand").constData(), "Ana disconnects M1", "unit.carried");
        row("a mount undone after the change was given up", "Ana disconnects M1; Ana gives-up; Ana reconnects M1", "Ana disconnects M2", "unit.carried");
        row("the same with the load on the hoist, given up", "Ana disconnects M1; Ben applies H1 sort=hoist; Ana gives-up; Ana reconnects M1", "Ana disconnects M2", "");
        row("the same with the load on the hoist", (fitted + "; Ben applies H1 sort=hoist").constData(), "Ana disconnects M1", "");
        row("the same with the hoist taken away", (fitted + "; Ben applies H1 sort=hoist; Ben removes H1").constData(), "Ana disconnects M1", "unit.carried");
        row("a clamp joined where no unit is", away.constData(), "Ana reconnects K1", "");
        row("in its place with a blank missing", (away + "; Ana receives").constData(), "Ben positions shipping_blanks_removed=5", "unit.shipping-blanks");
        row("an accessory listed", "", "Ana lists-accessory AC1 interfaces=D1", "");
        row("an accessory's number twice", "Ana lists-accessory AC1", "Ana lists-accessory AC1 serial=S-2", "accessory.new");
        row("an accessory's plate twice", "Ana lists-accessory AC1", "Ana lists-accessory AC2", "accessory.new");
        row("an accessory with the unit's plate", "", "Ana lists-accessory AC1 serial=E-100", "accessory.new");
        row("an accessory on no interface of the list", "", "Ana lists-accessory AC1 interfaces=Z9", "accessory.new");
        // Accessories that are serviceable move to the new unit: common practice.
        row("an accessory moved", "Ana lists-accessory AC1; Ana receives", "Ben moves AC1", "");
        row("an accessory moved, never listed", "Ana receives", "Ben moves AC1", "accessory.open");
        row("an accessory moved twice", "Ana lists-accessory AC1; Ana receives; Ben moves AC1", "Ben moves AC1", "accessory.open");
        row("an accessory moved, another plate", "Ana lists-accessory AC1; Ana receives", "Ben moves AC1 serial=S-7", "accessory.serial");
        row("an accessory moved before the incoming unit is there", "Ana lists-accessory AC1", "Ben moves AC1", "accessory.free");
        row("an accessory moved that was never undone", "Ana lists-accessory AC1 interfaces=D1; Ana receives", "Ben moves AC1", "accessory.free");
        row("an accessory moved, undone before", "Ana lists-accessory AC1 interfaces=D1; Ana receives; Ana disconnects D1", "Ben moves AC1", "");
        row("an accessory leaves", "Ana lists-accessory AC1", "Ben leaves AC1", "");
        row("an accessory leaves after it moved", "Ana lists-accessory AC1; Ana receives; Ben moves AC1", "Ben leaves AC1", "accessory.open");
        row("replaced, with its certificate", "Ana lists-accessory AC1", "Ben leaves AC1 replacement=S-9 certificate=RC-9", "");
        row("replaced, without one", "Ana lists-accessory AC1", "Ben leaves AC1 replacement=S-9", "accessory.replacement");
        row("replaced by what is elsewhere", "Ana lists-accessory AC1; Ana lists-accessory AC2 serial=S-2", "Ben leaves AC1 replacement=S-2 certificate=RC-9", "accessory.replacement");
        row("another accessory beside one that was replaced", "Ana lists-accessory AC1; Ben leaves AC1 replacement=S-9 certificate=RC-9", "Ana lists-accessory AC2 serial=S-2", "");
        row("another accessory with the plate of the replacement", "Ana lists-accessory AC1; Ben leaves AC1 replacement=S-9 certificate=RC-9", "Ana lists-accessory AC2 serial=S-9", "accessory.new");
        row("an accessory without a serial number beside one that was not replaced", "Ana lists-accessory AC1; Ben leaves AC1", "Ana lists-accessory AC2 serial=", "form.missing");
        row("given up", "", "Ana gives-up", "");
        row("given up by a technician", "", "Ben gives-up", "crew.lead");
        row("given up twice", "Ana gives-up", "Ana gives-up", "job.reversed-once");
        row("given up when the incoming unit hangs", (away + "; Ana receives; Ben positions").constData(), "Ana gives-up", "job.reversed-once");
        row("given up, and the outgoing unit back in its place", (away + "; Ana gives-up").constData(), "Ben positions", "");
        row("given up, and the incoming unit in its place", (away + "; Ana receives; Ana gives-up").constData(), "Ben positions serial=E-200 shipping_blanks_removed=4", "unit.serial");
        row("given up, and a blank of its openings left in", (away + "; Ana gives-up").constData(), "Ben positions shipping_blanks_removed=3", "unit.shipping-blanks");
        row("in its place, another plate", (away + "; Ana receives").constData(), "Ben positions serial=X-1", "unit.serial");
    }
    void eachRule() { m_table.ask(); }

    /// What is still applied stands as a loose end, whose owner clears it.
    void whatIsAppliedIsLoose()
    {
        Story story(u"Ben applies I1; Ben applies S1 sort=stand"_s);
        const auto ends = [&] { return story.looseEnds().split(u'\n').filter(u"loose.temporary"_s).join(u' '); };
        QCOMPARE(ends(), u"loose.temporary I1 loose.temporary S1"_s);
        story.tell(u"Ben gives I1 to=Dee; Ben removes S1"_s);
        QCOMPARE(ends(), u"loose.temporary I1"_s);
        for (const core::LooseEnd &end : core::looseEnds(story.job(), story.reg())) {
            if (end.subject == u"I1")
                QCOMPARE(end.clearedBy, u"Dee"_s);
        }
        story.tell(u"Dee removes I1"_s);
        QCOMPARE(ends(), QString());
    }

    /// Given up: the unit that came off hangs in its place again, and only for as long as the change is given up.
    void theOutgoingUnitGoesBackUp()
    {
        Story story(u"Ana disconnects D1; Ana disconnects C1; Ana disconnects B1; Ana disconnects F1; Ana disconnects F2; Ana disconnects M1; Ana disconnects M2; Ana disconnects A1; Ana disconnects D2; Ana disconnects K1; Ana takes-off; Ana gives-up; Ben positions"_s);
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(story.job().unit.up->serial, u"E-100"_s);
        const qint64 givenUp = story.job().reversed->seq;
        story.tell(u"Ana strikes entry=%1"_s.arg(givenUp));
        QCOMPARE(story.refusedBy(), u"strike.reversal"_s); // the outgoing unit in the place of the incoming one was never admitted
        story.tell(u"Ben strikes entry=%1; Ana strikes entry=%2"_s.arg(QString::number(story.job().unit.up->mark.seq), QString::number(givenUp)));
        QCOMPARE(story.refusedBy(), QString());
        QVERIFY(!story.job().reversed);
    }

    /// Each new disconnection is walked round anew, and what was found attached is forgotten with the disconnection that it belonged to.
    void aWalkRoundIsAsGoodAsItsDisconnection()
    {
        Story story(u"Ana disconnects D1; Ben confirms-free D1"_s);
        QVERIFY(story.item(u"D1"_s).walkedRound);
        story.tell(u"Ana reconnects D1; Ana disconnects D1"_s);
        QVERIFY(!story.item(u"D1"_s).walkedRound);
        story.tell(u"Ben finds-attached D1"_s);
        QVERIFY(story.looseEnds().contains(u"loose.attached D1"));
        story.tell(u"Ben strikes entry=%1; Ove strikes entry=%2"_s.arg(story.item(u"D1"_s).stillAttached->mark.seq).arg(story.item(u"D1"_s).removal->mark.seq));
        QVERIFY(!story.item(u"D1"_s).stillAttached);
    }

    /// Runs last.
    void zEveryRuleWasSeenRefusing() { m_table.everyRuleWasSeen(); }

private:
    RuleTable m_table{"temporary"_L1};
};

QTEST_GUILESS_MAIN(TestTemporary)
#include "tst_temporary.moc"
