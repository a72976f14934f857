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
#include <vector>

#include <fcntl.h>
#include <unistd.h>

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

/// A stick may have a file system without links, a network folder one without this sort of renaming; hardly any has neither.
int renameWithoutReplacing(const QByteArray &from, const QByteArray &to)
{
    const int status = renameat2(AT_FDCWD, from.constData(), AT_FDCWD, to.constData(), RENAME_NOREPLACE);
    if (status == 0 || errno != EINVAL)
        return status;
    return link(from.constData(), to.constData()) == 0 ? unlink(from.constData()) : -1;
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

struct LastEntry {
    QString ledger;
    qint64 entries;
    QByteArray hash;
    bool operator==(const LastEntry &) const = default;
};

Result<std::vector<LastEntry>> lastEntries(Connection &connection)
{
    std::vector<LastEntry> all;
    auto done = connection
                    .query("SELECT uuid, (SELECT count(*) FROM entries WHERE ledger = ledgers.id), "
                           "(SELECT hash FROM entries WHERE ledger = ledgers.id ORDER BY seq DESC LIMIT 1) "
                           "FROM ledgers ORDER BY id")
                    .each([&](Statement &row) {
                        all.push_back({row.text(0), row.integer(1), row.bytes(2).toByteArray()});
                        return Walk::On;
                    });
    return done.map([&] { return std::move(all); });
}

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

Result<std::vector<LastEntry>> copyTo(const QString &source, const QString &partial, milliseconds patience,
                                      const BackupProgress &progress)
{
    auto from = openForReading(source, patience);
    if (!from)
        return failure(from.error());
    auto moment = Transaction::beginReading(**from);
    if (!moment)
        return failure(moment.error());
    auto heads = lastEntries(**from);
    auto to = Connection::open(partial, Mode::ReadWrite, patience);
    if (!heads || !to)
        return failure(heads ? to.error() : heads.error());
    auto done = copyOnline(**from, **to, progress)
                    .and_then([&] { return (*to)->runScript(asOneFile); })
                    .and_then([&] { return (*to)->close(Leaving::Settle); })
                    .and_then([&] { return syncFile(partial); });
    return done.map([&] { return *std::move(heads); });
}

tl::unexpected<core::Error> notTheSame()
{
    return failure(ErrorCode::Damaged, tr("The backup was read again and is not the same as the store; it was thrown away. Check the "
                                          "disk, and verify the store itself."));
}

Result<void> checkCopy(const QString &partial, const std::vector<LastEntry> &expected, milliseconds patience)
{
    auto copy = openForReading(partial, patience);
    if (!copy)
        return failure(copy.error());
    auto sound = (*copy)->query("PRAGMA quick_check(1)").one([](Statement &row) { return row.text(0); });
    auto heads = lastEntries(**copy);
    if (!sound || !heads)
        return failure(sound ? heads.error() : sound.error());
    if (*sound != QStringLiteral("ok") || *heads != expected)
        return notTheSame();
    return (*copy)->close(Leaving::Untouched);
}

/// In a backup "nothing was recorded, sign again" would be the wrong advice.
core::Error toldOf(const core::Error &error, const QString &target)
{
    if (error.code == ErrorCode::NoSpace)
        return {error.code, tr("There is no room for the backup at %1; no file was made. Make room, or choose another disk.").arg(target)};
    return error;
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
    const auto heads = copyTo(source, partial->path(), patience, progress);
    if (!heads)
        return failure(toldOf(heads.error(), target));
    BackupReport report{static_cast<qint64>(heads->size()), 0, QFileInfo(partial->path()).size()};
    for (const LastEntry &last : *heads)
        report.entries += last.entries;
    auto done = checkCopy(partial->path(), *heads, patience)
                    .and_then([&] { return partial->moveTo(target, overwrite); })
                    .and_then([&] { return syncFolder(QFileInfo(target).absolutePath()); });
    if (!done)
        return failure(toldOf(done.error(), target));
    return report;
}

} // namespace db
