// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/durable.hpp"

#include <QCoreApplication>
#include <QFile>

#include <cerrno>

#include <fcntl.h>
#include <unistd.h>

namespace db {

using core::ErrorCode;
using core::failure;
using core::Result;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Store", text); }

Result<void> sync(const QString &path, int flags)
{
    const int file = open(QFile::encodeName(path).constData(), flags | O_CLOEXEC);
    const bool isSynced = file >= 0 && fsync(file) == 0;
    const int systemError = errno;
    if (file >= 0)
        ::close(file);
    // Some file systems cannot sync a folder at all and say so; their names are as durable as they ever get.
    if (isSynced || (file >= 0 && (flags & O_DIRECTORY) && systemError == EINVAL))
        return {};
    return failure(ErrorCode::Io, tr("The disk did not confirm that it holds %1 (system %2). Check the disk.").arg(path, QString::number(systemError)));
}

} // namespace

Result<void> syncFile(const QString &path) { return sync(path, O_RDONLY); }

Result<void> syncFolder(const QString &path) { return sync(path, O_RDONLY | O_DIRECTORY); }

} // namespace db
