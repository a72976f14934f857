// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/sqlite/file_header.hpp"

#include <QByteArray>
#include <QFile>
#include <QtEndian>

#include <array>
#include <cerrno>
#include <cstring>
#include <memory>

#include <sqlite3.h>

#include "db/sqlite/failure.hpp"

namespace db {

using core::failure;
using core::Result;

namespace {

constexpr int headerSize = 100;
using Bytes = std::array<unsigned char, headerSize>;

qint64 big32(const Bytes &bytes, std::size_t at) { return qFromBigEndian<quint32>(bytes.data() + at); }

qint64 pageSize(const Bytes &bytes)
{
    const int stored = qFromBigEndian<quint16>(bytes.data() + 16);
    return stored == 1 ? 65536 : stored;
}

/// The count of pages holds only when the offsets 24 and 92 agree.
bool isWhole(const Bytes &bytes, qint64 fileSize)
{
    const bool countHolds = big32(bytes, 24) == big32(bytes, 92);
    return !countHolds || big32(bytes, 28) * pageSize(bytes) <= fileSize;
}

bool isSound(const Bytes &bytes)
{
    const qint64 size = pageSize(bytes);
    const bool fractionsFit = bytes[21] == 64 && bytes[22] == 32 && bytes[23] == 32;
    const bool formatsKnown = (bytes[18] == 1 || bytes[18] == 2) && bytes[18] == bytes[19];
    return size >= 512 && (size & (size - 1)) == 0 && fractionsFit && formatsKnown && bytes[20] == 0;
}

struct OpenFile {
    explicit OpenFile(const sqlite3_vfs &vfs) : memory(new char[static_cast<std::size_t>(vfs.szOsFile)]())
    {
        file = reinterpret_cast<sqlite3_file *>(memory.get());
    }
    ~OpenFile()
    {
        if (file->pMethods)
            file->pMethods->xClose(file); // nothing was written
    }
    OpenFile(const OpenFile &) = delete;
    OpenFile &operator=(const OpenFile &) = delete;

    std::unique_ptr<char[]> memory;
    sqlite3_file *file;
};

} // namespace

Result<FileHeader> readFileHeader(const QString &path)
{
    sqlite3_vfs *vfs = sqlite3_vfs_find(nullptr);
    const std::unique_ptr<const char, void (*)(const char *)> name(
        sqlite3_create_filename(QFile::encodeName(path).constData(), "", "", 0, nullptr),
        [](const char *made) { sqlite3_free_filename(const_cast<char *>(made)); });
    if (!vfs || !name)
        return failure(errorFrom(SQLITE_NOMEM, 0));

    OpenFile open(*vfs);
    int flags = SQLITE_OPEN_READONLY | SQLITE_OPEN_MAIN_DB;
    Bytes bytes{};
    qint64 size = 0;
    errno = 0;
    int status = vfs->xOpen(vfs, name.get(), open.file, flags, &flags);
    if (status == SQLITE_OK)
        status = open.file->pMethods->xFileSize(open.file, &size);
    if (status == SQLITE_OK && size >= headerSize)
        status = open.file->pMethods->xRead(open.file, bytes.data(), headerSize, 0);
    if (status != SQLITE_OK)
        return failure(errorFrom(status, errno));
    const bool isSqlite = size >= headerSize && std::memcmp(bytes.data(), "SQLite format 3", 16) == 0;
    return FileHeader{size, isSqlite, isSqlite && isSound(bytes), isSqlite && isWhole(bytes, size),
                      big32(bytes, 68), big32(bytes, 60)};
}

} // namespace db
