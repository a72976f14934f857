// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>
#include <QTest>

#include "core/holds/hold_set.hpp"
#include "core/holds/standing.hpp"
#include "core/job/loose_ends.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::Story;

namespace {

/// A job with the hold points that come with the program.
Story withStandardHolds()
{
    QFile file(qEnvironmentVariable("REMATE_SOURCE_DIR") + u"/resources/hold_points.json"_s);
    if (!file.open(QIODevice::ReadOnly))
        qFatal("resources/hold_points.json cannot be read.");
    const auto holds = core::parseHoldSet(file.readAll(), u"hold_points.json"_s);
    if (!holds)
        qFatal("%s", qPrintable(holds.error().message));
    Story story;
    story.take(core::holdDrafts(*holds, *core::PersonId::parse(u"Ana"), story::Story().job().opened->at));
    if (!story.refusedBy().isEmpty())
        qFatal("%s", qPrintable(story.refusedBy()));
    return story;
}

#define TOLD(text) do { story.tell(text); QVERIFY2(story.refusedBy().isEmpty(), qPrintable(story.refusedSentence() + u": "_s + story.refusedBy() + u' ' + (story.refusals().empty() ? QString() : story.refusals().front().sentence))); } while (false)

const QString untouchedRest = u"Ana finds-undisturbed C1; Ana finds-undisturbed B1; Cho finds-undisturbed F1; Cho finds-undisturbed F2; Cho finds-undisturbed M1; Cho finds-undisturbed M2; Ana finds-undisturbed A1; Ana finds-undisturbed D2"_s;
const QString allButMounts = u"Ana disconnects D1; Ana disconnects C1; Ana disconnects B1; Ana disconnects F1; Ana disconnects F2; Ana disconnects A1; Ana disconnects D2; Ana disconnects K1"_s;
const QString freeOfAll = u"Dee confirms-free D1; Dee confirms-free C1; Dee confirms-free B1; Dee confirms-free F1; Dee confirms-free F2; Dee confirms-free A1; Dee confirms-free D2; Dee confirms-free K1"_s;
const QString mountsOn = u"Ana reconnects M1; Ana torques M1; Ana reconnects M2; Ana torques M2; Ben passes hung; Ben removes H1; Ben removes S1; Cho accepts M1; Eva accepts M1; Cho accepts M2; Eva accepts M2"_s;
const QString restOn = u"Ana passes join; Ana reconnects D1; Ana torques D1; Ana safeties D1; Ana reconnects C1; Ana reconnects B1; Ana measures B1; Ana reconnects F1; Ana torques F1; Ana reconnects F2; Ana torques F2; Ana reconnects D2; Ana reconnects K1; "
                       "Cho accepts D2; Ana reconnects A1; Ben counts; Uma passes power; Ben removes I1; Ben removes I2; "
                       "Cho accepts D1; Cho accepts C1; Cho accepts B1; Cho accepts F1; Cho accepts F2; Cho accepts A1; Cho accepts K1"_s;
const QString endOfJob = u"Ben counts; Rae passes close; Rae closes"_s;

} // namespace

/// The change is given up, and the unit that was on goes on again. The job is not deleted: what was undone closes in full, and what nobody
/// touched is looked at. Common practice.
class TestReversal : public QObject {
    Q_OBJECT

private slots:
    /// Two interfaces were undone when the incoming unit turned out to be of another state.
    void beforeTheUnitWasOff()
    {
        Story story = withStandardHolds();
        TOLD(u"Ben applies I1; Ben applies I2; Ana passes start; Ana disconnects D1; Ana disconnects K1; Ana gives-up"_s);
        story.tell(u"Ana reconnects K1"_s);
        QCOMPARE(story.refusedBy(), u"hold.gate"_s); // the last look before joining is taken all the same
        TOLD(u"Ana passes join; Ana reconnects K1; Ana reconnects D1; Ana torques D1"_s);
        story.tell(u"Rae closes"_s);
        QVERIFY(story.refusedBy().contains(u"closure.nothing-loose"));
        TOLD(u"Ana safeties D1; "_s + untouchedRest + u"; Ben counts; Uma passes power; Ben removes I1; Ben removes I2; Cho accepts D1"_s);
        QVERIFY2(story.looseEnds() == u"loose.inspection K1\nloose.hold close"_s, qPrintable(story.looseEnds()));
        TOLD(u"Cho accepts K1; "_s + endOfJob);
        QVERIFY(story.job().closed);
    }

    /// All but the mounts was off and the load hung on the hoist; then it went back.
    void withTheLoadOnTheHoist()
    {
        Story story = withStandardHolds();
        TOLD(u"Ben applies I1; Ben applies I2; Ana passes start; "_s + allButMounts + u"; "_s + freeOfAll + u"; Ben applies H1 sort=hoist; Ben applies S1 sort=sling; Ana plans unit=outgoing; Ana passes free; Ana disconnects M1; Ana gives-up"_s);
        story.tell(u"Ana reconnects M1"_s);
        QCOMPARE(story.refusedBy(), u"hold.gate"_s);
        TOLD(u"Ben counts; Ana passes lift; Ana reconnects M1; Ana torques M1; Cho finds-undisturbed M2; Ben passes hung; Ben removes H1; Ben removes S1; Cho accepts M1; Eva accepts M1; "_s + restOn + u"; "_s + endOfJob);
        QVERIFY(story.job().closed);
    }

    /// The unit stood on its stand already.
    void withTheUnitOff()
    {
        Story story = withStandardHolds();
        TOLD(u"Ben applies I1; Ben applies I2; Ana passes start; Ana lists-accessory AC1 interfaces=C1; "_s + allButMounts + u"; "_s + freeOfAll +
             u"; Ben applies H1 sort=hoist; Ben applies S1 sort=sling; Ana plans unit=outgoing; Ana passes free; Ana disconnects M1; Ana disconnects M2; Ana passes lower; Ana takes-off; Ana receives; Ben moves AC1; Ana gives-up; Ben counts"_s);
        story.tell(u"Ana passes lift"_s);
        QCOMPARE(story.refusedBy(), u"hold.conditions"_s); // the accessory is on the unit that stays
        QVERIFY(story.looseEnds().contains(u"loose.accessory AC1"_s));
        TOLD(u"Ben moves AC1; Ana passes lift"_s);
        story.tell(u"Ben positions serial=E-200"_s);
        QCOMPARE(story.refusedBy(), u"unit.serial"_s);
        TOLD(u"Ben positions; "_s + mountsOn + u"; "_s + restOn + u"; "_s + endOfJob);
        QVERIFY(story.job().closed);
        QCOMPARE(story.job().unit.up->serial, u"E-100"_s);
    }

    /// What stands before something on the way back is asked, passed before or not; what led the other way is not.
    void whatIsStillAsked_data()
    {
        QTest::addColumn<QString>("told");
        QTest::addColumn<QStringList>("asked");
        QTest::newRow("nothing undone yet") << u"Ana gives-up"_s << QStringList{u"close"_s};
        QTest::newRow("an isolation on") << u"Ben applies I1; Ben applies I2; Ana passes start; Ana gives-up"_s << QStringList{u"power"_s, u"close"_s};
        QTest::newRow("a clamp undone") << u"Ben applies I1; Ben applies I2; Ana passes start; Ana disconnects K1; Ana gives-up"_s << QStringList{u"join"_s, u"power"_s, u"close"_s};
        QTest::newRow("a mount undone") << u"Ben applies I1; Ben applies I2; Ana passes start; "_s + allButMounts + u"; "_s + freeOfAll + u"; Ben applies H1 sort=hoist; Ben applies S1 sort=sling; Ana plans unit=outgoing; Ana passes free; Ana disconnects M1; Ana gives-up"_s
                                        << QStringList{u"lift"_s, u"hung"_s, u"join"_s, u"power"_s, u"close"_s};
    }
    void whatIsStillAsked()
    {
        QFETCH(QString, told);
        QFETCH(QStringList, asked);
        Story story = withStandardHolds();
        TOLD(told);
        QStringList found;
        for (const core::HoldPoint &hold : story.job().holds) {
            if (core::isStillAsked(story.job(), hold))
                found << hold.id.text();
        }
        QCOMPARE(found, asked);
    }

    /// The weight is that of before only where everything that was on the unit is on it again.
    void theWeightIsAskedWhereAPartStaysAway()
    {
        const QString asked = uR"(Ana sets w conditions=[{"what":"weighed"}] gates=[{"act":"job.closed"}]; Ana lists-accessory AC1; )"_s;
        Story same(asked + u"Ana gives-up; Ana passes w"_s);
        QCOMPARE(same.refusedBy(), QString());
        Story less(asked + u"Ben leaves AC1; Ana gives-up; Ana passes w"_s);
        QCOMPARE(less.refusedBy(), u"hold.conditions"_s);
    }

    /// Blanks that were fitted to the unit once it was off come out with the others before it goes up.
    void theBlanksOfTheUnitThatGoesBack()
    {
        Story story(u"Ana disconnects D1; Ana disconnects C1; Ana disconnects B1; Ana disconnects F1 unit_blanks_fitted=1; Ana disconnects F2; Ana disconnects M1; Ana disconnects M2; Ana disconnects A1; Ana disconnects D2; Ana disconnects K1; Ana takes-off openings_blanked=4; Ana gives-up"_s);
        TOLD(u"Ben misses-blank F1 end=unit; Cho clears F1"_s);
        story.tell(u"Ben positions shipping_blanks_removed=4"_s);
        QCOMPARE(story.refusedBy(), u"unit.shipping-blanks"_s);
        TOLD(u"Ben positions shipping_blanks_removed=3"_s);
    }

    /// A place with no unit in it is a loose end, whatever was joined to nothing.
    void theUnitThatIsMissingIsLoose()
    {
        Story story(u"Ana disconnects D1; Ana disconnects C1; Ana disconnects B1; Ana disconnects F1; Ana disconnects F2; Ana disconnects M1; Ana disconnects M2; Ana disconnects A1; Ana disconnects D2; Ana disconnects K1"_s);
        QVERIFY(!story.looseEnds().contains(u"loose.unit"_s));
        TOLD(u"Ana takes-off"_s);
        QVERIFY(story.looseEnds().contains(u"loose.unit E-200"_s));
        TOLD(u"Ana gives-up"_s);
        QVERIFY(story.looseEnds().contains(u"loose.unit E-100"_s));
        TOLD(u"Ben positions"_s);
        QVERIFY(!story.looseEnds().contains(u"loose.unit"_s));
    }

    /// Without giving up, the same job cannot be closed.
    void aJobThatGoesOnNeedsEveryHoldPoint()
    {
        Story story = withStandardHolds();
        TOLD(u"Ben applies I1; Ben applies I2; Ana passes start; Ana disconnects D1; Ana disconnects K1"_s);
        story.tell(u"Ana passes join"_s);
        QCOMPARE(story.refusedBy(), u"hold.conditions"_s);
        for (const core::HoldPoint &hold : story.job().holds)
            QVERIFY(core::isStillAsked(story.job(), hold));
    }
};

QTEST_GUILESS_MAIN(TestReversal)
#include "tst_reversal.moc"
