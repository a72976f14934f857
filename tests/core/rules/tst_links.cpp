// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/job/admit.hpp"
#include "core/job/linked.hpp"
#include "core/job/loose_ends.hpp"
#include "core/job/stage.hpp"
#include "core/job/summary.hpp"
#include "tests/support/rule_table.hpp"
#include "tests/support/story.hpp"
#include "tests/support/world.hpp"

using namespace Qt::StringLiterals;
using story::RuleTable;
using story::Story;

namespace {

/// The lead of each names the other job.
const QString linked = u"Ana links ledger=shop; shop: Lee links ledger=here; "_s;
const QString twoEngines = u"Ana links ledger=right; right: Ana links ledger=here; "_s;
/// C1 is undone on the wing and goes to the shop.
const QString sent = linked + u"Ana disconnects C1; Ana sends C1; "_s;
const QString takenOn = sent + u"shop: Max takes-on C1; "_s;

/// Whatever of the first job's list is not named: looked at, and never undone.
QString untouchedBut(const QStringList &named)
{
    QString told;
    for (const QString &id : {u"D1"_s, u"C1"_s, u"B1"_s, u"F1"_s, u"F2"_s, u"M1"_s, u"M2"_s, u"A1"_s, u"D2"_s, u"K1"_s}) {
        if (!named.contains(id))
            told += u"Ben finds-undisturbed %1; "_s.arg(id);
    }
    return told;
}

const QString shopComplete = u"shop: Ben finds-undisturbed S1; "_s;

} // namespace

/// Jobs that are parts of one piece of work: each names the other, they share the people who had a hand in it, items go from one to the other
/// with a signature at both ends, and they close together: common practice where one change is worked in two places.
/// That two like systems of one aircraft are not left to the same hands: 14 CFR 121.374(c) (limitations on dual maintenance, extended
/// operations; from memory) asks for different technicians, or a second qualified person. That whoever worked on one does not inspect the
/// other: common practice.
class TestLinks : public QObject {
    Q_OBJECT

private slots:
    void eachRule_data()
    {
        RuleTable::columns();
        const auto row = &RuleTable::row;

        row("a link by the lead", "", "Ana links ledger=shop", "");
        row("a link by another", "", "Ben links ledger=shop", "crew.lead");
        row("a link with itself", "", "Ana links ledger=here", "link.named");
        row("a link with what is not there", "", "Ana links ledger=nowhere work_order=WO-shop", "link.named");
        row("a link, the work order read wrong", "", "Ana links ledger=shop work_order=WO-right", "link.named");
        row("a link with a closed job", shopComplete + u"shop: Rae closes"_s, "Ana links ledger=shop", "link.named");
        row("a link twice", linked, "Ana links ledger=shop", "link.once");
        row("a second link", linked, "Ana links ledger=right", "");
        row("a link struck that was not answered", "Ana links ledger=shop", "Ana strikes entry=12", "");
        row("a link struck that was answered", linked, "Ana strikes entry=12", "strike.link");
        row("linked again after it was struck", "Ana links ledger=shop; Ana strikes entry=12", "Ana links ledger=shop", "");

        row("sent when off", linked + u"Ana disconnects C1"_s, "Ana sends C1", "");
        row("sent when untouched", linked, "Ana sends C1", "");
        row("sent by a stranger", linked, "Out sends C1", "crew.member");
        row("sent when joined", linked + u"Ana disconnects C1; Ana reconnects C1"_s, "Ana sends C1", "send.state");
        row("sent when said to be undisturbed", linked + u"Ben finds-undisturbed C1"_s, "Ana sends C1", "send.state");
        row("sent when not applicable", linked + u"Ben finds-inapplicable C1"_s, "Ana sends C1", "send.state");
        row("sent without its details", linked + u"Ana logs X1"_s, "Ana sends X1", "send.state");
        row("sent with its details", linked + u"Ana logs X1; Ana details X1"_s, "Ana sends X1", "");
        row("sent while it is held", linked + u"Ana disconnects C1; Cho finds-attached C1"_s, "Ana sends C1", "send.state");
        row("sent once it is free", linked + u"Ana disconnects C1; Cho finds-attached C1; Ana frees C1"_s, "Ana sends C1", "");
        row("sent in the middle of the work", linked + u"Ana disconnects C1; Ana stops C1"_s, "Ana sends C1", "send.state");
        row("sent with a condition that stands", linked + u"Ana disconnects C1; Ana states C1 condition=damaged"_s, "Ana sends C1", "send.state");
        row("sent while a blank of it is missing", linked + u"Ana disconnects C1 blanks_fitted=2; Ana misses-blank C1"_s, "Ana sends C1", "send.state");
        row("sent while its data is to be looked up", linked + u"Ana disconnects C1; Ana revises revision=13 interfaces=C1"_s, "Ana sends C1", "send.state");
        row("sent once it was", linked + u"Ana disconnects C1; Ana revises revision=13 interfaces=C1; Ana relists C1"_s, "Ana sends C1", "");
        row("sent, one of twins", linked, "Ana sends F1", "send.tied");
        row("sent, another depends on it", linked + u"Ana lists Z1 depends_on=C1"_s, "Ana sends C1", "send.tied");
        row("sent, it depends on another", linked + u"Ana lists Z1 depends_on=C1"_s, "Ana sends Z1", "send.tied");
        row("sent to a job that is not linked", "", "Ana sends C1 to=shop", "send.to");
        row("sent to a job that has not answered", "Ana links ledger=shop", "Ana sends C1", "send.to");
        row("sent to a job that has one of that id", twoEngines, "Ana sends C1 to=right", "send.to");
        row("sent twice", sent, "Ana sends C1", "link.elsewhere");
        row("worked on after it was sent", sent, "Ana reconnects C1", "link.elsewhere");
        row("photographed after it was sent", sent, "Ana photographs C1", "link.elsewhere");
        row("a finding on what was sent", sent, "Ana raises F9 interface=C1", "");
        row("worked on after the sending was struck", sent + u"Ana strikes entry=14"_s, "Ana reconnects C1", "");
        row("a failed test that reopens what was sent", sent, "Ben tests R1 result=failed reopens=C1 covers=K1", "link.elsewhere test.covers");
        row("revised for what was sent", sent, "Ana revises revision=13 interfaces=C1", "link.elsewhere");
        row("relisted after it was sent", sent, "Ana relists C1", "link.elsewhere");
        row("tags exchanged with what was sent", sent + u"Ana disconnects K1"_s, "Cho exchanges-tag K1 other=C1", "link.elsewhere");
        row("listed to depend on what was sent", sent, "Ana lists Z1 depends_on=C1", "listing.depends-on");

        row("taken on", sent, "shop: Max takes-on C1", "");
        row("taken on by a stranger", sent, "shop: Out takes-on C1", "crew.member");
        row("taken on when nobody sent it", linked + u"Ana disconnects C1"_s, "shop: Max takes-on C1", "taken-on.sent");
        row("taken on when the sending was struck", sent + u"Ana strikes entry=14"_s, "shop: Max takes-on C1", "taken-on.sent");
        row("taken on twice", takenOn, "shop: Max takes-on C1", "listing.new taken-on.tag");
        row("taken on from a job that is not linked", sent, "right: Dee takes-on C1 from=here", "listing.new taken-on.sent");
        row("taken on with another tag", sent, "shop: Max takes-on C1 tag=99", "taken-on.same");
        row("taken on with more blanks", sent, "shop: Max takes-on C1 blanks_fitted=2", "taken-on.same");
        row("taken on with blanks at both ends", linked + u"Ana disconnects C1 blanks_fitted=1 unit_blanks_fitted=2; Ana sends C1"_s, "shop: Max takes-on C1", "");
        row("taken on with a blank less at the unit's end", linked + u"Ana disconnects C1 blanks_fitted=1 unit_blanks_fitted=2; Ana sends C1"_s, "shop: Max takes-on C1 unit_blanks_fitted=1", "taken-on.same");
        row("taken on in another state", sent, "shop: Max takes-on C1 as_found=worn", "taken-on.same");
        row("taken on as untouched", sent, "shop: Max takes-on C1 comes=untouched tag= as_found= blanks_fitted=", "taken-on.same");
        row("taken on with another mate", sent, "shop: Max takes-on C1 aircraft_half=P2", "taken-on.same");
        row("taken on with less to show", sent, "shop: Max takes-on C1 requirements=", "taken-on.same");
        row("taken on with hardware that did not come off", sent, uR"(shop: Max takes-on C1 hardware_removed=[{"part":"B-1","quantity":2}])"_s, "taken-on.same");
        row("taken on untouched", linked + u"Ana sends C1"_s, "shop: Max takes-on C1", "");
        row("taken on untouched, a tag hung", linked + u"Ana sends C1"_s, "shop: Max takes-on C1 tag_instead=4", "taken-on.tag");
        row("taken on into another zone", sent, "shop: Max takes-on C1 zone=left", "listing.zone");
        row("taken on, the tag's number was hung here", sent + u"shop: Max disconnects S1"_s, "shop: Max takes-on C1", "taken-on.tag");
        row("taken on, a tag of this job hung instead", sent + u"shop: Max disconnects S1"_s, "shop: Max takes-on C1 tag_instead=2", "");
        row("taken on, the tag's number could be hung here", sent + u"shop: Lee issues-tags"_s, "shop: Max takes-on C1", "taken-on.tag");
        row("taken on, a tag of the block hung instead", sent + u"shop: Lee issues-tags"_s, "shop: Max takes-on C1 tag_instead=2", "");
        row("taken on, a tag of no block hung instead", sent + u"shop: Lee issues-tags"_s, "shop: Max takes-on C1 tag_instead=50", "taken-on.tag");
        row("worked on where it was taken on", takenOn, "shop: Max reconnects C1", "");
        row("worked on where it was sent from", takenOn, "Ana reconnects C1", "link.elsewhere");

        row("the sending struck before anybody took it on", sent, "Ana strikes entry=14", "");
        row("the sending struck after", takenOn, "Ana strikes entry=14", "strike.sent");
        row("the sending struck once it was given back", takenOn + u"shop: Max strikes entry=4"_s, "Ana strikes entry=14", "");
        row("its disconnection struck while it is on its way", sent, "Ana strikes entry=13", "strike.sent");
        row("its disconnection struck after it was taken on", takenOn, "Ana strikes entry=13", "strike.sent");
        row("its listing struck while it is on its way", linked + u"Ana sends C1"_s, "Ana strikes entry=3", "strike.sent");
        row("given back before anything was done with it", takenOn, "shop: Max strikes entry=4", "");
        row("given back after work on it", takenOn + u"shop: Max reconnects C1"_s, "shop: Max strikes entry=4", "strike.listing");

        const QString complete = linked + untouchedBut({}) + shopComplete;
        row("closed while the linked job is ready", complete, "Rae closes", "");
        row("closed while the linked job is not", linked + untouchedBut({}), "Rae closes", "closure.nothing-loose");
        row("closed after the linked job", complete + u"shop: Rae closes"_s, "Rae closes", "");
        row("a finding after the linked job was closed", complete + u"shop: Rae closes"_s, "Ben raises F9", "link.closed-together");
        row("a strike after the linked job was closed", complete + u"shop: Rae closes"_s, "Ana strikes entry=13", "link.closed-together");
        row("a finding before", complete, "Ben raises F9", "");

        // A tag goes with its item, and is counted in by the job that issued it.
        const QString tagged = linked + u"Ana issues-tags; Ana disconnects C1; Ana sends C1; shop: Max takes-on C1; "_s;
        row("a block back while its tag hangs in the shop", tagged, "Ana returns-tags", "tags.hanging");
        row("a block back once it was recovered there", tagged + u"shop: Max reconnects C1"_s, "Ana returns-tags", "");
        row("a block back, its tag exchanged", linked + u"Ana issues-tags; Ana disconnects C1; Ana sends C1; shop: Max takes-on C1 tag_instead=7"_s, "Ana returns-tags", "");
        row("a block back, its tag lost there and not missed", tagged + u"shop: Cho replaces-tag C1; shop: Max reconnects C1"_s, "Ana returns-tags counted=20", "tags.counted");
        row("a block back, its tag lost there", tagged + u"shop: Cho replaces-tag C1; shop: Max reconnects C1"_s, "Ana returns-tags counted=19", "");

        // What is in front of it, and what it is in front of, may be in the other job.
        const QString drain = linked + u"Ana disconnects A1; Ana disconnects D2; Ana sends D2; shop: Max takes-on D2; "_s;
        row("covered while it is off in the shop", drain, "Ana reconnects A1", "sequence.inspected-before-cover");
        row("covered once it was inspected there", drain + u"shop: Max reconnects D2; shop: Ben accepts D2"_s, "Ana reconnects A1", "");
        row("covered while it is on its way", linked + u"Ana disconnects A1; Ana disconnects D2; Ana sends D2"_s, "Ana reconnects A1", "sequence.inspected-before-cover");
        const QString panel = linked + u"Ana disconnects A1; Ana disconnects D2; Ana sends A1; shop: Max takes-on A1; "_s;
        row("what covers it was sent, and is closed there", panel, "shop: Max reconnects A1", "sequence.inspected-before-cover");
        row("the same once what is under it was inspected", panel + u"Ana reconnects D2; Cho accepts D2"_s, "shop: Max reconnects A1", "");
        row("undone there while what is in front is on here", linked + u"Ana sends D2; shop: Max takes-on D2"_s, "shop: Max disconnects D2", "sequence.access");
        row("undone there once that is off", linked + u"Ana sends D2; shop: Max takes-on D2; Ana disconnects A1"_s, "shop: Max disconnects D2", "");

        // One set of people.
        const QString joinedThere = linked + u"Ben disconnects C1; Ben sends C1; shop: Max takes-on C1; shop: Dee reconnects C1; "_s;
        row("inspected there by who undid it here", joinedThere, "shop: Ben accepts C1", "independence.own-work");
        row("inspected there by somebody else", joinedThere, "shop: Cho accepts C1", "");
        const QString both = twoEngines + u"right: Cho disconnects K1; right: Cho reconnects K1; Ana disconnects K1; Ana reconnects K1; "_s;
        row("inspected by who worked on its like", both, "Cho accepts K1", "independence.own-work");
        row("inspected by who worked on another place there", twoEngines + u"right: Cho disconnects A1; Ana disconnects K1; Ana reconnects K1"_s, "Cho accepts K1", "");
        row("the same in a job that is not linked", "right: Cho disconnects K1; Ana disconnects K1; Ana reconnects K1", "Cho accepts K1", "");
        row("critical, by who worked on its group there", twoEngines + u"right: Cho disconnects F2; Ana disconnects F1; Ana reconnects F1; Ana torques F1"_s, "Cho accepts F1", "independence.own-group");
        row("confirmed free by who worked on its like", twoEngines + u"right: Dee disconnects K1; Ana disconnects K1"_s, "Dee confirms-free K1", "walkround.second-person");
        row("a finding closed by who worked on its like", twoEngines + u"right: Cho disconnects K1; Ben raises F9 interface=K1"_s, "Cho clears F9", "finding.closed-by-inspector");
        row("the same by somebody else", twoEngines + u"right: Cho disconnects K1; Ben raises F9 interface=K1"_s, "Eva clears F9", "");

        row("tags exchanged by who worked on its like", twoEngines + u"right: Cho disconnects A1; Ana disconnects K1; Ana disconnects A1"_s, "Cho exchanges-tag K1 other=A1", "tag.other");
        row("its list corrected by who worked on its like", twoEngines + u"right: Cho disconnects K1"_s, "Cho relists K1", "relist.by");

        // Gates and tests look at an item where it is.
        const QString gated = linked + uR"(Ana sets H1 statements=seen conditions=[{"what":"interfaces","kinds":["harness\u0020connector"],"stage":"inspected"}] gates=[{"act":"temporary.applied"}]; )"_s;
        row("a gate for what is still in the shop", gated + u"Ana disconnects C1; Ana sends C1; shop: Max takes-on C1"_s, "Ana passes H1", "hold.conditions");
        row("a gate for what was inspected there", gated + u"Ana disconnects C1; Ana sends C1; shop: Max takes-on C1; shop: Max reconnects C1; shop: Cho accepts C1"_s, "Ana passes H1", "");
        row("a test of what is off in the shop", takenOn, "Ben tests R1 covers=C1", "test.covers");
        row("a test of what was restored there", takenOn + u"shop: Max reconnects C1"_s, "Ben tests R1 covers=C1", "");
    }
    void eachRule() { m_table.ask(); }

    /// The sentence says in which job.
    void theSentenceNamesTheOtherJob()
    {
        Story story(twoEngines + u"right: Cho disconnects K1; Ana disconnects K1; Ana reconnects K1; Cho accepts K1"_s);
        QVERIFY2(story.refusals().front().sentence.contains(u"K1 of WO-right (Engine change, right)"), qPrintable(story.refusals().front().sentence));
        Story away(takenOn + u"Ana reconnects C1"_s);
        QVERIFY2(away.refusals().front().sentence.contains(u"It is with WO-shop (Build-up of the incoming engine)."), qPrintable(away.refusals().front().sentence));
    }

    void aLinkIsLooseUntilItIsAnswered()
    {
        Story story(untouchedBut({}) + u"Ana links ledger=shop"_s);
        QCOMPARE(story.looseEnds(), u"loose.link WO-shop"_s);
        QCOMPARE(story.looseEndsOf(u"shop"_s), u"loose.untouched S1"_s);
        story.tell(u"shop: Lee links ledger=here"_s);
        QCOMPARE(story.looseEnds(), u"loose.linked WO-shop"_s);
        QCOMPARE(story.looseEndsOf(u"shop"_s), u"loose.untouched S1"_s);
        story.tell(shopComplete);
        QCOMPARE(story.looseEnds(), QString());
        QCOMPARE(story.looseEndsOf(u"shop"_s), QString());
    }

    /// A job that closed without an answer leaves a link that can only be struck.
    void aLinkThatIsNeverAnsweredIsStruck()
    {
        Story story(untouchedBut({}) + u"Ana links ledger=shop; "_s + shopComplete + u"shop: Rae closes"_s);
        QCOMPARE(story.looseEnds(), u"loose.link WO-shop"_s);
        story.tell(u"Ana strikes entry=22"_s);
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(story.looseEnds(), QString());
    }

    /// All parts close together, also those that are linked with one of two.
    void everyPartNamesEveryOther()
    {
        Story story(linked + untouchedBut({}) + shopComplete + u"shop: Lee links ledger=right; right: Ana links ledger=shop"_s);
        QCOMPARE(story.looseEnds(), u"loose.link WO-shop\nloose.linked WO-shop"_s); // what the shop rests on cannot all be seen
        QCOMPARE(story.looseEndsOf(u"shop"_s), u"loose.linked WO-1\nloose.linked WO-right"_s);
        story.tell(u"Ana links ledger=right; right: Ana links ledger=here"_s);
        QCOMPARE(story.looseEnds(), u"loose.linked WO-right"_s);
    }

    void whatWasSentIsLooseUntilItIsTakenOn()
    {
        Story story(untouchedBut({u"C1"_s}) + sent + shopComplete);
        QCOMPARE(story.looseEnds(), u"loose.sent C1"_s);
        story.tell(u"shop: Max takes-on C1"_s);
        QCOMPARE(story.looseEnds(), u"loose.linked WO-shop"_s);
        QCOMPARE(story.looseEndsOf(u"shop"_s), u"loose.disconnected C1"_s);
        const core::JobSummary here = core::summaryOf(story.job(), story.reg());
        QCOMPARE(here.interfaces, 9); // it counts where it is
        QCOMPARE(core::summaryOf(story.job(u"shop"_s), story.reg()).byStage[static_cast<std::size_t>(core::Stage::Disconnected)], 1);
        story.tell(u"shop: Max reconnects C1; shop: Cho accepts C1"_s);
        QCOMPARE(story.looseEnds(), QString());
        story.tell(u"shop: Rae closes; Rae closes"_s);
        QCOMPARE(story.refusedBy(), QString());
    }

    /// An acceptance from before the jobs were linked, by somebody who had worked on its like.
    void linkingLateBringsOwnWorkToLight()
    {
        Story story(u"right: Cho disconnects K1; Ana disconnects K1; Ana reconnects K1; Cho accepts K1; "_s + untouchedBut({u"K1"_s}) + twoEngines);
        QVERIFY(story.looseEnds().startsWith(u"loose.link-hands K1"_s));
        story.tell(u"Ana disturbs K1; Eva accepts K1"_s);
        QVERIFY(!story.looseEnds().contains(u"loose.link-hands"_s));
    }

    /// A tool turns out to be wrong between two closures: what it measured is measured again, and nothing else is done.
    void aJobThatCameToALooseEndMayClearIt()
    {
        Story story(linked + u"Ana disconnects B1; Ana reconnects B1; Ana measures B1; Cho accepts B1; "_s + untouchedBut({u"B1"_s}) + shopComplete + u"shop: Rae closes"_s);
        QCOMPARE(story.refusedBy(), QString());
        core::Register reg = story.reg();
        const core::Draft doubted{*core::PersonId::parse(u"Root"), story::opening(), u"tool.doubted"_s, u"BM1"_s, {{u"since"_s, u"2026-01-01"_s}, {u"found"_s, u"reads low"_s}}};
        core::fold(reg, story::statementOf(doubted, reg.head.seq + 1), {});
        const core::Draft disturbed = story.drafts(u"Ana disturbs B1"_s).front();
        QCOMPARE(story.ask(disturbed).front().rule, u"link.closed-together"_s);
        QVERIFY(!core::looseEnds(story.job(), reg).empty());
        QVERIFY(core::admit(story.job(), reg, disturbed).empty());
    }

    /// What is struck is folded over again; what the job saw of the others stays.
    void theOthersAreSeenAfterAStrike()
    {
        Story story(twoEngines + u"right: Cho disconnects K1; Ana disconnects K1; Ana reconnects K1; Ana disconnects A1; Ana strikes entry=15"_s);
        QCOMPARE(story.refusedBy(), QString());
        core::JobFold fold = story.fold();
        QCOMPARE(fold.state().others.byLedger.size(), 1U);
        QVERIFY(core::hadAHand(fold.state(), *fold.state().item(*core::InterfaceId::parse(u"K1")), *core::PersonId::parse(u"Cho")));
        // They are no part of what the ledger says.
        core::JobFold alone;
        for (const core::Statement &said : fold.said())
            alone.take(said, core::Digest::of(QByteArray::number(said.seq)));
        QVERIFY(alone.state().others.byLedger.empty());
        QVERIFY(alone.state() == fold.state());
        // And nothing is judged without them.
        QCOMPARE(core::admit(alone.state(), story.reg(), story.drafts(u"Ana photographs K1"_s).front()).front().rule, u"link.seen"_s);
    }

    /// The single-person re-inspection of one's own work, where the hand was in the like item.
    void reinspectionOfItsLikeStands()
    {
        Story story(twoEngines + u"right: Ben disconnects K1; Ana disconnects K1; Ana reconnects K1; Ben repeats K1"_s, {{u"reinspection"_s, u"allowed"_s}});
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(story.stage(u"K1"_s), u"inspected"_s);
    }

    /// Runs last.
    void zEveryRuleWasSeenRefusing() { m_table.everyRuleWasSeen(); }

private:
    RuleTable m_table{"links"_L1};
};

QTEST_GUILESS_MAIN(TestLinks)
#include "tst_links.moc"
