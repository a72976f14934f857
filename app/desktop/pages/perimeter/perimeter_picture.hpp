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
    double leastLetters; ///< letters smaller than so many pixels are left out
};

/// Sizes for a drawing in that font.
picture::PerimeterMeasure perimeterMeasure(const picture::Perimeter &perimeter, const QFont &font, Detail detail, double aspect);

/// Letters of a screen that can still be made out, and those that read well; those of paper. In pixels, 96 to the inch.
constexpr double leastOnScreen = 8;
constexpr double leastToReadWell = 10;
constexpr double leastOnPaper = 6.5;

/// Whether letters of that font are so large at that scale.
bool isLegible(const QFont &font, double scale, double least);

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
