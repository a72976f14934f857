// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/picture/signings_picture.hpp"

#include <QPainter>

namespace picture {

namespace {

QPolygonF diamond(const QPointF &centre, double half)
{
    return QPolygonF({centre + QPointF(0, -half), centre + QPointF(half, 0), centre + QPointF(0, half), centre + QPointF(-half, 0)});
}

} // namespace

void paintSigningMark(QPainter &painter, const PlacedMark &mark, double size, const SigningInks &inks)
{
    const double half = size / 2;
    const QRectF box(mark.centre.x() - half, mark.centre.y() - half, size, size);
    if (mark.inBurst)
        painter.fillRect(QRectF(box.left(), box.bottom() + size * 0.15, size, size * 0.2), inks.burst);
    painter.setPen(QPen(inks.ink, size * 0.12));
    painter.setBrush(mark.counts ? inks.ink : inks.paper);
    switch (mark.as) {
    case core::SignedAs::Work:
        painter.drawRect(box.adjusted(size * 0.1, size * 0.1, -size * 0.1, -size * 0.1));
        return;
    case core::SignedAs::Look:
        painter.drawEllipse(box);
        return;
    case core::SignedAs::Record:
        painter.drawRect(QRectF(mark.centre.x() - size * 0.12, box.top(), size * 0.24, size));
        return;
    case core::SignedAs::Release:
        painter.drawPolygon(diamond(mark.centre, half * 1.2));
        return;
    }
}

void paintSignings(QPainter &painter, const SigningLayout &layout, const SigningInks &inks, std::optional<qint64> chosen)
{
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(layout.font);
    painter.setPen(QPen(inks.quiet, 1));
    for (const double y : layout.laneLines)
        painter.drawLine(QLineF(layout.plot.left(), y, layout.plot.right(), y));
    painter.setPen(QPen(inks.quiet, 1, Qt::DashLine));
    for (const double x : layout.shiftLines)
        painter.drawLine(QLineF(x, layout.plot.top() - layout.markSize, x, layout.plot.bottom()));
    for (const PlacedMark &mark : layout.marks)
        paintSigningMark(painter, mark, layout.markSize, inks);
    for (const PlacedText &text : layout.texts) {
        painter.setPen(text.isQuiet ? inks.quiet : inks.ink);
        painter.drawText(text.rect, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, text.text);
    }
    for (const PlacedMark &mark : layout.marks) {
        if (mark.seq != chosen)
            continue;
        const double half = layout.markSize;
        painter.setPen(QPen(inks.ink, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(mark.centre.x() - half, mark.centre.y() - half, 2 * half, 2 * half));
    }
}

} // namespace picture
