// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/requirements/catalogue.hpp"
#include "core/requirements/torque.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::Story;

/// What each requirement asks to be shown of a joint, one deed short and complete.
class TestRequirements : public QObject {
    Q_OBJECT

    static QString asking(const QString &requirement)
    {
        return u"Ana lists X1 requirements=%1 torque_fasteners=2 torque_min=20 torque_max=25 torque_unit=N·m bonding_max=2.5 bonding_unit=mΩ seal_part=S-100 "
               "safetying=lockwire aircraft_half=P9 unit_half=J9 leak_rate=0_mL/min hardware=[{\"part\":\"BOLT-6\",\"quantity\":4},{\"part\":\"SEAL-28\",\"quantity\":1,\"new\":true}]"_s.arg(requirement);
    }

private slots:
    void eachIsShown_data()
    {
        QTest::addColumn<QString>("requirement");
        QTest::addColumn<QString>("short_");
        QTest::addColumn<QString>("last");
        QTest::newRow("torque") << u"torque"_s << u"Ana disconnects X1; Ana reconnects X1; Ana torques X1 fastener=1"_s << u"Ana torques X1 fastener=2"_s;
        QTest::newRow("bonding") << u"bonding"_s << u"Ana disconnects X1; Ana reconnects X1"_s << u"Ana measures X1"_s;
        QTest::newRow("safetying") << u"safetying"_s << u"Ana disconnects X1; Ana reconnects X1"_s << u"Ana safeties X1"_s;
        QTest::newRow("seal") << u"seal"_s << u"Ana disconnects X1"_s << u"Ana reconnects X1"_s;
        QTest::newRow("hardware") << u"hardware"_s << u"Ana disconnects X1"_s << u"Ana reconnects X1"_s;
        QTest::newRow("mate") << u"mate"_s << u"Ana disconnects X1"_s << u"Ana reconnects X1"_s;
        QTest::newRow("leak") << u"leak"_s << u"Ana disconnects X1; Ana reconnects X1"_s << u"Ana checks X1 rate=0_mL/min"_s;
        QTest::newRow("blanks") << u"blanks"_s << u"Ana disconnects X1 blanks_fitted=2"_s << u"Ana reconnects X1"_s;
    }
    void eachIsShown()
    {
        QFETCH(QString, requirement);
        QFETCH(QString, short_);
        QFETCH(QString, last);
        const core::Requirement *asked = core::findRequirement(requirement);
        QVERIFY(asked);
        Story story(asking(requirement) + u';' + short_);
        QCOMPARE(story.refusedSentence(), QString());
        const auto why = asked->missing(story.item(u"X1"_s));
        QVERIFY(why && why->endsWith(u'.'));
        story.tell(last);
        QCOMPARE(story.refusedBy(), QString());
        QVERIFY(!asked->missing(story.item(u"X1"_s)));
        QCOMPARE(story.stage(u"X1"_s), u"secured"_s);
    }

    void everyRequirementHasItsRow()
    {
        QCOMPARE(core::requirements().size(), 8U);
        QVERIFY(!core::findRequirement(u"prayer"));
    }

    /// A joint that was made badly, as a ledger from elsewhere may tell it: the old seal, the wrong mate, a blank inside.
    void madeBadly()
    {
        Story story(asking(u"seal,mate,blanks,hardware"_s) + u"; Ana disconnects X1 blanks_fitted=2; Ana reconnects X1"_s);
        QCOMPARE(story.refusedSentence(), QString());
        const core::InterfaceState good = story.item(u"X1"_s);
        QVERIFY(core::isEverythingShown(good));
        const auto stillOpen = [&](auto change) {
            core::InterfaceState item = good;
            change(*item.restoration);
            QStringList names;
            for (const auto &[requirement, sentence] : core::stillToShow(item))
                names << requirement->name;
            return names.join(u' ');
        };
        QCOMPARE(stillOpen([](core::Restoration &r) { r.sealBatch.clear(); }), u"seal"_s);
        QCOMPARE(stillOpen([](core::Restoration &r) { r.unitHalf = u"J8"_s; }), u"mate"_s);
        QCOMPARE(stillOpen([](core::Restoration &r) { r.aircraftHalf.clear(); }), u"mate"_s);
        QCOMPARE(stillOpen([](core::Restoration &r) { r.blanksRemoved = 1; }), u"blanks"_s);
        QCOMPARE(stillOpen([](core::Restoration &r) { r.hardware.clear(); }), u"hardware"_s);
        QCOMPARE(stillOpen([](core::Restoration &r) { r.hardware.front().reused = 3; }), u"hardware"_s);
    }

    /// Readings on fasteners that the joint does not have count for none that it has.
    void fastenersThatThereAreNot()
    {
        Story story(u"Ana disconnects D1; Ana reconnects D1; Ana torques D1 fastener=2"_s);
        core::InterfaceState item = story.item(u"D1"_s);
        QCOMPARE(core::fastenersWithoutTorque(item), std::vector<qint64>{1});
        item.torque.front().fastener = 3;
        QCOMPARE(core::fastenersWithoutTorque(item), (std::vector<qint64>{1, 2}));
        item.torque.front().fastener = 0;
        QCOMPARE(core::fastenersWithoutTorque(item), (std::vector<qint64>{1, 2}));
        QVERIFY(core::missingTorque(item)->contains(u"1, 2 of 2"));
        QVERIFY(core::fastenersWithoutTorque(story.item(u"K1"_s)).empty());
        QVERIFY(!core::missingTorque(story.item(u"K1"_s)));
    }
};

QTEST_GUILESS_MAIN(TestRequirements)
#include "tst_requirements.moc"
