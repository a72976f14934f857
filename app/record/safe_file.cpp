// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/record/safe_file.hpp"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <QStorageInfo>

#include <fcntl.h>
#include <unistd.h>

namespace record {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Record", text); }

/// Qt tells a full disk only in words, in the language of the system; the space left is the same in all of them.
bool isDiskFull(const QString &path)
{
    const QStorageInfo storage(QFileInfo(path).path());
    return storage.isValid() && storage.bytesAvailable() < 4096;
}

core::Result<void> ioFailure(const QSaveFile &file, const QString &path)
{
    if (file.error() == QFileDevice::ResourceError || isDiskFull(path))
        return core::failure(core::ErrorCode::NoSpace, tr("The disk is full. Make room and export again."), {path, std::nullopt, std::nullopt});
    return core::failure(core::ErrorCode::Io, tr("The file cannot be written (%1). Choose another folder, or ask who looks after it.").arg(file.errorString()),
                         {path, std::nullopt, std::nullopt});
}

/// The rename is in the folder, and the folder has to reach the disk as well. Some file systems refuse; the file itself is safe.
void flushFolder(const QString &path)
{
    const int folder = ::open(QFile::encodeName(QFileInfo(path).absolutePath()).constData(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (folder < 0)
        return;
    (void)::fsync(folder);
    ::close(folder);
}

/// Renaming over a device or a pipe would put a plain file in its place.
core::Result<void> checkTarget(const QString &path)
{
    const QFileInfo there(path);
    if (there.exists() && !there.isFile())
        return core::failure(core::ErrorCode::Io, tr("There is something else than a file of that name. Choose another name."), {path, std::nullopt, std::nullopt});
    return {};
}

} // namespace

core::Result<void> writeSafely(const QString &path, const std::function<core::Result<void>(QIODevice &)> &write)
{
    if (const auto free = checkTarget(path); !free)
        return free;
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        return ioFailure(file, path);
    if (auto written = write(file); !written) {
        file.cancelWriting();
        return written;
    }
    if (!file.flush() || ::fsync(file.handle()) != 0 || !file.commit())
        return ioFailure(file, path);
    flushFolder(path);
    return {};
}

core::Result<void> moveSafely(const QString &file, const QString &path)
{
    if (const auto free = checkTarget(path); !free)
        return free;
    QFile done(file);
    if (!done.open(QIODevice::ReadOnly) || ::fsync(done.handle()) != 0 || ::rename(QFile::encodeName(file).constData(), QFile::encodeName(path).constData()) != 0)
        return core::failure(isDiskFull(path) ? core::ErrorCode::NoSpace : core::ErrorCode::Io, tr("The file cannot be written. Make room, or choose another folder."), {path, std::nullopt, std::nullopt});
    flushFolder(path);
    return {};
}

} // namespace record
