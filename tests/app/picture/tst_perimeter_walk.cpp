// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "app/picture/perimeter_walk.hpp"

using namespace Qt::StringLiterals;
using picture::Edge;
using picture::Step;

namespace {

/// Four zones of five, one on each edge, and one without items.
picture::PerimeterLayout square()
{
    picture::Perimeter zones;
    for (const int count : {5, 5, 5, 5, 0}) {
        zones.push_back({u"Zone"_s, {}});
        for (int i = 0; i < count; ++i)
            zones.back().items.push_back({u"E"_s, u"Duct"_s, core::Stage::Connected, u"Connected"_s, true, false});
    }
    return picture::layPerimeter(zones, {{120, 20}, 20, 1.5});
}

} // namespace

class TestPerimeterWalk : public QObject {
    Q_OBJECT

private slots:
    void stepsGoWhereTheKeyPoints();
    void stepLeadsTo_data();
    void stepLeadsTo();
    void allRoundComesBack();
    void oneItemHasNoNeighbour();
    void nothingFromNowhere();
};

/// Wherever one stands, a key never moves against its own direction, except from a corner on.
void TestPerimeterWalk::stepsGoWhereTheKeyPoints()
{
    const picture::PerimeterLayout layout = square();
    const std::pair<Step, QPointF> keys[] = {{Step::Left, {-1, 0}}, {Step::Right, {1, 0}}, {Step::Up, {0, -1}}, {Step::Down, {0, 1}}};
    for (std::size_t from = 0; from < layout.couplings.size(); ++from) {
        for (const auto &[key, way] : keys) {
            const auto to = picture::stepFrom(layout, from, key);
            if (!to)
                continue;
            const QPointF moved = layout.couplings[*to].glyph.center() - layout.couplings[from].glyph.center();
            QVERIFY2(QPointF::dotProduct(moved, way) > 0, qPrintable(u"%1 to %2"_s.arg(from).arg(*to)));
        }
    }
}

void TestPerimeterWalk::stepLeadsTo_data()
{
    QTest::addColumn<int>("from");
    QTest::addColumn<int>("step");
    QTest::addColumn<int>("to"); // -1: nowhere
    const auto row = [](const char *name, int from, Step step, int to) { QTest::addRow("%s", name) << from << static_cast<int>(step) << to; };
    row("along the top", 0, Step::Right, 1);
    row("back along the top", 1, Step::Left, 0);
    row("round the corner", 4, Step::Right, 5);
    row("down the right", 5, Step::Down, 6);
    row("along the bottom, which the list goes backwards", 10, Step::Left, 11);
    row("up the left", 15, Step::Up, 16);
    row("from the last to the first", 19, Step::Up, 0);
    row("across from top to bottom", 0, Step::Down, 14);
    row("across from right to left", 5, Step::Left, 19);
    row("away from the unit", 0, Step::Up, -1);
    row("next side", 2, Step::NextSide, 5);
    row("next side over one without items", 17, Step::NextSide, 0);
    row("previous side, at its first item", 7, Step::PreviousSide, 0);
    row("previous side over one without items", 2, Step::PreviousSide, 15);
    row("first", 7, Step::First, 0);
    row("last", 7, Step::Last, 19);
}

void TestPerimeterWalk::stepLeadsTo()
{
    QFETCH(int, from);
    QFETCH(int, step);
    QFETCH(int, to);
    const auto reached = picture::stepFrom(square(), static_cast<std::size_t>(from), static_cast<Step>(step));
    QCOMPARE(reached ? static_cast<int>(*reached) : -1, to);
}

void TestPerimeterWalk::allRoundComesBack()
{
    const picture::PerimeterLayout layout = square();
    static constexpr Step forwards[] = {Step::Right, Step::Down, Step::Left, Step::Up};
    std::size_t at = 0;
    for (std::size_t i = 0; i < layout.couplings.size(); ++i) {
        at = picture::stepFrom(layout, at, forwards[static_cast<std::size_t>(layout.couplings[at].edge)]).value_or(99);
        QCOMPARE(at, (i + 1) % layout.couplings.size());
    }
}

void TestPerimeterWalk::oneItemHasNoNeighbour()
{
    const picture::Perimeter one{{u"Zone"_s, {{u"E"_s, u"Duct"_s, core::Stage::Connected, u"Connected"_s, true, false}}}};
    const picture::PerimeterLayout layout = picture::layPerimeter(one, {{120, 20}, 20, 1.5});
    QCOMPARE(picture::stepFrom(layout, 0, Step::NextSide), std::nullopt);
    QCOMPARE(picture::stepFrom(layout, 0, Step::Last), std::optional<std::size_t>(0));
}

void TestPerimeterWalk::nothingFromNowhere()
{
    QCOMPARE(picture::stepFrom({}, 0, Step::Right), std::nullopt);
    QCOMPARE(picture::stepFrom({}, 0, Step::First), std::nullopt);
}

QTEST_GUILESS_MAIN(TestPerimeterWalk)
#include "tst_perimeter_walk.moc"
