// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/value/quantity.hpp"

using namespace Qt::StringLiterals;
using core::Dimension;
using core::Quantity;

class TestQuantity : public QObject {
    Q_OBJECT

private slots:
    /// One of each unit in the coherent unit of its dimension.
    void factors_data()
    {
        QTest::addColumn<QString>("one");
        QTest::addColumn<QString>("coherent");
        const auto row = [](const char *source, const char *one, const char *coherent) { QTest::newRow(source) << QString::fromUtf8(one) << QString::fromLatin1(coherent); };
        row("product of 0.45359237 kg, 9.80665 m/s2, 0.0254 m; NIST SP 811 (2008) App. B.8 prints 1.129 848 E-01", "lbf·in", "0.1129848290276167");
        row("12 of those; NIST SP 811 (2008) App. B.8 prints 1.355 818 E+00", "lbf·ft", "1.3558179483314004");
        row("NIST SP 811 (2008) App. B.8", "kgf·m", "9.80665");
        row("SI, torque", "N·m", "1");
        row("SI, thousandth of an ohm", "mΩ", "0.001");
        row("international pound, 1959; NIST SP 811 App. B (from memory)", "lb", "0.45359237");
        row("international inch; NIST SP 811 App. B (from memory)", "in", "0.0254");
        row("international foot; NIST SP 811 App. B (from memory)", "ft", "0.3048");
        row("231 cubic inches, a quarter; NIST SP 811 App. B (from memory)", "US qt", "0.946352946");
        row("231 cubic inches; NIST SP 811 App. B (from memory)", "US gal", "3.785411784");
        row("product of pound and inch", "lb·in", "0.011521246198");
        row("SI, thousandth of a litre a minute", "mL/min", "0.001");
    }
    void factors()
    {
        QFETCH(QString, one);
        QFETCH(QString, coherent);
        const auto quantity = Quantity::parse(u"1", one);
        QVERIFY(quantity);
        QCOMPARE(quantity->coherent(), core::Rational(core::Decimal::parse(coherent).value()));
    }

    /// Exact: 12 lbf·in are a lbf·ft, to the last digit.
    void comparesAcrossUnits()
    {
        const auto of = [](const QString &text, Dimension dimension) { return Quantity::read(text, dimension).value(); };
        QVERIFY(of(u"12 lbf·in"_s, Dimension::Torque) == of(u"1 lbf·ft"_s, Dimension::Torque));
        QVERIFY(of(u"12.00000000000001 lbf·in"_s, Dimension::Torque) > of(u"1 lbf·ft"_s, Dimension::Torque));
        QVERIFY(of(u"0.003 Ω"_s, Dimension::Resistance) == of(u"3 mΩ"_s, Dimension::Resistance));
        QVERIFY(of(u"4 US qt"_s, Dimension::Volume) == of(u"1 US gal"_s, Dimension::Volume));
        QVERIFY(of(u"25.4 mm"_s, Dimension::Length) == of(u"1 in"_s, Dimension::Length));
        // A weight's moment is no torque, though both are a length times something.
        QVERIFY((of(u"1 kg·m"_s, Dimension::Moment) <=> of(u"1 N·m"_s, Dimension::Torque)) == std::partial_ordering::unordered);
    }

    void read_data()
    {
        QTest::addColumn<QString>("typed");
        QTest::addColumn<Dimension>("dimension");
        QTest::addColumn<QString>("kept");   // empty where it is refused
        QTest::addColumn<QString>("because"); // a word of the reason
        const auto row = [](const char *typed, Dimension dimension, const char *kept, const char *because = "") {
            QTest::newRow(typed) << QString::fromUtf8(typed) << dimension << QString::fromUtf8(kept) << QString::fromLatin1(because);
        };
        row("135 lbf·in", Dimension::Torque, "135 lbf·in");
        row("135.0lbf·in", Dimension::Torque, "135.0 lbf·in");
        row("  22.50   N·m ", Dimension::Torque, "22.50 N·m");
        row("22.5 Nm", Dimension::Torque, "22.5 N·m");
        row("22.5 N.m", Dimension::Torque, "22.5 N·m");
        row("50 lbf*in", Dimension::Torque, "50 lbf·in");
        row("2.5 mohm", Dimension::Resistance, "2.5 mΩ");
        row("10 US qt", Dimension::Volume, "10 US qt");
        row("-49 in", Dimension::Length, "-49 in");
        row("45 deg", Dimension::Angle, "45 °");
        row("12 drops/min", Dimension::DropRate, "12 drops/min");
        row("135", Dimension::Torque, "", "no unit");
        row("135 in-lb", Dimension::Torque, "", "not known");
        row("135 cubits", Dimension::Length, "", "not known");
        row("135 mm", Dimension::Torque, "", "a length");
        row("135 lb", Dimension::Torque, "", "a weight");
        row("22,5 N·m", Dimension::Torque, "", "comma");
        row("1,000 N·m", Dimension::Torque, "", "comma");
        row("N·m", Dimension::Torque, "", "no number");
        row("", Dimension::Torque, "", "no number");
        row("1e3 N·m", Dimension::Torque, "", "not known");
        row("+5 N·m", Dimension::Torque, "", "no number");
        row("1234567890123456789012345678901234567890 N·m", Dimension::Torque, "", "18 digits");
        row("0.1234567890123456789012345678901234567890 N·m", Dimension::Torque, "", "18 digits");
        row("123456789.012345678 N·m", Dimension::Torque, "123456789.012345678 N·m");
    }
    void read()
    {
        QFETCH(QString, typed);
        QFETCH(Dimension, dimension);
        QFETCH(QString, kept);
        QFETCH(QString, because);
        const auto quantity = Quantity::read(typed, dimension);
        QCOMPARE(quantity ? quantity->text() : QString(), kept);
        if (!quantity)
            QVERIFY2(quantity.error().message.contains(because), qPrintable(quantity.error().message));
    }

    void everyUnitIsReadBackByItsSymbol()
    {
        QSet<QString> symbols;
        for (const core::Unit &unit : core::units()) {
            QVERIFY2(!symbols.contains(unit.symbol), qPrintable(unit.symbol));
            symbols.insert(unit.symbol);
            QCOMPARE(core::findUnit(unit.symbol), &unit);
            const auto quantity = Quantity::read(u"1.5 "_s + unit.symbol, unit.dimension);
            QVERIFY2(quantity && quantity->unit() == unit.symbol, qPrintable(unit.symbol));
            QVERIFY(!core::dimensionInWords(unit.dimension).isEmpty());
            QCOMPARE(core::inUnit(quantity->coherent(), unit).text(4), u"1.5"_s);
        }
    }
};

QTEST_GUILESS_MAIN(TestQuantity)
#include "tst_quantity.moc"
