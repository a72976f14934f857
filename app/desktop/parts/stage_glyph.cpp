// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/stage_glyph.hpp"

#include <QPainter>

#include <algorithm>

#include "app/desktop/parts/theme.hpp"

namespace desktop {

namespace {

/// Lengths in hundredths of the glyph's side, from its centre.
struct Pen {
    QPainter &painter;
    QPointF centre;
    double side;
    QColor colour;
    QPointF at(double x, double y) const { return centre + QPointF(x, y) * (side / 100.0); }
    void line(double x1, double y1, double x2, double y2, double width) const
    {
        painter.setPen(QPen(colour, std::max(1.0, width * side / 100.0), Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(at(x1, y1), at(x2, y2));
    }
};

void connected(const Pen &pen)
{
    pen.line(-48, 0, -14, 0, 7);
    pen.line(14, 0, 48, 0, 7);
    pen.painter.setPen(QPen(pen.colour, std::max(1.0, pen.side * 0.07)));
    pen.painter.setBrush(Qt::NoBrush);
    pen.painter.drawPolygon(QPolygonF{pen.at(-14, 0), pen.at(0, -14), pen.at(14, 0), pen.at(0, 14)});
}

void disconnected(const Pen &pen)
{
    pen.line(-48, 0, -16, 0, 16);
    pen.line(16, 0, 48, 0, 16);
    pen.line(-17, -26, -17, 26, 12);
    pen.line(17, -26, 17, 26, 12);
}

void joined(const Pen &pen) { pen.line(-48, 0, 48, 0, 16); }

void striped(const Pen &pen, double half)
{
    pen.line(-half, 0, half, 0, 16);
    pen.line(-9, half * 0.62, 9, -half * 0.62, 13);
}

} // namespace

void paintStageGlyph(QPainter &painter, const QRectF &area, core::Stage stage, const QColor &colour)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const Pen pen{painter, area.center(), std::min(area.width(), area.height()), colour};
    switch (stage) {
    case core::Stage::Connected: connected(pen); break;
    case core::Stage::Disconnected: disconnected(pen); break;
    case core::Stage::Reconnected: joined(pen); break;
    case core::Stage::Secured: striped(pen, 48); break;
    case core::Stage::Inspected:
        striped(pen, 36);
        painter.setPen(QPen(colour, std::max(1.0, pen.side * 0.08)));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(pen.centre, pen.side * 0.44, pen.side * 0.44);
        break;
    }
    painter.restore();
}

StageMark::StageMark(QWidget *parent) : QWidget(parent)
{
    setStage(core::Stage::Connected);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void StageMark::setStage(core::Stage stage)
{
    m_stage = stage;
    setText(core::stageWord(stage));
}

void StageMark::setText(const QString &text)
{
    m_text = text;
    setAccessibleName(text);
    updateGeometry();
    update();
}

int StageMark::side() const { return fontMetrics().height() * 5 / 4; }

QSize StageMark::sizeHint() const
{
    const int gap = fontMetrics().averageCharWidth();
    return {side() + gap + fontMetrics().horizontalAdvance(m_text) + gap, side() + 4};
}

void StageMark::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    const QColor colour = stageColour(m_stage, shadeAround(this));
    paintStageGlyph(painter, QRectF(0, (height() - side()) / 2.0, side(), side()), m_stage, colour);
    painter.setPen(colour);
    const QRect words = rect().adjusted(side() + fontMetrics().averageCharWidth(), 0, 0, 0);
    painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeft, m_text);
}

} // namespace desktop
