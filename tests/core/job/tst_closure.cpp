// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/job/draft_help.hpp"
#include "core/job/loose_ends.hpp"
#include "core/job/next_to_restore.hpp"
#include "core/job/stage.hpp"
#include "core/job/summary.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::Story;

namespace {

/// Everything on the list of the stories, done by Ana, Ben and Dee and inspected by Cho and Eva.
const QString wholeJob = u"Ana disconnects D1; Ana disconnects C1; Ana disconnects B1; Ana disconnects F1; Ana disconnects F2; Ana disconnects A1;"
                         "Ana disconnects D2; Ana disconnects K1; Ana disconnects M1; Ana disconnects M2;"
                         "Ben reconnects M1; Ben torques M1; Ben reconnects M2; Ben torques M2; Ben reconnects D1; Ben torques D1; Ben safeties D1;"
                         "Ben reconnects C1; Dee reconnects B1; Dee measures B1; Dee reconnects F1; Dee torques F1; Dee reconnects F2; Dee torques F2;"
                         "Dee reconnects D2; Cho accepts D2; Dee reconnects A1; Dee reconnects K1;"
                         "Cho accepts M1; Eva accepts M1; Cho accepts M2; Eva accepts M2; Cho accepts D1; Cho accepts C1; Cho accepts B1;"
                         "Cho accepts F1; Cho accepts F2; Cho accepts A1; Cho accepts K1"_s;

QString stages(const Story &story)
{
    QStringList lines;
    for (const core::InterfaceState &item : story.job().items)
        lines << item.listed.id.text() + u' ' + core::stageName(core::stageOf(item));
    return lines.join(u", ");
}

} // namespace

class TestClosure : public QObject {
    Q_OBJECT

private slots:
    void aWholeJobCloses()
    {
        Story story(wholeJob);
        QCOMPARE(story.refusedSentence(), QString());
        QCOMPARE(story.looseEnds(), QString());
        story.tell(u"Rae closes"_s);
        QCOMPARE(story.refusedBy(), QString());
        QVERIFY(story.job().closed);
        story.tell(u"Ana disconnects D1"_s);
        QCOMPARE(story.refusedBy(), u"job.closed"_s);
        story.tell(u"Rae strikes entry=%1"_s.arg(story.fold().head().seq));
        QCOMPARE(story.refusedBy(), u"job.closed strike.kind"_s);
        QVERIFY(core::summaryOf(story.job(), story.reg()).isClosed);
    }

    /// Closed with something deferred: limited, and it says so. 14 CFR 145 and UK/EU 145.A.50(e) put incomplete work on the release (from memory).
    void aLimitedClosureSaysSo()
    {
        Story story(wholeJob + u"; Ben raises F9; Cho clears F9 disposition=deferred limit=2026-04-01"_s);
        QCOMPARE(story.refusedSentence(), QString());
        story.tell(u"Rae closes"_s);
        QCOMPARE(story.refusedBy(), u"closure.limited"_s);
        story.tell(u"Rae closes limitation=F9_until_1_April"_s);
        QCOMPARE(story.refusedBy(), QString());
        Story whole(wholeJob + u"; Rae closes limitation=nothing"_s);
        QCOMPARE(whole.refusedBy(), u"closure.limited"_s);
    }

    /// What goes on next: what came off last, and only what nothing stands in front of.
    void nextToRestoreIsTheReverseOfRemoval()
    {
        const auto order = [](const QString &text) {
            const Story story(text);
            QStringList lines;
            for (const core::NextToRestore &step : core::nextToRestore(story.job(), story.reg()))
                lines << step.item.text() + (step.inTheWay.empty() ? u""_s : u"!"_s);
            return lines.join(u' ');
        };
        QCOMPARE(order(u"Ana disconnects D1; Ana disconnects C1; Ana disconnects K1"_s), u"K1 C1 D1"_s);
        // A1 covers D2, which goes on and is inspected before it.
        QCOMPARE(order(u"Ana disconnects A1; Ana disconnects D2; Ana disconnects K1"_s), u"K1 D2 A1!"_s);
        QCOMPARE(order(u"Ana disconnects A1; Ana disconnects D2; Ana reconnects D2"_s), u"A1!"_s);
        QCOMPARE(order(u"Ana disconnects A1; Ana disconnects D2; Ana reconnects D2; Cho accepts D2"_s), u"A1"_s);
        // Behind a hold point.
        QCOMPARE(order(uR"(Ana sets join conditions=[{"what":"unit","stage":"positioned"}] gates=[{"act":"interface.reconnected","kinds":["clamp"]}]; Ana disconnects D1; Ana disconnects K1)"_s), u"D1 K1!"_s);
        const Story story(u"Ana disconnects K1"_s);
        QCOMPARE(core::nextToRestore(story.job(), story.reg()).front().technician, core::PersonId::parse(u"Ben"));
    }

    /// What the next shift has to know is counted, not remembered: what is applied, half done, failed, open.
    void handoverListsAllThatIsOpen()
    {
        Story story(u"Ana applies T1; Ana disconnects D1; Ben reconnects D1; Ben torques D1 fastener=1; Ana disconnects K1; Ben finds-attached K1; Ben raises F9"_s);
        QCOMPARE(story.refusedSentence(), QString());
        const QByteArray list = core::json::canonical(core::json::Object{{u"open"_s, core::openAtHandover(story.job())}});
        for (const char *part : {R"("temporary":"T1")", R"("of":2)", R"("torqued":1)", R"("attached":"one bolt behind the duct.")", R"("finding":"F9")"})
            QVERIFY2(list.contains(part), list.constData());
    }

    /// One thing less than the whole job, and the loose end that stands for it.
    void oneThingMissing_data()
    {
        QTest::addColumn<QString>("leftOut");
        QTest::addColumn<QString>("instead");
        QTest::addColumn<QString>("looseEnds");
        QTest::newRow("an inspection") << u"Cho accepts K1"_s << QString() << u"loose.inspection K1"_s;
        QTest::newRow("the second inspection of a mount") << u"Eva accepts M2;"_s << QString() << u"loose.inspection M2"_s;
        QTest::newRow("rejected instead") << u"Cho accepts C1;"_s << u"Cho rejects C1 back_to=disconnected;"_s << u"loose.disconnected C1"_s;
        QTest::newRow("one never disconnected") << u"Ana disconnects K1;"_s << QString() << u"*"_s;
        QTest::newRow("a finding open") << QString() << u";Ben raises F9"_s << u"loose.finding F9"_s;
        QTest::newRow("a handover not accepted") << QString() << u";Ana hands-over"_s << u"loose.handover Lee"_s;
        QTest::newRow("disturbed afterwards") << QString() << u";Ben disturbs B1"_s << u"loose.bonding B1"_s;
        QTest::newRow("disturbed, a twin, which reopens the other") << QString() << u";Ben disturbs F1"_s << u"loose.torque F1\nloose.inspection F2"_s;
        QTest::newRow("an acceptance struck") << QString() << u";Cho strikes entry=51"_s << u"loose.inspection K1"_s;
        QTest::newRow("an interface listed late") << QString() << u";Ana lists X1"_s << u"loose.untouched X1"_s;
        QTest::newRow("found open late") << QString() << u";Cho finds-open K1"_s << u"loose.disconnected K1\nloose.finding F1"_s;
    }
    void oneThingMissing()
    {
        QFETCH(QString, leftOut);
        QFETCH(QString, instead);
        QFETCH(QString, looseEnds);
        QString text = wholeJob;
        if (!leftOut.isEmpty())
            QVERIFY(text.contains(leftOut));
        const bool added = instead.startsWith(u';');
        text = added ? text + instead : leftOut.isEmpty() ? text : text.replace(leftOut, instead);
        Story story(text);
        if (looseEnds == u"*") { // the story itself cannot go on: nothing is reconnected that was never off
            QCOMPARE(story.refusedBy(), u"sequence.reconnected-when-off"_s);
            return;
        }
        QCOMPARE(story.refusedSentence(), QString());
        QCOMPARE(story.looseEnds(), looseEnds);
        story.tell(u"Rae closes"_s);
        QCOMPARE(story.refusedBy(), u"closure.nothing-loose"_s);
    }

    void onlyAReleaserCloses()
    {
        Story story(wholeJob);
        story.tell(u"Cho closes"_s);
        QCOMPARE(story.refusedBy(), u"closure.release-authority"_s);
    }

    void anEmptyListIsNotReleased()
    {
        Story story(u"Ana strikes entry=2; Ana strikes entry=3; Ana strikes entry=4; Eva strikes entry=5; Eva strikes entry=6; Eva strikes entry=7;"
                    "Eva strikes entry=8; Ana strikes entry=10; Ana strikes entry=9; Ana strikes entry=11"_s);
        QCOMPARE(story.refusedSentence(), QString());
        story.tell(u"Rae closes"_s);
        QCOMPARE(story.refusedBy(), u"closure.something-listed"_s);
    }

    void everyLooseEndSaysWhatAndWho()
    {
        const Story story(u"Ana disconnects D1; Ben reconnects D1; Ana disconnects C1; Ana disconnects K1; Ana reconnects K1; Ben raises F9; Ana hands-over"_s);
        for (const core::LooseEnd &end : core::looseEnds(story.job(), story.reg())) {
            QVERIFY(!end.rule.isEmpty() && !end.subject.isEmpty() && !end.sentence.isEmpty() && !end.clearedBy.isEmpty());
            QVERIFY2(!end.sentence.contains(u"%1"), qPrintable(end.sentence));
        }
        QCOMPARE(story.looseEnds(), u"loose.torque D1\nloose.safetying D1\nloose.disconnected C1\nloose.untouched B1\nloose.untouched F1\nloose.untouched F2\n"
                                    "loose.untouched M1\nloose.untouched M2\nloose.untouched A1\nloose.untouched D2\nloose.inspection K1\nloose.finding F9\nloose.handover Lee"_s);
    }

    void stagesAlongTheWay_data()
    {
        QTest::addColumn<QString>("text");
        QTest::addColumn<QString>("id");
        QTest::addColumn<QString>("stage");
        const auto row = [](const char *name, const char *text, const char *id, const char *stage) {
            QTest::newRow(name) << QString::fromLatin1(text) << QString::fromLatin1(id) << QString::fromLatin1(stage);
        };
        row("listed", "", "D1", "connected");
        row("undone", "Ana disconnects D1", "D1", "disconnected");
        row("joined", "Ana disconnects D1; Ana reconnects D1", "D1", "reconnected");
        row("torqued, not safetied", "Ana disconnects D1; Ana reconnects D1; Ana torques D1", "D1", "reconnected");
        row("all shown", "Ana disconnects D1; Ana reconnects D1; Ana torques D1; Ana safeties D1", "D1", "secured");
        row("accepted", "Ana disconnects D1; Ana reconnects D1; Ana torques D1; Ana safeties D1; Cho accepts D1", "D1", "inspected");
        row("accepted by one of two", "Ana disconnects M1; Ana reconnects M1; Ana torques M1; Cho accepts M1", "M1", "secured");
        row("rejected: rework", "Ana disconnects M1; Ana reconnects M1; Ana torques M1; Cho rejects M1", "M1", "reconnected");
        row("rejected after acceptance", "Ana disconnects K1; Ana reconnects K1; Cho accepts K1; Eva rejects K1 back_to=disconnected", "K1", "disconnected");
        row("disturbed after acceptance", "Ana disconnects D1; Ana reconnects D1; Ana torques D1; Ana safeties D1; Cho accepts D1; Ben disturbs D1", "D1", "reconnected");
        row("a half torque started again", "Ana disconnects D1; Ana reconnects D1; Ana torques D1 fastener=1; Ben torques D1 fastener=1", "D1", "reconnected");
        row("work that followed an acceptance, its disturbance struck", "Ana disconnects B1; Ana reconnects B1; Ana measures B1; Ben accepts B1; Ana disturbs B1; Ben measures B1; Ana strikes entry=16", "B1", "secured");
        row("one of its two torque readings struck", "Ana disconnects D1; Ana reconnects D1; Ana torques D1; Ana safeties D1; Ana strikes entry=14", "D1", "reconnected");
    }
    void stagesAlongTheWay()
    {
        QFETCH(QString, text);
        QFETCH(QString, id);
        QFETCH(QString, stage);
        const Story story(text);
        QCOMPARE(story.refusedSentence(), QString());
        QCOMPARE(story.stage(id), stage);
        // On screens the same word with a capital.
        QCOMPARE(core::stageWord(core::stageOf(story.item(id))).toLower(), stage);
    }

    /// What was struck leaves no trace but its line, and whose hands were there; what rested on it falls with it.
    void aStruckEntryLeavesNoTrace()
    {
        const Story struck(u"Ana disconnects D1 tag=7; Ben reconnects D1; Ana strikes entry=12; Ana disconnects C1 tag=9"_s);
        const Story never(u"Ana disconnects C1 tag=9"_s);
        QCOMPARE(stages(struck), stages(never));
        QCOMPARE(struck.item(u"D1"_s).actors, (std::set{*core::PersonId::parse(u"Ana"), *core::PersonId::parse(u"Ben")}));
        QVERIFY(never.item(u"D1"_s).actors.empty());
        QCOMPARE(struck.job().tagAt, never.job().tagAt);
        QCOMPARE(struck.job().lines[11].standing, core::Standing::Struck);
        QCOMPARE(struck.job().lines[11].struckBy, std::optional<qint64>(14));
        QCOMPARE(struck.job().lines[12].standing, core::Standing::Fallen);
        QCOMPARE(struck.job().lines[14].standing, core::Standing::Stands);
    }

    void aSafetyingFallsWithTheTorqueItLocked()
    {
        const Story story(u"Ana disconnects D1; Ana reconnects D1; Ana torques D1; Ana safeties D1; Cho accepts D1; Ana strikes entry=15"_s);
        QCOMPARE(story.looseEnds().section(u'\n', 0, 1), u"loose.torque D1\nloose.safetying D1"_s);
        QVERIFY(story.item(u"D1"_s).acceptances.empty());
    }

    void aJobFoldedInOneGoIsTheSame()
    {
        const Story story(wholeJob);
        core::JobFold again;
        for (const core::Statement &said : story.fold().said())
            again.take(said, core::Digest::of(QByteArray::number(said.seq)));
        QCOMPARE(again.state(), story.job());
        QCOMPARE(again.head(), story.fold().head());
    }

    void handoverListMovesWithTheJob()
    {
        Story story(u"Ana disconnects D1; Ben reconnects D1"_s);
        core::Draft stale = story.drafts(u"Ana hands-over"_s).front();
        story.tell(u"Ana disconnects C1"_s);
        stale.at = *story.job().lastAt;
        QCOMPARE(story.ask(stale).front().rule, u"handover.list"_s);
        story.tell(u"Ana hands-over; Lee takes-shift"_s);
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(story.job().lead, core::PersonId::parse(u"Lee"));
        QVERIFY(story.job().crew.contains(*core::PersonId::parse(u"Max")));
    }

    void nextNumbers()
    {
        Story story(u"Ana disconnects D1 tag=41; Ana disconnects C1 tag=R-7"_s);
        QCOMPARE(core::nextTag(story.job()), u"42"_s);
        story.tell(u"Ana disconnects K1 tag=9223372036854775807"_s); // a serial number: counting goes on from 41
        QCOMPARE(core::nextTag(story.job()), u"42"_s);
        story.tell(u"Ana disconnects A1 tag=1000000000000000; Ana disconnects B1 tag=1000000000000001"_s);
        QCOMPARE(core::nextTag(story.job()), u"1000000000000002"_s);
        QCOMPARE(core::nextTags(story.job(), 0).size(), 0U);
        const Story blocks(u"Ana issues-tags first=101 last=104; Ana disconnects D1 tag=102"_s);
        QCOMPARE(blocks.refusedSentence(), QString());
        QCOMPARE(core::nextTags(blocks.job(), 2), (std::vector<QString>{u"101"_s, u"103"_s}));
        QCOMPARE(core::nextTags(blocks.job(), 3), (std::vector<QString>{u"101"_s, u"103"_s, u"104"_s}));
        QCOMPARE(core::nextTags(blocks.job(), 5), (std::vector<QString>{u"101"_s, u"103"_s, u"104"_s, u"105"_s, u"106"_s}));
        QCOMPARE(core::nextFinding(story.job()), u"F1"_s);
        story.tell(u"Ben raises F1; Ben raises F3"_s);
        QCOMPARE(core::nextFinding(story.job()), u"F4"_s);
    }

    void summaryCounts()
    {
        const Story story(u"Ana disconnects D1; Ana disconnects C1; Ana reconnects C1"_s);
        const core::JobSummary summary = core::summaryOf(story.job(), story.reg());
        QCOMPARE(summary.interfaces, 10);
        QCOMPARE(summary.byStage, (std::array<qint64, 5>{8, 1, 0, 1, 0}));
        QCOMPARE(summary.looseEnds, 10);
        QCOMPARE(summary.workOrder, u"WO-1"_s);
        QCOMPARE(summary.lastAtMilliseconds, story.job().lastAt->milliseconds());
        QCOMPARE(core::summaryOf(core::JobState(), story.reg()).lastAtMilliseconds, 0);
    }
};

QTEST_GUILESS_MAIN(TestClosure)
#include "tst_closure.moc"
