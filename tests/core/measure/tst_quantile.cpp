// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/measure/quantile.hpp"

/// Quartiles and other shares of few values.
class TestQuantile : public QObject {
    Q_OBJECT

private slots:
    void share_data();
    void share();
};

void TestQuantile::share_data()
{
    QTest::addColumn<QList<qint64>>("rising");
    QTest::addColumn<int>("numerator");
    QTest::addColumn<int>("denominator");
    QTest::addColumn<qint64>("share");

    // Twelve resistivities of silicon wafers, in 0.0001 ohm.cm; their 90th percentile is 95.1981 ohm.cm.
    // Source: NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.2, example.
    const QList<qint64> wafers{950610, 950925, 951065, 951195, 951442, 951567, 951591, 951682, 951772, 951937, 951959, 951990};
    QTest::addRow("nine tenths of the wafers") << wafers << 9 << 10 << qint64{951981};
    // The rule of that section by hand: 13/4 = 3 + 1/4: 951065 + 130/4 = 951097.5; 13/2 = 6 + 1/2: 951579; 39/4 = 9 + 3/4: 951772 + 165 × 3/4 = 951895.75.
    QTest::addRow("a quarter of the wafers") << wafers << 1 << 4 << qint64{951098};
    QTest::addRow("the median of the wafers") << wafers << 1 << 2 << qint64{951579};
    QTest::addRow("three quarters of the wafers") << wafers << 3 << 4 << qint64{951896};
    // Condition 2 and 3 of that section: nothing is told from beyond the values.
    QTest::addRow("one value") << QList<qint64>{7} << 3 << 4 << qint64{7};
    QTest::addRow("a quarter of two") << QList<qint64>{7, 9} << 1 << 4 << qint64{7};
    QTest::addRow("three quarters of two") << QList<qint64>{7, 9} << 3 << 4 << qint64{9};
    QTest::addRow("a quarter of three is the first") << QList<qint64>{7, 9, 30} << 1 << 4 << qint64{7};
    QTest::addRow("below nought") << QList<qint64>{-3, -2} << 1 << 2 << qint64{-2}; // −2.5, halves up
}

void TestQuantile::share()
{
    QFETCH(QList<qint64>, rising);
    QFETCH(int, numerator);
    QFETCH(int, denominator);
    QFETCH(qint64, share);
    QCOMPARE(core::measure::quantile({rising.begin(), rising.end()}, numerator, denominator), share);
}

QTEST_GUILESS_MAIN(TestQuantile)
#include "tst_quantile.moc"
