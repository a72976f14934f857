// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QByteArrayView>

#include <vector>

namespace battery {

/// A ZIP file in its parts (APPNOTE 6.3, sections 4.3.7, 4.3.12 and 4.3.16), to be put together again in any way.
struct ZipParts {
    struct File {
        QByteArray local; ///< header and name
        QByteArray data;
        QByteArray central; ///< the directory's header and name
        QByteArray behind{}; ///< between this file and the next
    };

    /// Offsets of members in the two headers and in the end record.
    struct At {
        qsizetype local;
        qsizetype central;
    };
    static constexpr At needed{4, 6};
    static constexpr At flags{6, 8};
    static constexpr At method{8, 10};
    static constexpr At time{10, 12};
    static constexpr At date{12, 14};
    static constexpr At crc{14, 16};
    static constexpr At packed{18, 20};
    static constexpr At size{22, 24};
    static constexpr At nameLength{26, 28};
    static constexpr At extraLength{28, 30};
    static constexpr At name{30, 46};
    static constexpr qsizetype centralCommentLength = 32;
    static constexpr qsizetype centralOffset = 42;

    static ZipParts of(QByteArrayView zip);

    QByteArray before{};   ///< before the first file
    std::vector<File> files{};
    QByteArray afterFiles{}; ///< before the directory
    QByteArray afterDirectory{};
    QByteArray end{};
    bool keepsOffsets = false; ///< leaves offsets, counts and sizes as they are, instead of making them right

    QByteArray zip() const;
    static void setTwo(QByteArray &bytes, qsizetype at, quint16 value);
    static void setFour(QByteArray &bytes, qsizetype at, quint32 value);
    static quint16 two(QByteArrayView bytes, qsizetype at);
    static quint32 four(QByteArrayView bytes, qsizetype at);
    /// Sets a member of both headers.
    static void setTwo(File &file, At at, quint16 value);
    static void setFour(File &file, At at, quint32 value);
    static void rename(File &file, const QByteArray &name);
    static QByteArray nameOf(const File &file) { return file.central.mid(name.central, two(file.central, nameLength.central)); }
};

} // namespace battery
