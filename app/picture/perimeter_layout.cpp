// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/picture/perimeter_layout.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace picture {

namespace {

/// Labels above and below the boundary stand in so many rows at most, so that their couplings come closer together than labels are wide.
constexpr std::size_t mostRows = 8;

/// Items of one zone that stand on one edge. A zone without items has one run that is empty.
struct Run {
    std::size_t zone;
    std::size_t first;
    std::size_t count;
};
using Runs = std::vector<Run>;

/// How the items of an edge follow one another: groups of up to `rows` items, one `step` from item to item, `tail` after each group.
struct Spacing {
    double step;
    double tail;
    std::size_t rows;
    double start; ///< from the beginning of an item's step to its coupling
    std::size_t groups(const Run &run) const { return (std::max<std::size_t>(run.count, 1) + rows - 1) / rows; }
    double lengthOf(const Run &run) const { return static_cast<double>(std::max<std::size_t>(run.count, 1)) * step + static_cast<double>(groups(run)) * tail; }
};

/// Where a coupling stands along its edge, and in which row its label does, counted from the boundary.
struct Spot {
    double along;
    std::size_t row;
};

struct PlannedRun {
    Run run;
    double from;
    double to;
    std::vector<Spot> spots; ///< to the right, or downwards
};

struct Sizes {
    explicit Sizes(const PerimeterMeasure &measure)
        : label(measure.label), glyph(measure.glyph), pad(measure.label.height() / 6), rowHeight(std::max(label.height(), glyph) + pad), bulge(glyph), reach(bulge + glyph * 1.75),
          inset(glyph + label.height() + pad)
    {
    }
    Spacing beside() const { return {rowHeight, 0, 1, rowHeight / 2}; }
    Spacing above(std::size_t rows) const { return {glyph + pad, label.width() - glyph + pad, rows, glyph / 2}; }

    QSizeF label;
    double glyph;
    double pad;
    double rowHeight;
    double bulge; ///< how far at most the boundary bends outwards between zones, so that each is a side of its own
    double reach; ///< from the edge to the nearest label
    double inset; ///< from a corner to the first coupling: room for a zone's name
};

double need(const Runs &runs, const Spacing &spacing, const Sizes &sizes)
{
    double length = 2 * sizes.inset + sizes.rowHeight * static_cast<double>(std::max<std::size_t>(runs.size(), 1) - 1);
    for (const Run &run : runs)
        length += spacing.lengthOf(run);
    return length;
}

/// Puts the runs along an edge, and what room is left between their groups.
std::vector<PlannedRun> plan(const Runs &runs, const Spacing &spacing, double length, const Sizes &sizes)
{
    std::size_t groups = 0;
    for (const Run &run : runs)
        groups += spacing.groups(run);
    const double spare = groups == 0 ? 0 : (length - need(runs, spacing, sizes)) / static_cast<double>(groups);
    std::vector<PlannedRun> planned;
    double at = sizes.inset;
    for (const Run &run : runs) {
        PlannedRun placed{run, at, at, {}};
        placed.spots.reserve(run.count);
        for (std::size_t first = 0; first < std::max<std::size_t>(run.count, 1); first += spacing.rows) {
            at += spare / 2;
            const std::size_t size = std::min(spacing.rows, run.count - first);
            // The first stands in the row farthest out, so that no leader runs through a label.
            for (std::size_t i = 0; i < size; ++i)
                placed.spots.push_back({at + static_cast<double>(i) * spacing.step + spacing.start, size - 1 - i});
            at += static_cast<double>(std::max<std::size_t>(size, 1)) * spacing.step + spacing.tail + spare / 2;
        }
        placed.to = at;
        at += sizes.rowHeight;
        planned.push_back(std::move(placed));
    }
    return planned;
}

std::size_t weightOf(const PerimeterZone &zone) { return std::max<std::size_t>(zone.items.size(), 1); }

/// Whether a corner that falls near the end of a zone moves there.
enum class AtZoneEnds { No, Yes };

/// After how many items the walk turns each of its three corners, with about `flat` items along the top and as many along the bottom.
std::array<std::size_t, 3> corners(const Perimeter &perimeter, double flat, AtZoneEnds atZoneEnds)
{
    std::size_t all = 0;
    std::vector<std::size_t> ends;
    for (const PerimeterZone &zone : perimeter)
        ends.push_back(all += weightOf(zone));
    const double half = static_cast<double>(all) / 2;
    const double near = atZoneEnds == AtZoneEnds::Yes ? std::min(flat, half - flat) / 2 : 0;
    std::array<std::size_t, 3> turns{};
    const std::array<double, 3> wanted{flat, half, half + flat};
    for (std::size_t i = 0; i < turns.size(); ++i) {
        const auto offBy = [&](std::size_t end) { return std::abs(static_cast<double>(end) - wanted[i]); };
        const auto best = std::min_element(ends.begin(), ends.end(), [&](std::size_t a, std::size_t b) { return offBy(a) < offBy(b); });
        turns[i] = std::max(i == 0 ? 0 : turns[i - 1], offBy(*best) <= near ? *best : static_cast<std::size_t>(std::lround(wanted[i])));
    }
    return turns;
}

/// Cuts the zones at the corners: the runs of each edge in the order of the walk.
std::array<Runs, 4> runsOf(const Perimeter &perimeter, const std::array<std::size_t, 3> &turns)
{
    std::array<Runs, 4> edges;
    std::size_t edge = 0;
    std::size_t walked = 0;
    for (std::size_t zone = 0; zone < perimeter.size(); ++zone) {
        const std::size_t count = perimeter[zone].items.size();
        for (std::size_t first = 0; first < weightOf(perimeter[zone]);) {
            while (edge < turns.size() && walked >= turns[edge])
                ++edge;
            const std::size_t room = edge < turns.size() ? turns[edge] - walked : weightOf(perimeter[zone]);
            const std::size_t taken = std::min(room, weightOf(perimeter[zone]) - first);
            edges[edge].push_back({zone, first, std::min(taken, count)});
            first += taken;
            walked += taken;
        }
    }
    return edges;
}

const Runs &runsAt(const std::array<Runs, 4> &edges, Edge edge) { return edges[static_cast<std::size_t>(edge)]; }

/// One way to cut the walk at its corners, and the boundary that comes of it.
struct Cut {
    std::array<Runs, 4> edges;
    std::size_t rows;
    double width;
    double height;
};

Cut cutAt(const Perimeter &perimeter, const std::array<std::size_t, 3> &turns, std::size_t rows, const Sizes &sizes)
{
    Cut cut{runsOf(perimeter, turns), rows, 0, 0};
    const auto needAt = [&](Edge edge, const Spacing &spacing) { return need(runsAt(cut.edges, edge), spacing, sizes); };
    const Spacing above = sizes.above(rows);
    const Spacing beside = sizes.beside();
    // Names of zones stand inside, those of left and right side by side.
    cut.width = std::max({needAt(Edge::Top, above), needAt(Edge::Bottom, above), 2 * (sizes.label.width() + sizes.inset)});
    cut.height = std::max({needAt(Edge::Left, beside), needAt(Edge::Right, beside), 2 * sizes.inset + sizes.rowHeight});
    return cut;
}

/// How large the drawing comes out when it is held against the aspect wanted. A zone that is cut in pieces counts as if that made it larger.
double costOf(const Cut &cut, const Perimeter &perimeter, const Sizes &sizes, double aspect)
{
    std::size_t pieces = 0;
    for (const Runs &runs : cut.edges)
        pieces += runs.size();
    const double width = cut.width + 2 * (sizes.label.width() + sizes.reach);
    const double height = cut.height + 2 * (static_cast<double>(cut.rows) * sizes.rowHeight + sizes.reach);
    return std::max(width / aspect, height) * (1 + 0.08 * static_cast<double>(pieces - perimeter.size()));
}

Cut bestCut(const Perimeter &perimeter, const Sizes &sizes, double aspect)
{
    std::size_t all = 0;
    for (const PerimeterZone &zone : perimeter)
        all += weightOf(zone);
    std::optional<Cut> best;
    double least = 0;
    constexpr int tried = 24;
    for (int part = 1; part < tried; ++part) {
        for (const AtZoneEnds atZoneEnds : {AtZoneEnds::Yes, AtZoneEnds::No}) {
            const auto turns = corners(perimeter, static_cast<double>(all) / 2 * part / tried, atZoneEnds);
            for (std::size_t rows = 1; rows <= mostRows; ++rows) {
                Cut cut = cutAt(perimeter, turns, rows, sizes);
                const double cost = costOf(cut, perimeter, sizes, aspect);
                if (!best || cost < least) {
                    best = std::move(cut);
                    least = cost;
                }
            }
        }
    }
    return *std::move(best);
}

bool isFlat(Edge edge) { return edge == Edge::Top || edge == Edge::Bottom; }
/// Whether the walk comes along it against the direction in which its places count.
bool isWalkedBack(Edge edge) { return edge == Edge::Bottom || edge == Edge::Left; }

class Drawing {
public:
    Drawing(const Perimeter &perimeter, const PerimeterMeasure &measure) : m_perimeter(perimeter), m_sizes(measure), m_cut(bestCut(perimeter, m_sizes, measure.aspect))
    {
        for (const Edge edge : {Edge::Bottom, Edge::Left})
            std::reverse(runs(edge).begin(), runs(edge).end());
    }

    PerimeterLayout lay()
    {
        for (const Edge edge : {Edge::Top, Edge::Right, Edge::Bottom, Edge::Left})
            layEdge(edge);
        keepOneName();
        m_layout.bounds = m_layout.boundary.boundingRect();
        for (const PlacedCoupling &placed : m_layout.couplings)
            m_layout.bounds |= placed.label | placed.glyph;
        m_layout.bounds.adjust(-m_sizes.pad, -m_sizes.pad, m_sizes.pad, m_sizes.pad);
        return std::move(m_layout);
    }

private:
    Runs &runs(Edge edge) { return m_cut.edges[static_cast<std::size_t>(edge)]; }

    Spacing spacingOf(Edge edge)
    {
        if (!isFlat(edge))
            return m_sizes.beside();
        std::size_t rows = 1;
        while (rows < m_cut.rows && need(runs(edge), m_sizes.above(rows), m_sizes) > m_cut.width)
            ++rows;
        return m_sizes.above(rows);
    }

    double lengthOf(Edge edge) const { return isFlat(edge) ? m_cut.width : m_cut.height; }

    /// The point so far along the edge, so far outside it.
    QPointF at(Edge edge, double along, double out) const
    {
        switch (edge) {
        case Edge::Top: return {along, -out};
        case Edge::Right: return {m_cut.width + out, along};
        case Edge::Bottom: return {along, m_cut.height + out};
        case Edge::Left: return {-out, along};
        }
        Q_UNREACHABLE();
    }

    double bulgeAt(Edge edge, double along) const
    {
        const double part = along / lengthOf(edge);
        return std::min(m_sizes.bulge, lengthOf(edge) * 0.03) * 4 * part * (1 - part);
    }

    void layEdge(Edge edge)
    {
        std::vector<PlannedRun> planned = plan(runs(edge), spacingOf(edge), lengthOf(edge), m_sizes);
        std::vector<double> ends{0};
        for (std::size_t i = 0; i + 1 < planned.size(); ++i)
            ends.push_back((planned[i].to + planned[i + 1].from) / 2);
        ends.push_back(lengthOf(edge));
        std::vector<double> outs;
        for (const double end : ends)
            outs.push_back(bulgeAt(edge, end));
        const bool isBack = isWalkedBack(edge);
        m_layout.boundary << at(edge, isBack ? lengthOf(edge) : 0, 0);
        for (std::size_t step = 0; step < planned.size(); ++step) {
            const std::size_t i = isBack ? planned.size() - 1 - step : step;
            const QLineF line(at(edge, ends[i], outs[i]), at(edge, ends[i + 1], outs[i + 1]));
            if (step > 0)
                m_layout.boundary << (isBack ? line.p2() : line.p1());
            m_layout.sides.push_back({planned[i].run.zone, edge, isBack ? QLineF(line.p2(), line.p1()) : line, nameRoom(edge, planned[i])});
            layRun(edge, planned[i], [&](double along) { return outs[i] + (outs[i + 1] - outs[i]) * (along - ends[i]) / (ends[i + 1] - ends[i]); });
        }
    }

    QRectF nameRoom(Edge edge, const PlannedRun &planned) const
    {
        const double middle = (planned.from + planned.to) / 2;
        const double in = m_sizes.glyph / 2 + m_sizes.pad;
        const double width = m_sizes.label.width();
        const double height = m_sizes.label.height();
        switch (edge) {
        case Edge::Top: return {middle - width / 2, in, width, height};
        case Edge::Bottom: return {middle - width / 2, m_cut.height - in - height, width, height};
        case Edge::Left: return {in, middle - height / 2, width, height};
        case Edge::Right: return {m_cut.width - in - width, middle - height / 2, width, height};
        }
        Q_UNREACHABLE();
    }

    template <class OutAt>
    void layRun(Edge edge, const PlannedRun &planned, const OutAt &outAt)
    {
        const std::vector<PerimeterItem> &items = m_perimeter[planned.run.zone].items;
        for (std::size_t step = 0; step < planned.spots.size(); ++step) {
            const Spot &spot = planned.spots[isWalkedBack(edge) ? planned.spots.size() - 1 - step : step];
            const std::size_t item = planned.run.first + step;
            const double half = m_sizes.glyph / 2;
            const double out = outAt(spot.along) + (items[item].isTemporary() ? half * 1.5 : 0);
            const QPointF centre = at(edge, spot.along, out);
            const double far = m_sizes.reach + static_cast<double>(spot.row) * m_sizes.rowHeight;
            m_layout.couplings.push_back({planned.run.zone, item, edge, QRectF(centre.x() - half, centre.y() - half, m_sizes.glyph, m_sizes.glyph),
                                          QLineF(at(edge, spot.along, out + half), at(edge, spot.along, far)), labelAt(edge, at(edge, spot.along, far))});
        }
    }

    QRectF labelAt(Edge edge, const QPointF &end) const
    {
        const QSizeF &size = m_sizes.label;
        switch (edge) {
        case Edge::Top: return {{end.x(), end.y() - size.height()}, size};
        case Edge::Bottom: return {end, size};
        case Edge::Right: return {{end.x(), end.y() - size.height() / 2}, size};
        case Edge::Left: return {{end.x() - size.width(), end.y() - size.height() / 2}, size};
        }
        Q_UNREACHABLE();
    }

    /// A zone that goes round a corner is named at its longest side.
    void keepOneName()
    {
        std::vector<std::size_t> longest(m_perimeter.size(), 0);
        std::vector<double> length(m_perimeter.size(), -1);
        for (std::size_t i = 0; i < m_layout.sides.size(); ++i) {
            const PlacedSide &side = m_layout.sides[i];
            if (side.line.length() > length[side.zone]) {
                length[side.zone] = side.line.length();
                longest[side.zone] = i;
            }
        }
        for (std::size_t i = 0; i < m_layout.sides.size(); ++i) {
            if (longest[m_layout.sides[i].zone] != i)
                m_layout.sides[i].name = QRectF();
        }
    }

    const Perimeter &m_perimeter;
    Sizes m_sizes;
    Cut m_cut;
    PerimeterLayout m_layout;
};

} // namespace

PerimeterLayout layPerimeter(const Perimeter &perimeter, const PerimeterMeasure &measure)
{
    return perimeter.empty() ? PerimeterLayout() : Drawing(perimeter, measure).lay();
}

} // namespace picture
