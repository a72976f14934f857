// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/job/draft_help.hpp"
#include "tests/support/rule_table.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::RuleTable;
using story::Story;

/// Tags that are counted out to the job and in again. Common practice.
class TestTags : public QObject {
    Q_OBJECT

private slots:
    void eachRule_data()
    {
        RuleTable::columns();
        const auto row = &RuleTable::row;

        row("a block", "", "Ana issues-tags first=1 last=20", "");
        row("a block, not by the lead", "", "Ben issues-tags first=1 last=20", "crew.lead");
        row("a block of one", "", "Ana issues-tags first=7 last=7", "");
        row("a block from nought", "", "Ana issues-tags first=0 last=20", "tags.block");
        row("a block that runs backwards", "", "Ana issues-tags first=7 last=6", "tags.block");
        row("a block of a thousand", "", "Ana issues-tags first=1 last=1000", "");
        row("a block of a thousand and one", "", "Ana issues-tags first=1 last=1001", "tags.block");
        row("the block behind it", "Ana issues-tags first=1 last=20", "Ana issues-tags first=21 last=40", "");
        row("one that shares a number", "Ana issues-tags first=1 last=20", "Ana issues-tags first=20 last=40", "tags.block");
        row("one inside", "Ana issues-tags first=1 last=20", "Ana issues-tags first=5 last=6", "tags.block");
        row("one around", "Ana issues-tags first=5 last=6", "Ana issues-tags first=1 last=20", "tags.block");
        row("one that was returned, again", "Ana issues-tags first=1 last=20; Ana returns-tags", "Ana issues-tags first=1 last=20", "tags.block");
        row("one with a number that hangs already", "Ana disconnects K1 tag=7", "Ana issues-tags first=1 last=20", "tags.block");
        row("one beside a number that hangs already", "Ana disconnects K1 tag=7", "Ana issues-tags first=8 last=20", "");

        row("no block, any tag", "", "Ana disconnects K1 tag=blue_7", "");
        row("a tag of the block", "Ana issues-tags", "Ana disconnects K1 tag=20", "");
        row("a tag of no block", "Ana issues-tags", "Ana disconnects K1 tag=21", "tags.from-block");
        row("a tag without a number", "Ana issues-tags", "Ana disconnects K1 tag=blue_7", "tags.from-block");
        row("a number with a nought in front", "Ana issues-tags", "Ana disconnects K1 tag=07", "tags.from-block");
        row("found open, with a tag of the block", "Ana issues-tags", "Eva finds-open K1 tag=7", "");
        row("found open, with another", "Ana issues-tags", "Eva finds-open K1 tag=99", "tags.from-block");
        row("a tag of a block that was returned", "Ana issues-tags; Ana issues-tags first=21 last=40; Ana returns-tags first=1 last=20 counted=20", "Ana disconnects K1 tag=7", "tags.from-block");
        row("a tag of the block that is out", "Ana issues-tags; Ana issues-tags first=21 last=40; Ana returns-tags first=1 last=20 counted=20", "Ana disconnects K1 tag=27", "");

        row("returned", "Ana issues-tags", "Ana returns-tags", "");
        row("returned, not by the lead", "Ana issues-tags", "Ben returns-tags", "crew.lead");
        row("returned, though never issued", "", "Ana returns-tags", "tags.out");
        row("returned in part", "Ana issues-tags", "Ana returns-tags last=10 counted=10", "tags.out");
        row("returned twice", "Ana issues-tags; Ana returns-tags", "Ana returns-tags", "tags.out");
        row("returned while one hangs", "Ana issues-tags; Ana disconnects K1", "Ana returns-tags", "tags.hanging");
        row("returned once it was recovered", "Ana issues-tags; Ana disconnects K1; Ana reconnects K1", "Ana returns-tags", "");
        row("one too few", "Ana issues-tags", "Ana returns-tags counted=19", "tags.counted");
        row("one too many", "Ana issues-tags", "Ana returns-tags counted=21", "tags.counted");
        const QByteArray lost = "Ana issues-tags; Ana disconnects K1 tag=7; Cho replaces-tag K1 tag=8; Ana reconnects K1";
        row("one too few, which was lost", lost, "Ana returns-tags counted=19", "");
        row("all of it, though one was lost", lost, "Ana returns-tags counted=20", "tags.counted");

        row("a lost tag replaced", "Ana disconnects K1 tag=7", "Cho replaces-tag K1 tag=8", "");
        row("by a technician", "Ana disconnects K1 tag=7", "Dee replaces-tag K1 tag=8", "inspection.authorised");
        row("by an inspector who had a hand in it", "Ana disconnects K1 tag=7 helpers=Ben", "Ben replaces-tag K1 tag=8", "independence.own-work");
        row("by an inspector of the crew who had none", "Ana disconnects K1 tag=7", "Ben replaces-tag K1 tag=8", "");
        row("by the same number", "Ana disconnects K1 tag=7", "Cho replaces-tag K1 tag=7", "balance.tag-unique");
        row("by one that hangs elsewhere", "Ana disconnects K1 tag=7; Ana disconnects C1 tag=8", "Cho replaces-tag K1 tag=8", "balance.tag-unique");
        row("on an interface that is on", "", "Cho replaces-tag K1 tag=8", "tag.hung");
        row("on one that is joined again", "Ana disconnects K1 tag=7; Ana reconnects K1", "Cho replaces-tag K1 tag=8", "tag.hung");
        row("on none of the list", "", "Cho replaces-tag Z9 tag=8", "sequence.listed");
        row("by one of no block", "Ana issues-tags; Ana disconnects K1", "Cho replaces-tag K1 tag=99", "tags.from-block");
        row("the new tag recovered", "Ana disconnects K1 tag=7; Cho replaces-tag K1 tag=8", "Ana reconnects K1", "");
        row("the old tag recovered", "Ana disconnects K1 tag=7; Cho replaces-tag K1 tag=8", "Ana reconnects K1 tag_recovered=7", "balance.tag-recovered");
        row("the old number used again", "Ana disconnects K1 tag=7; Cho replaces-tag K1 tag=8", "Ana disconnects C1 tag=7", "balance.tag-unique");

        const char *two = "Ana disconnects K1 tag=7; Ana disconnects C1 tag=8";
        row("two tags exchanged", two, "Cho exchanges-tag K1 other=C1", "");
        row("a tag in full width, of a number that hangs", u"Ana disconnects K1 tag=1"_s, u"Ana disconnects C1 tag=１"_s, "balance.tag-unique");
        row("a tag with what nobody sees", u"Ana disconnects K1 tag=1"_s, u"Ana disconnects C1 tag=1\u00a0x"_s, "balance.tag-unique");
        row("exchanged by a technician", two, "Dee exchanges-tag K1 other=C1", "tag.other inspection.authorised");
        row("exchanged by an inspector who helped at the one", "Ana disconnects K1 tag=7 helpers=Ben; Ana disconnects C1 tag=8", "Ben exchanges-tag K1 other=C1", "independence.own-work");
        row("exchanged by an inspector who helped at the other", "Ana disconnects K1 tag=7; Ana disconnects C1 tag=8 helpers=Ben", "Ben exchanges-tag K1 other=C1", "tag.other");
        row("exchanged by an inspector of the one alone", u"Ana disconnects D1 tag=7; Ana disconnects C1 tag=8"_s, "Tim exchanges-tag D1 other=C1", "tag.other");
        row("exchanged while one was found still attached", two + u"; Eva finds-attached C1"_s, "Cho exchanges-tag K1 other=C1", "tag.other");
        row("exchanged with itself", two, "Cho exchanges-tag K1 other=K1", "tag.other");
        row("exchanged with what is on", "Ana disconnects K1 tag=7", "Cho exchanges-tag K1 other=C1", "tag.other");
        row("exchanged with what is on no list", two, "Cho exchanges-tag K1 other=Z9", "tag.other");
        row("exchanged from what is on", "Ana disconnects C1 tag=8", "Cho exchanges-tag K1 other=C1", "tag.hung");
        const char *crosswise = "Ana disconnects K1 tag=7; Ana disconnects C1 tag=8; Cho exchanges-tag K1 other=C1";
        row("the tag that hangs there now recovered", crosswise, "Ana reconnects K1 tag_recovered=8", "");
        row("the tag that hung there recovered", crosswise, "Ana reconnects K1 tag_recovered=7", "balance.tag-recovered");

        row("an issue by mistake, struck", "Ana issues-tags", "Ana strikes entry=12", "");
        row("an issue of which a tag hangs, struck", "Ana issues-tags; Ana disconnects K1", "Ana strikes entry=12", "strike.tags");
        row("an issue of which a tag hung, struck", "Ana issues-tags; Ana disconnects K1; Ana reconnects K1", "Ana strikes entry=12", "strike.tags");
        row("an issue that was returned, struck", "Ana issues-tags; Ana returns-tags", "Ana strikes entry=12", "strike.tags");
        row("a return by mistake, struck", "Ana issues-tags; Ana returns-tags", "Ana strikes entry=13", "");
    }
    void eachRule() { m_table.ask(); }

    /// A block that is out is a loose end, and the next tag comes from it.
    void aBlockThatIsOutIsLoose()
    {
        Story story(u"Ana disconnects K1 tag=3; Ana issues-tags first=10 last=12"_s);
        QVERIFY2(story.looseEnds().contains(u"loose.tags 10 – 12"_s), qPrintable(story.looseEnds()));
        story.tell(u"Ana disconnects C1; Ana disconnects B1"_s);
        QCOMPARE(story.item(u"C1"_s).removal->tag, u"10"_s);
        QCOMPARE(story.item(u"B1"_s).removal->tag, u"11"_s);
        story.tell(u"Ana reconnects C1; Ana reconnects B1; Ana returns-tags"_s);
        QVERIFY2(story.refusedBy().isEmpty(), qPrintable(story.refusedBy()));
        QVERIFY(!story.looseEnds().contains(u"loose.tags"_s));
    }

    /// What hung crosswise was confirmed under the wrong name: both are walked round again.
    void exchangedTagsAreWalkedRoundAgain()
    {
        Story story(u"Ana disconnects K1 tag=7; Ana disconnects C1 tag=8; Ben confirms-free K1; Ben confirms-free C1; Cho exchanges-tag K1 other=C1"_s);
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(story.item(u"K1"_s).removal->tag, u"8"_s);
        QCOMPARE(story.item(u"C1"_s).removal->tag, u"7"_s);
        QVERIFY(story.job().tagAt.constFind(u"7"_s)->text() == u"C1");
        QVERIFY(!story.item(u"K1"_s).walkedRound && !story.item(u"C1"_s).walkedRound);
        story.tell(u"Cho strikes entry=16"_s);
        QCOMPARE(story.item(u"K1"_s).removal->tag, u"7"_s);
    }

    /// A replacement that is struck brings the old tag back: it had not been lost.
    void aStruckReplacementWasNone()
    {
        Story story(u"Ana disconnects K1 tag=7; Cho replaces-tag K1 tag=8"_s);
        QCOMPARE(story.item(u"K1"_s).removal->tag, u"8"_s);
        QCOMPARE(story.job().tags.lost.size(), std::size_t(1));
        story.tell(u"Cho strikes entry=13"_s);
        QCOMPARE(story.item(u"K1"_s).removal->tag, u"7"_s);
        QVERIFY(story.job().tags.lost.empty());
    }

    /// As many as asked for, each once, the lowest that were never hung.
    void theTagsThatComeNext()
    {
        const Story story(u"Ana disconnects K1 tag=2"_s);
        QCOMPARE(core::nextTags(story.job(), 3), (std::vector{u"3"_s, u"4"_s, u"5"_s}));
        QCOMPARE(core::nextTags(story.job(), 1).size(), std::size_t(1));
        const Story fromBlock(u"Ana issues-tags first=7 last=9; Ana disconnects K1 tag=7"_s);
        QCOMPARE(core::nextTags(fromBlock.job(), 2), (std::vector{u"8"_s, u"9"_s}));
    }

    /// Runs last.
    void zEveryRuleWasSeenRefusing() { m_table.everyRuleWasSeen(); }

private:
    RuleTable m_table{"tags"_L1};
};

QTEST_GUILESS_MAIN(TestTags)
#include "tst_tags.moc"
