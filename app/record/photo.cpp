// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/record/photo.hpp"

#include <QBuffer>
#include <QCoreApplication>
#include <QImage>
#include <QImageReader>
#include <QPainter>

#include "app/photos/mark_picture.hpp"
#include "app/photos/on_white.hpp"
#include "app/photos/photo_file.hpp"

namespace record {

namespace {

/// Enough for the eye on paper, and a third of the size of the best.
constexpr int quality = 88;

QString tr(const char *text) { return QCoreApplication::translate("Record", text); }

/// Height of a mark's number in dots, legible at 200 dots an inch.
constexpr double markSize = 24;

void drawMarks(QImage &image, const std::vector<core::PhotoMark> &marks)
{
    if (marks.empty())
        return;
    QPainter painter(&image);
    for (const core::PhotoMark &mark : marks)
        photos::drawMark(painter, mark, QRectF(QPointF(), QSizeF(image.size())), markSize, photos::MarkLook::Signed);
}

} // namespace

core::Result<Shown> shown(const QByteArray &bytes, QSize most, const std::vector<core::PhotoMark> &marks)
{
    QBuffer buffer;
    buffer.setData(bytes);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    const QByteArray format = reader.format();
    if (format != "jpeg" && format != "png")
        return core::failure(core::ErrorCode::BadInput, tr("It is neither JPEG nor PNG, and stays in the store alone."));
    const QSize size = reader.size();
    if (size.isEmpty() || static_cast<qint64>(size.width()) * size.height() > photos::mostPixels)
        return core::failure(core::ErrorCode::BadInput, tr("It claims %1 × %2 pixels, more than is drawn here, and stays in the store alone.").arg(QString::number(size.width()), QString::number(size.height())));
    const QImage image = photos::decoded(reader, most);
    if (image.isNull())
        return core::failure(core::ErrorCode::BadInput, tr("It cannot be decoded (%1), and stays in the store alone.").arg(reader.errorString()));
    Shown photo{{}, image.size()};
    QImage picture = photos::onWhite(image); // what is see-through would break PDF/A-1b (ISO 19005-1 section 6.4)
    drawMarks(picture, marks);
    QBuffer out(&photo.jpeg);
    out.open(QIODevice::WriteOnly);
    if (!picture.save(&out, "JPG", quality))
        return core::failure(core::ErrorCode::BadInput, tr("It cannot be made small enough for paper, and stays in the store alone."));
    return photo;
}

} // namespace record
