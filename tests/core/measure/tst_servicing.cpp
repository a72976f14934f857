// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include <rapidcheck.h>

#include "core/measure/servicing.hpp"

using namespace Qt::StringLiterals;
using namespace core;
using namespace core::measure;

namespace {

Quantity quantity(const QString &text)
{
    const qsizetype blank = text.indexOf(u' ');
    const auto read = Quantity::parse(text.first(blank), text.sliced(blank + 1));
    if (!read)
        qFatal("no quantity: %s", qPrintable(text));
    return *read;
}

/// "short 0.5 L", "within", "over 1 L" or "refused".
QString verdict(const QString &filled, const QString &least, const QString &most)
{
    const auto result = servicing(quantity(filled), quantity(least), quantity(most));
    if (!result)
        return u"refused"_s;
    const QString off = shownIn(result->off, *findUnit(quantity(filled).unit()), 18);
    switch (result->level) {
    case Level::TooLittle: return u"short "_s + off;
    case Level::Within: return result->off == 0 ? u"within"_s : u"within, but off "_s + off;
    case Level::TooMuch: return u"over "_s + off;
    }
    Q_UNREACHABLE();
}

} // namespace

class TestServicing : public QObject {
    Q_OBJECT

private slots:
    /// Quantities are chosen; that both ends of a band belong to it is common practice. Litres to the US quart and gallon: NIST SP 811
    /// (2008) appendix B.
    void bands_data()
    {
        QTest::addColumn<QString>("filled");
        QTest::addColumn<QString>("least");
        QTest::addColumn<QString>("most");
        QTest::addColumn<QString>("expected");
        QTest::newRow("in the middle") << u"9 L"_s << u"8 L"_s << u"10 L"_s << u"within"_s;
        QTest::newRow("exactly the least") << u"8.0 L"_s << u"8 L"_s << u"10 L"_s << u"within"_s;
        QTest::newRow("exactly the most") << u"10 L"_s << u"8 L"_s << u"10 L"_s << u"within"_s;
        QTest::newRow("under the least by the last place") << u"7.99999999999999999 L"_s << u"8 L"_s << u"10 L"_s << u"short 0.00000000000000001 L"_s;
        QTest::newRow("over the most by the last place") << u"10.0000000000000001 L"_s << u"8 L"_s << u"10 L"_s << u"over 0.0000000000000001 L"_s;
        QTest::newRow("millilitres at a least in litres") << u"8000 mL"_s << u"8 L"_s << u"10 L"_s << u"within"_s;
        QTest::newRow("millilitres under it") << u"7999 mL"_s << u"8 L"_s << u"10 L"_s << u"short 1 mL"_s;
        QTest::newRow("four quarts are a gallon") << u"4 US qt"_s << u"1 US gal"_s << u"1 US gal"_s << u"within"_s;
        QTest::newRow("a gallon in litres: 3.785411784") << u"3.785411784 L"_s << u"1 US gal"_s << u"4 US qt"_s << u"within"_s;
        QTest::newRow("a gallon in litres, over by the last place") << u"3.78541178400000001 L"_s << u"1 US gal"_s << u"4 US qt"_s << u"over 0.00000000000000001 L"_s;
        QTest::newRow("a band of one quantity, missed") << u"2 L"_s << u"3 L"_s << u"3 L"_s << u"short 1 L"_s;
        QTest::newRow("empty") << u"0 L"_s << u"8 L"_s << u"10 L"_s << u"short 8 L"_s;
        QTest::newRow("empty, as it may be") << u"0 L"_s << u"0 L"_s << u"0.2 L"_s << u"within"_s;
        QTest::newRow("eighteen digits") << u"999999999999999999 L"_s << u"0 L"_s << u"999999999999999998 L"_s << u"over 1 L"_s;
        QTest::newRow("below nought") << u"-1 L"_s << u"0 L"_s << u"10 L"_s << u"refused"_s;
        QTest::newRow("a least below nought") << u"1 L"_s << u"-1 L"_s << u"10 L"_s << u"refused"_s;
        QTest::newRow("a band the wrong way round") << u"9 L"_s << u"10 L"_s << u"8 L"_s << u"refused"_s;
        QTest::newRow("a band the wrong way round by the last place") << u"9 L"_s << u"9.00000000000000001 L"_s << u"9 L"_s << u"refused"_s;
        QTest::newRow("a weight") << u"9 kg"_s << u"8 L"_s << u"10 L"_s << u"refused"_s;
        QTest::newRow("a least of weight") << u"9 L"_s << u"8 kg"_s << u"10 L"_s << u"refused"_s;
        QTest::newRow("a most of weight") << u"9 L"_s << u"8 L"_s << u"10 kg"_s << u"refused"_s;
    }
    void bands()
    {
        QFETCH(QString, filled);
        QFETCH(QString, least);
        QFETCH(QString, most);
        QFETCH(QString, expected);
        QCOMPARE(verdict(filled, least, most), expected);
        const auto working = servicingWorking(quantity(filled), quantity(least), quantity(most));
        QCOMPARE(working.has_value(), expected != u"refused");
        if (working)
            QCOMPARE(working->answer, servicing(quantity(filled), quantity(least), quantity(most))->said);
    }

    void whatItSays()
    {
        const auto said = [](const QString &filled) { return servicing(quantity(filled), quantity(u"8 L"_s), quantity(u"10 L"_s))->said; };
        QVERIFY2(said(u"7500 mL"_s).startsWith(u"Too little: 7500 mL is 500 mL short of 8 L to 10 L."_s), qPrintable(said(u"7500 mL"_s)));
        QVERIFY2(said(u"10.25 L"_s).startsWith(u"Too much: 10.25 L is 0.25 L over 8 L to 10 L."_s), qPrintable(said(u"10.25 L"_s)));
        QCOMPARE(said(u"9 L"_s), u"9 L lies within 8 L to 10 L."_s);
        const auto working = servicingWorking(quantity(u"2 US gal"_s), quantity(u"8 US qt"_s), quantity(u"9 US qt"_s));
        QCOMPARE(working->steps[1].numbers, u"2 US gal"_s);
        QCOMPARE(working->steps[1].result, u"8 US qt"_s);
        QVERIFY(!working->sources.isEmpty());
    }

    void theUnitDoesNotMatter()
    {
        QVERIFY(rc::check("told in litres or in millilitres, the verdict is one", [] {
            const auto litres = [](qint64 millilitres) { return *Quantity::parse(u"%1.%2"_s.arg(millilitres / 1000).arg(millilitres % 1000, 3, 10, QLatin1Char('0')), u"L"); };
            const auto millilitres = [](qint64 number) { return *Quantity::parse(QString::number(number), u"mL"); };
            const qint64 filled = *rc::gen::inRange<qint64>(0, 100);
            const qint64 least = *rc::gen::inRange<qint64>(0, 100);
            const qint64 most = *rc::gen::inRange<qint64>(least, 100);
            const auto one = servicing(litres(filled), litres(least), millilitres(most));
            const auto other = servicing(millilitres(filled), litres(least), litres(most));
            RC_ASSERT(one && other);
            RC_ASSERT(one->level == other->level);
            RC_ASSERT(one->off == other->off);
            RC_ASSERT((one->level == Level::Within) == (filled >= least && filled <= most));
        }));
    }
};

QTEST_GUILESS_MAIN(TestServicing)
#include "tst_servicing.moc"
