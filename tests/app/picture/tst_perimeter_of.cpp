// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "app/picture/perimeter_of.hpp"
#include "core/job/loose_ends.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::Story;

namespace {

picture::Perimeter perimeterOf(const Story &told) { return picture::perimeterOf(told.job(), core::looseEnds(told.job(), told.reg())); }

/// `right: Disconnected, loose`; empty when it is not drawn.
QString drawnAs(const Story &told, const QString &id)
{
    for (const picture::PerimeterZone &zone : perimeterOf(told)) {
        for (const picture::PerimeterItem &item : zone.items) {
            if (item.id == id)
                return zone.name + u": "_s + item.word + (item.isMount ? u", mount"_s : QString()) + (item.isTemporary() ? u", outside"_s : QString()) + (item.isLoose ? u", loose"_s : QString());
        }
    }
    return {};
}

const QString linked = u"Ana links ledger=shop; shop: Lee links ledger=here; "_s;

} // namespace

/// What of a job is drawn, and how. The stages and loose ends are the job's own; they are tested where they are worked out.
class TestPerimeterOf : public QObject {
    Q_OBJECT

private slots:
    void itemIsDrawnAs_data();
    void itemIsDrawnAs();
    void zonesKeepTheJobsOrder();
    void closedJobHasNothingLoose();
    void hoistIsToldOf_data();
    void hoistIsToldOf();
    void unitIsToldOf();
};

void TestPerimeterOf::itemIsDrawnAs_data()
{
    QTest::addColumn<QString>("told");
    QTest::addColumn<QString>("id");
    QTest::addColumn<QString>("drawn");
    const auto row = [](const char *name, const QString &told, const QString &id, const QString &drawn) { QTest::addRow("%s", name) << told << id << drawn; };
    row("never touched", {}, u"K1"_s, u"right: Connected, loose"_s);
    row("let alone by signature", u"Ben finds-undisturbed K1"_s, u"K1"_s, u"right: Connected"_s);
    row("disconnected", u"Ana disconnects K1"_s, u"K1"_s, u"right: Disconnected, loose"_s);
    row("reconnected", u"Ana disconnects D1; Ana reconnects D1"_s, u"D1"_s, u"left: Reconnected, loose"_s);
    row("secured", u"Ana disconnects K1; Ana reconnects K1"_s, u"K1"_s, u"right: Secured, loose"_s);
    row("inspected", u"Ana disconnects K1; Ana reconnects K1; Cho accepts K1"_s, u"K1"_s, u"right: Inspected"_s);
    row("a mount", u"Ana disconnects M1"_s, u"M1"_s, u"left: Disconnected, mount, loose"_s);
    row("on its way to another job", linked + u"Ana disconnects C1; Ana sends C1"_s, u"C1"_s, u"left: Sent on, loose"_s);
    row("taken on by it", linked + u"Ana disconnects C1; Ana sends C1; shop: Max takes-on C1"_s, u"C1"_s, u"left: Sent on"_s);
    row("applied in a zone", u"Ana applies T1 zone=right"_s, u"T1"_s, u"right: Applied, outside, loose"_s);
    row("applied without a zone", u"Ana applies T1"_s, u"T1"_s, u"No zone: Applied, outside, loose"_s);
    row("removed again", u"Ana applies T1 zone=right; Ana removes T1"_s, u"T1"_s, QString());
}

void TestPerimeterOf::itemIsDrawnAs()
{
    QFETCH(QString, told);
    QFETCH(QString, id);
    QFETCH(QString, drawn);
    const Story story(told);
    QVERIFY2(story.refusedBy().isEmpty(), qPrintable(story.refusedSentence() + u": "_s + story.refusedBy()));
    QCOMPARE(drawnAs(story, id), drawn);
}

/// What only an item names comes after, in the order in which it comes up; what names none comes last.
void TestPerimeterOf::zonesKeepTheJobsOrder()
{
    core::JobState job = Story(u"Ana applies T1; Ana applies T2 zone=right"_s).job();
    core::InterfaceState more = job.items[0];
    for (const QString &zone : {u"tail"_s, u"nose"_s, u"tail"_s}) {
        more.listed.zone = zone;
        job.items.push_back(more);
    }
    QStringList zones;
    for (const picture::PerimeterZone &zone : picture::perimeterOf(job, {}))
        zones << u"%1 %2"_s.arg(zone.name).arg(zone.items.size());
    const auto own = job.items.size() - 3;
    QCOMPARE(zones, (QStringList{u"left %1"_s.arg(own - 1), u"right 2"_s, u"tail 2"_s, u"nose 1"_s, u"No zone 1"_s}));
}

/// Loose is what the loose ends name, not what looks unfinished.
void TestPerimeterOf::closedJobHasNothingLoose()
{
    core::JobState job = Story(u"Ana disconnects K1"_s).job();
    QVERIFY(drawnAs(Story(u"Ana disconnects K1"_s), u"K1"_s).endsWith(u"loose"_s));
    job.closed = job.opened;
    for (const picture::PerimeterZone &zone : picture::perimeterOf(job, core::looseEnds(job, Story().reg()))) {
        for (const picture::PerimeterItem &item : zone.items)
            QVERIFY2(!item.isLoose, qPrintable(item.id));
    }
}

void TestPerimeterOf::hoistIsToldOf_data()
{
    QTest::addColumn<QString>("told");
    QTest::addColumn<QString>("says");
    QTest::addRow("the job knows nothing of it") << QString() << QString();
    QTest::addRow("an isolation is no hoist") << u"Ana applies T1 sort=isolation name=Valve"_s << QString();
    QTest::addRow("on") << u"Ana applies T1 sort=hoist name=Beam_hoist"_s << u"Hoist on: T1 Beam hoist."_s;
    QTest::addRow("hoist and sling") << u"Ana applies T1 sort=hoist name=Beam_hoist; Ana applies T2 sort=sling name=Two_legs"_s << u"Hoist on: T1 Beam hoist. Sling on: T2 Two legs."_s;
    QTest::addRow("one of two removed") << u"Ana applies T1 sort=hoist name=Beam_hoist; Ana applies T2 sort=sling name=Two_legs; Ana removes T1"_s << u"Sling on: T2 Two legs."_s;
    QTest::addRow("a hoist removed") << u"Ana applies T1 sort=hoist name=Beam_hoist; Ana removes T1"_s << u"No hoist and no sling is on."_s;
}

void TestPerimeterOf::hoistIsToldOf()
{
    QFETCH(QString, told);
    QFETCH(QString, says);
    const Story story(told);
    QCOMPARE(story.refusedBy(), QString());
    QCOMPARE(picture::hoistInWords(story.job()), says);
}

void TestPerimeterOf::unitIsToldOf()
{
    core::JobState job = Story(u"Ana applies T1 sort=hoist name=Beam_hoist"_s).job();
    job.unit.off = core::UnitOff{*job.opened, u"S-1"_s, u"stand"_s, 0, u"U-1"_s, {}};
    QCOMPARE(picture::hoistInWords(job), u"Hoist on: T1 Beam hoist. The unit is off."_s);
    job.unit.up = core::UnitUp{*job.opened, u"S-2"_s, 0};
    QCOMPARE(picture::hoistInWords(job), u"Hoist on: T1 Beam hoist. A unit is in its place."_s);
}

QTEST_GUILESS_MAIN(TestPerimeterOf)
#include "tst_perimeter_of.moc"
