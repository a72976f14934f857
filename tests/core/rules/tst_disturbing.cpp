// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/acts/voids.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::Story;

/// What a disturbance voids is told before anybody signs it, and is what the signed entry then does. That work repeated on one joint leaves
/// unproven whatever was built or checked upon it: common practice.
class TestDisturbing : public QObject {
    Q_OBJECT

    static QString told(const std::vector<core::Voided> &voided)
    {
        QStringList lines;
        for (const core::Voided &one : voided)
            lines << one.what + u' ' + one.subject;
        return lines.join(u", "_s);
    }

private slots:
    void whatGoes_data()
    {
        QTest::addColumn<QString>("before");
        QTest::addColumn<QString>("item");
        QTest::addColumn<QString>("voided");
        const auto row = [](const char *name, const QString &before, const char *item, const char *voided) { QTest::newRow(name) << before << QString::fromLatin1(item) << QString::fromLatin1(voided); };
        const QString secured = u"Ana disconnects D1; Ben reconnects D1; Ben torques D1; Ben safeties D1"_s;
        row("never undone", {}, "D1", "");
        row("off", u"Ana disconnects D1"_s, "D1", "");
        row("joined, nothing shown", u"Ana disconnects K1; Ana reconnects K1"_s, "K1", "");
        row("not on the list", {}, "Z9", "");
        row("torqued and safetied", secured, "D1", "torque D1, safetying D1");
        row("inspected", secured + u"; Cho accepts D1"_s, "D1", "torque D1, safetying D1, inspection D1");
        row("bonded", u"Ana disconnects B1; Ana reconnects B1; Ana measures B1"_s, "B1", "bonding B1");
        row("leak checked", u"Ana lists L1 requirements=leak leak_rate=1_mL/min; Ana disconnects L1; Ana reconnects L1; Ana checks L1"_s, "L1", "leak L1");
        row("a twin that was inspected", u"Ana disconnects F1; Ana reconnects F1; Ana torques F1; Cho accepts F1; Ana disconnects F2; Ana reconnects F2; Ana torques F2"_s, "F2", "torque F2");
        row("inspected, and its twin as well", u"Ana disconnects F1; Ana disconnects F2; Ana reconnects F1; Ana torques F1; Ana reconnects F2; Ana torques F2; Cho accepts F1; Cho accepts F2"_s, "F2", "torque F2, inspection F2, inspection F1");
        row("twins verified", u"Ana lists T1 twin_group=sense aircraft_half=P7 unit_half=J7; Ana lists T2 twin_group=sense aircraft_half=P8 unit_half=J8; Ana disconnects T1; Ana disconnects T2; Ben reconnects T1; Ben reconnects T2; Cho verifies T1"_s, "T2", "twins T2, twins T1");

        const QString band = u" requirements=torque torque_fasteners=1 torque_min=20 torque_max=25 torque_unit=N·m"_s;
        const QString chain = u"Ana lists P1 depends_on=K1"_s + band + u"; Ana lists P2 depends_on=P1"_s + band + u"; Ana lists P3 depends_on=K1; Ana disconnects K1; Ana reconnects K1; "
                              "Ana disconnects P1; Ana reconnects P1; Ana torques P1; Ana disconnects P2; Ana reconnects P2; Ana torques P2; Ana disconnects P3; Ana reconnects P3; Cho accepts P3"_s;
        row("what depends on it, and on that in turn", chain, "K1", "torque P1, torque P2, inspection P3");
        row("what it depends on stays", chain, "P2", "torque P2");
        row("a dependent that was never undone", u"Ana lists P1 depends_on=K1; Ana disconnects K1; Ana reconnects K1"_s, "K1", "");

        const QString test = u"Ana disconnects K1; Ana reconnects K1; Ana tests R1 covers=K1"_s;
        row("a test that covered it", test, "K1", "test R1");
        row("a test that covered others", test + u"; Ana disconnects B1; Ana reconnects B1"_s, "B1", "");
        row("a test that had failed", test + u" result=failed reopens=K1"_s, "K1", "");
        const QString hold = uR"(Ana sets done conditions=[{"what":"interfaces","stage":"inspected","interfaces":["K1"]}] gates=[{"act":"job.closed"}]; Ana disconnects K1; Ana reconnects K1; Cho accepts K1)"_s;
        row("a hold point that was passed on it", hold + u"; Ana passes done"_s, "K1", "inspection K1, hold done");
        row("a hold point that nobody passed", hold, "K1", "inspection K1");
    }
    void whatGoes()
    {
        QFETCH(QString, before);
        QFETCH(QString, item);
        QFETCH(QString, voided);
        Story story(before);
        QVERIFY2(story.refusedSentence().isEmpty(), qPrintable(story.refusedSentence() + u' ' + story.refusedBy()));
        const core::JobState as = story.job();
        const auto foretold = core::whatDisturbingVoids(as, *core::InterfaceId::parse(item));
        QCOMPARE(told(foretold), voided);
        for (const core::Voided &one : foretold)
            QVERIFY2(!one.sentence.isEmpty() && !one.sentence.contains(u'%'), qPrintable(one.sentence));
        if (!as.item(*core::InterfaceId::parse(item)) || !as.item(*core::InterfaceId::parse(item))->restoration)
            return;
        story.tell(u"Ben disturbs "_s + item);
        QCOMPARE(story.refusedBy(), QString());
        auto happened = core::whatWasVoided(as, story.job());
        std::stable_partition(happened.begin(), happened.end(), [&](const core::Voided &one) { return one.subject == item; });
        QCOMPARE(told(happened), voided);
    }

    /// Undoing and rejecting an interface take back what depends on it as a disturbance does; striking the entry would bring an inspection back.
    void undoingAndRejectingDoTheSame()
    {
        const QString inspected = u"Ana lists P1 depends_on=K1; Ana disconnects K1; Ana reconnects K1; Ana disconnects P1; Ana reconnects P1; Cho accepts P1"_s;
        for (const QString &act : {u"Ben disconnects K1"_s, u"Ben finds-open K1"_s, u"Ben disturbs K1"_s, u"Cho rejects K1"_s}) {
            Story story(inspected);
            QCOMPARE(story.stage(u"P1"_s), u"inspected"_s);
            story.tell(act);
            QCOMPARE(story.refusedBy(), QString());
            QCOMPARE(story.stage(u"P1"_s), u"secured"_s);
        }
        Story story(inspected + u"; Ben disturbs K1; Ben strikes entry=18"_s);
        QCOMPARE(story.refusedBy(), u"strike.back"_s);
    }
};

QTEST_GUILESS_MAIN(TestDisturbing)
#include "tst_disturbing.moc"
