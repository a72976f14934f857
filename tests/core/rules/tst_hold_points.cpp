// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/holds/standing.hpp"
#include "core/job/loose_ends.hpp"
#include "tests/support/rule_table.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::RuleTable;
using story::Story;

namespace {

/// The gate before the mounts. Common practice: everything else is off and a second person has gone round, and the hoist holds the load,
/// before any mount is released.
const QString free_ = uR"(Ana sets free conditions=[{"what":"interfaces","stage":"walked_round","kinds":["duct","clamp"],"until":"lower"},{"what":"applied","names":["hoist"],"until":"lower"}] gates=[{"act":"interface.disconnected","kinds":["mount"]}] statements=The_hoist_has_the_load,Nobody_stands_under_it)"_s;
const QString lower = uR"(Ana sets lower title=Clear_to_lower conditions=[{"what":"interfaces","stage":"disconnected","kinds":["mount"]}] gates=[{"act":"weight.recorded"}])"_s;
const QString both = free_ + u"; "_s + lower + u"; "_s;
const QString walked = both + u"Ana disconnects D1; Ana disconnects K1; Cho confirms-free D1; Ben confirms-free K1; Ben applies H1 sort=hoist name=hoist_on_the_beam"_s;
const QString passed = walked + u"; Ana passes free"_s;
/// Every mount is torqued before the hoist comes off: common practice.
const QString mounted = uR"(Ana sets hung title=Mounts_carry conditions=[{"what":"interfaces","stage":"torqued","kinds":["mount"]}] gates=[{"act":"temporary.removed","names":["hoist","sling"]}])"_s;

} // namespace

/// Signed gates: what they ask for, what waits for them, and what undermines them.
class TestHoldPoints : public QObject {
    Q_OBJECT

private slots:
    void eachRule_data()
    {
        RuleTable::columns();
        const auto row = &RuleTable::row;

        row("a mount before its hold point", both, u"Ana disconnects M1"_s, "hold.gate");
        row("a mount behind a passed one", passed, u"Ana disconnects M1"_s, "");
        row("what it does not hold back", both, u"Ana disconnects C1"_s, "");
        row("where none is set", {}, u"Ana disconnects M1"_s, "");
        row("disturbed, behind an unpassed one, is sayable", mounted + u"; Ana disconnects M1; Ana reconnects M1"_s, u"Ben disturbs M1"_s, "");

        row("passed when all is so", walked, u"Ana passes free"_s, "");
        row("passed with one not gone round", both + u"Ana disconnects D1; Ana disconnects K1; Cho confirms-free D1; Ben applies H1 sort=hoist"_s, u"Ana passes free"_s, "hold.conditions");
        row("passed without the hoist", both + u"Ana disconnects D1; Ana disconnects K1; Cho confirms-free D1; Ben confirms-free K1"_s, u"Ana passes free"_s, "hold.conditions");
        row("passed with the hoist taken away again", walked + u"; Ben removes H1"_s, u"Ana passes free"_s, "hold.conditions");
        row("passed with a statement left out", walked, u"Ana passes free confirmed=The_hoist_has_the_load"_s, "hold.statements");
        row("passed with a statement too many", walked, u"Ana passes free confirmed=The_hoist_has_the_load,Nobody_stands_under_it,All_well"_s, "hold.statements");
        row("passed by a technician", walked, u"Ben passes free"_s, "hold.authority");
        row("passed twice", passed, u"Ana passes free"_s, "hold.once");
        row("passed, though never set", {}, u"Ana passes free"_s, "hold.known");
        row("passed with an end that the job does not have", free_ + u"; Ana disconnects D1; Ana disconnects K1; Cho confirms-free D1; Ben confirms-free K1; Ben applies H1 sort=hoist"_s, u"Ana passes free"_s, "hold.conditions");

        // What follows a hold point would end the conditions that tell that it is void.
        const QString then = passed + u"; "_s + QString(lower).replace(u"conditions=["_s, u"conditions=[{\"what\":\"passed\",\"names\":[\"free\"]},"_s) + u"; Ana disconnects M1; Ana disconnects M2"_s;
        row("the one behind it passed", then, u"Ana passes lower"_s, "");
        row("the one behind it passed, this one void", then + u"; Ana reconnects K1"_s, u"Ana passes lower"_s, "hold.conditions");
        row("the one behind it passed, this one passed again", then + u"; Ana reconnects K1; Ana disconnects K1; Ben confirms-free K1; Ana passes free"_s, u"Ana passes lower"_s, "");

        const QString independent = uR"(Ana sets look authority=inspect independent=yes conditions=[{"what":"interfaces","stage":"reconnected","kinds":["clamp"]}] gates=[{"act":"job.closed"}]; Ben disconnects K1; Ben reconnects K1)"_s;
        row("passed by an inspector", independent, u"Cho passes look"_s, "");
        row("passed by an inspector who undid it", independent, u"Ben passes look"_s, "hold.independent");

        row("set", {}, free_, "");
        row("set by a technician", {}, QString(free_).replace(u"Ana sets"_s, u"Ben sets"_s), "crew.lead");
        row("set anew before it is passed", walked, free_, "");
        row("set anew once it was passed", passed, free_, "hold.in-time");
        row("set when a mount is off already", u"Ana disconnects M1"_s, free_, "hold.in-time");
        row("set when a mount was off, and that was struck", u"Ana disconnects M1; Ana strikes entry=12"_s, free_, "");
        row("set anew with a gate that somebody has gone through", both + u"; Ana disconnects K1"_s, QString(free_).replace(u"[\"mount\"]"_s, u"[\"mount\",\"clamp\"]"_s), "hold.in-time");
        row("set anew with a gate that nobody has gone through", both + u"; Ana disconnects K1"_s, QString(free_).replace(u"[\"mount\"]"_s, u"[\"mount\",\"drain\"]"_s), "");
        row("asks for nothing", {}, uR"(Ana sets x conditions=[] gates=[{"act":"job.closed"}])"_s, "hold.sound");
        row("asks for a look alone", {}, uR"(Ana sets x conditions=[] gates=[{"act":"job.closed"}] statements=Seen)"_s, "");
        row("holds nothing back", {}, uR"(Ana sets x conditions=[{"what":"findings_closed"}] gates=[])"_s, "hold.sound");
        row("asks for what there is not", {}, uR"(Ana sets x conditions=[{"what":"good_weather"}] gates=[{"act":"job.closed"}])"_s, "hold.sound");
        row("asks for a stage that there is not", {}, uR"(Ana sets x conditions=[{"what":"interfaces","stage":"done"}] gates=[{"act":"job.closed"}])"_s, "hold.sound");
        row("asks for a stage of what has none", {}, uR"(Ana sets x conditions=[{"what":"weighed","stage":"inspected"}] gates=[{"act":"job.closed"}])"_s, "hold.sound");
        row("asks for a sort that there is not", {}, uR"(Ana sets x conditions=[{"what":"applied","names":["ladder"]}] gates=[{"act":"job.closed"}])"_s, "hold.sound");
        row("asks for none of a sort", {}, uR"(Ana sets x conditions=[{"what":"applied","names":["hoist"],"least":0}] gates=[{"act":"job.closed"}])"_s, "hold.sound");
        row("a member that means nothing", {}, uR"(Ana sets x conditions=[{"what":"weighed","colour":"red"}] gates=[{"act":"job.closed"}])"_s, "hold.sound");
        row("a member of another form", {}, uR"(Ana sets x conditions=[{"what":"interfaces","stage":"inspected","kinds":"mount"}] gates=[{"act":"job.closed"}])"_s, "hold.sound");
        row("ends with itself", {}, uR"(Ana sets x conditions=[{"what":"weighed","until":"x"}] gates=[{"act":"job.closed"}])"_s, "hold.sound");
        row("holds back what there is not", {}, uR"(Ana sets x conditions=[{"what":"weighed"}] gates=[{"act":"job.polished"}])"_s, "hold.sound");
        row("holds back what has to be sayable", {}, uR"(Ana sets x conditions=[{"what":"weighed"}] gates=[{"act":"interface.disturbed"}])"_s, "hold.sound");
        row("holds back an act of the register", {}, uR"(Ana sets x conditions=[{"what":"weighed"}] gates=[{"act":"tool.withdrawn"}])"_s, "hold.sound");
        row("interfaces of what is about none", {}, uR"(Ana sets x conditions=[{"what":"weighed"}] gates=[{"act":"job.closed","kinds":["duct"]}])"_s, "hold.sound");
        row("sorts of what has none", {}, uR"(Ana sets x conditions=[{"what":"weighed"}] gates=[{"act":"interface.reconnected","names":["hoist"]}])"_s, "hold.sound");

        row("the hoist off before the mounts are torqued", mounted + u"; Ben applies H1 sort=hoist; Ana disconnects M1; Ana reconnects M1"_s, u"Ben removes H1"_s, "hold.gate");
        row("a platform off meanwhile", mounted + u"; Ben applies P1 sort=platform"_s, u"Ben removes P1"_s, "");
        row("the hoist off once they are", mounted + u"; Ben applies H1 sort=hoist; Ana disconnects M1; Ana disconnects M2; Ana reconnects M1; Ana torques M1; Ana reconnects M2; Ana torques M2; Ana passes hung"_s, u"Ben removes H1"_s, "");

        const QString inspected = uR"(Ana sets look title=Looked_over authority=inspect statements=Seen conditions=[{"what":"interfaces","stage":"inspected","kinds":["clamp"]},{"what":"findings_closed"}] gates=[{"act":"job.closed"}])"_s;
        row("set anew with a condition less, by who may not pass it", inspected, QString(inspected).replace(u",{\"what\":\"findings_closed\"}"_s, QString()), "hold.less");
        row("set anew with a condition more", inspected, QString(inspected).replace(u"conditions=["_s, u"conditions=[{\"what\":\"weighed\"},"_s), "");
        row("set anew for another authority", inspected, QString(inspected).replace(u"authority=inspect"_s, u"authority=lead"_s), "hold.less");
        row("set anew without its statement", inspected, QString(inspected).replace(u"statements=Seen "_s, QString()), "hold.less");
        row("set anew before something else", inspected, QString(inspected).replace(u"job.closed"_s, u"weight.recorded"_s), "hold.less");
        row("struck by who may not pass it", inspected, u"Ana strikes entry=12"_s, "strike.hold");
        row("waits for itself", {}, uR"(Ana sets x conditions=[{"what":"passed","names":["x"]}] gates=[{"act":"job.closed"}])"_s, "hold.sound");
        row("waits for one that waits for it", uR"(Ana sets x conditions=[{"what":"passed","names":["y"]}] gates=[{"act":"job.closed"}])"_s, uR"(Ana sets y conditions=[{"what":"passed","names":["x"]}] gates=[{"act":"weight.recorded"}])"_s, "hold.sound");
        row("waits for one that does not", uR"(Ana sets x conditions=[{"what":"passed","names":["y"]}] gates=[{"act":"job.closed"}])"_s, uR"(Ana sets y conditions=[{"what":"weighed"}] gates=[{"act":"weight.recorded"}])"_s, "");
        row("of a zone that there is not", {}, uR"(Ana sets x conditions=[{"what":"interfaces","stage":"inspected","zones":["nowhere"]}] gates=[{"act":"job.closed"}])"_s, "hold.sound");
        row("of an interface that there is not", {}, uR"(Ana sets x conditions=[{"what":"interfaces","stage":"inspected","interfaces":["Z9"]}] gates=[{"act":"job.closed"}])"_s, "hold.sound");
        row("in front of an interface that there is not", {}, uR"(Ana sets x conditions=[{"what":"weighed"}] gates=[{"act":"interface.reconnected","interfaces":["Z9"]}])"_s, "hold.sound");
        row("a passing struck, with nothing behind it", passed, u"Ana strikes entry=19"_s, "");
        row("a passing struck, with a mount off behind it", passed + u"; Ana disconnects M1"_s, u"Ana strikes entry=19"_s, "strike.hold");
        row("a hold point struck before it matters", both, u"Ana strikes entry=12"_s, "");
        row("a hold point struck that was passed", passed, u"Ana strikes entry=12"_s, "strike.hold");
    }
    void eachRule() { m_table.ask(); }

    /// Each condition is told in words of its own.
    void noTwoConditionsReadAlike()
    {
        QSet<QString> said;
        int all = 0;
        for (const core::ConditionKind &kind : core::conditionKinds()) {
            const std::vector<QLatin1String> stages = kind.stages.empty() ? std::vector{QLatin1String()} : kind.stages;
            for (const QLatin1String stage : stages) {
                const QString words = core::describe({QString(kind.what), {}, QString(stage), {u"hoist"_s}, 1, {}});
                QVERIFY2(words.endsWith(u'.') && !words.contains(u"%1"_s), qPrintable(words));
                said.insert(words);
                ++all;
            }
        }
        QCOMPARE(said.size(), all);
    }

    /// Passed, and undermined afterwards: it has to be passed again.
    void whatUndermines_data()
    {
        QTest::addColumn<QString>("since");
        QTest::addColumn<QString>("state");
        const auto row = [](const char *name, const char *since, const char *state) { QTest::newRow(name) << QString::fromUtf8(since) << QString::fromLatin1(state); };
        row("nothing", "", "passed");
        row("an interface joined again", "Ana reconnects K1", "void");
        row("an interface joined and undone again", "Ana reconnects K1; Ana disconnects K1; Ben confirms-free K1", "void");
        row("an interface found still attached", "Eva finds-attached D1", "void");
        row("one that nobody had listed", "Ana lists X1; Ana disconnects X1", "void");
        row("one of another kind", "Ana disconnects C1", "passed");
        row("the hoist taken away", "Ben removes H1", "void");
        row("another hoist beside it", "Ben applies H2 sort=hoist", "passed");
        row("another hoist in its place", "Ben applies H2 sort=hoist; Ben removes H1", "void");
        row("a disconnection struck", "Ana strikes entry=14", "void");
        row("past the hold point that ends it, joined again", "Ana disconnects M1; Ana disconnects M2; Ana passes lower; Ana reconnects K1", "passed");
    }
    void whatUndermines()
    {
        QFETCH(QString, since);
        QFETCH(QString, state);
        Story story(passed);
        QCOMPARE(story.refusedSentence(), QString());
        story.tell(since);
        QVERIFY2(story.refusedSentence().isEmpty(), qPrintable(story.refusedSentence() + story.refusedBy()));
        const core::HoldPoint &hold = *story.job().hold(*core::HoldId::parse(u"free"));
        const core::HoldStanding standing = core::standingOf(story.job(), hold);
        QCOMPARE(standing.state == core::HoldState::Void ? u"void"_s : u"passed"_s, state);
        QCOMPARE(standing.undermined.isEmpty(), state == u"passed");
        QCOMPARE(story.looseEnds().contains(u"loose.hold free"), state == u"void");
        story.tell(u"Ana disconnects M1"_s);
        QCOMPARE(story.refusedBy().contains(u"hold.gate"), state == u"void");
    }

    /// What was passed, undermined and made good is passed once more, and then lets through again.
    void passedAgain()
    {
        Story story(passed + u"; Eva finds-attached D1; Ana frees D1; Cho confirms-free D1; Ana disconnects M1"_s);
        QCOMPARE(story.refusedBy(), u"hold.gate"_s);
        story.tell(u"Ana passes free; Ana disconnects M1"_s);
        QCOMPARE(story.refusedBy(), QString());
    }

    /// Each stage that a hold point can ask for: what is nearly there, and what is.
    void stages_data()
    {
        QTest::addColumn<QString>("stage");
        QTest::addColumn<QString>("nearly");
        QTest::addColumn<QString>("there");
        const auto row = [](const char *stage, const char *nearly, const char *there) { QTest::newRow(stage) << QString::fromLatin1(stage) << QString::fromUtf8(nearly) << QString::fromUtf8(there); };
        row("disconnected", "", "Ana disconnects D1");
        row("walked_round", "Ana disconnects D1", "Ana disconnects D1; Ben confirms-free D1");
        row("reconnected", "Ana disconnects D1", "Ana disconnects D1; Ben reconnects D1");
        row("torqued", "Ana disconnects D1; Ben reconnects D1; Ben torques D1 fastener=1", "Ana disconnects D1; Ben reconnects D1; Ben torques D1");
        row("restored", "Ana disconnects D1; Ben reconnects D1; Ben torques D1", "Ana disconnects D1; Ben reconnects D1; Ben torques D1; Ben safeties D1");
        row("inspected", "Ana disconnects D1; Ben reconnects D1; Ben torques D1; Ben safeties D1", "Ana disconnects D1; Ben reconnects D1; Ben torques D1; Ben safeties D1; Cho accepts D1");
    }
    void stages()
    {
        QFETCH(QString, stage);
        QFETCH(QString, nearly);
        QFETCH(QString, there);
        const core::HoldCondition condition{u"interfaces"_s, {{}, {}, {}, {*core::InterfaceId::parse(u"D1")}}, stage, {}, 1, {}};
        QVERIFY(!core::faultOf(condition));
        QVERIFY(core::describe(condition).startsWith(u"D1 is"));
        const Story almost(nearly);
        QCOMPARE(core::findCondition(almost.job(), condition).missing.size(), 1);
        const Story whole(there);
        QCOMPARE(whole.refusedSentence(), QString());
        const core::ConditionFound found = core::findCondition(whole.job(), condition);
        QVERIFY2(found.isMet(), qPrintable(found.missing.join(u' ')));
        QCOMPARE(found.restsOn, whole.fold().head().seq);
    }

    /// Before the engine runs nobody can check for leaks; so that alone may be missing of what is restored.
    void aLeakCheckComesLater()
    {
        const core::HoldCondition condition{u"interfaces"_s, {{}, {}, {}, {*core::InterfaceId::parse(u"X1")}}, u"restored"_s, {}, 1, {}};
        const Story story(u"Ana lists X1 requirements=leak leak_rate=2_mL/min; Ana disconnects X1; Ben reconnects X1"_s);
        QVERIFY(core::findCondition(story.job(), condition).isMet());
        QCOMPARE(story.stage(u"X1"_s), u"reconnected"_s);
    }

    /// The change of the unit itself, step by step.
    void unitStages_data()
    {
        QTest::addColumn<QString>("stage");
        QTest::addColumn<QString>("there");
        const QString allOff = u"Ana disconnects D1; Ana disconnects C1; Ana disconnects B1; Ana disconnects F1; Ana disconnects F2; Ana disconnects M1; Ana disconnects M2; Ana disconnects A1; Ana disconnects D2; Ana disconnects K1"_s;
        QTest::newRow("removed") << u"removed"_s << allOff + u"; Ana takes-off"_s;
        QTest::newRow("received") << u"received"_s << u"Ana receives"_s;
        QTest::newRow("positioned") << u"positioned"_s << allOff + u"; Ana takes-off; Ana receives; Ben positions"_s;
    }
    void unitStages()
    {
        QFETCH(QString, stage);
        QFETCH(QString, there);
        const core::HoldCondition condition{u"unit"_s, {}, stage, {}, 1, {}};
        QVERIFY(!core::faultOf(condition));
        QVERIFY(!core::findCondition(Story().job(), condition).isMet());
        const Story whole(there);
        QVERIFY2(whole.refusedSentence().isEmpty(), qPrintable(whole.refusedSentence() + whole.refusedBy()));
        const core::ConditionFound found = core::findCondition(whole.job(), condition);
        QVERIFY(found.isMet());
        QCOMPARE(found.restsOn, whole.fold().head().seq);
    }

    void otherConditions_data()
    {
        QTest::addColumn<QString>("what");
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("nearly");
        QTest::addColumn<QString>("there");
        const auto row = [](const char *what, const char *name, const char *nearly, const char *there) { QTest::newRow(what) << QString::fromLatin1(what) << QString::fromUtf8(name) << QString::fromUtf8(nearly) << QString::fromUtf8(there); };
        row("lift_planned", "incoming", "Ana plans", "Ana plans unit=incoming");
        row("serviced", "engine oil", "Ana services system=gearbox", "Ana services");
        row("weighed", "", "", "Ana weighs");
        row("accessories_placed", "", "Ana lists-accessory AC1; Ana receives", "Ana lists-accessory AC1; Ana receives; Ben moves AC1");
        row("findings_closed", "", "Ben raises F9", "Ben raises F9; Cho clears F9");
        row("tested", "ground run", "Ana disconnects K1; Ana reconnects K1; Ana tests R1 covers=K1; Ben disturbs K1", "Ana disconnects K1; Ana reconnects K1; Ana tests R1 covers=K1");
        row("removed", "isolation", "Ana applies I1", "Ana applies I1; Ana removes I1");
        row("applied", "isolation", "Ana applies I1; Ana removes I1", "Ana applies I1; Ana removes I1; Ana applies I2");
        row("tools_counted", "", "Ben issues R-14", "Ben issues R-14; Ben counts");
        row("passed", "x", R"(Ana sets x conditions=[] gates=[{"act":"job.closed"}] statements=Seen)", R"(Ana sets x conditions=[] gates=[{"act":"job.closed"}] statements=Seen; Ana passes x)");
    }
    void otherConditions()
    {
        QFETCH(QString, what);
        QFETCH(QString, name);
        QFETCH(QString, nearly);
        QFETCH(QString, there);
        core::HoldCondition condition{what, {}, {}, {}, 1, {}};
        if (!name.isEmpty())
            condition.names = {name};
        const auto fault = core::faultOf(condition);
        QVERIFY2(!fault, qPrintable(fault.value_or(QString())));
        QVERIFY(!core::describe(condition).contains(u"%1"_s) && core::describe(condition).endsWith(u'.'));
        const Story almost(nearly);
        QCOMPARE(almost.refusedSentence(), QString());
        QVERIFY(!core::findCondition(almost.job(), condition).isMet());
        const Story whole(there);
        QCOMPARE(whole.refusedSentence(), QString());
        QVERIFY(core::findCondition(whole.job(), condition).isMet());
    }

    /// Runs last: every kind of condition and every rule was seen.
    void zEveryRuleWasSeenRefusing()
    {
        m_table.everyRuleWasSeen();
        QCOMPARE(core::conditionKinds().size(), 12U);
    }

private:
    RuleTable m_table{"hold_points"_L1};
};

QTEST_GUILESS_MAIN(TestHoldPoints)
#include "tst_hold_points.moc"
