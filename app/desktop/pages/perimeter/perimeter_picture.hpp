// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QFont>
#include <QPalette>

#include <vector>

#include "app/desktop/parts/theme.hpp"
#include "app/picture/perimeter_layout.hpp"

class QPainter;

namespace desktop {

/// What is written beside a coupling: its number; its stage as well; its name as well. Where less is written, couplings stand closer together.
enum class Detail { Numbers, Stages, Names };

/// In which colours and letters it is painted, and how far it is enlarged: what would be too small to be read is left out.
struct PerimeterLook {
    QFont font;
    QPalette palette;
    Shade shade;
    double scale;
    Detail detail;
};

/// Sizes for a drawing in that font.
picture::PerimeterMeasure perimeterMeasure(const picture::Perimeter &perimeter, const QFont &font, Detail detail, double aspect);

/// Whether words of that font can still be made out at that scale; and whether they read well.
bool isLegible(const QFont &font, double scale);
bool readsWell(const QFont &font, double scale);

/// What the unit hangs on: a solid wedge in `area`, its point up.
void paintMountMark(QPainter &painter, const QRectF &area, const QColor &colour);
/// What is applied for the job: a box of broken lines with a dot.
void paintAppliedMark(QPainter &painter, const QRectF &area, const QColor &colour);

/// `E12 Disconnected, mount: Bleed duct, forward`
QString inWords(const picture::PerimeterItem &item);

/// Paints what lies in `visible`. What is loose is heavy and in its colour, what is not is quiet; the stage is told by its shape, by its word
/// and by its colour. `chosen` is counted as the couplings of the layout.
void paintPerimeter(QPainter &painter, const picture::Perimeter &perimeter, const picture::PerimeterLayout &layout, const PerimeterLook &look, const QRectF &visible, const std::vector<std::size_t> &chosen);

} // namespace desktop
