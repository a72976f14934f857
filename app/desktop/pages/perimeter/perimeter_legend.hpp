// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include <optional>
#include <vector>

#include "app/desktop/parts/theme.hpp"
#include "app/picture/perimeter_layout.hpp"

class QPainter;

namespace desktop {

/// One shape of the boundary, with its word and how many there are of it.
struct LegendLine {
    enum class Shape { Stage, Mount, Applied };
    Shape shape;
    std::optional<core::Stage> stage;
    QString words;
};

/// What is on no item is left out.
std::vector<LegendLine> legendOf(const picture::Perimeter &perimeter);

/// How high they stand at that width, in as many rows as they take; in pixels of the font's device.
double legendHeight(const std::vector<LegendLine> &lines, double width, const QFont &font);

/// Paints them side by side, from the left and from the top, in as many rows as the width of the area asks.
void paintLegend(QPainter &painter, const std::vector<LegendLine> &lines, const QRectF &area, const QFont &font, Shade shade);

/// What each shape of the boundary stands for.
class PerimeterLegend : public QWidget {
    Q_OBJECT

public:
    explicit PerimeterLegend(QWidget *parent = nullptr);
    void show(const picture::Perimeter &perimeter);
    QSize sizeHint() const override;
    int heightForWidth(int width) const override;
    QSize minimumSizeHint() const override { return {0, sizeHint().height()}; }

protected:
    void resizeEvent(QResizeEvent *event) override;
    void paintEvent(QPaintEvent *event) override;

private:
    std::vector<LegendLine> m_lines;
};

} // namespace desktop
