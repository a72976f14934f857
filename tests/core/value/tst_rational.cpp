// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include <rapidcheck.h>

#include "core/value/rational.hpp"

using namespace Qt::StringLiterals;
using core::Decimal;
using core::Rational;

namespace {

Rational number(const QString &text) { return Rational(Decimal::parse(text).value()); }
Rational some() { return Rational(*rc::gen::inRange<qint64>(-1'000'000, 1'000'000)) / Rational(*rc::gen::inRange<qint64>(1, 10'000)); }

} // namespace

class TestRational : public QObject {
    Q_OBJECT

private slots:
    void shown_data()
    {
        QTest::addColumn<QString>("numerator");
        QTest::addColumn<QString>("denominator");
        QTest::addColumn<int>("places");
        QTest::addColumn<QString>("text");
        QTest::addColumn<bool>("isExact");
        const auto row = [](const char *name, const char *numerator, const char *denominator, int places, const char *text, bool isExact) {
            QTest::newRow(name) << QString::fromLatin1(numerator) << QString::fromLatin1(denominator) << places << QString::fromLatin1(text) << isExact;
        };
        row("whole", "12", "1", 4, "12", true);
        row("a third", "1", "3", 4, "0.3333", false);
        row("two thirds round up", "2", "3", 4, "0.6667", false);
        row("half of the last place rounds away from zero", "1", "8", 2, "0.13", false);
        row("and below zero too", "-1", "8", 2, "-0.13", false);
        row("zeros at the end are left out", "1.500", "1", 4, "1.5", true);
        row("no places", "7", "2", 0, "4", false);
        row("rounded to nothing is no minus nothing", "-1", "1000", 2, "0", false);
        row("less than one", "5", "1000", 3, "0.005", true);
        row("zero", "0", "7", 4, "0", true);
        row("one part in the eighteenth place", "0.000000000000000001", "1", 18, "0.000000000000000001", true);
    }
    void shown()
    {
        QFETCH(QString, numerator);
        QFETCH(QString, denominator);
        QFETCH(int, places);
        QFETCH(QString, text);
        QFETCH(bool, isExact);
        const Rational value = number(numerator) / number(denominator);
        QCOMPARE(value.text(places), text);
        QCOMPARE(value.isExactIn(places), isExact);
    }

    void steps()
    {
        const Rational step = number(u"0.5"_s);
        QCOMPARE(number(u"2.6"_s).stepsBelow(step), Rational(5));
        QCOMPARE(number(u"2.6"_s).stepsAbove(step), Rational(6));
        QCOMPARE(number(u"2.5"_s).stepsBelow(step), Rational(5));
        QCOMPARE(number(u"2.5"_s).stepsAbove(step), Rational(5));
        QCOMPARE(number(u"-2.6"_s).stepsBelow(step), Rational(-6));
        QCOMPARE(number(u"-2.6"_s).stepsAbove(step), Rational(-5));
    }

    /// Cosines that are fractions, and others to 20 places as mathematical tables print them (from memory).
    void angles_data()
    {
        QTest::addColumn<int>("degrees");
        QTest::addColumn<QString>("cosine");
        QTest::newRow("0") << 0 << u"1"_s;
        QTest::newRow("60") << 60 << u"0.5"_s;
        QTest::newRow("90") << 90 << u"0"_s;
        QTest::newRow("120") << 120 << u"-0.5"_s;
        QTest::newRow("180") << 180 << u"-1"_s;
        QTest::newRow("270") << 270 << u"0"_s;
        QTest::newRow("300") << 300 << u"0.5"_s;
        QTest::newRow("360") << 360 << u"1"_s;
        QTest::newRow("-60") << -60 << u"0.5"_s;
        QTest::newRow("45, half the root of 2") << 45 << u"0.70710678118654752440"_s;
        QTest::newRow("30, half the root of 3") << 30 << u"0.86602540378443864676"_s;
        QTest::newRow("36, a quarter of 1 + the root of 5") << 36 << u"0.80901699437494742410"_s;
    }
    void angles()
    {
        QFETCH(int, degrees);
        QFETCH(QString, cosine);
        const QString wanted = cosine.endsWith(u'0') && cosine.contains(u'.') ? cosine.chopped(1) : cosine;
        QCOMPARE(core::cosine(Rational(degrees)).text(20), wanted);
        QCOMPARE(core::sine(Rational(degrees + 90)).text(20), wanted);
        // Half an angle that is told as a fraction of a degree.
        QCOMPARE(core::cosine(Rational(2 * degrees) / Rational(2)).text(20), wanted);
    }

    void roots()
    {
        QCOMPARE(core::squareRoot(number(u"6.25"_s)), number(u"2.5"_s));
        QCOMPARE(core::squareRoot(Rational(0)), Rational(0));
        QCOMPARE(core::squareRoot(Rational(2)).text(20), u"1.4142135623730950488"_s);
    }

    /// Nothing is lost: what decimals of any length would round, a fraction keeps.
    void keepsEverything()
    {
        QVERIFY(rc::check("a + b − b is a", [] {
            const Rational a = some();
            const Rational b = some();
            RC_ASSERT(a + b - b == a);
        }));
        QVERIFY(rc::check("a · b / b is a", [] {
            const Rational a = some();
            const Rational b = some();
            RC_PRE(b != Rational(0));
            RC_ASSERT(a * b / b == a);
        }));
        QVERIFY(rc::check("sine and cosine lie on a circle, to the places that are kept", [] {
            const Rational degrees = some();
            const Rational off = core::sine(degrees) * core::sine(degrees) + core::cosine(degrees) * core::cosine(degrees) - Rational(1);
            RC_ASSERT(off.text(38) == u"0"_s);
        }));
        QVERIFY(rc::check("steps bracket the value", [] {
            const Rational value = some();
            const Rational step = Rational(*rc::gen::inRange<qint64>(1, 1000)) / Rational(100);
            RC_ASSERT(value.stepsBelow(step) * step <= value);
            RC_ASSERT(value.stepsAbove(step) * step >= value);
            RC_ASSERT((value.stepsAbove(step) - value.stepsBelow(step)) <= Rational(1));
        }));
    }
};

QTEST_GUILESS_MAIN(TestRational)
#include "tst_rational.moc"
