// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/picture/lift_picture.hpp"

#include <QFontMetricsF>
#include <QPainter>

namespace picture {

namespace {

QPen penOf(const QColor &colour, double width, Qt::PenStyle style = Qt::SolidLine)
{
    QPen pen(colour, width, style, Qt::RoundCap, Qt::RoundJoin);
    if (style != Qt::SolidLine)
        pen.setCapStyle(Qt::FlatCap);
    return pen;
}

const QColor &colourOf(Tone tone, const LiftInks &inks)
{
    switch (tone) {
    case Tone::Plain: return inks.ink;
    case Tone::Quiet: return inks.quiet;
    case Tone::Caution: return inks.caution;
    case Tone::Alarm: return inks.alarm;
    }
    Q_UNREACHABLE();
}

const QColor &colourOf(Strain strain, const LiftInks &inks)
{
    switch (strain) {
    case Strain::Fine: return inks.ink;
    case Strain::Little: return inks.caution;
    case Strain::Over: return inks.alarm;
    }
    Q_UNREACHABLE();
}

void drawMark(QPainter &painter, const Mark &mark, const LiftInks &inks, double em)
{
    painter.setPen(penOf(colourOf(mark.strain, inks), 0.13 * em));
    painter.setBrush(inks.paper);
    const QRectF r = mark.rect.adjusted(0.06 * em, 0.06 * em, -0.06 * em, -0.06 * em);
    if (mark.strain == Strain::Over) {
        const QRectF cross = r.adjusted(0.24 * em, 0.24 * em, -0.24 * em, -0.24 * em);
        painter.drawRect(r);
        painter.drawLine(cross.topLeft(), cross.bottomRight());
        painter.drawLine(cross.topRight(), cross.bottomLeft());
        return;
    }
    painter.drawPolygon(QPolygonF({QPointF(r.center().x(), r.top()), r.bottomRight(), r.bottomLeft()}));
    painter.drawLine(QPointF(r.center().x(), r.top() + 0.4 * r.height()), QPointF(r.center().x(), r.bottom() - 0.24 * r.height()));
}

/// The sign of a centre of gravity on drawings: a disc in quarters.
void drawCentre(QPainter &painter, const LiftLayout &layout, const LiftInks &inks)
{
    const double radius = 0.62 * layout.em;
    const QRectF disc(layout.centre.x() - radius, layout.centre.y() - radius, 2 * radius, 2 * radius);
    painter.setPen(penOf(inks.ink, 0.1 * layout.em));
    painter.setBrush(inks.paper);
    painter.drawEllipse(disc);
    painter.setBrush(inks.ink);
    painter.drawPie(disc, 0, 90 * 16);
    painter.drawPie(disc, 180 * 16, 90 * 16);
}

void drawHoist(QPainter &painter, const LiftLayout &layout, const LiftInks &inks)
{
    const double em = layout.em;
    painter.setPen(penOf(inks.ink, 0.12 * em));
    painter.setBrush(inks.fill);
    painter.drawRect(layout.hoist);
    painter.setPen(penOf(inks.ink, 0.2 * em));
    painter.drawLine(layout.hoist.topLeft() - QPointF(0.45 * em, 0), layout.hoist.topRight() + QPointF(0.45 * em, 0));
    painter.setPen(penOf(inks.ink, 0.12 * em));
    const QPointF eye = layout.hook - QPointF(0, 0.45 * em);
    painter.drawLine(layout.rope.p1(), eye - QPointF(0, 0.45 * em));
    painter.setBrush(inks.paper);
    painter.drawEllipse(eye, 0.45 * em, 0.45 * em);
}

void drawLegs(QPainter &painter, const LiftLayout &layout, const LiftInks &inks)
{
    const double em = layout.em;
    painter.setPen(penOf(inks.ink, 0.26 * em));
    for (const QLineF &line : layout.rigging)
        painter.drawLine(line);
    for (const Leg &leg : layout.legs) {
        painter.setPen(penOf(colourOf(leg.strain, inks), 0.15 * em, leg.strain == Strain::Over ? Qt::DashLine : Qt::SolidLine));
        painter.drawLine(leg.line);
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(inks.ink);
    for (const QPointF &point : layout.points)
        painter.drawEllipse(point, 0.32 * em, 0.32 * em);
    if (!layout.arc)
        return;
    const AngleArc &arc = *layout.arc;
    painter.setPen(penOf(inks.quiet, 0.08 * em));
    painter.setBrush(Qt::NoBrush);
    const QRectF around(arc.corner.x() - arc.radius, arc.corner.y() - arc.radius, 2 * arc.radius, 2 * arc.radius);
    painter.drawArc(around, qRound(arc.startDegrees * 16), qRound(arc.spanDegrees * 16));
}

void drawDistances(QPainter &painter, const LiftLayout &layout, const LiftInks &inks)
{
    if (!layout.distances)
        return;
    const DistanceLine &line = *layout.distances;
    const double tick = 0.32 * layout.em;
    painter.setPen(penOf(inks.quiet, 0.08 * layout.em));
    painter.drawLine(QPointF(line.left, line.y), QPointF(line.right, line.y));
    for (const double x : {line.left, line.centre, line.right})
        painter.drawLine(QPointF(x, line.y - tick), QPointF(x, line.y + tick));
}

void drawTexts(QPainter &painter, const LiftLayout &layout, const LiftInks &inks)
{
    for (const TextRun &run : layout.texts) {
        painter.setFont(run.font);
        painter.setPen(colourOf(run.tone, inks));
        const QFontMetricsF metrics(run.font);
        painter.drawText(QPointF(run.rect.left(), run.rect.top() + (run.rect.height() - metrics.height()) / 2 + metrics.ascent()), run.text);
    }
}

} // namespace

void paintLift(QPainter &painter, const LiftLayout &layout, const LiftInks &inks)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(penOf(inks.ink, 0.12 * layout.em));
    painter.setBrush(inks.fill);
    painter.drawRect(layout.unit);
    // A single leg at an angle pulls sideways: then no plumb line joins hook and centre.
    if (qFuzzyCompare(layout.hook.x(), layout.centre.x())) {
        painter.setPen(penOf(inks.quiet, 0.08 * layout.em, Qt::DashLine));
        painter.drawLine(layout.hook, layout.centre);
    }
    drawHoist(painter, layout, inks);
    drawLegs(painter, layout, inks);
    drawCentre(painter, layout, inks);
    drawDistances(painter, layout, inks);
    for (const Mark &mark : layout.marks)
        drawMark(painter, mark, inks, layout.em);
    drawTexts(painter, layout, inks);
    painter.restore();
}

} // namespace picture
