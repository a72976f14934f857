// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/photos/bare_copy.hpp"

#include <QBuffer>
#include <QColorSpace>
#include <QCoreApplication>
#include <QFileInfo>
#include <QPainter>

namespace photos {

namespace {

/// Scratches and lockwire stay legible, at a third of the size of the best.
constexpr int quality = 90;

QString tr(const char *text) { return QCoreApplication::translate("Photos", text); }

/// Painted anew: texts, profile and all else that travels with a QImage stay behind.
QImage pictureAlone(QImage image)
{
    if (image.colorSpace().isValid())
        image.convertToColorSpace(QColorSpace(QColorSpace::SRgb));
    QImage bare(image.size(), QImage::Format_RGB32);
    bare.fill(Qt::white);
    QPainter(&bare).drawImage(0, 0, image);
    return bare;
}

} // namespace

core::Result<PhotoFile> bareCopy(const PhotoFile &photo, std::optional<int> longestSide)
{
    const auto image = upright(photo.bytes, longestSide ? QSize(*longestSide, *longestSide) : QSize());
    if (!image)
        return core::failure(image.error());
    PhotoFile copy{QFileInfo(photo.name).completeBaseName() + QStringLiteral(".jpg"), {}, QStringLiteral("image/jpeg")};
    QBuffer out(&copy.bytes);
    out.open(QIODevice::WriteOnly);
    if (!pictureAlone(*image).save(&out, "JPG", quality))
        return core::failure(core::ErrorCode::BadInput, tr("No copy of %1 could be made. Attach it as it is, or choose another.").arg(photo.name));
    return copy;
}

} // namespace photos
