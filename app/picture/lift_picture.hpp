// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QColor>

#include "app/picture/lift_layout.hpp"

class QPainter;

namespace picture {

/// Solid colours: an archived page may hold nothing see-through.
struct LiftInks {
    QColor ink;     ///< text and lines
    QColor quiet;   ///< measures and the plumb line
    QColor fill;    ///< of the unit and the hoist
    QColor paper;   ///< what the picture lies on
    QColor caution; ///< under the margin that is wanted
    QColor alarm;   ///< over a limit
};

/// Paints a lift as it was laid out: hoist and hook with load and limit, the legs, the unit with its centre of gravity, what each point and leg
/// carries, and what is left. All numbers are those of measure::checkLift.
void paintLift(QPainter &painter, const LiftLayout &layout, const LiftInks &inks);

} // namespace picture
