// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/value/error_words.hpp"

using namespace Qt::StringLiterals;
using core::Where;

/// Whoever reads that something went wrong is told where.
class TestErrorWords : public QObject {
    Q_OBJECT

private slots:
    void placeStandsInFront_data()
    {
        QTest::addColumn<Where>("where");
        QTest::addColumn<QString>("expected");
        QTest::newRow("nowhere") << Where{} << u"No."_s;
        QTest::newRow("file") << Where{u"list.csv"_s, std::nullopt, std::nullopt} << u"list.csv: No."_s;
        QTest::newRow("file and row") << Where{u"list.csv"_s, 12, std::nullopt} << u"list.csv:12: No."_s;
        QTest::newRow("file, row and column") << Where{u"list.csv"_s, 12, 3} << u"list.csv:12:3: No."_s;
        QTest::newRow("row of what came in through a pipe") << Where{{}, 12, std::nullopt} << u"line 12: No."_s;
        QTest::newRow("row and column of it") << Where{{}, 12, 3} << u"line 12:3: No."_s;
    }
    void placeStandsInFront()
    {
        QFETCH(Where, where);
        QTEST(core::errorInWords({core::ErrorCode::BadInput, u"No."_s, where}), "expected");
    }

    void placesAreCompared()
    {
        const Where at{u"list.csv"_s, 12, 3};
        QVERIFY(at == (Where{u"list.csv"_s, 12, 3}));
        QVERIFY(at != (Where{u"other.csv"_s, 12, 3}));
        QVERIFY(at != (Where{u"list.csv"_s, 13, 3}));
        QVERIFY(at != (Where{u"list.csv"_s, 12, 4}));
    }
};

QTEST_GUILESS_MAIN(TestErrorWords)
#include "tst_error_words.moc"
