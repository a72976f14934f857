// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "core/value/result.hpp"

namespace db {

/// The first 100 bytes of an SQLite database, as far as they matter here. Source: "Database File Format" section 1.3,
/// sqlite.org/fileformat2.html.
struct FileHeader {
    qint64 fileSize;
    bool isSqlite;        ///< begins with the 16 bytes of every SQLite database
    bool isSound;         ///< the fixed fields have their fixed values
    bool isWhole;         ///< not shorter than it says; means nothing while a side file is beside it
    qint64 applicationId; ///< offset 68
    qint64 version;       ///< `user_version`, offset 60
};

/// Reads the header without locking, changing or completing anything. It goes through SQLite's own file layer: a file that
/// this program has open already must not be opened and closed by other means, since POSIX then drops all its locks.
core::Result<FileHeader> readFileHeader(const QString &path);

} // namespace db
