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

    /// What follows a job entry by entry looks at these alone: nothing that changed may be missing.
    void tellsWhatIsNotShared_data()
    {
        QTest::addColumn<int>("before");
        QTest::addColumn<int>("edited");
        QTest::addColumn<int>("added");
        QTest::addColumn<int>("from");
        QTest::addColumn<int>("to");
        QTest::newRow("nothing changed") << 70 << -1 << 0 << 0 << 0;
        QTest::newRow("one changed: its stretch") << 70 << 40 << 0 << 32 << 64;
        QTest::newRow("one changed in the last stretch") << 70 << 69 << 0 << 64 << 70;
        QTest::newRow("one added: the last stretch") << 70 << -1 << 1 << 64 << 71;
        QTest::newRow("one added to a full stretch") << 64 << -1 << 1 << 64 << 65;
        QTest::newRow("all are new") << 0 << -1 << 33 << 0 << 33;
    }
    void tellsWhatIsNotShared()
    {
        QFETCH(int, before);
        QFETCH(int, edited);
        QFETCH(int, added);
        QFETCH(int, from);
        QFETCH(int, to);
        const auto then = upTo(before);
        auto now = then;
        if (edited >= 0)
            now.edit(static_cast<std::size_t>(edited)) = -1;
        for (int i = 0; i < added; ++i)
            now.push_back(before + i);
        std::vector<int> told;
        now.eachUnshared(then, [&](std::size_t at) { told.push_back(static_cast<int>(at)); });
        std::vector<int> wanted(static_cast<std::size_t>(to - from));
        std::iota(wanted.begin(), wanted.end(), from);
        QCOMPARE(told, wanted);
    }
};

QTEST_GUILESS_MAIN(TstSeries)
#include "tst_series.moc"
