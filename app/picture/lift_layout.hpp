// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QFont>
#include <QLineF>
#include <QRectF>
#include <QString>

#include <optional>
#include <vector>

#include "core/measure/lifting.hpp"

namespace picture {

/// A planned lift with the words that stand beside its numbers.
struct Lift {
    core::measure::LiftPlan plan;
    QString unit;  ///< `Outgoing unit`
    QString hoist; ///< as marked on it
    QString sling;
};

/// How a load stands to its limit.
enum class Strain { Fine, Little, Over };

enum class Tone { Plain, Quiet, Caution, Alarm };

/// One line of text; its rectangle is as wide as the text and as high as the line.
struct TextRun {
    QRectF rect;
    QString text;
    QFont font;
    Tone tone;
};

/// A sign for what is near or over a limit: a triangle, or a cross in a box. Told by its shape, and by a word beside it.
struct Mark {
    QRectF rect;
    Strain strain;
};

struct Leg {
    QLineF line; ///< from above down to the lifting point
    Strain strain;
};

/// The angle of the flattest leg, at its lower end.
struct AngleArc {
    QPointF corner;
    double radius;
    double startDegrees; ///< counter-clockwise from three o'clock
    double spanDegrees;
};

/// From point to centre of gravity and on to the other point, under the unit.
struct DistanceLine {
    double y;
    double left;
    double centre;
    double right;
};

/// Where everything of the picture goes. Texts have rooms of their own, so none lies on another or on the drawing.
struct LiftLayout {
    double em = 0; ///< height of the text, by which lines and signs are drawn
    std::vector<TextRun> texts;
    std::vector<Mark> marks;
    QRectF hoist;
    QLineF rope;
    QPointF hook;
    std::vector<QLineF> rigging; ///< beam and what carries it, link, fitting
    std::vector<Leg> legs;
    std::vector<QPointF> points;
    QRectF unit;
    QPointF centre;
    std::optional<AngleArc> arc;
    std::optional<DistanceLine> distances;
};

/// Lays the picture out in an area: legs at their true angle, points and centre of gravity in true proportion, the hook above the centre
/// of gravity. Legs steeper than 75° at two points are drawn under a beam, since no hook hangs that high.
/// The text takes the font's size, down to half of it where the area is small; from 320 × 240 pixels for numbers of six digits. Names
/// that are longer than their room are cut with an ellipsis.
LiftLayout layLift(const Lift &lift, const QRectF &area, const QFont &font);

} // namespace picture
