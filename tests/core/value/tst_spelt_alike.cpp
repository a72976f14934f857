// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/value/spelt_alike.hpp"

using namespace Qt::StringLiterals;

/// What somebody meant who mistyped a name.
class TestSpeltAlike : public QObject {
    Q_OBJECT

private slots:
    void distance_data();
    void distance();
    void alike_data();
    void alike();
    void nearestComeFirstAndFewOfThem();
};

void TestSpeltAlike::distance_data()
{
    QTest::addColumn<QString>("a");
    QTest::addColumn<QString>("b");
    QTest::addColumn<int>("distance");
    // The examples with which the distance is commonly taught (from memory).
    QTest::addRow("kitten, sitting") << u"kitten"_s << u"sitting"_s << 3;
    QTest::addRow("Saturday, Sunday") << u"Saturday"_s << u"Sunday"_s << 3;
    QTest::addRow("CA, ABC: no stretch is edited twice") << u"CA"_s << u"ABC"_s << 3;
    // Damerau 1964: one slip is one letter wrong, missing or too many, or two neighbours swapped.
    QTest::addRow("the same") << u"TW-15"_s << u"TW-15"_s << 0;
    QTest::addRow("wrong") << u"TW-15"_s << u"TW-16"_s << 1;
    QTest::addRow("missing") << u"TW-15"_s << u"TW15"_s << 1;
    QTest::addRow("too many") << u"TW-15"_s << u"TW-155"_s << 1;
    QTest::addRow("swapped") << u"TW-15"_s << u"TW-51"_s << 1;
    QTest::addRow("swapped, with one between") << u"TW-15"_s << u"T-W15"_s << 1;
    QTest::addRow("swapped over a gap") << u"abc"_s << u"cba"_s << 2;
    QTest::addRow("from nothing") << QString() << u"TW"_s << 2;
    QTest::addRow("to nothing") << u"TW"_s << QString() << 2;
}

void TestSpeltAlike::distance()
{
    QFETCH(QString, a);
    QFETCH(QString, b);
    QFETCH(int, distance);
    QCOMPARE(core::spellingDistance(a, b), qsizetype{distance});
    QCOMPARE(core::spellingDistance(b, a), qsizetype{distance});
}

void TestSpeltAlike::alike_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<QString>("known");
    QTest::addColumn<bool>("isAlike");
    QTest::addRow("one slip in a short name") << u"TW-51"_s << u"TW-15"_s << true;
    QTest::addRow("two slips in a short name") << u"TW-99"_s << u"TW-15"_s << false;
    QTest::addRow("large and small letters") << u"tw-15"_s << u"TW-15"_s << true;
    QTest::addRow("a slip and small letters") << u"tw15"_s << u"TW-15"_s << true;
    QTest::addRow("two slips in a long name") << u"lidnstorm"_s << u"lindstrom"_s << true;
    QTest::addRow("three slips") << u"linsdtornm"_s << u"lindstrom"_s << false;
    QTest::addRow("what was typed") << u"TW-15"_s << u"TW-15"_s << false;
    QTest::addRow("the beginning of another") << u"TW"_s << u"TW-15"_s << false;
}

void TestSpeltAlike::alike()
{
    QFETCH(QString, typed);
    QFETCH(QString, known);
    QFETCH(bool, isAlike);
    QCOMPARE(core::speltAlike(typed, {known}) == std::vector{known}, isAlike);
}

void TestSpeltAlike::nearestComeFirstAndFewOfThem()
{
    const std::vector<QString> known{u"SN-1009"_s, u"SN-1001"_s, u"SN-1002"_s, u"SN-1003"_s, u"SN-1004"_s, u"SN-1005"_s, u"SN-2009"_s, u"sn-1000"_s};
    QCOMPARE(core::speltAlike(u"SN-1000"_s, known), (std::vector{u"sn-1000"_s, u"SN-1001"_s, u"SN-1002"_s, u"SN-1003"_s, u"SN-1004"_s}));
}

QTEST_MAIN(TestSpeltAlike)
#include "tst_spelt_alike.moc"
