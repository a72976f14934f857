// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLineF>
#include <QPolygonF>
#include <QRectF>
#include <QString>

#include <optional>
#include <vector>

#include "core/job/stage.hpp"

namespace picture {

/// One thing at the boundary of the unit.
struct PerimeterItem {
    QString id;
    QString name;
    std::optional<core::Stage> stage; ///< nothing for what was only put on for the job: it stands outside the boundary and crosses nothing
    QString word;                     ///< the stage, or what else is to be said of it: `Disconnected`, `Applied`
    bool isLoose;                     ///< it stops closure
    bool isMount;                     ///< the unit hangs on it
    bool isTemporary() const { return !stage; }
};

struct PerimeterZone {
    QString name;
    std::vector<PerimeterItem> items; ///< in the order of the list
};

/// What is drawn, in the order of the list.
using Perimeter = std::vector<PerimeterZone>;

/// Sizes by which it is laid out, all above zero, in one unit.
struct PerimeterMeasure {
    QSizeF label;  ///< room for the words of one item
    double glyph;  ///< side of the square in which a coupling is drawn
    double aspect; ///< width by height that is wanted; what comes out is near it
};

enum class Edge { Top, Right, Bottom, Left };

/// An item at its place. The coupling crosses the boundary at right angles to its edge.
struct PlacedCoupling {
    std::size_t zone;
    std::size_t item; ///< of the zone
    Edge edge;
    QRectF glyph;
    QLineF leader; ///< from the glyph out to the label
    QRectF label;
};

/// The stretch of the boundary that belongs to a zone. A zone has one, or one on each edge that it reaches where it goes round a corner.
struct PlacedSide {
    std::size_t zone;
    Edge edge;
    QLineF line;
    QRectF name; ///< inside the boundary; empty on all sides of a zone but one
};

struct PerimeterLayout {
    QRectF bounds; ///< everything lies within
    QPolygonF boundary;
    std::vector<PlacedSide> sides;         ///< clockwise from the corner at the top left
    std::vector<PlacedCoupling> couplings; ///< zone by zone, in each in the order of the list, which is clockwise
};

/// Lays a unit out as a closed boundary with the zones along it, clockwise from the corner at the top left; a zone of many items gets
/// more of it. No label lies on another, on a coupling or on another's leader: where room runs out, the drawing grows. Takes time in proportion to the
/// number of items. Without zones, an empty layout.
PerimeterLayout layPerimeter(const Perimeter &perimeter, const PerimeterMeasure &measure);

} // namespace picture
