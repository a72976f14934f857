// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::Story;

/// Who may inspect. 14 CFR 121.371(c): nobody performs the required inspection of an item of work they performed. That helping,
/// supervising and teaching count as a hand in it: common practice.
class TestIndependence : public QObject {
    Q_OBJECT

private slots:
    void whoMayInspect_data()
    {
        QTest::addColumn<QString>("before");
        QTest::addColumn<QString>("act");
        QTest::addColumn<QString>("refusedBy");
        const auto row = [](const char *name, const char *before, const char *act, const char *refusedBy) {
            QTest::newRow(name) << QString::fromLatin1(before) << QString::fromLatin1(act) << QString::fromLatin1(refusedBy);
        };
        const char *plain = "Ana disconnects K1; Ben reconnects K1";
        row("had no hand in it", plain, "Cho accepts K1", "");
        row("reconnected it", plain, "Ben accepts K1", "independence.own-work");
        row("disconnected it", "Ana disconnects K1 helpers=Ben; Dee reconnects K1", "Ben accepts K1", "independence.own-work");
        row("helped to reconnect it", "Ana disconnects K1; Dee reconnects K1 helpers=Cho", "Cho accepts K1", "independence.own-work");
        row("only on an earlier shift", "Ana disconnects K1 helpers=Cho; Ana hands-over; Lee takes-shift; Max reconnects K1", "Cho accepts K1", "independence.own-work");
        row("held the wrench", "Ana disconnects F1; Ana reconnects F1; Ben torques F1", "Ben accepts F1", "independence.own-work independence.own-group");
        row("measured it", "Ana disconnects B1; Ana reconnects B1; Ben measures B1", "Ben accepts B1", "independence.own-work");
        row("measured by another", "Ana disconnects B1; Ana reconnects B1; Ben measures B1", "Cho accepts B1", "");
        row("disturbed it", "Ana disconnects K1; Ana reconnects K1; Cho disturbs K1", "Cho accepts K1", "independence.own-work");
        row("told of somebody else's disturbance", "Ana disconnects K1; Ana reconnects K1; Cho disturbs K1 disturbed_by=Ben", "Cho accepts K1", "");
        row("found it open, did not open it", "Cho finds-open K1; Ben reconnects K1", "Cho accepts K1", "");
        row("found it open after working on it", "Ana disconnects K1; Ben reconnects K1; Ben finds-open K1; Ana reconnects K1", "Ben accepts K1", "independence.own-work");

        row("hand in another of the group, critical", "Ana disconnects M1 helpers=Cho; Ana disconnects M2; Ana reconnects M2; Ana torques M2", "Cho accepts M2", "independence.own-group");
        row("hand in another critical one, both without a group", "Ana lists X1 critical=yes; Ana lists X2 critical=yes; Ana disconnects X1 helpers=Cho; Ana disconnects X2; Ana reconnects X2", "Cho accepts X2", "");
        row("hand in none of the group", "Ana disconnects M1; Ana disconnects M2; Ana reconnects M2; Ana torques M2", "Cho accepts M2", "");
        row("hand in the twin", "Ana disconnects F1; Ana disconnects F2 helpers=Cho; Ana reconnects F1; Ana torques F1", "Cho accepts F1", "independence.own-group");
        row("hand in another item that is not critical", "Ana disconnects B1 helpers=Cho; Ana disconnects K1; Ana reconnects K1", "Cho accepts K1", "");

        const char *mount = "Ana disconnects M1; Ana reconnects M1; Ana torques M1; Cho accepts M1";
        row("the second of two, another person", mount, "Eva accepts M1", "");
        row("the second of two, the same person", mount, "Cho accepts M1", "independence.second-person");
        row("a third", "Ana disconnects M1; Ana reconnects M1; Ana torques M1; Cho accepts M1; Eva accepts M1", "Uma accepts M1", "inspection.once");
    }
    void whoMayInspect()
    {
        QFETCH(QString, before);
        QFETCH(QString, act);
        QFETCH(QString, refusedBy);
        Story story(before);
        QCOMPARE(story.refusedSentence(), QString());
        story.tell(act);
        QCOMPARE(story.refusedBy(), refusedBy);
    }

    void whoIsAuthorised_data()
    {
        QTest::addColumn<QString>("act");
        QTest::addColumn<QString>("refusedBy");
        const auto row = [](const char *name, const char *act, const char *refusedBy) { QTest::newRow(name) << QString::fromLatin1(act) << QString::fromLatin1(refusedBy); };
        row("an inspector of all kinds", "Cho accepts K1", "");
        row("an inspector of ducts, a clamp", "Tim accepts K1", "inspection.authorised");
        row("ran out two days ago", "Ida accepts K1", "inspection.authorised");
        row("withdrawn", "Wes accepts K1", "inspection.authorised");
        row("no inspector", "Rae accepts K1", "inspection.authorised");
        row("rejecting asks for the same", "Ida rejects K1", "inspection.authorised");
        row("rejecting, authorised", "Cho rejects K1", "");
        row("not enrolled", "Nobody accepts K1", "person.enrolled inspection.authorised");
    }
    void whoIsAuthorised()
    {
        QFETCH(QString, act);
        QFETCH(QString, refusedBy);
        Story story(u"Ana disconnects K1; Ana reconnects K1"_s);
        story.tell(act);
        QCOMPARE(story.refusedBy(), refusedBy);
    }

    /// The last day counts whole, the next not at all (UTC).
    void authorisationHoldsToItsLastDay_data()
    {
        QTest::addColumn<QString>("at");
        QTest::addColumn<bool>("holds");
        QTest::newRow("last millisecond of the last day") << u"2026-02-28T23:59:59.999Z"_s << true;
        QTest::newRow("first of the next") << u"2026-03-01T00:00:00.000Z"_s << false;
        QTest::newRow("first day, first millisecond") << u"2026-01-01T00:00:00.000Z"_s << true;
        QTest::newRow("the day before") << u"2025-12-31T23:59:59.999Z"_s << false;
    }
    void authorisationHoldsToItsLastDay()
    {
        QFETCH(QString, at);
        QFETCH(bool, holds);
        const Story story;
        const core::Need need{.authority = core::Authority::Inspect, .kind = u"mount"_s, .aircraftType = u"TF-2"_s, .at = *core::Instant::parse(at)};
        QCOMPARE(core::authorisationFor(story.reg(), *core::PersonId::parse(u"Ida"), need) != nullptr, holds);
    }

    void anotherAircraftTypeIsNotCovered()
    {
        const Story story;
        const core::Need need{.authority = core::Authority::Inspect, .aircraftType = u"TF-3"_s, .at = *core::Instant::parse(u"2026-03-02T06:00:00Z")};
        QVERIFY(!core::authorisationFor(story.reg(), *core::PersonId::parse(u"Cho"), need));
    }
};

QTEST_GUILESS_MAIN(TestIndependence)
#include "tst_independence.moc"
