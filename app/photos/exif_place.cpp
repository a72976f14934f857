// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/photos/exif_place.hpp"

#include <QtEndian>

namespace photos {

namespace {

constexpr quint8 startOfScan = 0xda;
constexpr quint8 app1 = 0xe1;
constexpr quint16 gpsPointer = 0x8825;
constexpr qsizetype bytesOfField = 12;

/// A TIFF block, read without going past its end.
class Tiff {
public:
    explicit Tiff(QByteArrayView bytes) : m_bytes(bytes), m_isLittle(bytes.startsWith("II")) {}
    quint32 number(qsizetype at, int width) const
    {
        if (at < 0 || at + width > m_bytes.size())
            return 0;
        const char *from = m_bytes.data() + at;
        if (width == 2)
            return m_isLittle ? qFromLittleEndian<quint16>(from) : qFromBigEndian<quint16>(from);
        return m_isLittle ? qFromLittleEndian<quint32>(from) : qFromBigEndian<quint32>(from);
    }
    bool hasGps() const
    {
        const qsizetype ifd = number(4, 4);
        const quint32 fields = number(ifd, 2);
        for (quint32 i = 0; i < fields; ++i) {
            const qsizetype at = ifd + 2 + static_cast<qsizetype>(i) * bytesOfField;
            if (at + bytesOfField > m_bytes.size())
                return false;
            if (number(at, 2) == gpsPointer)
                return true;
        }
        return false;
    }

private:
    QByteArrayView m_bytes;
    bool m_isLittle;
};

} // namespace

bool tellsPlace(const QByteArray &jpeg)
{
    if (!jpeg.startsWith("\xff\xd8"))
        return false;
    for (qsizetype at = 2; at + 4 <= jpeg.size();) {
        if (static_cast<quint8>(jpeg[at]) != 0xff)
            return false;
        const auto marker = static_cast<quint8>(jpeg[at + 1]);
        const qsizetype length = qFromBigEndian<quint16>(jpeg.constData() + at + 2);
        if (marker == startOfScan || length < 2)
            return false;
        const QByteArrayView segment = QByteArrayView(jpeg).sliced(at + 4, qMin<qsizetype>(length - 2, jpeg.size() - at - 4));
        if (marker == app1 && segment.startsWith(QByteArrayView("Exif\0\0", 6)) && Tiff(segment.sliced(6)).hasGps())
            return true;
        at += 2 + length;
    }
    return false;
}

} // namespace photos
