// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/acts/references.hpp"
#include "core/holds/condition.hpp"
#include "tests/support/rule_table.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::RuleTable;
using story::Story;

/// Tools that went out to the job, are counted, and come back. Common practice.
class TestTools : public QObject {
    Q_OBJECT

private slots:
    void eachRule_data()
    {
        RuleTable::columns();
        const auto row = &RuleTable::row;

        row("a hand tool", "", "Ben issues R-14", "");
        row("a hand tool by an inspector", "", "Eva issues R-14", "");
        row("a hand tool by a stranger", "", "Out issues R-14", "crew.takes-part");
        row("a hand tool without a name", "", "Ben issues R-14 name=", "tool.marked");
        row("a hand tool of two pieces", "", "Ben issues R-14 pieces=2", "tool.marked");
        row("a measuring tool", "", "Ben issues TW1 sort=measuring_tool", "");
        row("a measuring tool that the register has not", "", "Ben issues TW9 sort=measuring_tool", "tool.marked");
        row("a measuring tool that was withdrawn", "", "Ben issues TW3 sort=measuring_tool", "tool.marked");
        row("a measuring tool as a hand tool", "", "Ben issues TW1", "tool.marked");
        row("a kit", "", "Ben issues KIT-2 sort=kit name=sockets pieces=12", "");
        row("a kit without its number", "", "Ben issues KIT-2 sort=kit name=sockets", "tool.marked");
        row("a kit of nothing", "", "Ben issues KIT-2 sort=kit name=sockets pieces=0", "tool.marked");
        row("to somebody who is nobody", "", "Ben issues R-14 holder=Zed", "person.known");
        row("one that is out", "Ben issues R-14", "Dee issues R-14", "tool.in");
        row("one that came back", "Ben issues R-14; Ben returns R-14", "Dee issues R-14", "");
        row("one that is missing", "Ben issues R-14; Ben misses R-14", "Dee issues R-14", "tool.in");

        row("returned", "Ben issues R-14", "Dee returns R-14", "");
        row("returned, though never issued", "", "Dee returns R-14", "tool.out");
        row("returned twice", "Ben issues R-14; Ben returns R-14", "Dee returns R-14", "tool.out");
        row("found and returned", "Ben issues R-14; Ben misses R-14", "Dee returns R-14", "");
        const QByteArray kit = "Ben issues KIT-2 sort=kit name=sockets pieces=12";
        row("a kit returned whole", kit, "Ben returns KIT-2 pieces=12", "");
        row("a kit returned with a piece too few", kit, "Ben returns KIT-2 pieces=11", "tool.kit");
        row("a kit returned with a piece too many", kit, "Ben returns KIT-2 pieces=13", "tool.kit");
        row("a kit returned and not counted", kit, "Ben returns KIT-2", "tool.kit");
        row("a kit with a piece too few, and a finding on it", kit + "; Ben misses KIT-2", "Ben returns KIT-2 pieces=11", "");

        const QByteArray two = "Ben issues R-14; Ben issues TW1 sort=measuring_tool";
        row("counted", two, "Ben counts tools=R-14,TW1", "");
        row("counted in another order", two, "Ben counts tools=TW1,R-14", "");
        row("one not counted", two, "Ben counts tools=TW1", "tool.count");
        row("one too much", two, "Ben counts tools=R-14,TW1,R-15", "tool.count");
        row("one counted twice", two, "Ben counts tools=R-14,TW1,TW1", "tool.count");
        row("one counted for another", two, "Ben counts tools=R-15,TW1", "tool.count");
        row("one counted that came back", two + "; Ben returns R-14", "Ben counts tools=R-14,TW1", "tool.count");
        row("without one that is missing", two + "; Ben misses R-14", "Ben counts tools=TW1", "");
        row("with one that is missing", two + "; Ben misses R-14", "Ben counts tools=R-14,TW1", "tool.count");
        row("none out, none counted", two + "; Ben returns R-14; Ben returns TW1", "Ben counts", "");

        row("missing", "Ben issues R-14", "Ben misses R-14", "");
        row("missing, though never issued", "", "Ben misses R-14", "tool.out");
        row("missing, though it came back", "Ben issues R-14; Ben returns R-14", "Ben misses R-14", "tool.out");
        row("missing twice", "Ben issues R-14; Ben misses R-14", "Dee misses R-14", "tool.missed");
        row("missing, under a finding that is taken", "Ben issues R-14; Ben raises F1", "Ben misses R-14 finding=F1", "finding.number");
        row("missing, where nobody looked", "Ben issues R-14", "Ben misses R-14 description=", "form.missing");

        row("an issue by mistake, struck", "Ben issues R-14", "Ben strikes entry=12", "");
        row("an issue that was counted, struck", "Ben issues R-14; Ben counts", "Ben strikes entry=12", "strike.tool");
        row("an issue that came back, struck", "Ben issues R-14; Ben returns R-14", "Ben strikes entry=12", "strike.tool");
        row("an issue that is missing, struck", "Ben issues R-14; Ben misses R-14", "Ana strikes entry=12", "strike.tool");
        row("an issue after the count, struck", "Ben issues R-14; Ben counts; Ben issues R-15", "Ben strikes entry=14", "");
    }
    void eachRule() { m_table.ask(); }

    /// A count that does not come out says what is missing and what is too much.
    void theCountSaysWhich()
    {
        Story story(u"Ben issues R-14; Ben issues R-15; Ben counts tools=R-15,R-16"_s);
        QCOMPARE(story.refusedBy(), u"tool.count"_s);
        QCOMPARE(story.refusals().front().sentence, u"Out and not counted: R-14. Counted and not out, or counted twice: R-16. Look again; then say which is missing, or issue what nobody issued."_s);
    }

    /// What is out is loose; what is missing is a finding, until that is disposed of under signature.
    void whatIsOutIsLoose()
    {
        Story story(u"Ben issues R-14; Ben issues R-15"_s);
        QVERIFY(story.looseEnds().contains(u"loose.tool R-14\nloose.tool R-15"_s));
        story.tell(u"Ben returns R-15; Ben misses R-14"_s);
        QVERIFY(!story.looseEnds().contains(u"loose.tool"_s));
        QVERIFY2(story.looseEnds().contains(u"loose.finding F1"_s), qPrintable(story.looseEnds()));
        QCOMPARE(story.job().finding(*core::FindingId::parse(u"F1"))->description, u"R-14: last seen on the left platform"_s);
        story.tell(u"Ben returns R-14"_s);
        QVERIFY(story.looseEnds().contains(u"loose.finding F1"_s)); // somebody has to sign for what became of it
        story.tell(u"Eva clears F1"_s);
        QVERIFY(!story.looseEnds().contains(u"loose.finding"_s));
        story.tell(u"Ben misses R-15"_s);
        QCOMPARE(story.refusedBy(), u"tool.out"_s);
    }

    /// A loss that is struck leaves the tool out, and its finding falls with it.
    void aStruckLossWasNone()
    {
        Story story(u"Ben issues R-14; Ben misses R-14; Ove strikes entry=13"_s);
        QVERIFY(story.job().findings.empty());
        QVERIFY(story.looseEnds().contains(u"loose.tool R-14"_s));
    }

    /// A count that rested on a return that never was falls, and is made again.
    void aCountFallsWithWhatItRestedOn()
    {
        Story story(u"Ben issues R-14; Ben issues R-15; Ben returns R-15; Ben counts"_s);
        QCOMPARE(story.job().tools.counted->seq, 15);
        story.tell(u"Ben strikes entry=14"_s);
        QVERIFY2(story.refusedBy().isEmpty(), qPrintable(story.refusedBy()));
        QVERIFY(!story.job().tools.counted);
        QCOMPARE(story.job().lines[14].standing, core::Standing::Fallen);
    }

    /// `tools_counted`: a count later than the last issue, return or loss; it rests on that count.
    void theConditionOfAHoldPoint()
    {
        const core::HoldCondition condition{.what = u"tools_counted"_s, .which = {}, .stage = {}, .names = {}, .least = 1, .until = {}};
        QVERIFY(!core::faultOf(condition));
        core::HoldCondition named = condition;
        named.names = {u"R-14"_s};
        QVERIFY(core::faultOf(named));
        Story story;
        const auto found = [&] { return core::findCondition(story.job(), condition); };
        QVERIFY(found().isMet()); // no tool was ever issued
        QCOMPARE(found().restsOn, 0);
        for (const char *change : {"Ben issues R-14", "Ben issues R-15", "Ben returns R-15", "Ben misses R-14"}) {
            story.tell(QString::fromLatin1(change));
            QVERIFY2(!found().isMet(), change);
            story.tell(u"Dee counts"_s);
            QVERIFY2(story.refusedBy().isEmpty(), qPrintable(story.refusedBy()));
            QVERIFY2(found().isMet(), change);
            QCOMPARE(found().restsOn, story.job().tools.counted->seq);
        }
    }

    /// A hold point that asks for it is void once a tool went out behind its back.
    void aHoldPointRestsOnTheCount()
    {
        Story story(u"Ben issues R-14; Ana sets H1 conditions=[{\"what\":\"tools_counted\"}] gates=[{\"act\":\"unit.removed\"}]"_s);
        story.tell(u"Ana passes H1"_s);
        QCOMPARE(story.refusedBy(), u"hold.conditions"_s);
        story.tell(u"Ben counts; Ana passes H1"_s);
        QVERIFY2(story.refusedBy().isEmpty(), qPrintable(story.refusedBy()));
        QVERIFY(!story.looseEnds().contains(u"loose.hold"_s));
        story.tell(u"Ben issues R-15"_s);
        QVERIFY(story.looseEnds().contains(u"loose.hold H1"_s));
        story.tell(u"Ben counts"_s); // another count than the one that was looked at
        QVERIFY(story.looseEnds().contains(u"loose.hold H1"_s));
        story.tell(u"Ana passes H1"_s);
        QVERIFY(!story.looseEnds().contains(u"loose.hold"_s));
    }

    /// The jobs that a tool was in are found by the tool: as it went out, was counted, came back.
    void toolsAreFound()
    {
        Story story(u"Ben issues R-14"_s);
        for (const char *sentence : {"Ben issues R-14", "Ben counts tools=R-14", "Ben returns R-14", "Ben misses R-14"}) {
            const core::Draft draft = story.drafts(QString::fromLatin1(sentence)).front();
            const core::Statement said{*core::LedgerId::parse(u"L"), 9, draft.at, draft.author, {}, {}, draft.kind, draft.subject, draft.body, std::nullopt, {}};
            const auto references = core::referencesOf(said);
            QVERIFY2(std::find(references.begin(), references.end(), core::Reference{u"tool"_s, u"R-14"_s}) != references.end(), sentence);
        }
    }

    /// Runs last.
    void zEveryRuleWasSeenRefusing() { m_table.everyRuleWasSeen(); }

private:
    RuleTable m_table{"tools"_L1};
};

QTEST_GUILESS_MAIN(TestTools)
#include "tst_tools.moc"
