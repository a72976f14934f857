// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "tests/bench/measure/figure.hpp"

using namespace Qt::StringLiterals;
using bench::Figure;

namespace {

std::vector<double> numbers(const QString &text)
{
    std::vector<double> all;
    for (const QString &one : text.split(u' ', Qt::SkipEmptyParts))
        all.push_back(one.toDouble());
    return all;
}

} // namespace

/// The figures that everything else is judged by.
class FigureTest : public QObject {
    Q_OBJECT

private slots:
    void quantileIsTheNearestRank_data();
    void quantileIsTheNearestRank();
    void goalIsHeldAgainstTheMiddle_data();
    void goalIsHeldAgainstTheMiddle();
    void sidesTakeTurns();
};

void FigureTest::quantileIsTheNearestRank_data()
{
    QTest::addColumn<QString>("values");
    QTest::addColumn<double>("share");
    QTest::addColumn<double>("expected");
    QTest::addRow("middle of three") << "3 1 2" << 0.5 << 2.0;
    QTest::addRow("middle of four is a value that was seen") << "4 1 3 2" << 0.5 << 2.0;
    QTest::addRow("99 of 100") << "1 2 3 4 5 6 7 8 9 10" << 0.99 << 10.0;
    QTest::addRow("90 of 100") << "1 2 3 4 5 6 7 8 9 10" << 0.90 << 9.0;
    QTest::addRow("one alone") << "7" << 0.01 << 7.0;
}

void FigureTest::quantileIsTheNearestRank()
{
    QFETCH(QString, values);
    QFETCH(double, share);
    QTEST(bench::quantile(numbers(values), share), "expected");
}

void FigureTest::goalIsHeldAgainstTheMiddle_data()
{
    QTest::addColumn<QString>("program");
    QTest::addColumn<QString>("bare"); // empty: the figure itself counts
    QTest::addColumn<bool>("isAtMost");
    QTest::addColumn<double>("goal");
    QTest::addColumn<bool>("isMet");
    QTest::addRow("just as slow as allowed") << "13 13 13" << "10 10 10" << true << 1.3 << true;
    QTest::addRow("a little slower") << "14 14 14" << "10 10 10" << true << 1.3 << false;
    QTest::addRow("one bad repetition of three") << "12 50 12" << "10 10 10" << true << 1.3 << true;
    QTest::addRow("a slow machine on both sides") << "13 26 39" << "10 20 30" << true << 1.3 << true;
    QTest::addRow("quick enough") << "50 50 50" << "100 100 100" << false << 0.5 << true;
    QTest::addRow("not quick enough") << "49 49 49" << "100 100 100" << false << 0.5 << false;
    QTest::addRow("none lost") << "0 0 0" << "" << true << 0.0 << true;
    QTest::addRow("one lost, twice") << "0 1 1" << "" << true << 0.0 << false;
}

void FigureTest::goalIsHeldAgainstTheMiddle()
{
    QFETCH(QString, program);
    QFETCH(QString, bare);
    QFETCH(bool, isAtMost);
    QFETCH(double, goal);
    const std::vector<double> ours = numbers(program);
    const std::vector<double> theirs = numbers(bare);
    Figure figure{u"figure"_s, u"ms"_s, {}, isAtMost ? bench::atMost(goal) : bench::atLeast(goal), u"bare"_s};
    for (std::size_t i = 0; i < ours.size(); ++i)
        figure.repetitions.push_back({ours[i], theirs.empty() ? std::nullopt : std::optional(theirs[i])});
    QTEST(*bench::meetsGoal(figure), "isMet");
    figure.goal.reset();
    QVERIFY(!bench::meetsGoal(figure));
}

void FigureTest::sidesTakeTurns()
{
    QString order;
    const auto all = bench::inTurn(3, [&] { order += u'p'; return 2.0; }, [&] { order += u'b'; return 1.0; });
    QCOMPARE(order, u"pbpbpb"_s);
    QCOMPARE(all.size(), std::size_t(3));
    QCOMPARE(all.front().value(), 2.0);
}

QTEST_GUILESS_MAIN(FigureTest)
#include "tst_figure.moc"
