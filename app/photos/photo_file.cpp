// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/photos/photo_file.hpp"

#include <QBuffer>
#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>

#include <algorithm>

namespace photos {

using namespace Qt::StringLiterals;

namespace {

struct Sort {
    QByteArray format; ///< as QImageReader has it
    QLatin1String mediaType;
};

const std::vector<Sort> &sorts()
{
    static const std::vector<Sort> all = {{"jpeg", "image/jpeg"_L1}, {"png", "image/png"_L1}};
    return all;
}

QString tr(const char *text) { return QCoreApplication::translate("Photos", text); }

tl::unexpected<core::Error> no(const QString &sentence) { return core::failure(core::ErrorCode::BadInput, sentence); }

tl::unexpected<core::Error> tooLarge(const QString &name)
{
    return no(tr("%1 has more than %2 MiB. Make the picture smaller, or choose another.").arg(name, QString::number(mostBytes / 1024 / 1024)));
}

/// What QImageReader may use for a picture, in MiB: four bytes for each pixel of the largest. Rounded up.
constexpr int roomForLargest = static_cast<int>((mostPixels * 4 + 1024 * 1024 - 1) / (1024 * 1024));

/// By the room that they take when decoded: one of 16 bits a colour counts as two.
qint64 pixelsOf(const QImageReader &reader)
{
    const QSize size = reader.size();
    const int perPixel = QImage::toPixelFormat(reader.imageFormat()).bitsPerPixel() > 32 ? 2 : 1;
    return static_cast<qint64>(size.width()) * size.height() * perPixel;
}

/// Enough to see whether it can be decoded at all.
constexpr QSize glance(64, 64);

} // namespace

bool endsLikeAPhoto(const QString &path)
{
    const QString ending = QFileInfo(path).suffix().toLower();
    return ending == u"jpg" || ending == u"jpeg" || ending == u"png";
}

core::Result<PhotoFile> photoFrom(const QString &name, const QByteArray &bytes)
{
    if (bytes.isEmpty())
        return no(tr("%1 is empty. If it is still being copied, wait and try again.").arg(name));
    if (bytes.size() > mostBytes)
        return tooLarge(name);
    QBuffer buffer;
    buffer.setData(bytes);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    const QByteArray format = reader.format();
    const auto sort = std::find_if(sorts().begin(), sorts().end(), [&](const Sort &one) { return one.format == format; });
    if (sort == sorts().end())
        return no(tr("%1 is no picture that can be read here. Take JPEG or PNG; a phone can be told to save JPEG.").arg(name));
    const QSize size = reader.size();
    if (pixelsOf(reader) > mostPixels)
        return no(tr("%1 claims %2 × %3 pixels, which cannot be shown. Make the picture smaller, or choose another.").arg(name, QString::number(size.width()), QString::number(size.height())));
    if (size.isEmpty() || !upright(bytes, glance))
        return no(tr("%1 is damaged and cannot be decoded. Copy it from the camera again, or choose another.").arg(name));
    return PhotoFile{name, bytes, QString(sort->mediaType)};
}

core::Result<PhotoFile> readPhoto(const QString &path)
{
    const QString name = QFileInfo(path).fileName();
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return core::failure(core::ErrorCode::Io, tr("%1 cannot be read (%2). Choose another picture.").arg(path, file.errorString()));
    if (file.size() > mostBytes)
        return tooLarge(name);
    return photoFrom(name, file.readAll());
}

QImage decoded(QImageReader &reader, QSize most)
{
    QImageReader::setAllocationLimit(roomForLargest);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    // Scaled before it is turned, so a photo that lay on its side is measured lying.
    const QSize lying = reader.transformation() & QImageIOHandler::TransformationRotate90 ? most.transposed() : most;
    if (!most.isEmpty() && (size.width() > lying.width() || size.height() > lying.height()))
        reader.setScaledSize(size.scaled(lying, Qt::KeepAspectRatio).expandedTo({1, 1}));
    return reader.read();
}

core::Result<QImage> upright(const QByteArray &bytes, QSize most)
{
    QBuffer buffer;
    buffer.setData(bytes);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    QImage image = decoded(reader, most);
    if (image.isNull())
        return no(tr("The picture cannot be decoded (%1).").arg(reader.errorString()));
    return image;
}

QSize uprightSize(const QByteArray &bytes)
{
    QBuffer buffer;
    buffer.setData(bytes);
    buffer.open(QIODevice::ReadOnly);
    const QImageReader reader(&buffer);
    const QSize lying = reader.size();
    return reader.transformation() & QImageIOHandler::TransformationRotate90 ? lying.transposed() : lying;
}

} // namespace photos
