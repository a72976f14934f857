// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QImage>
#include <QSize>
#include <QString>

#include "core/value/digest.hpp"
#include "core/value/result.hpp"

class QImageReader;

namespace photos {

/// A picture as it came in, before anybody signed for it.
struct PhotoFile {
    QString name; ///< as its owner knows it: `IMG_0412.jpg`
    QByteArray bytes;
    QString mediaType; ///< `image/jpeg`
    bool isFile = true; ///< somebody has these bytes as a file; not so of a picture that was copied
    bool operator==(const PhotoFile &) const = default;
};

inline core::Digest digestOf(const PhotoFile &photo) { return core::Digest::of(photo.bytes); }

/// The largest file that is taken: as much as a store keeps in one piece.
constexpr qint64 mostBytes = 64LL * 1024 * 1024;
/// The largest picture that is decoded, twice what cameras of the trade make. Half as many of 16 bits a colour. A file of a few bytes may claim any
/// size.
constexpr qint64 mostPixels = 120'000'000;

/// Endings of files that are looked at: JPEG, PNG. The record prints these, and every machine decodes them.
bool endsLikeAPhoto(const QString &path);

/// Takes bytes for a picture. BadInput, with the name in it and what to do instead: empty, too large, neither JPEG nor PNG, more pixels than are
/// decoded, damaged.
core::Result<PhotoFile> photoFrom(const QString &name, const QByteArray &bytes);
/// The same for a file, which stays as it is. Io as well, when it cannot be read.
core::Result<PhotoFile> readPhoto(const QString &path);

/// What the reader stands on, turned as its camera was held, no larger than `most`; an empty `most` leaves its size. Null where it cannot be decoded: the
/// reader says why. Room is made for the largest picture that is taken, which is more than the toolkit allows by itself; whether it is larger is asked before.
QImage decoded(QImageReader &reader, QSize most);

/// The same of bytes: the picture, turned as its camera was held, no larger than `most`; an empty `most` leaves its size. BadInput: it cannot be decoded.
core::Result<QImage> upright(const QByteArray &bytes, QSize most);

/// How large it is once it is upright, without decoding it; empty where it does not say.
QSize uprightSize(const QByteArray &bytes);

} // namespace photos
