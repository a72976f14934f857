// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/photos/camera.hpp"

#include <QBuffer>
#include <QPainter>
#include <QtEndian>

namespace camera {

namespace {

template <class Number>
QByteArray big(Number number)
{
    QByteArray bytes(sizeof(Number), Qt::Uninitialized);
    qToBigEndian(number, bytes.data());
    return bytes;
}

/// One field of an IFD: tag, type (2 ASCII, 3 SHORT, 4 LONG, 5 RATIONAL), count, and four bytes of value or offset.
QByteArray fieldOf(quint16 tag, quint16 type, quint32 count, const QByteArray &value) { return big(tag) + big(type) + big(count) + value.leftJustified(4, '\0'); }

QByteArray ifdOf(const QList<QByteArray> &fields) { return big(static_cast<quint16>(fields.size())) + fields.join() + big(quint32{0}); }

QByteArray degrees(quint32 whole, quint32 minutes) { return big(whole) + big(quint32{1}) + big(minutes) + big(quint32{1}) + big(quint32{0}) + big(quint32{1}); }

QByteArray segmentOf(quint8 marker, const QByteArray &content) { return QByteArray("\xff") + static_cast<char>(marker) + big(static_cast<quint16>(content.size() + 2)) + content; }

QByteArray encoded(const QImage &image, const char *format)
{
    QByteArray bytes;
    QBuffer out(&bytes);
    out.open(QIODevice::WriteOnly);
    image.save(&out, format);
    return bytes;
}

} // namespace

QImage twoHalves(int width, int height)
{
    QImage image(width, height, QImage::Format_RGB32);
    image.fill(Qt::blue);
    QPainter(&image).fillRect(width / 2, 0, width - width / 2, height, Qt::red);
    return image;
}

QByteArray jpegOf(const QImage &image) { return encoded(image, "JPG"); }
QByteArray pngOf(const QImage &image) { return encoded(image, "PNG"); }

QByteArray latitudeBytes() { return degrees(55, 45); }

QByteArray exifSegment(quint16 orientation, bool hasPlace)
{
    constexpr quint32 headerBytes = 8;
    constexpr quint32 bytesOfField = 12;
    const quint32 fields = hasPlace ? 2 : 1;
    const quint32 gpsAt = headerBytes + 2 + fields * bytesOfField + 4;
    QList<QByteArray> first{fieldOf(0x0112, 3, 1, big(orientation))};
    if (hasPlace)
        first << fieldOf(0x8825, 4, 1, big(gpsAt));
    QByteArray tiff = QByteArray("MM\0\x2a", 4) + big(headerBytes) + ifdOf(first);
    if (hasPlace) {
        const quint32 valuesAt = gpsAt + 2 + 4 * bytesOfField + 4;
        const QByteArray north = latitudeBytes();
        tiff += ifdOf({fieldOf(1, 2, 2, "N"), fieldOf(2, 5, 3, big(valuesAt)), fieldOf(3, 2, 2, "E"), fieldOf(4, 5, 3, big(static_cast<quint32>(valuesAt + north.size())))});
        tiff += north + degrees(12, 30);
    }
    return segmentOf(0xe1, QByteArray("Exif\0\0", 6) + tiff);
}

QByteArray commentSegment(const QByteArray &words) { return segmentOf(0xfe, words); }

QByteArray with(const QByteArray &jpeg, const QList<QByteArray> &segments) { return jpeg.first(2) + segments.join() + jpeg.sliced(2); }

QList<quint8> markersOf(const QByteArray &jpeg)
{
    QList<quint8> markers;
    for (qsizetype at = 2; at + 4 <= jpeg.size();) {
        const auto marker = static_cast<quint8>(jpeg[at + 1]);
        markers << marker;
        if (marker == 0xda) // start of scan: what follows is the picture
            break;
        at += 2 + qFromBigEndian<quint16>(jpeg.constData() + at + 2);
    }
    return markers;
}

} // namespace camera
