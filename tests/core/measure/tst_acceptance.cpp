// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/measure/acceptance.hpp"

using namespace Qt::StringLiterals;
using namespace core;
using namespace core::measure;

namespace {

Quantity torque(const QString &text) { return Quantity::read(text, Dimension::Torque).value(); }
Rational number(const char *text) { return Rational(Decimal::parse(QString::fromLatin1(text)).value()); }
Decimal percent(const char *text) { return Decimal::parse(QString::fromLatin1(text)).value(); }

} // namespace

class TestAcceptance : public QObject {
    Q_OBJECT

private slots:
    /// Acceptance limits: TL, w, A.
    void guardBands()
    {
        // ILAC-G8:09/2019 by a decision-rule page: TL 4.00, w 0 accepts 3.20; published.
        QCOMPARE(guardedUpper(number("4.00"), number("0")), number("4"));
        // The same with w = U = 1.600: computed from its inputs. 3.20 is then no plain pass.
        QCOMPARE(guardedUpper(number("4.00"), number("1.600")), number("2.4"));
        QVERIFY(number("3.20") > guardedUpper(number("4.00"), number("1.600")));
        // Metrology guide, micrometer: MPE 0.003 mm, U 0.0010 mm: 0.002 mm; published. A deviation of 0.0017 mm conforms.
        QCOMPARE(guardedUpper(number("0.003"), number("0.0010")), number("0.002"));
        QVERIFY(number("0.0017") <= guardedUpper(number("0.003"), number("0.0010")));
        QCOMPARE(guardedLower(number("-0.003"), number("0.0010")), number("-0.002"));
        // Upper torque limit 70 N·m, U 1.5 N·m, w = U: 68.5 N·m; rule of ILAC-G8:09/2019, inputs chosen.
        QCOMPARE(guardedUpper(number("70"), number("1.5")), number("68.5"));
    }

    /// ISO 6789:2003, type II class A, by a maker's leaflet: 4 % of the reading over 10 N·m, 6 % up to it; readings chosen.
    void deviations()
    {
        QCOMPARE(permissibleDeviation(number("50"), percent("4")), number("2"));
        QCOMPARE(permissibleDeviation(number("5"), percent("6")), number("0.3"));
    }

    void readings_data()
    {
        QTest::addColumn<QString>("least");
        QTest::addColumn<QString>("most");
        QTest::addColumn<QString>("reading");
        QTest::addColumn<QString>("deviation");
        QTest::addColumn<bool>("guarded");
        QTest::addColumn<QString>("refusedFor"); // a word of the reason
        const auto row = [](const char *name, const char *least, const char *most, const char *reading, const char *deviation, bool guarded, const char *refusedFor) {
            QTest::newRow(name) << QString::fromUtf8(least) << QString::fromUtf8(most) << QString::fromUtf8(reading) << QString::fromUtf8(deviation) << guarded << QString::fromUtf8(refusedFor);
        };
        // AC 43.13-1B (9/8/98) par. 7-40 f: 58 to 78 lbf·in with the drag; do not exceed.
        row("at the most", "58 lbf·in", "78 lbf·in", "78.0 lbf·in", "", false, "");
        row("over the most", "58 lbf·in", "78 lbf·in", "78.1 lbf·in", "", false, "too much");
        row("at the least", "58 lbf·in", "78 lbf·in", "58 lbf·in", "", false, "");
        row("under the least", "58 lbf·in", "78 lbf·in", "57.99999999999999 lbf·in", "", false, "too little");
        // 12 in are a foot: exactly the same torque.
        row("at the most in another unit", "1 lbf·ft", "2 lbf·ft", "24 lbf·in", "", false, "");
        row("over the most in another unit", "1 lbf·ft", "2 lbf·ft", "24.0000000000001 lbf·in", "", false, "too much");
        row("with a guard band, on its inner edge", "90 N·m", "104 N·m", "100 N·m", "4", true, "");
        row("with a guard band, one in the last place beyond", "90 N·m", "104 N·m", "100.00001 N·m", "4", true, "guard band");
        row("the same without one", "90 N·m", "104 N·m", "100.00001 N·m", "4", false, "");
        row("with a guard band, on its lower edge", "96 N·m", "120 N·m", "100 N·m", "4", true, "");
        row("with a guard band, below it", "96 N·m", "120 N·m", "99.9999 N·m", "4", true, "guard band");
        row("with a guard band and no deviation on record", "90 N·m", "110 N·m", "100 N·m", "", true, "register");
        row("too much is too much, guarded or not", "90 N·m", "104 N·m", "105 N·m", "4", true, "too much");
    }
    void readings()
    {
        QFETCH(QString, least);
        QFETCH(QString, most);
        QFETCH(QString, reading);
        QFETCH(QString, deviation);
        QFETCH(bool, guarded);
        QFETCH(QString, refusedFor);
        const auto off = deviation.isEmpty() ? std::nullopt : Decimal::parse(deviation);
        const auto judged = judgeTorque(torque(reading), std::nullopt, torqueBand(torque(least), torque(most)), off, guarded ? DecisionRule::Guarded : DecisionRule::Simple);
        QVERIFY(judged);
        QCOMPARE(judged->refused.value_or(QString()).isEmpty(), refusedFor.isEmpty());
        QVERIFY2(judged->refused.value_or(QString()).contains(refusedFor), qPrintable(judged->refused.value_or(QString())));
        QCOMPARE(judged->working.answer.isEmpty(), false);
    }

    /// What counts is what arrives at the fastener: 60 lbf·in on a 12 in wrench with 2 in more give 70 (TM 9-254 par. 4-1 d, fig. 4-5).
    void throughAnAdapter()
    {
        const Lever arm{Quantity::read(u"12 in", Dimension::Length).value(), Quantity::read(u"2 in", Dimension::Length).value(), percent("0")};
        const TorqueBand band = torqueBand(torque(u"70 lbf·in"_s), torque(u"75 lbf·in"_s));
        const auto judged = judgeTorque(torque(u"60 lbf·in"_s), arm, band, percent("4"), DecisionRule::Simple);
        QVERIFY(judged && !judged->refused);
        QCOMPARE(inUnit(judged->applied, *band.unit).text(6), u"70"_s);
        QCOMPARE(inUnit(*judged->deviation, *band.unit).text(6), u"2.8"_s);
        QVERIFY(judgeTorque(torque(u"59.999 lbf·in"_s), arm, band, percent("4"), DecisionRule::Simple)->refused);
        QVERIFY(linesOf(judged->working).join(u' ').contains(u"cos 0°"));
        QVERIFY2(judged->working.notes.join(u' ').contains(u"beyond the edge"), "a reading nearer to an edge than the tool's deviation says so");
    }
};

QTEST_GUILESS_MAIN(TestAcceptance)
#include "tst_acceptance.moc"
