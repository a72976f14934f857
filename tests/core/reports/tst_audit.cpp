// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/acts/act.hpp"
#include "core/reports/timeline_filter.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::Story;

/// What an auditor asks of a job.
class TestAudit : public QObject {
    Q_OBJECT

private slots:
    void everybodyWhoIsNamedIsFound();
    void whoIsFound_data();
    void whoIsFound();
    void zoneOfWhatItIsAbout();
    void struckListingKeepsItsZone();
};

/// A field that names a person is looked through by who looks for a person.
void TestAudit::everybodyWhoIsNamedIsFound()
{
    int fields = 0;
    for (const core::Act &act : core::acts()) {
        for (const core::Field &field : act.fields) {
            if (field.type != core::FieldType::Person && field.type != core::FieldType::People)
                continue;
            ++fields;
            QVERIFY2(field.refersTo == u"person", qPrintable(QString(act.kind) + u' ' + field.name));
        }
    }
    QVERIFY(fields > 10);
}

void TestAudit::whoIsFound_data()
{
    QTest::addColumn<QString>("story");
    QTest::addColumn<QString>("person");
    QTest::addColumn<QString>("kind");
    QTest::addColumn<int>("entries");
    QTest::addRow("who signed") << u"Ana disconnects D1; Ben disconnects C1"_s << u"Ana"_s << u"interface.disconnected"_s << 1;
    QTest::addRow("who helped") << u"Ana disconnects D1; Ana disconnects B1 helpers=Ben"_s << u"Ben"_s << u"interface.disconnected"_s << 1;
    QTest::addRow("who had no hand in it") << u"Ana disconnects D1; Ana disconnects B1 helpers=Ben"_s << u"Cho"_s << u"interface.disconnected"_s << 0;
}

void TestAudit::whoIsFound()
{
    QFETCH(QString, story);
    QFETCH(QString, person);
    QFETCH(QString, kind);
    QFETCH(int, entries);
    const Story told(story);
    QCOMPARE(told.refusedBy(), QString());
    const core::TimelineFilter filter{.person = core::PersonId::parse(person), .kind = kind};
    const auto &said = told.job().said;
    QCOMPARE(std::count_if(said.begin(), said.end(), [&](const core::Statement &one) { return core::fits(filter, told.job(), one, {}); }), entries);
}

void TestAudit::zoneOfWhatItIsAbout()
{
    const Story told(u"Ana disconnects D1; Ana raises F1 interface=D1"_s);
    QCOMPARE(told.refusedBy(), QString());
    const QSet<QString> zone{told.item(u"D1"_s).listed.zone};
    QVERIFY(!zone.values().front().isEmpty());
    QCOMPARE(core::zonesOf(told.job(), told.job().said.back()), zone); // the finding's interface
    QCOMPARE(core::zonesOf(told.job(), told.job().said[told.job().said.size() - 2]), zone);
    QCOMPARE(core::zonesOf(told.job(), told.job().said.front()), QSet<QString>()); // the job as a whole
}

/// Its row is struck, so that the job does not know it any more: what was said of it was said in that zone all the same.
void TestAudit::struckListingKeepsItsZone()
{
    Story told(u"Ana lists X9 zone=right"_s);
    QCOMPARE(told.refusedBy(), QString());
    const qint64 seq = told.job().said.back().seq;
    told.tell(u"Ana strikes entry=%1"_s.arg(seq));
    QCOMPARE(told.refusedBy(), QString());
    QVERIFY(!told.job().item(*core::InterfaceId::parse(u"X9")));
    const core::Statement &listed = told.job().said[static_cast<std::size_t>(seq - 1)];
    QCOMPARE(core::zonesOf(told.job(), listed), QSet<QString>{u"right"_s});
    QVERIFY(core::fits({.which = core::WhichStand::StruckOnly}, told.job(), listed, {}));
    QVERIFY(!core::fits({.which = core::WhichStand::StruckOnly}, told.job(), told.job().said.back(), {}));
}

QTEST_GUILESS_MAIN(TestAudit)
#include "tst_audit.moc"
