// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QElapsedTimer>
#include <QTest>

#include <algorithm>

#include "app/picture/perimeter_layout.hpp"

using namespace Qt::StringLiterals;
using picture::Edge;
using picture::Perimeter;
using picture::PerimeterLayout;

namespace {

constexpr picture::PerimeterMeasure measure{{220, 20}, 20, 1.8};

/// `12 0 5`: three zones of so many items; `t` after a number makes its last item a temporary one.
Perimeter zonesOf(const QString &counts)
{
    Perimeter zones;
    for (const QString &word : counts.split(u' ', Qt::SkipEmptyParts)) {
        const bool isTemporary = word.endsWith(u't');
        const int count = word.chopped(isTemporary ? 1 : 0).toInt();
        picture::PerimeterZone zone{u"Zone %1"_s.arg(zones.size() + 1), {}};
        for (int i = 0; i < count; ++i) {
            const bool isLast = i + 1 == count;
            zone.items.push_back({u"E%1"_s.arg(i), u"Duct"_s, isTemporary && isLast ? std::nullopt : std::optional(core::Stage::Connected), u"Connected"_s, true, false});
        }
        zones.push_back(zone);
    }
    return zones;
}

PerimeterLayout laid(const QString &counts) { return picture::layPerimeter(zonesOf(counts), measure); }

/// How far along the walk round the boundary, clockwise from the corner at the top left: the edge, and the way along it.
std::pair<int, double> walked(const picture::PlacedCoupling &placed)
{
    const QPointF at = placed.glyph.center();
    switch (placed.edge) {
    case Edge::Top: return {0, at.x()};
    case Edge::Right: return {1, at.y()};
    case Edge::Bottom: return {2, -at.x()};
    case Edge::Left: return {3, -at.y()};
    }
    return {};
}

QRectF around(const QLineF &line) { return QRectF(line.p1(), line.p2()).normalized().adjusted(-0.5, -0.5, 0.5, 0.5); }

/// A leader ends at its own label, so the last of it is left out.
QRectF leaderOf(const picture::PlacedCoupling &placed)
{
    QLineF line = placed.leader;
    line.setLength(std::max(0.0, line.length() - 1));
    return around(line);
}

/// What lies on what; empty when nothing does.
QString overlapIn(const PerimeterLayout &layout)
{
    const auto &all = layout.couplings;
    const auto named = [](const char *what, std::size_t a, std::size_t b) { return u"%1: %2, %3"_s.arg(QString::fromLatin1(what)).arg(a).arg(b); };
    for (std::size_t a = 0; a < all.size(); ++a) {
        for (std::size_t b = 0; b < all.size(); ++b) {
            if (a < b && all[a].label.intersects(all[b].label))
                return named("label on label", a, b);
            if (a < b && all[a].glyph.intersects(all[b].glyph))
                return named("coupling on coupling", a, b);
            if (all[a].label.intersects(all[b].glyph))
                return named("label on coupling", a, b);
            if (all[a].label.intersects(leaderOf(all[b])))
                return named("label on leader", a, b);
        }
        for (const picture::PlacedSide &side : layout.sides) {
            if (all[a].label.intersects(around(side.line)) || all[a].glyph.intersects(side.name))
                return named("on a side or its name", a, side.zone);
        }
    }
    for (std::size_t a = 0; a < layout.sides.size(); ++a) {
        for (std::size_t b = a + 1; b < layout.sides.size(); ++b) {
            if (layout.sides[a].name.intersects(layout.sides[b].name))
                return named("name on name", a, b);
        }
    }
    return {};
}

/// The corners of a boundary without dents turn one way all round.
bool isConvex(const QPolygonF &boundary)
{
    for (qsizetype i = 0; i < boundary.size(); ++i) {
        const QPointF a = boundary[(i + 1) % boundary.size()] - boundary[i];
        const QPointF b = boundary[(i + 2) % boundary.size()] - boundary[(i + 1) % boundary.size()];
        if (a.x() * b.y() - a.y() * b.x() < -1e-6)
            return false;
    }
    return true;
}

double lengthOf(const PerimeterLayout &layout, std::size_t zone)
{
    double length = 0;
    for (const picture::PlacedSide &side : layout.sides)
        length += side.zone == zone ? side.line.length() : 0;
    return length;
}

} // namespace

class TestPerimeterLayout : public QObject {
    Q_OBJECT

private slots:
    void nothingLiesOnAnything_data() { jobs(); }
    void nothingLiesOnAnything();
    void everyItemHasItsPlace_data() { jobs(); }
    void everyItemHasItsPlace();
    void listGoesRoundClockwise_data() { jobs(); }
    void listGoesRoundClockwise();
    void boundaryIsClosedAndWithoutDents_data() { jobs(); }
    void boundaryIsClosedAndWithoutDents();
    void everyZoneHasOneName_data() { jobs(); }
    void everyZoneHasOneName();
    void drawingIsNearTheShapeWanted_data();
    void drawingIsNearTheShapeWanted();
    void zonesOfLikeSizeAreOneSideEach_data();
    void zonesOfLikeSizeAreOneSideEach();
    void moreItemsGetMoreOfTheBoundary();
    void couplingCrossesAndTemporaryDoesNot();
    void emptyListIsEmpty();
    void thousandsAreLaidOutAtOnce();

private:
    void jobs();
};

void TestPerimeterLayout::jobs()
{
    QTest::addColumn<QString>("counts");
    QTest::addRow("one item") << u"1"_s;
    QTest::addRow("20 in four zones") << u"6 5 4 5"_s;
    QTest::addRow("80 in five zones") << u"11 22 20 14 13"_s;
    QTest::addRow("300 in six zones") << u"50 60 40 50 70 30"_s;
    QTest::addRow("20 in one zone") << u"20"_s;
    QTest::addRow("80 in one zone") << u"80"_s;
    QTest::addRow("two zones") << u"9 31"_s;
    QTest::addRow("three zones") << u"9 3 20"_s;
    QTest::addRow("eight zones") << u"10 4 12 9 1 16 8 20"_s;
    QTest::addRow("one of eight zones has all items") << u"0 0 0 80 0 0 0 0"_s;
    QTest::addRow("zones without items") << u"0 0 0"_s;
    QTest::addRow("temporary items among them") << u"7t 1t 12t 0 30t"_s;
    QTest::addRow("5,000 in seven zones") << u"900 800 700 1000 600 500 500"_s;
}

void TestPerimeterLayout::nothingLiesOnAnything()
{
    QFETCH(QString, counts);
    QCOMPARE(overlapIn(laid(counts)), QString());
}

void TestPerimeterLayout::everyItemHasItsPlace()
{
    QFETCH(QString, counts);
    const Perimeter zones = zonesOf(counts);
    const PerimeterLayout layout = laid(counts);
    std::vector<std::pair<std::size_t, std::size_t>> wanted, placed;
    for (std::size_t zone = 0; zone < zones.size(); ++zone) {
        for (std::size_t item = 0; item < zones[zone].items.size(); ++item)
            wanted.emplace_back(zone, item);
    }
    for (const picture::PlacedCoupling &one : layout.couplings) {
        placed.emplace_back(one.zone, one.item);
        QVERIFY(layout.bounds.contains(one.label) && layout.bounds.contains(one.glyph));
        QCOMPARE(one.label.size(), measure.label);
    }
    QCOMPARE(placed, wanted);
}

void TestPerimeterLayout::listGoesRoundClockwise()
{
    QFETCH(QString, counts);
    const PerimeterLayout layout = laid(counts);
    for (std::size_t i = 1; i < layout.couplings.size(); ++i)
        QVERIFY2(walked(layout.couplings[i - 1]) < walked(layout.couplings[i]), qPrintable(QString::number(i)));
}

void TestPerimeterLayout::boundaryIsClosedAndWithoutDents()
{
    QFETCH(QString, counts);
    const PerimeterLayout layout = laid(counts);
    QVERIFY(isConvex(layout.boundary));
    for (const picture::PlacedSide &side : layout.sides) {
        const auto at = std::find(layout.boundary.begin(), layout.boundary.end(), side.line.p1());
        QVERIFY(at != layout.boundary.end());
        QCOMPARE(at + 1 == layout.boundary.end() ? layout.boundary.front() : *(at + 1), side.line.p2());
    }
}

void TestPerimeterLayout::everyZoneHasOneName()
{
    QFETCH(QString, counts);
    const PerimeterLayout layout = laid(counts);
    std::vector<int> names(zonesOf(counts).size(), 0);
    for (const picture::PlacedSide &side : layout.sides) {
        names[side.zone] += side.name.isEmpty() ? 0 : 1;
        for (const QPointF &corner : {side.name.topLeft(), side.name.bottomRight()})
            QVERIFY(side.name.isEmpty() || layout.boundary.containsPoint(corner, Qt::OddEvenFill));
    }
    QCOMPARE(names, std::vector<int>(names.size(), 1));
}

void TestPerimeterLayout::drawingIsNearTheShapeWanted_data()
{
    QTest::addColumn<QString>("counts");
    QTest::addRow("80") << u"11 22 20 14 13"_s;
    QTest::addRow("80 in one zone") << u"80"_s;
    QTest::addRow("most in one zone") << u"3 70 4 3"_s;
    QTest::addRow("300") << u"50 60 40 50 70 30"_s;
    QTest::addRow("5,000") << u"900 800 700 1000 600 500 500"_s;
}

void TestPerimeterLayout::drawingIsNearTheShapeWanted()
{
    QFETCH(QString, counts);
    const QRectF bounds = laid(counts).bounds;
    const double aspect = bounds.width() / bounds.height();
    QVERIFY2(aspect > measure.aspect / 1.6 && aspect < measure.aspect * 1.6, qPrintable(QString::number(aspect)));
}

void TestPerimeterLayout::zonesOfLikeSizeAreOneSideEach_data()
{
    QTest::addColumn<QString>("counts");
    QTest::addRow("four") << u"20 22 19 21"_s;
    QTest::addRow("eight") << u"10 10 10 10 10 10 10 10"_s;
}

void TestPerimeterLayout::zonesOfLikeSizeAreOneSideEach()
{
    QFETCH(QString, counts);
    QCOMPARE(laid(counts).sides.size(), zonesOf(counts).size());
}

void TestPerimeterLayout::moreItemsGetMoreOfTheBoundary()
{
    const PerimeterLayout layout = laid(u"10 70"_s);
    QVERIFY(lengthOf(layout, 1) > 2 * lengthOf(layout, 0));
}

void TestPerimeterLayout::couplingCrossesAndTemporaryDoesNot()
{
    const PerimeterLayout layout = laid(u"9t 9t 9t 9t"_s);
    const Perimeter zones = zonesOf(u"9t 9t 9t 9t"_s);
    const auto isIn = [&](const QPointF &point) { return layout.boundary.containsPoint(point, Qt::OddEvenFill); };
    for (const picture::PlacedCoupling &placed : layout.couplings) {
        const QPointF centre = placed.glyph.center();
        const bool isFlat = placed.edge == Edge::Top || placed.edge == Edge::Bottom;
        const QPointF across = isFlat ? QPointF(0, measure.glyph / 2) : QPointF(measure.glyph / 2, 0);
        const int inside = static_cast<int>(isIn(centre + across)) + static_cast<int>(isIn(centre - across));
        QCOMPARE(inside, zones[placed.zone].items[placed.item].isTemporary() ? 0 : 1);
    }
}

void TestPerimeterLayout::emptyListIsEmpty()
{
    const PerimeterLayout layout = picture::layPerimeter({}, measure);
    QVERIFY(layout.boundary.isEmpty() && layout.couplings.empty() && layout.sides.empty());
    QVERIFY(layout.bounds.isEmpty());
}

/// Twice as many take twice as long: nothing looks at all items for each of them. The limit is loose, for a machine that does other things as well.
void TestPerimeterLayout::thousandsAreLaidOutAtOnce()
{
    const Perimeter zones = zonesOf(u"900 800 700 1000 600 500 500"_s);
    qint64 best = 1'000'000'000;
    for (int i = 0; i < 5; ++i) {
        QElapsedTimer timer;
        timer.start();
        const PerimeterLayout layout = picture::layPerimeter(zones, measure);
        best = std::min(best, timer.nsecsElapsed());
        QCOMPARE(layout.couplings.size(), 5000U);
    }
    qInfo("5,000 items laid out in %.2f ms", static_cast<double>(best) / 1e6);
    QVERIFY2(best < 100'000'000, qPrintable(QString::number(best)));
}

QTEST_GUILESS_MAIN(TestPerimeterLayout)
#include "tst_perimeter_layout.moc"
