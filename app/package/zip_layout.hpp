// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArrayView>
#include <QString>

#include <vector>

#include "core/value/result.hpp"

namespace package {

/// How every file in a package's ZIP is written, so that nothing of the container can say anything that the files do not: no moment, no comment,
/// no extra fields, plain files readable by all.
namespace plain {
constexpr quint16 dosTime = 0;
constexpr quint16 dosDate = 0x21; ///< 1980-01-01, the first day that ZIP knows
constexpr quint16 madeBy = 0x033f; ///< Unix, version 6.3 of the format
constexpr quint32 attributes = 0100644U << 16; ///< as Unix writes them, in the upper half
} // namespace plain

/// A file in the ZIP, as directory and local header say alike.
struct PackedFile {
    QString name;
    qint64 at;     ///< where its packed bytes begin
    qint64 packed; ///< how many they are
    qint64 size;   ///< unpacked
    quint32 crc;   ///< of the unpacked bytes, as ZIP has it
    bool isDeflated;
};

/// Looks at the bytes of a whole ZIP file (APPNOTE 6.3, sections 4.3.7 to 4.3.16): the local files stand one behind the other from the first byte, the directory
/// right behind them, its end right behind that and at the very end; directory and local headers say the same; all of it is plain in the sense
/// above, names are safe and differ by more than capitals. So nothing can hide between the files, and no two readers see different ones. What is
/// packed is not looked at. Damaged, with what was found; it is no ZIP file in case that it has no end.
core::Result<std::vector<PackedFile>> readLayout(QByteArrayView zip);

} // namespace package
