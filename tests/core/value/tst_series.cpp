// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include <algorithm>
#include <numeric>
#include <vector>

#include "core/value/series.hpp"

/// A state that a screen shows must not change under it while the next one is folded.
class TstSeries : public QObject {
    Q_OBJECT

    static core::Series<int> upTo(int count)
    {
        core::Series<int> series;
        for (int i = 0; i < count; ++i)
            series.push_back(i);
        return series;
    }

private slots:
    void holdsWhatWasAdded_data()
    {
        QTest::addColumn<int>("count");
        for (const int count : {0, 1, 31, 32, 33, 64, 1000})
            QTest::addRow("%d", count) << count;
    }
    void holdsWhatWasAdded()
    {
        QFETCH(int, count);
        const auto series = upTo(count);
        std::vector<int> expected(static_cast<std::size_t>(count));
        std::iota(expected.begin(), expected.end(), 0);
        QCOMPARE(series.size(), expected.size());
        QCOMPARE(series.empty(), expected.empty());
        QVERIFY(std::equal(series.begin(), series.end(), expected.begin(), expected.end()));
        QVERIFY(std::equal(std::make_reverse_iterator(series.end()), std::make_reverse_iterator(series.begin()), expected.rbegin(), expected.rend()));
    }

    void copiesGoApart_data()
    {
        QTest::addColumn<int>("at");
        QTest::newRow("the first") << 0;
        QTest::newRow("the last of a stretch") << 31;
        QTest::newRow("the first of the next") << 32;
        QTest::newRow("the last") << 39;
    }
    void copiesGoApart()
    {
        QFETCH(int, at);
        const auto index = static_cast<std::size_t>(at);
        auto folded = upTo(40);
        const auto shown = folded;
        QCOMPARE(folded, shown);
        folded.edit(index) = -1;
        QCOMPARE(folded[index], -1);
        QCOMPARE(shown[index], at);
        QVERIFY(!(folded == shown));
        folded.edit(index) = at;
        QCOMPARE(folded, shown);
        folded.push_back(40);
        QCOMPARE(shown.size(), std::size_t(40));
        QVERIFY(!(folded == shown));
    }
};

QTEST_GUILESS_MAIN(TstSeries)
#include "tst_series.moc"
