// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/photos/mark_picture.hpp"

#include <QFontMetricsF>
#include <QPainter>

#include "core/job/photo_marks.hpp"

namespace photos {

namespace {

/// Beside the ring, on the side where the picture goes on.
QRectF flagOf(const QPointF &at, double ring, QSizeF flag, const QRectF &picture)
{
    const bool isLeft = at.x() + ring + flag.width() > picture.right();
    const bool isAbove = at.y() - ring - flag.height() >= picture.top();
    const QPointF corner(isLeft ? at.x() - ring * 0.7 - flag.width() : at.x() + ring * 0.7, isAbove ? at.y() - ring * 0.7 - flag.height() : at.y() + ring * 0.7);
    return {corner, flag};
}

} // namespace

QPointF placeOf(const core::PhotoMark &mark, const QRectF &picture)
{
    const auto whole = static_cast<double>(core::wholePicture);
    return {picture.left() + picture.width() * static_cast<double>(mark.across) / whole, picture.top() + picture.height() * static_cast<double>(mark.down) / whole};
}

void drawMark(QPainter &painter, const core::PhotoMark &mark, const QRectF &picture, double size, MarkLook look)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QPointF at = placeOf(mark, picture);
    const double ring = size * 0.9;
    const double thick = size / 9;
    const Qt::PenStyle style = look == MarkLook::Draft ? Qt::DashLine : Qt::SolidLine;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(Qt::white, thick * 3));
    painter.drawEllipse(at, ring, ring);
    painter.setPen(QPen(Qt::black, thick, style));
    painter.drawEllipse(at, ring, ring);
    QFont font = painter.font();
    font.setPixelSize(qMax(6, qRound(size)));
    font.setBold(true);
    painter.setFont(font);
    const QString number = QString::number(mark.number);
    const QFontMetricsF metrics(font);
    const QRectF flag = flagOf(at, ring, QSizeF(metrics.horizontalAdvance(number) + size * 0.7, metrics.height()), picture);
    painter.setPen(QPen(Qt::black, thick, style));
    painter.setBrush(Qt::white);
    painter.drawRect(flag);
    painter.drawText(flag, Qt::AlignCenter, number);
    painter.restore();
}

} // namespace photos
