// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/picture/perimeter_walk.hpp"

#include <algorithm>
#include <cmath>

namespace picture {

namespace {

/// How a step goes on an edge: with the walk, against it, across to the other edge, or away from the unit.
enum class Course { Forwards, Backwards, Across, Away };

Course courseOn(Edge edge, Step step)
{
    // In the order of the edges: top, right, bottom, left.
    static constexpr Step forwards[] = {Step::Right, Step::Down, Step::Left, Step::Up};
    static constexpr Step backwards[] = {Step::Left, Step::Up, Step::Right, Step::Down};
    static constexpr Step across[] = {Step::Down, Step::Left, Step::Up, Step::Right};
    const auto at = static_cast<std::size_t>(edge);
    return step == forwards[at] ? Course::Forwards : step == backwards[at] ? Course::Backwards : step == across[at] ? Course::Across : Course::Away;
}

Edge opposite(Edge edge)
{
    switch (edge) {
    case Edge::Top: return Edge::Bottom;
    case Edge::Right: return Edge::Left;
    case Edge::Bottom: return Edge::Top;
    case Edge::Left: return Edge::Right;
    }
    Q_UNREACHABLE();
}

std::optional<std::size_t> acrossFrom(const PerimeterLayout &layout, std::size_t from)
{
    const PlacedCoupling &here = layout.couplings[from];
    const bool isFlat = here.edge == Edge::Top || here.edge == Edge::Bottom;
    std::optional<std::size_t> nearest;
    double least = 0;
    for (std::size_t i = 0; i < layout.couplings.size(); ++i) {
        if (layout.couplings[i].edge != opposite(here.edge))
            continue;
        const QPointF way = layout.couplings[i].glyph.center() - here.glyph.center();
        const double off = std::abs(isFlat ? way.x() : way.y());
        if (!nearest || off < least) {
            nearest = i;
            least = off;
        }
    }
    return nearest;
}

/// The first item of the zone after or before, round the boundary.
std::optional<std::size_t> sideFrom(const PerimeterLayout &layout, std::size_t from, Step step)
{
    const std::size_t count = layout.couplings.size();
    const auto zoneAt = [&](std::size_t i) { return layout.couplings[i].zone; };
    std::size_t at = from;
    const std::size_t stride = step == Step::NextSide ? 1 : count - 1;
    while (zoneAt(at) == zoneAt(from)) {
        at = (at + stride) % count;
        if (at == from)
            return std::nullopt;
    }
    while (at > 0 && zoneAt(at - 1) == zoneAt(at))
        --at;
    return at;
}

} // namespace

std::optional<std::size_t> stepFrom(const PerimeterLayout &layout, std::size_t from, Step step)
{
    const std::size_t count = layout.couplings.size();
    if (from >= count)
        return std::nullopt;
    switch (step) {
    case Step::First: return 0;
    case Step::Last: return count - 1;
    case Step::NextSide:
    case Step::PreviousSide: return sideFrom(layout, from, step);
    case Step::Left:
    case Step::Right:
    case Step::Up:
    case Step::Down: break;
    }
    switch (courseOn(layout.couplings[from].edge, step)) {
    case Course::Forwards: return (from + 1) % count;
    case Course::Backwards: return (from + count - 1) % count;
    case Course::Across: return acrossFrom(layout, from);
    case Course::Away: return std::nullopt;
    }
    Q_UNREACHABLE();
}

} // namespace picture
