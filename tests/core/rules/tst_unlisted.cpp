// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/holds/standing.hpp"
#include "tests/support/rule_table.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::RuleTable;
using story::Story;

/// A disconnection that was on no list: a name and a side are enough to log it, at any time until closure. That what is loosened only for
/// access is the classic thing to be forgotten: common practice.
class TestUnlisted : public QObject {
    Q_OBJECT

private slots:
    void eachRule_data()
    {
        RuleTable::columns();
        const auto row = &RuleTable::row;

        const QString logged = u"Ben logs X1"_s;
        row("a name and a side", {}, "Ben logs X1", "");
        row("with the tag that hangs on it", {}, "Ben logs X1 tag=7", "");
        row("with a tag that hangs elsewhere", u"Ana disconnects K1 tag=7"_s, "Ben logs X1 tag=7", "balance.tag-unique");
        row("without a name", {}, "Ben logs X1 name=", "form.missing");
        row("on no side of the job", {}, "Ben logs X1 zone=tail", "listing.zone");
        row("under an id of the list", {}, "Ben logs K1", "listing.new");
        row("by a stranger", {}, "Out logs X1", "crew.member");
        row("by an inspector", {}, "Eva logs X1", "crew.member crew.authorised");
        row("disconnected once more", logged, "Ana disconnects X1", "sequence.disconnected-once");
        row("reconnected before its details follow", logged, "Ana reconnects X1", "");
        row("inspected before its details follow", logged + u"; Ana reconnects X1"_s, "Cho accepts X1", "detail.known");
        row("inspected when they have", logged + u"; Ana reconnects X1; Eva details X1"_s, "Cho accepts X1", "");
        row("inspected, the torque that they ask for missing", logged + u"; Ana reconnects X1; Eva details X1 requirements=torque torque_fasteners=1 torque_min=20 torque_max=25 torque_unit=N·m"_s, "Cho accepts X1", "inspection.secured");
        row("details of what was listed", {}, "Eva details K1", "detail.asked");
        row("details given twice", logged + u"; Eva details X1"_s, "Ben details X1", "detail.asked");
        row("details with a part twice", logged, R"(Eva details X1 hardware=[{"part":"B-3","quantity":2},{"part":"B-3","quantity":1}])", "listing.hardware");
        row("details with the hardware that came off", logged, R"(Eva details X1 hardware=[{"part":"B-3","quantity":2}] hardware_removed=[{"part":"B-3","quantity":2}])", "");
        const QString bolts = logged + uR"(; Eva details X1 hardware=[{"part":"B-3","quantity":2}] hardware_removed=[{"part":"B-3","quantity":2}])"_s;
        row("the bolts that came off, used again", bolts, R"(Ana reconnects X1 hardware=[{"part":"B-3","reused":2,"renewed":0,"scrapped":0}])", "");
        row("more than came off, used again", bolts, R"(Ana reconnects X1 hardware=[{"part":"B-3","reused":3,"renewed":0,"scrapped":0}])", "hardware.reused hardware.required");
        row("with a tag of no block", u"Ana issues-tags"_s, "Ben logs X1 tag=99", "tags.from-block");
        row("without a tag, though a block is out", u"Ana issues-tags"_s, "Ben logs X1", "");
        row("details without a kind", logged, "Eva details X1 kind=", "form.missing");
        row("details that ask for half a torque", logged, "Eva details X1 requirements=torque torque_fasteners=1", "listing.requirements");
        row("details with a limit that is none", logged, "Eva details X1 torque_fasteners=1 torque_min=25 torque_max=20 torque_unit=N·m", "listing.limits");
        row("details with access", logged, "Eva details X1 access=A1", "");
        row("details with access that waits for it", logged + u"; Ana lists P1 access=X1"_s, "Eva details X1 access=P1", "detail.circle");
        row("details with access to itself", logged, "Eva details X1 access=X1", "detail.circle");
        row("details by a stranger", logged, "Out details X1", "crew.takes-part");
        row("struck by who logged it, when it was on the list after all", logged, "Ben strikes entry=12", "strike.listing");
        row("struck by the lead", logged, "Ana strikes entry=12", "strike.listing");
        row("struck by an inspector who looked", logged, "Eva strikes entry=12", "");
        const QString gate = uR"(Ana sets free conditions=[{"what":"applied","names":["hoist"]}] gates=[{"act":"interface.disconnected","kinds":["mount"]}]; )"_s;
        row("a mount by its details, undone before its hold point", gate + logged, "Ben details X1 kind=mount", "detail.gate");
        row("the same details by an inspector", gate + logged, "Eva details X1 kind=mount", "");
        row("no mount by its details", gate + logged, "Ben details X1", "");
        row("a mount undone behind its hold point", gate + u"Ben applies H1 sort=hoist; Ana passes free; Ben logs X1"_s, "Ana details X1 kind=mount", "");
        row("struck after it was worked on", logged + u"; Ana reconnects X1"_s, "Ben strikes entry=12", "strike.listing");
        row("depends on what is listed", {}, "Ana lists P1 depends_on=D1", "");
        row("depends on what is not listed", {}, "Ana lists P1 depends_on=Z9", "listing.depends-on");
        row("depends on itself", {}, "Ana lists P1 depends_on=P1", "listing.depends-on");
    }
    void eachRule() { m_table.ask(); }

    /// It is off from the start, whoever undid it is of its actors, and it is a loose end until its details follow.
    void itIsLooseAtOnce()
    {
        Story story(u"Ben logs X1 tag=7 helpers=Dee"_s);
        QCOMPARE(story.stage(u"X1"_s), u"disconnected"_s);
        QVERIFY(story.looseEnds().contains(u"loose.details X1\nloose.disconnected X1"_s));
        QVERIFY(story.item(u"X1"_s).actors.contains(*core::PersonId::parse(u"Dee")));
        QCOMPARE(story.item(u"X1"_s).removal->tag, u"7"_s);
        story.tell(u"Ana reconnects X1"_s);
        QCOMPARE(story.stage(u"X1"_s), u"reconnected"_s);
        QVERIFY(!story.looseEnds().contains(u"loose.inspection X1"_s));
        story.tell(u"Eva details X1 kind=drain"_s);
        QCOMPARE(story.stage(u"X1"_s), u"secured"_s);
        QCOMPARE(story.item(u"X1"_s).listed.kind, u"drain"_s);
        QVERIFY(!story.looseEnds().contains(u"loose.details"_s));
        story.tell(u"Cho accepts X1; Eva strikes entry=%1"_s.arg(story.item(u"X1"_s).unlisted->detailed->seq));
        QCOMPARE(story.refusedBy(), QString());
        QVERIFY(story.item(u"X1"_s).acceptances.empty()); // nobody knows any more what was to be looked at
    }

    /// A hold point that every interface has to meet is void when one turns up that nobody had thought of, whatever its kind may be.
    void itTakesHoldPointsBack()
    {
        const QString hold = uR"(Ana sets done conditions=[{"what":"interfaces","stage":"%1","kinds":["clamp"]}] gates=[{"act":"job.closed"}]; Ana disconnects K1)"_s;
        Story off(hold.arg(u"disconnected"_s) + u"; Ana passes done"_s);
        const auto stateIn = [](const Story &story) { return core::standingOf(story.job(), story.job().holds.front()).state; };
        QCOMPARE(stateIn(off), core::HoldState::Passed);
        off.tell(u"Ben logs X1"_s);
        QCOMPARE(stateIn(off), core::HoldState::Void);
        Story restored(hold.arg(u"inspected"_s) + u"; Ana reconnects K1; Cho accepts K1; Ana passes done"_s);
        QCOMPARE(stateIn(restored), core::HoldState::Passed);
        restored.tell(u"Ben logs X1; Ben reconnects X1; Eva details X1 kind=drain"_s);
        QCOMPARE(stateIn(restored), core::HoldState::Passed); // it is a drain, and drains are not asked for
        restored.tell(u"Ben logs X2"_s);
        QCOMPARE(stateIn(restored), core::HoldState::Void); // and what this is nobody knows yet
    }

    /// Runs last.
    void zEveryRuleWasSeenRefusing() { m_table.everyRuleWasSeen(); }

private:
    RuleTable m_table{"unlisted"_L1};
};

QTEST_GUILESS_MAIN(TestUnlisted)
#include "tst_unlisted.moc"
