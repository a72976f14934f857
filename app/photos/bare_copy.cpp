// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/photos/bare_copy.hpp"

#include <QBuffer>
#include <QCoreApplication>
#include <QFileInfo>

#include "app/photos/on_white.hpp"

namespace photos {

namespace {

/// Scratches and lockwire stay legible, at a third of the size of the best.
constexpr int quality = 90;

QString tr(const char *text) { return QCoreApplication::translate("Photos", text); }

} // namespace

core::Result<PhotoFile> bareCopy(const PhotoFile &photo, std::optional<int> longestSide)
{
    const auto image = upright(photo.bytes, longestSide ? QSize(*longestSide, *longestSide) : QSize());
    if (!image)
        return core::failure(image.error());
    PhotoFile copy{QFileInfo(photo.name).completeBaseName() + QStringLiteral(".jpg"), {}, QStringLiteral("image/jpeg")};
    QBuffer out(&copy.bytes);
    out.open(QIODevice::WriteOnly);
    if (!onWhite(*image).save(&out, "JPG", quality))
        return core::failure(core::ErrorCode::BadInput, tr("No copy of %1 could be made. Attach it as it is, or choose another.").arg(photo.name));
    return copy;
}

} // namespace photos
