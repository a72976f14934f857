// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/backup.hpp"

#include <QByteArray>
#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>

#include <cerrno>
#include <cstdio>
#include <cstdlib>

#include <fcntl.h>
#include <unistd.h>

#include "db/contents.hpp"
#include "db/durable.hpp"
#include "db/opening.hpp"
#include "db/sqlite/online_copy.hpp"
#include "db/sqlite/transaction.hpp"

namespace db {

using core::ErrorCode;
using core::failure;
using core::Result;
using std::chrono::milliseconds;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Store", text); }

/// A stick may have a file system without links, a network folder one without this sort of renaming, and some have neither. There
/// the name is taken by an empty file first, which nobody else can take any more and which is then replaced.
int renameWithoutReplacing(const QByteArray &from, const QByteArray &to)
{
    const int status = renameat2(AT_FDCWD, from.constData(), AT_FDCWD, to.constData(), RENAME_NOREPLACE);
    if (status == 0 || errno != EINVAL)
        return status;
    if (link(from.constData(), to.constData()) == 0)
        return unlink(from.constData());
    if (errno == EEXIST)
        return -1;
    const int taken = open(to.constData(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
    if (taken < 0 || ::close(taken) != 0)
        return -1;
    const int renamed = rename(from.constData(), to.constData());
    const int systemError = errno;
    if (renamed != 0)
        (void)unlink(to.constData());
    errno = systemError;
    return renamed;
}

core::Error noRoom(const QString &target)
{
    return {ErrorCode::NoSpace, tr("There is no room for the backup at %1; no file was made. Make room, or choose another disk.").arg(target)};
}

/// A file that is removed, with whatever SQLite laid beside it, unless it was kept.
class PartialFile {
public:
    static Result<PartialFile> beside(const QString &target)
    {
        const QFileInfo wanted(target);
        QByteArray name = QFile::encodeName(wanted.absolutePath() + QStringLiteral("/.") + wanted.fileName() + QStringLiteral(".XXXXXX"));
        const int file = mkstemp(name.data()); // mode 0600
        const int systemError = errno;
        if (file < 0 && (systemError == ENOSPC || systemError == EDQUOT))
            return failure(noRoom(target));
        if (file < 0)
            return failure(ErrorCode::Io, tr("No file could be made beside %1 (system %2). Check that the folder is there and that you "
                                             "may write to it.")
                                              .arg(target, QString::number(systemError)));
        ::close(file);
        return PartialFile(QFile::decodeName(name));
    }
    PartialFile(PartialFile &&other) noexcept : m_path(std::exchange(other.m_path, QString())) {}
    PartialFile &operator=(PartialFile &&) = delete;
    PartialFile(const PartialFile &) = delete;
    PartialFile &operator=(const PartialFile &) = delete;
    ~PartialFile()
    {
        if (!m_path.isEmpty())
            removeWithSideFiles(m_path);
    }
    const QString &path() const { return m_path; }

    /// Gives it its name. A file of that name that came meanwhile is replaced only when that was asked for.
    Result<void> moveTo(const QString &target, Overwrite overwrite)
    {
        const QByteArray from = QFile::encodeName(m_path);
        const QByteArray to = QFile::encodeName(target);
        const int status = overwrite == Overwrite::Yes ? rename(from.constData(), to.constData()) : renameWithoutReplacing(from, to);
        const int systemError = errno;
        if (status != 0)
            return failure(systemError == EEXIST ? ErrorCode::BadInput : ErrorCode::Io,
                           tr("The backup could not be given its name %1 (system %2). Choose another name.").arg(target, QString::number(systemError)));
        m_path.clear();
        return {};
    }

private:
    explicit PartialFile(QString path) : m_path(std::move(path)) {}
    QString m_path;
};

Result<void> checkTarget(const QString &source, const QString &target, Overwrite overwrite)
{
    const QFileInfo file(target);
    if (!file.exists() && !file.isSymLink())
        return {};
    if (file.canonicalFilePath() == QFileInfo(source).canonicalFilePath())
        return failure(ErrorCode::BadInput, tr("%1 is the store itself. Choose another name for the backup.").arg(target));
    if (overwrite == Overwrite::No || !file.isFile())
        return failure(ErrorCode::BadInput, tr("%1 exists already. Choose another name, or say that it may be replaced.").arg(target));
    // A side file of the old one would be taken for the new one's.
    for (const char *beside : {"-wal", "-journal"})
        if (QFileInfo::exists(target + QLatin1String(beside)))
            return failure(ErrorCode::BadInput, tr("%1 is in use, or was not closed well. Choose another name for the backup.").arg(target));
    return {};
}

/// Without a write-ahead log the copy is one file, which opens from a read-only disk as well.
constexpr char asOneFile[] = "PRAGMA journal_mode = DELETE;";

Result<Contents> copyTo(const QString &source, const QString &partial, milliseconds patience,
                                      const BackupProgress &progress)
{
    auto from = openForReading(source, patience);
    if (!from)
        return failure(from.error());
    auto moment = Transaction::beginReading(**from);
    if (!moment)
        return failure(moment.error());
    auto contents = contentsOf(**from);
    auto to = Connection::open(partial, Mode::ReadWrite, patience);
    if (!contents || !to)
        return failure(contents ? to.error() : contents.error());
    auto done = copyOnline(**from, **to, progress)
                    .and_then([&] { return (*to)->runScript(asOneFile); })
                    .and_then([&] { return (*to)->close(Leaving::Settle); })
                    .and_then([&] { return syncFile(partial); });
    return done.map([&] { return *std::move(contents); });
}

tl::unexpected<core::Error> notTheSame()
{
    return failure(ErrorCode::Damaged, tr("The backup was read again and is not the same as the store; it was thrown away. Check the "
                                          "disk, and verify the store itself."));
}

/// Reads the copy again, every page and every row of it.
Result<void> checkCopy(const QString &partial, const Contents &expected, milliseconds patience)
{
    auto copy = openForReading(partial, patience);
    if (!copy)
        return failure(copy.error());
    auto sound = (*copy)->query("PRAGMA integrity_check(1)").one([](Statement &row) { return row.text(0); });
    auto contents = contentsOf(**copy);
    if (!sound || !contents)
        return failure(sound ? contents.error() : sound.error());
    if (*sound != QStringLiteral("ok") || *contents != expected)
        return notTheSame();
    return (*copy)->close(Leaving::Untouched);
}

/// In a backup "nothing was recorded, sign again" would be the wrong advice.
core::Error toldOf(const core::Error &error, const QString &target)
{
    if (error.code == ErrorCode::NoSpace)
        return noRoom(target);
    if (error.code != ErrorCode::Io)
        return error;
    return {error.code, tr("The backup to %1 failed, and no file was made. Check the disk and its room, and back up again, perhaps to another disk. (%2)").arg(target, error.message)};
}

} // namespace

Result<BackupReport> copyStore(const QString &source, const QString &target, Overwrite overwrite, milliseconds patience,
                               const BackupProgress &progress)
{
    if (auto fits = checkTarget(source, target, overwrite); !fits)
        return failure(fits.error());
    auto partial = PartialFile::beside(target);
    if (!partial)
        return failure(partial.error());
    const auto contents = copyTo(source, partial->path(), patience, progress);
    if (!contents)
        return failure(toldOf(contents.error(), target));
    const BackupReport report{static_cast<qint64>(contents->ledgers.size()), contents->entries(), QFileInfo(partial->path()).size()};
    auto done = checkCopy(partial->path(), *contents, patience)
                    .and_then([&] { return partial->moveTo(target, overwrite); })
                    .and_then([&] { return syncFolder(QFileInfo(target).absolutePath()); });
    if (!done)
        return failure(toldOf(done.error(), target));
    return report;
}

} // namespace db
