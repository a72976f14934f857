// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QImage>
#include <QList>

/// Photos as a camera writes them, made by hand from the published layouts:
/// - markers and segments of a JPEG: ITU-T T.81 (09/92), section B.1.1 and table B.1
/// - the Exif block in APP1, its TIFF header, IFDs and tags 0x0112 (orientation), 0x8825 (GPS), GPS tags 1 to 4: CIPA DC-008 / JEITA CP-3451 (Exif 2.3),
///   sections 4.5 and 4.6
namespace camera {

/// The left half blue, the right half red.
QImage twoHalves(int width, int height);
QByteArray jpegOf(const QImage &image);
QByteArray pngOf(const QImage &image);

/// 55° 45' N, 12° 30' E as the GPS block writes it: the bytes that must not be left over.
QByteArray latitudeBytes();

/// An APP1 segment with an Exif block: the orientation, and the place where it was taken if `hasPlace`.
QByteArray exifSegment(quint16 orientation, bool hasPlace);
/// A comment segment.
QByteArray commentSegment(const QByteArray &words);

/// The JPEG with the segments after its start.
QByteArray with(const QByteArray &jpeg, const QList<QByteArray> &segments);

/// The second bytes of the markers before the picture's data: 0xe0 is APP0, 0xe1 APP1, 0xfe a comment.
QList<quint8> markersOf(const QByteArray &jpeg);

} // namespace camera
