// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/job/bursts.hpp"
#include "core/job/loose_ends.hpp"
#include "tests/support/rule_table.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::RuleTable;
using story::Story;

namespace {

const QString joined = u"Ana disconnects D1; Ben reconnects D1"_s;
const QString torqued = joined + u"; Ben torques D1; Ben safeties D1"_s;
const QString accepted = torqued + u"; Cho accepts D1"_s;

} // namespace

/// What changes under a job that goes on: the maintenance data, a row of the list, the trust in a clock.
class TestRevision : public QObject {
    Q_OBJECT

private slots:
    void eachRule_data()
    {
        RuleTable::columns();
        const auto row = &RuleTable::row;

        row("another revision", {}, "Ana revises revision=13 interfaces=D1,F1", "");
        row("another revision, by a technician", {}, "Ben revises", "crew.lead");
        row("the same revision", {}, "Ana revises revision=12", "revision.another");
        row("the same, once it is another", u"Ana revises revision=13"_s, "Ana revises revision=13", "revision.another");
        row("back to the first", u"Ana revises revision=13"_s, "Ana revises revision=12", "");
        row("nothing said of what it changes", {}, "Ana revises none=no", "revision.none");
        row("of what is not on the list", {}, "Ana revises interfaces=D1,Z9", "revision.interfaces");
        row("inspected before it was looked up", torqued + u"; Ana revises interfaces=D1"_s, "Cho accepts D1", "revision.looked-up");
        row("inspected when it was", torqued + u"; Ana revises interfaces=D1; Ana relists D1"_s, "Cho accepts D1", "");
        row("inspected, another was revised", torqued + u"; Ana revises interfaces=F1"_s, "Cho accepts D1", "");

        row("relisted by the lead", {}, "Ana relists D1", "");
        row("relisted by a technician", {}, "Dee relists D1", "relist.by");
        row("relisted by an inspector", joined, "Cho relists D1", "");
        row("relisted by an inspector who had a hand in it", joined, "Ben relists D1", "relist.by");
        row("what is not on the list", {}, "Ana relists Z9 name=X kind=clamp zone=left why=x", "sequence.listed");
        row("without a reason", {}, "Ana relists D1 why=", "form.missing");
        row("before its details follow", u"Ben logs X1"_s, "Ana relists X1 kind=clamp", "detail.known");
        row("once they have", u"Ben logs X1; Ben details X1"_s, "Ana relists X1", "");
        row("another kind, untouched", {}, "Ana relists K1 kind=drain", "relist.less");
        row("another kind, untouched, by an inspector", {}, "Cho relists K1 kind=drain", "");
        row("another zone, by the lead", {}, "Ana relists K1 zone=left", "relist.less");
        row("another kind, undone", u"Ana disconnects K1"_s, "Cho relists K1 kind=drain", "relist.kind");
        row("a wider band, joined", torqued, "Ana relists D1 torque_max=26", "relist.less");
        row("a wider band, by an inspector", torqued, "Cho relists D1 torque_max=26", "");
        row("a narrower band, by the lead", torqued, "Ana relists D1 torque_max=24", "");
        row("a lower band", {}, "Ana relists D1 torque_min=18 torque_max=22", "relist.less");
        row("a narrower band in another unit", {}, "Ana relists D1 torque_min=178 torque_max=221 torque_unit=lbf·in", "");
        row("a band in another unit, wider by a little", {}, "Ana relists D1 torque_min=177 torque_max=221 torque_unit=lbf·in", "relist.less"); // 20 N·m are 177.01 lbf·in
        row("a fastener less", {}, "Ana relists D1 torque_fasteners=1", "relist.less");
        row("a fastener more", {}, "Ana relists D1 torque_fasteners=3", "");
        row("passes dropped", u"Ana relists D1 torque_passes=50,100"_s, "Ana relists D1 torque_passes=", "relist.less");
        row("the order dropped", u"Ana relists D1 torque_order=2,1"_s, "Ana relists D1 torque_order=", "relist.less");
        row("a turn dropped", uR"(Ana relists D1 torque_turn_min=60_° torque_turn_max=70_°)"_s, "Ana relists D1 torque_turn_min= torque_turn_max=", "relist.less");
        row("the drag dropped", u"Cho relists D1 torque_prevailing=added"_s, "Ana relists D1 torque_prevailing=", "relist.less");
        row("drag that widens the band", {}, "Ana relists D1 torque_prevailing=added", "relist.less");
        row("dry threads dropped", u"Ana relists D1 torque_condition=dry"_s, "Ana relists D1 torque_condition=", "relist.less");
        row("a higher bonding limit", {}, "Ana relists B1 bonding_max=3", "relist.less");
        row("a lower bonding limit", {}, "Ana relists B1 bonding_max=2", "");
        row("a bonding reading less", u"Ana relists B1 bonding_readings=2"_s, "Ana relists B1 bonding_readings=1", "relist.less");
        row("the edge of a bonding limit let through", u"Ana relists B1 bonding_comparison=less_than"_s, "Ana relists B1 bonding_comparison=at_most", "relist.less");
        row("a higher leak", u"Ana relists K1 requirements=leak leak_rate=2_mL/min"_s, "Ana relists K1 leak_rate=3_mL/min", "relist.less");
        row("a lower leak", u"Ana relists K1 requirements=leak leak_rate=2_mL/min"_s, "Ana relists K1 leak_rate=1_mL/min", "");
        row("another safetying", {}, "Ana relists D1 safetying=cotter_pin", "relist.less");
        row("what is in front of it left out", {}, "Ana relists D2 access=", "relist.less");
        row("more in front of it", {}, "Ana relists D2 access=A1,K1", "");
        row("what it depends on left out", u"Ana relists K1 depends_on=D1"_s, "Ana relists K1 depends_on=", "relist.less");
        row("hardware left out", uR"(Ana relists K1 hardware=[{"part":"B-1","quantity":2}])"_s, "Ana relists K1 hardware=", "relist.less");
        row("a piece less", uR"(Ana relists K1 hardware=[{"part":"B-1","quantity":2}])"_s, uR"(Ana relists K1 hardware=[{"part":"B-1","quantity":1}])"_s, "relist.less");
        row("new pieces no more", uR"(Ana relists K1 hardware=[{"part":"B-1","quantity":2,"new":true}])"_s, uR"(Ana relists K1 hardware=[{"part":"B-1","quantity":2}])"_s, "relist.less");
        row("less, by an inspector with a hand in the group", u"Ana disconnects M2 helpers=Cho"_s, "Cho relists M1 inspections=1", "relist.less");
        row("less, by another inspector", u"Ana disconnects M2 helpers=Cho"_s, "Eva relists M1 inspections=1", "");
        row("accepted by who lessened it", u"Cho relists K1 kind=drain; Ana disconnects K1; Ana reconnects K1"_s, "Cho accepts K1", "relist.accept");
        row("accepted by another", u"Cho relists K1 kind=drain; Ana disconnects K1; Ana reconnects K1"_s, "Eva accepts K1", "");
        row("accepted by who asked more", u"Cho relists K1 inspections=2; Ana disconnects K1; Ana reconnects K1"_s, "Cho accepts K1", "");
        row("another seal, open, by the lead", u"Ana disconnects D1"_s, "Ana relists D1 seal_part=S-101", "relist.less");
        row("another seal, open", u"Ana disconnects D1"_s, "Cho relists D1 seal_part=S-101", "");
        row("another seal, joined", joined, "Cho relists D1 seal_part=S-101", "relist.joined");
        row("another half, joined", u"Ana disconnects C1; Ana reconnects C1"_s, "Cho relists C1 unit_half=J2", "relist.joined");
        row("hardware, joined", joined, R"(Ana relists D1 hardware=[{"part":"B-3","quantity":2}])", "relist.joined");
        row("a requirement less, by the lead", {}, "Ana relists D1 requirements=torque,seal,blanks safetying=", "relist.less");
        row("a requirement less, by an inspector", {}, "Cho relists D1 requirements=torque,seal,blanks safetying=", "");
        row("a requirement more, by the lead", {}, "Ana relists K1 requirements=safetying safetying=lockwire", "");
        row("one inspection less", {}, "Ana relists M1 inspections=1", "relist.less");
        row("one inspection more", {}, "Ana relists D1 inspections=2", "");
        row("critical no more", {}, "Ana relists F1 critical=", "relist.less");
        row("out of its twins", {}, "Ana relists F1 twin_group=", "relist.less");
        row("out of its independence group", {}, "Ana relists M1 independence_group=", "relist.less");
        row("a band upside down", {}, "Ana relists D1 torque_max=19", "listing.limits");
        row("behind itself", {}, "Ana relists D1 access=D1", "detail.circle");
        row("behind what waits for it", {}, "Ana relists A1 access=D2", "detail.circle");

        row("a correction struck that set an inspection aside", accepted + u"; Ana relists D1"_s, "Ana strikes entry=18", "strike.back");
        row("a correction struck before any inspection", torqued + u"; Ana relists D1"_s, "Ana strikes entry=17", "");
        row("a correction struck after more was said", u"Ana disconnects D1; Ana relists D1 note=x; Ben reconnects D1"_s, "Ana strikes entry=13", "strike.listing");
        row("a correction struck at once", u"Ana disconnects D1; Ana relists D1 note=x"_s, "Ana strikes entry=13", "");
        row("a revision struck that set an inspection aside", accepted + u"; Ana revises interfaces=K1,D1"_s, "Cho strikes entry=18", "strike.back");
        row("the same by the named level", accepted + u"; Ana revises interfaces=K1,D1"_s, "Ove strikes entry=18", "");
        row("a revision struck that set none aside", accepted + u"; Ana revises interfaces=K1"_s, "Cho strikes entry=18", "");

        row("times in doubt", {}, "Ben doubts first=2 last=11", "");
        row("times in doubt, of one entry", {}, "Ben doubts first=11 last=11", "");
        row("times of entries to come", {}, "Ben doubts first=2 last=12", "time.entries");
        row("times from the end", {}, "Ben doubts first=3 last=2", "time.entries");
        row("times from nought", {}, "Ben doubts first=0 last=2", "time.entries");
        row("times, by a stranger", {}, "Out doubts", "crew.takes-part");
    }
    void eachRule() { m_table.ask(); }

    /// The job works to the revision that it was opened with until somebody signs another; then what the new one may ask otherwise is listed,
    /// reopened, and waits.
    void aRevisionListsWhatHasToBeLookedUp()
    {
        Story story(accepted + u"; Ana disconnects K1; Ben reconnects K1; Cho accepts K1"_s);
        QCOMPARE(story.job().facts.revision, u"12"_s);
        story.tell(u"Ana revises revision=13 interfaces=D1"_s);
        QCOMPARE(story.job().facts.revision, u"13"_s);
        QCOMPARE(story.job().revisions.front().before, u"12"_s);
        QCOMPARE(story.stage(u"D1"_s), u"reconnected"_s);
        QCOMPARE(story.stage(u"K1"_s), u"inspected"_s);
        QVERIFY(story.looseEnds().contains(u"loose.revision D1"_s));
        story.tell(u"Ana relists D1; Cho accepts D1"_s);
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(story.stage(u"D1"_s), u"inspected"_s);
        QVERIFY(!story.looseEnds().contains(u"D1"_s));
    }

    /// What was shown against another limit is shown again; what was not touched by the correction stays.
    void whatACorrectionTakesBack_data()
    {
        QTest::addColumn<QString>("told");
        QTest::addColumn<QString>("id");
        QTest::addColumn<QString>("stage");
        const auto row = [](const char *name, const QString &told, const char *id, const char *stage) { QTest::newRow(name) << told << QString::fromLatin1(id) << QString::fromLatin1(stage); };
        const QString bond = u"Ana disconnects B1; Ana reconnects B1; Ana measures B1; Cho accepts B1; "_s;
        row("nothing changed", accepted + u"; Ana relists D1"_s, "D1", "secured");
        row("the band", accepted + u"; Ana relists D1 torque_min=21"_s, "D1", "reconnected");
        row("the number of fasteners", accepted + u"; Cho relists D1 torque_fasteners=1"_s, "D1", "reconnected");
        row("the safetying", accepted + u"; Cho relists D1 safetying=cotter_pin"_s, "D1", "reconnected");
        row("the name alone", accepted + u"; Ana relists D1 name=Bleed_duct"_s, "D1", "secured");
        row("one inspection more", accepted + u"; Ana relists D1 inspections=2"_s, "D1", "secured");
        row("the bonding limit", bond + u"Ana relists B1 bonding_max=2"_s, "B1", "reconnected");
        row("the note of a bond", bond + u"Ana relists B1 note=x"_s, "B1", "secured");
        row("a twin", u"Ana disconnects F1; Ana reconnects F1; Ana torques F1; Cho accepts F1; Ana relists F2 note=x"_s, "F1", "secured");
        row("a leak limit", u"Ana lists X1 requirements=leak leak_rate=2_mL/min; Ana disconnects X1; Ben reconnects X1; Ben checks X1; Cho accepts X1; Ana relists X1 leak_rate=1_mL/min"_s, "X1", "reconnected");
    }
    void whatACorrectionTakesBack()
    {
        QFETCH(QString, told);
        QFETCH(QString, id);
        QFETCH(QString, stage);
        const Story story(told);
        QVERIFY2(story.refusedSentence().isEmpty(), qPrintable(story.refusedSentence() + story.refusedBy()));
        QCOMPARE(story.stage(id), stage);
    }

    /// A wrong part number of the list is corrected while the joint is open, and the joint closes with the right seal.
    void aWrongPartNumberIsCorrected()
    {
        Story story(u"Ana disconnects D1; Cho relists D1 seal_part=S-101; Ben reconnects D1 seal_part=S-100"_s);
        QCOMPARE(story.refusedBy(), u"balance.seal"_s);
        story.tell(u"Ben reconnects D1"_s);
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(story.item(u"D1"_s).restoration->sealPart, u"S-101"_s);
    }

    /// A doubt changes no time and no order; it is shown beside what it doubts.
    void aDoubtRewritesNothing()
    {
        Story story(u"Ana disconnects K1"_s);
        const core::Instant at = story.job().lines[11].at;
        story.tell(u"Ben doubts first=12 last=12 difference=3_minutes_fast"_s);
        QCOMPARE(story.job().lines[11].at, at);
        QVERIFY(core::doubtOfTime(story.job(), 12));
        QVERIFY(!core::doubtOfTime(story.job(), 11) && !core::doubtOfTime(story.job(), 13));
        story.tell(u"Ben strikes entry=13"_s);
        QVERIFY(!core::doubtOfTime(story.job(), 12));
    }

    /// Ten interfaces within a minute are shown to the auditor; nine are not, and ten over more than a minute are not.
    void bursts_data()
    {
        QTest::addColumn<int>("interfaces");
        QTest::addColumn<int>("lastSecond");
        QTest::addColumn<int>("bursts");
        QTest::newRow("nine at once") << 9 << 0 << 0;
        QTest::newRow("ten at once") << 10 << 0 << 1;
        QTest::newRow("ten within a minute") << 10 << 60 << 1;
        QTest::newRow("ten, the last a second later") << 10 << 61 << 0;
    }
    void bursts()
    {
        QFETCH(int, interfaces);
        QFETCH(int, lastSecond);
        QFETCH(int, bursts);
        QString told;
        for (int i = 1; i <= interfaces; ++i)
            told += u"Ana lists X%1; "_s.arg(i);
        for (int i = 1; i <= interfaces; ++i)
            told += u"Ben disconnects X%1 at=%2; "_s.arg(QString::number(i), QTime(9, 0).addSecs(i == interfaces ? lastSecond : 0).toString(u"'2026-03-02T'HH:mm:ss.000'Z'"));
        const Story story(told);
        QVERIFY2(story.refusedSentence().isEmpty(), qPrintable(story.refusedSentence() + story.refusedBy()));
        const std::vector<core::Burst> found = core::burstsOfSigning(story.job());
        QCOMPARE(static_cast<int>(found.size()), bursts);
        if (bursts == 0)
            return;
        QCOMPARE(found.front().interfaces, interfaces);
        QCOMPARE(found.front().meaning, "performed"_L1);
        QCOMPARE(found.front().last - found.front().first, interfaces - 1);
    }

    /// Many readings of one joint are no burst.
    void manyEntriesOnOneInterfaceAreNone()
    {
        const Story story(u"Ana lists X1 requirements=torque torque_fasteners=20 torque_min=20 torque_max=25 torque_unit=N·m; Ben disconnects X1; Ben reconnects X1; Ben torques X1 at=2026-03-02T09:00:00.000Z"_s);
        QCOMPARE(story.refusedSentence(), QString());
        QCOMPARE(story.item(u"X1"_s).torque.size(), std::size_t(20));
        QVERIFY(core::burstsOfSigning(story.job()).empty());
    }

    /// Runs last.
    void zEveryRuleWasSeenRefusing() { m_table.everyRuleWasSeen(); }

private:
    RuleTable m_table{"revision"_L1};
};

QTEST_GUILESS_MAIN(TestRevision)
#include "tst_revision.moc"
