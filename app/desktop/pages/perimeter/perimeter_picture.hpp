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

/// In which colours and letters it is painted, and how far it is enlarged: what would be too small to be read is left out.
struct PerimeterLook {
    QFont font;
    QPalette palette;
    Shade shade;
    double scale;
};

/// Sizes for a drawing in that font: with names beside number and stage, or without.
enum class Names { No, Yes };
picture::PerimeterMeasure perimeterMeasure(const QFont &font, Names names, double aspect);

/// Whether words of that font can still be read at that scale.
bool isLegible(const QFont &font, double scale);

/// `E12 Disconnected, mount: Bleed duct, forward`
QString inWords(const picture::PerimeterItem &item);

/// Paints what lies in `visible`. What is loose is heavy and in its colour, what is not is quiet; the stage is told by its shape, by its word
/// and by its colour. `chosen` is counted as the couplings of the layout.
void paintPerimeter(QPainter &painter, const picture::Perimeter &perimeter, const picture::PerimeterLayout &layout, const PerimeterLook &look, const QRectF &visible, const std::vector<std::size_t> &chosen);

} // namespace desktop
