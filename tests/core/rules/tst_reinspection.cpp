// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "tests/support/rule_table.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::RuleTable;
using story::Story;

/// The inspection of one's own work where nobody else is there. AMC4 145.A.48(b), paragraph (d): by the same person, only where it was not to be
/// foreseen, and not unforeseen if nobody was rostered; who and why is recorded before release. 14 CFR 135.429(d) knows a like exception.
/// That one more authority allows it, that there is a pause, and that another inspector within a day counts as there: common practice.
class TestReinspection : public QObject {
    Q_OBJECT

private slots:
    void eachRule_data()
    {
        RuleTable::columns();
        const auto row = &RuleTable::row;

        const QString done = u"Ana disconnects K1; Ben reconnects K1"_s;
        row("nobody else is there", done, "Ben repeats K1", "");
        row("the ordinary way", done, "Ben accepts K1", "independence.own-work");
        row("without a cause", done, "Ben repeats K1 cause=", "form.missing");
        row("without who allowed it", done, "Ben repeats K1 approver=", "form.missing");
        row("allowed by the inspector alone", done, "Ben repeats K1 approver=Ben", "reinspection.approver");
        row("allowed by the lead, who may not overrule", done, "Ben repeats K1 approver=Ana", "reinspection.approver");
        row("by somebody who may not inspect", done, "Ana repeats K1", "inspection.authorised reinspection.nobody-else");
        row("by an inspector who had no hand in it", u"Ana disconnects K1; Ana reconnects K1"_s, "Ben repeats K1", "reinspection.own-work");
        row("another inspector signed an hour ago", u"Cho photographs K1; "_s + done, "Ben repeats K1", "reinspection.nobody-else");
        row("another inspector signed a day ago to the minute", u"Cho photographs K1 at=2026-03-02T06:01:00.000Z; "_s + done, "Ben repeats K1 at=2026-03-03T06:01:00.000Z", "reinspection.nobody-else");
        row("another inspector signed longer ago than a day", u"Cho photographs K1 at=2026-03-02T06:01:00.000Z; "_s + done, "Ben repeats K1 at=2026-03-03T06:01:00.001Z", "");
        row("an inspector of other kinds signed", u"Tim photographs K1; "_s + done, "Ben repeats K1", "");
        row("before the pause is over", u"Ana disconnects K1; Ben reconnects K1 at=2026-03-02T07:00:00.000Z"_s, "Ben repeats K1 at=2026-03-02T07:00:59.999Z", "reinspection.pause");
        row("when it is over", u"Ana disconnects K1; Ben reconnects K1 at=2026-03-02T07:00:00.000Z"_s, "Ben repeats K1 at=2026-03-02T07:01:00.000Z", "");
        row("what is not secured", u"Ana disconnects D1; Ben reconnects D1"_s, "Ben repeats D1", "inspection.secured");
        row("what is held by slave hardware", done + u"; Ben states K1 condition=slave_hardware"_s, "Ben repeats K1", "condition.settled");
        row("twice", done + u"; Ben repeats K1"_s, "Ben repeats K1", "inspection.once independence.second-person");
        row("struck by the lead, as any inspector's word", done + u"; Ben repeats K1"_s, "Ana strikes entry=14", "strike.by");
    }
    void eachRule() { m_table.ask({{u"reinspection"_s, u"allowed"_s}, {u"reinspection_pause"_s, 1}}); }

    /// Off by default.
    void aJobAllowsIt()
    {
        Story story(u"Ana disconnects K1; Ben reconnects K1"_s);
        m_table.tell(story, u"Ben repeats K1"_s, u"reinspection.allowed"_s);
        Story refused(u"Ana disconnects K1; Ben reconnects K1; Ben repeats K1"_s, {{u"reinspection"_s, u"refused"_s}});
        QCOMPARE(refused.refusedBy(), u"reinspection.allowed"_s);
    }

    /// The crew that a handover brings counts as there.
    void theIncomingCrewIsThere()
    {
        Story story(u"Ana disconnects K1; Ben reconnects K1; Ana hands-over crew=Lee,Cho; Lee takes-shift; Ben repeats K1"_s, {{u"reinspection"_s, u"allowed"_s}});
        QCOMPARE(story.refusedBy(), u"reinspection.nobody-else"_s);
    }

    /// It counts as an acceptance, is told from one, and goes with it.
    void itIsMarked()
    {
        Story story(u"Ana disconnects K1; Ben reconnects K1; Ben repeats K1 at=2026-03-02T07:00:00.000Z"_s, {{u"reinspection"_s, u"allowed"_s}});
        QCOMPARE(story.stage(u"K1"_s), u"inspected"_s);
        const core::InterfaceState &item = story.item(u"K1"_s);
        QCOMPARE(item.reinspections.size(), std::size_t(1));
        QCOMPARE(core::reinspectionBehind(item, item.acceptances.front())->approver.text(), u"Ove"_s);
        story.tell(u"Ana disturbs K1"_s);
        QVERIFY(story.item(u"K1"_s).reinspections.empty());
        QCOMPARE(story.stage(u"K1"_s), u"secured"_s);
    }

    /// Runs last.
    void zEveryRuleWasSeenRefusing() { m_table.everyRuleWasSeen(); }

private:
    RuleTable m_table{"reinspection"_L1};
};

QTEST_GUILESS_MAIN(TestReinspection)
#include "tst_reinspection.moc"
