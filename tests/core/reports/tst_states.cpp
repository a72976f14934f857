// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include <algorithm>

#include "core/job/state.hpp"
#include "core/reports/release_counts.hpp"
#include "core/reports/report.hpp"
#include "core/reports/sample.hpp"
#include "resources/resources.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::Story;

/// How the record tells conditions, what was let alone, an inspection that was not independent, and what a disturbance took with it.
class TestStates : public QObject {
    Q_OBJECT

    static core::JobRecord recordOf(const Story &story)
    {
        std::vector<core::Entry> entries;
        for (const core::Statement &said : story.fold().said())
            entries.push_back({said, {}, core::Digest::of(QByteArray::number(said.seq)), {}});
        return core::JobRecord(std::move(entries), {}, *resources::loadKinds());
    }
    /// Each row's named cells, joined.
    static QStringList cells(const core::JobRecord &record, QStringView report, const QStringList &columns)
    {
        const core::Report &found = *core::findReport(report);
        QStringList lines;
        for (const core::ReportRow &row : found.rows(record)) {
            QStringList parts;
            for (std::size_t i = 0; i < found.columns.size(); ++i) {
                if (columns.contains(found.columns[i].name))
                    parts << row.cells[i];
            }
            lines << parts.join(u" | "_s);
        }
        return lines;
    }

private slots:
    void conditionsAndHowTheyEnded()
    {
        const Story story(u"Ana disconnects K1; Ben states K1 condition=positioned; Ben reconnects K1; Ben states K1 condition=slave_hardware; Dee settles K1 condition=slave_hardware; "
                          "Ben states B1 condition=damaged reason=lug_bent; Ben states C1 condition=cannot_verify; Ben strikes entry=18"_s);
        QCOMPARE(story.refusedBy(), QString());
        const QStringList rows = cells(recordOf(story), u"conditions", {u"interface"_s, u"condition"_s, u"end"_s});
        QCOMPARE(rows.size(), 4);
        // In the order of the list.
        QVERIFY2(rows.at(0).startsWith(u"C1 ") && rows.at(0).contains(u"Struck by entry 19"), qPrintable(rows.at(0)));
        QVERIFY2(rows.at(1).startsWith(u"B1 ") && rows.at(1).endsWith(u"Damaged: lug bent | STANDS"), qPrintable(rows.at(1)));
        QVERIFY2(rows.at(2).endsWith(u"Positioned: parts not delivered | over with the work"), qPrintable(rows.at(2)));
        QVERIFY2(rows.at(3).contains(u"to come out: two bolts of the old mount") && rows.at(3).contains(u"taken out and counted (Dee"), qPrintable(rows.at(3)));
    }

    void whatWasLetAloneOrOnNoList()
    {
        Story story(u"Ben finds-undisturbed K1; Ben finds-inapplicable M1; Ben finds-inapplicable B1; Ben logs X1"_s);
        QCOMPARE(story.refusedBy(), QString());
        const QStringList rows = cells(recordOf(story), u"off_the_list", {u"interface"_s, u"what"_s, u"words"_s, u"signed"_s});
        QCOMPARE(rows.size(), 4);
        QVERIFY2(rows.filter(u"M1 mount"_s).front().contains(u"not applicable | not fitted to this unit") && rows.filter(u"M1 mount"_s).front().endsWith(u"agreed: NOT AGREED"), qPrintable(rows.join(u'\n')));
        QVERIFY2(!rows.filter(u"B1 bonding"_s).front().contains(u"AGREED"), qPrintable(rows.join(u'\n'))); // not critical
        QVERIFY2(rows.filter(u"K1 clamp"_s).front().contains(u"undisturbed | seal paint whole on every nut"), qPrintable(rows.join(u'\n')));
        QVERIFY2(rows.filter(u"X1 Clamp"_s).front().contains(u"DETAILS TO FOLLOW"), qPrintable(rows.join(u'\n')));
        const QStringList stages = cells(recordOf(story), u"interfaces", {u"id"_s, u"stage"_s});
        QVERIFY2(stages.contains(u"K1 | Undisturbed"_s) && stages.contains(u"B1 | Not applicable"_s) && stages.contains(u"M1 | Connected"_s) && stages.contains(u"X1 | Disconnected"_s), qPrintable(stages.join(u'\n')));
        story.tell(u"Ana disconnects K1"_s);
        QCOMPARE(cells(recordOf(story), u"off_the_list", {u"interface"_s}).size(), 3); // it was touched after all
    }

    void linkedJobsAndWhatWentOver()
    {
        Story story(u"Ana links ledger=shop; shop: Lee links ledger=here; Ana disconnects C1; Ana sends C1; Ana disconnects K1; Ana sends K1; shop: Max takes-on C1"_s);
        QCOMPARE(story.refusedBy(), QString());
        core::JobRecord record = recordOf(story);
        QCOMPARE(cells(record, u"linked_jobs", {u"work_order"_s, u"state"_s}), QStringList{u"WO-shop | cannot be seen from here"_s});
        for (const auto &[ledger, seen] : story.job().others.byLedger)
            record.see({ledger, seen.head}, seen.job);
        QCOMPARE(cells(record, u"linked_jobs", {u"work_order"_s, u"title"_s, u"state"_s}), QStringList{u"WO-shop | Build-up of the incoming engine | 2 LOOSE ENDS"_s}); // S1 and C1
        const QStringList handed = cells(record, u"handed_on", {u"interface"_s, u"job"_s, u"sent"_s, u"taken_on"_s});
        QCOMPARE(handed.size(), 2);
        QVERIFY2(handed.at(0).startsWith(u"C1 harness connector C1 | to WO-shop (Build-up of the incoming engine) | Ana") && handed.at(0).endsWith(u"entry 4 there"), qPrintable(handed.at(0)));
        QVERIFY2(handed.at(1).startsWith(u"K1 ") && handed.at(1).endsWith(u"NOT TAKEN ON"), qPrintable(handed.at(1)));
        const QStringList stages = cells(record, u"interfaces", {u"id"_s, u"stage"_s});
        QVERIFY2(stages.contains(u"C1 | Sent to WO-shop (Build-up of the incoming engine)"_s), qPrintable(stages.join(u'\n')));
    }

    void anInspectionThatWasNotIndependent()
    {
        const Story story(u"Ana disconnects K1; Ben reconnects K1; Ben repeats K1"_s, {{u"reinspection"_s, u"allowed"_s}});
        QCOMPARE(story.refusedBy(), QString());
        const core::JobRecord record = recordOf(story);
        QCOMPARE(cells(record, u"inspections", {u"result"_s, u"remarks"_s}), QStringList{u"accepted BY ONE WHO HAD A HAND IN IT | the inspector on duty fell ill; allowed by Ove"_s});
        QVERIFY(cells(record, u"interfaces", {u"id"_s, u"inspected_by"_s}).contains(u"K1 | Ben (OWN WORK)"_s));
        QVERIFY(cells(record, u"facts", {u"fact"_s, u"value"_s}).join(u'\n').contains(u"Inspecting one's own work again | allowed"));
        QVERIFY(!cells(recordOf(Story()), u"facts", {u"fact"_s}).contains(u"Inspecting one's own work again"_s));
    }

    void whatADisturbanceTook()
    {
        const Story story(u"Ana disconnects F1; Ana disconnects F2; Ana reconnects F1; Ana torques F1; Ana reconnects F2; Ana torques F2; Cho accepts F1; Cho accepts F2; Ben disturbs F2"_s);
        QCOMPARE(story.refusedBy(), QString());
        const QString last = cells(recordOf(story), u"entries", {u"statement"_s}).last();
        QVERIFY2(last.contains(u"F1 (fuel line F1): its inspection is void.") && last.contains(u"F2 (fuel line F2): its torque is void."), qPrintable(last));
    }

    void whatTheNextShiftReads()
    {
        const Story story(u"Ana disconnects K1; Ben states K1 condition=hand-tight; Ana stops K1; Ben logs X1; Ana hands-over"_s);
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(cells(recordOf(story), u"handovers", {u"open"_s}),
                 QStringList{u"K1 disconnected, hand-tight; parts not delivered, stopped: two of four bolts in.; X1 disconnected, details to follow"_s});
    }

    /// Zone by zone in the order of the job's zones, what stands alike in one row, and what is of no zone last.
    void whatTheNextShiftReadsAsATable()
    {
        const Story story(u"Ana applies T1; Ana disconnects K1; Ana disconnects C1; Ana disconnects F1; Ana disconnects D1; Ben stops D1; Ben raises F9; Ana hands-over"_s);
        QCOMPARE(story.refusedBy(), QString());
        const core::JobRecord record = recordOf(story);
        QCOMPARE(cells(record, u"handed_over", {u"zone"_s, u"state"_s, u"items"_s}),
                 (QStringList{u"left | disconnected, stopped: two of four bolts in. | D1"_s, u"left | disconnected | C1, F1"_s, u"right | disconnected | K1"_s, u" | applied | T1 (fuel valve shut and locked)"_s,
                              u" | finding, open | F9 (chafed hose)"_s}));
        QVERIFY(cells(recordOf(Story(u"Ana disconnects K1"_s)), u"handed_over", {u"items"_s}).isEmpty());
    }

    /// One look at both: whoever reads the history of one alone has to find it.
    void whatWasReadOfTwinsStandsWithEach()
    {
        const QString twins = u"Ana lists T1 twin_group=sense aircraft_half=P7 unit_half=J7; Ana lists T2 twin_group=sense aircraft_half=P8 unit_half=J8; "
                              "Ana lists T3 twin_group=other aircraft_half=P7 unit_half=J7; Ana disconnects T1; Ana disconnects T2; Ben reconnects T1; Ben reconnects T2; Cho verifies T1; "
                              "Ana lists T4 twin_group=sense aircraft_half=P9 unit_half=J9"_s;
        const Story story(twins);
        QCOMPARE(story.refusedSentence(), QString());
        const auto at = std::find_if(story.fold().said().begin(), story.fold().said().end(), [](const core::Statement &said) { return said.kind == u"twins.verified"; });
        const QStringList rows = cells(recordOf(story), u"life", {u"interface"_s, u"entry"_s});
        const QString entry = QString::number((*at).seq);
        for (const QString &read : {u"T1"_s, u"T2"_s}) {
            QCOMPARE(rows.count(read + u" | "_s + entry), 1);
            const auto about = core::entriesAbout(story.job(), *core::InterfaceId::parse(read));
            QVERIFY(std::find(about.begin(), about.end(), (*at).seq) != about.end());
        }
        // Another group, and one that was listed later.
        for (const QString &other : {u"T3"_s, u"T4"_s})
            QCOMPARE(rows.count(other + u" | "_s + entry), 0);
    }

    /// Each interface is counted once, as it was let go; those that are open are undone or not.
    void whatAReleaseCounts()
    {
        const Story begun(u"Ana disconnects K1"_s);
        const auto all = static_cast<qsizetype>(begun.job().items.size());
        QCOMPARE(core::releaseCounts(begun.job()), (core::ReleaseCounts{0, 0, 0, 0, all, 1}));
        const Story story(u"Ana disconnects K1; Dee reconnects K1; Cho accepts K1; Ana disconnects C1; Ben reconnects C1; Ben finds-undisturbed D1; Ben finds-inapplicable B1; Ben finds-inapplicable M1"_s);
        QCOMPARE(story.refusedSentence(), QString());
        // M1 is critical: nobody agreed yet. C1 was not inspected.
        QCOMPARE(core::releaseCounts(story.job()), (core::ReleaseCounts{1, 1, 1, 0, all - 3, 1}));
    }
};

QTEST_GUILESS_MAIN(TestStates)
#include "tst_states.moc"
