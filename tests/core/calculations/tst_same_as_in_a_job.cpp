// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include <algorithm>

#include "core/job/working_of.hpp"
#include "tests/core/calculations/calculating.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using core::measure::Working;

/// The calculator says outside a job what the sheet says inside it, step by step.
class TstSameAsInAJob : public QObject {
    Q_OBJECT

    /// All but what the sheet alone has: a setting to take over.
    static QStringList linesOf(const Working &working) { return core::measure::linesOf(working) + working.sources; }

private slots:
    void figures_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("kind");
        QTest::newRow("lift") << u"lift"_s << u"lift.planned"_s;
        QTest::newRow("servicing") << u"servicing"_s << u"servicing.recorded"_s;
        QTest::newRow("weight change") << u"weight-change"_s << u"weight.recorded"_s;
    }
    void figures()
    {
        QFETCH(QString, name);
        QFETCH(QString, kind);
        const core::Calculation &calculation = *core::findCalculation(name);
        const auto example = calculating::exampleOf(calculation);
        const auto outside = calculating::work(calculation, example);
        QVERIFY2(outside, qPrintable(calculating::said(outside)));
        const auto body = core::bodyOf(calculation, example);
        const auto inside = core::workingOf({}, {}, draft(kind, std::nullopt, *body));
        QVERIFY(inside);
        QCOMPARE(linesOf(outside->working), linesOf(*inside));
    }

    void readings_data()
    {
        QTest::addColumn<QString>("listed"); // members of the list's row
        QTest::addColumn<QString>("kind");
        QTest::addColumn<QString>("entry");
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("fields");
        const QString torque = u"requirements=torque torque_fasteners=1 torque_unit=lbf·in torque_min=50 torque_max=70 torque_prevailing=added"_s;
        QTest::newRow("torque") << torque << u"torque.applied"_s << u"fastener=1; value=68; unit=lbf·in; prevailing=8 lbf·in"_s << u"torque-reading"_s
                                << u"least=50 lbf·in; most=70 lbf·in; prevailing=8 lbf·in; indicated=68 lbf·in; acceptance=simple"_s;
        QTest::newRow("torque, too much") << torque << u"torque.applied"_s << u"fastener=1; value=78.1; unit=lbf·in; prevailing=8 lbf·in"_s << u"torque-reading"_s
                                          << u"least=50 lbf·in; most=70 lbf·in; prevailing=8 lbf·in; indicated=78.1 lbf·in; acceptance=simple"_s;
        QTest::newRow("torque, with an adapter") << u"requirements=torque torque_fasteners=1 torque_unit=lbf·in torque_min=50 torque_max=70"_s << u"torque.applied"_s << u"fastener=1; value=60; unit=lbf·in; wrench_length=10 in; extension=1.5 in; extension_angle=45 °"_s
                                                 << u"torque-reading"_s
                                                 << u"least=50 lbf·in; most=70 lbf·in; indicated=60 lbf·in; wrench_length=10 in; extension=1.5 in; extension_angle=45 °; acceptance=simple"_s;
        const QString bond = u"requirements=bonding bonding_max=2.5 bonding_unit=mΩ bonding_comparison=less_than bonding_readings=2"_s;
        QTest::newRow("bonding") << bond << u"bonding.measured"_s << u"value=1.8; unit=mΩ; second_reading=1.9 mΩ; lead_zero=0 mΩ"_s << u"bonding"_s
                                 << u"limit=2.5 mΩ; comparison=less than; reading=1.8 mΩ; second_reading=1.9 mΩ; lead_zero=0 mΩ"_s;
        QTest::newRow("bonding, at what is no longer less") << bond << u"bonding.measured"_s << u"value=2.5; unit=mΩ"_s << u"bonding"_s << u"limit=2.5 mΩ; comparison=less than; reading=2.5 mΩ"_s;
        QTest::newRow("leak rate") << u"requirements=leak leak_rate=1_mL/min"_s << u"leak.checked"_s << u"drops=12 drops/min; drops_per_ml=20"_s << u"leak-rate"_s
                                   << u"drops=12 drops/min; drops_per_ml=20; limit=1 mL/min"_s;
    }
    void readings()
    {
        QFETCH(QString, listed);
        QFETCH(QString, kind);
        QFETCH(QString, entry);
        QFETCH(QString, name);
        QFETCH(QString, fields);
        const auto told = story::Story(u"Ana lists X1 "_s + listed);
        core::json::Object body;
        for (const core::TypedField &one : calculating::typed(entry))
            body.set(one.name, one.text);
        const auto inside = core::workingOf(told.job(), told.reg(), draft(kind, u"X1"_s, body));
        QVERIFY(inside);
        const auto outside = calculating::work(name, fields);
        QVERIFY2(outside, qPrintable(calculating::said(outside)));
        QCOMPARE(linesOf(outside->working), linesOf(*inside));
    }

private:
    static core::Draft draft(const QString &kind, const std::optional<QString> &subject, const core::json::Object &body)
    {
        return {*core::PersonId::parse(u"ana"), *core::Instant::parse(u"2026-03-02T08:00:00Z"), kind, subject, body};
    }
};

QTEST_GUILESS_MAIN(TstSameAsInAJob)
#include "tst_same_as_in_a_job.moc"
