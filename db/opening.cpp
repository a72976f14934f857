// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/opening.hpp"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>

#include <cerrno>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "db/durable.hpp"
#include "db/migrator.hpp"
#include "db/sqlite/file_header.hpp"

namespace db {

using core::Error;
using core::ErrorCode;
using core::failure;
using core::Result;
using std::chrono::milliseconds;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Store", text); }

bool may(const QString &path, int how) { return faccessat(AT_FDCWD, QFile::encodeName(path), how, AT_EACCESS) == 0; }

QString folderOf(const QString &path) { return QFileInfo(path).absolutePath(); }

qint64 sideFileSize(const QString &path)
{
    struct stat found {};
    return stat(QFile::encodeName(path + QStringLiteral("-wal")), &found) == 0 ? qint64{found.st_size} : 0;
}

Error notAStore(const QString &path)
{
    return {ErrorCode::NotAStore, tr("%1 is not a store of this program. It was left as it is. Choose another file.").arg(path)};
}

Error newer(const QString &path)
{
    return {ErrorCode::StoreNewer, tr("%1 was written by a later version of this program. It was left as it is. Open it with that "
                                      "version, or bring this computer up to date.")
                                       .arg(path)};
}

Error damagedHeader(const QString &path)
{
    return {ErrorCode::Damaged, tr("%1 is damaged and cannot be opened. It was left as it is. Keep it, and go on with the last "
                                   "backup.")
                                    .arg(path)};
}

/// The system's and SQLite's own words name no file, so those that an opening can meet get a sentence of their own.
Error toldOf(const Error &error, const QString &path)
{
    switch (error.code) {
    case ErrorCode::Locked:
        return {error.code, tr("%1 is held by another program. Wait for it to finish, or close it, and open the store again.").arg(path)};
    case ErrorCode::Damaged: return damagedHeader(path);
    default: return error;
    }
}

Result<void> checkReadable(const QString &path)
{
    const QFileInfo file(path);
    if (!file.exists())
        return failure(ErrorCode::NotFound, tr("There is no store at %1. Check the name, or make a new store there.").arg(path));
    if (!file.isFile())
        return failure(notAStore(path));
    if (!may(path, R_OK))
        return failure(ErrorCode::Io, tr("You may not read %1. Ask its owner, or whoever looks after this computer.").arg(path));
    return {};
}

Result<void> checkHeader(const QString &path)
{
    const auto header = readFileHeader(path);
    if (!header)
        return failure(header.error());
    // When the power went while the side file was written back, the first page may be anything at all, and the file shorter than
    // it says. The side file still holds what was meant: what SQLite reads through it is asked in checkIdentity.
    if (sideFileSize(path) > 0)
        return {};
    if (!header->isSqlite || header->applicationId != applicationId)
        return failure(notAStore(path));
    if (header->version > newestVersion())
        return failure(newer(path));
    if (!header->isSound || !header->isWhole)
        return failure(damagedHeader(path));
    return {};
}

Result<void> checkWritable(const QString &path)
{
    if (!may(path, W_OK))
        return failure(ErrorCode::ReadOnly, tr("You may read %1 but not write to it. Open it for reading, or ask its owner.").arg(path));
    if (!may(folderOf(path), W_OK | X_OK))
        return failure(ErrorCode::ReadOnly, tr("You may not write to the folder of %1, which recording needs. Open the store for "
                                               "reading, or copy it to a folder of your own.")
                                                .arg(path));
    return {};
}

/// Reading too needs a lock that a writer sees, and SQLite keeps it in side files. It takes them away again only where it might
/// write, so a store at rest is opened for writing and then told not to. Where nobody here can write, no lock is needed.
Result<Mode> modeForReading(const QString &path)
{
    const bool mayWriteFolder = may(folderOf(path), W_OK | X_OK);
    const bool isAtRest = sideFileSize(path) == 0;
    const bool isOpenElsewhere = QFileInfo::exists(path + QStringLiteral("-shm"));
    if (isAtRest && mayWriteFolder && may(path, W_OK))
        return Mode::ReadWrite;
    if (isOpenElsewhere || (!isAtRest && mayWriteFolder))
        return Mode::ReadOnly;
    if (isAtRest)
        return Mode::Frozen;
    return failure(ErrorCode::ReadOnly, tr("The newest entries of %1 are in its side file, and the folder cannot be written to. Copy "
                                           "the store together with the file %1-wal to a folder of your own and open it there.")
                                            .arg(path));
}

Result<void> checkIdentity(Connection &connection, const QString &path)
{
    // The header in the file may be older than the one in the side file, so all of it is asked for once more.
    const auto application = connection.query("PRAGMA application_id").one([](const Statement &row) { return row.integer(0); });
    const auto version = storeVersion(connection);
    if (!application || !version) {
        const Error &error = application ? version.error() : application.error();
        const auto header = error.code == ErrorCode::Damaged ? readFileHeader(path) : core::Result<FileHeader>(failure(error));
        return failure(header && !header->isSqlite ? notAStore(path) : toldOf(error, path));
    }
    if (*application != applicationId)
        return failure(notAStore(path));
    if (*version > newestVersion())
        return failure(newer(path));
    if (*version < 1)
        return failure(damagedHeader(path));
    return {};
}

/// A disk on which the write-ahead log does not work is no error to SQLite: it goes on in another way, which is less safe.
Result<void> checkReady(Connection &connection)
{
    const auto journal = connection.query("PRAGMA journal_mode").one([](Statement &row) { return row.text(0); });
    const auto synchronous = connection.query("PRAGMA synchronous").one([](const Statement &row) { return row.integer(0); });
    if (!journal || !synchronous)
        return failure(journal ? synchronous.error() : journal.error());
    constexpr qint64 full = 2;
    if (*journal == QStringLiteral("wal") && *synchronous == full)
        return {};
    return failure(ErrorCode::Io, tr("This disk does not let the store keep its side file, so nothing can be recorded on it safely. Copy the "
                                     "store to a disk of this computer and open it there."));
}

Result<void> prepareWriting(Connection &connection)
{
    constexpr char ready[] = "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA recursive_triggers = ON; PRAGMA secure_delete = ON; "
                             "PRAGMA cell_size_check = ON; PRAGMA journal_size_limit = 16777216; PRAGMA cache_size = -16384;";
    return connection.runScript(ready)
        .and_then([&] { return checkReady(connection); })
        .and_then([&] { return migrate(connection); })
        .and_then([&] { return connection.runScript("PRAGMA foreign_keys = ON"); });
}

Result<void> prepareReading(Connection &connection, const QString &path)
{
    const auto version = storeVersion(connection);
    if (!version)
        return failure(version.error());
    if (*version < newestVersion())
        return failure(ErrorCode::ReadOnly, tr("%1 was written by an earlier version of this program. Open it once for writing, so "
                                               "that it is brought up to date.")
                                                .arg(path));
    return connection.runScript("PRAGMA query_only = ON; PRAGMA cell_size_check = ON; PRAGMA cache_size = -16384;");
}

/// Closes a store that was refused. What was in its side file before stays there; what opening itself made goes again.
template <class Prepare>
Result<std::unique_ptr<Connection>> openAs(Mode mode, const QString &path, milliseconds patience, Prepare prepare)
{
    const Leaving leaving = sideFileSize(path) > 0 ? Leaving::Untouched : Leaving::Settle;
    auto connection = Connection::open(path, mode, patience);
    if (!connection)
        return failure(toldOf(connection.error(), path));
    auto ready = checkIdentity(**connection, path).and_then([&] { return prepare(**connection); });
    if (ready)
        return connection;
    (void)(*connection)->close(leaving); // the reason for the refusal matters more
    return failure(toldOf(ready.error(), path));
}

/// A umask could have taken the owner's own rights away. A memory stick's file system keeps no rights at all and refuses to
/// change them; whoever holds the stick reads it anyway.
bool makePrivate(int file)
{
    if (fchmod(file, 0600) == 0)
        return true;
    struct stat now {};
    const bool keepsNoRights = errno == EPERM || errno == ENOTSUP;
    return keepsNoRights && fstat(file, &now) == 0 && now.st_uid == geteuid();
}

Error notMade(const QString &path, int systemError)
{
    if (systemError == ENOSPC || systemError == EDQUOT)
        return {ErrorCode::NoSpace, tr("There is no room for a store at %1. Make room, or choose another disk.").arg(path)};
    return {ErrorCode::Io, tr("%1 could not be made (system %2). Check that the folder is there and that you may write to it.").arg(path, QString::number(systemError))};
}

} // namespace

Result<void> makeEmptyFile(const QString &path)
{
    for (const char *beside : {"-wal", "-shm", "-journal"})
        if (QFileInfo::exists(path + QLatin1String(beside)))
            return failure(ErrorCode::BadInput, tr("The file %1%2, left by another store, is in the way. Choose another name, or "
                                                   "move that file away.")
                                                    .arg(path, QLatin1String(beside)));
    const QByteArray name = QFile::encodeName(path);
    const int file = open(name.constData(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, 0600);
    const int systemError = errno;
    if (file < 0 && systemError == EEXIST)
        return failure(ErrorCode::BadInput, tr("%1 exists already and is never overwritten. Choose another name.").arg(path));
    if (file < 0)
        return failure(notMade(path, systemError));
    const bool isPrivate = makePrivate(file);
    const bool isClosed = ::close(file) == 0;
    auto made = isPrivate && isClosed
                    ? syncFolder(folderOf(path))
                    : failure(ErrorCode::Io, tr("%1 could not be kept for you alone. Check the disk, or choose another one.").arg(path));
    if (!made)
        (void)unlink(name.constData());
    return made;
}

void removeWithSideFiles(const QString &path)
{
    for (const char *beside : {"", "-wal", "-shm", "-journal"})
        (void)unlink(QFile::encodeName(path + QLatin1String(beside)).constData());
}

Result<void> fillNewStore(const QString &path, milliseconds patience)
{
    auto connection = Connection::open(path, Mode::ReadWrite, patience);
    if (!connection)
        return failure(connection.error());
    // Before the write-ahead log begins, so that the header in the file itself says what it is from the start.
    const QByteArray mark = "PRAGMA synchronous = FULL; PRAGMA application_id = " + QByteArray::number(applicationId);
    return (*connection)
        ->runScript(mark)
        .and_then([&] { return migrate(**connection); })
        .and_then([&] { return (*connection)->close(Leaving::Settle); });
}

Result<std::unique_ptr<Connection>> openForWriting(const QString &path, milliseconds patience)
{
    auto fit = checkReadable(path).and_then([&] { return checkHeader(path); }).and_then([&] { return checkWritable(path); });
    if (!fit)
        return failure(fit.error());
    return openAs(Mode::ReadWrite, path, patience, [](Connection &connection) { return prepareWriting(connection); });
}

Result<std::unique_ptr<Connection>> openForReading(const QString &path, milliseconds patience)
{
    auto fit = checkReadable(path).and_then([&] { return checkHeader(path); });
    const auto mode = fit.and_then([&] { return modeForReading(path); });
    if (!mode)
        return failure(mode.error());
    return openAs(*mode, path, patience, [&](Connection &connection) { return prepareReading(connection, path); });
}

} // namespace db
