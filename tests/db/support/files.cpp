// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/db/support/files.hpp"

#include <QDir>
#include <QFile>

#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

namespace files {

namespace {

constexpr uid_t nobody = 65534;

} // namespace

Folder::Folder()
{
    if (!m_folder.isValid() || chmod(QFile::encodeName(m_folder.path()), 0777) != 0)
        qFatal("no folder for the test");
}

QStringList Folder::names() const
{
    return QDir(m_folder.path()).entryList(QDir::Files | QDir::Hidden, QDir::Name);
}

QByteArray contentOf(const QString &path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        qFatal("cannot read %s", qPrintable(path));
    return file.readAll();
}

void overwrite(const QString &path, qint64 at, const QByteArray &bytes)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadWrite) || !file.seek(at) || file.write(bytes) != bytes.size())
        qFatal("cannot write %s", qPrintable(path));
}

void write(const QString &path, const QByteArray &bytes)
{
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly | QIODevice::Truncate) || file.write(bytes) != bytes.size())
        qFatal("cannot write %s", qPrintable(path));
}

QString modeOf(const QString &path)
{
    struct stat found {};
    if (stat(QFile::encodeName(path), &found) != 0)
        return QStringLiteral("absent");
    return QString::number(found.st_mode & 07777, 8);
}

QString rawSql(const QString &path, const char *sql)
{
    sqlite3 *handle = nullptr;
    char *said = nullptr;
    sqlite3_open(QFile::encodeName(path), &handle);
    sqlite3_busy_timeout(handle, 2000);
    sqlite3_exec(handle, sql, nullptr, nullptr, &said);
    const QString message = QString::fromUtf8(said);
    sqlite3_free(said);
    sqlite3_close(handle);
    return message;
}

std::optional<qint64> rawNumber(const QString &path, const char *sql)
{
    sqlite3 *handle = nullptr;
    sqlite3_stmt *prepared = nullptr;
    sqlite3_open(QFile::encodeName(path), &handle);
    sqlite3_busy_timeout(handle, 2000);
    sqlite3_prepare_v2(handle, sql, -1, &prepared, nullptr);
    std::optional<qint64> number;
    if (sqlite3_step(prepared) == SQLITE_ROW)
        number = sqlite3_column_int64(prepared, 0);
    sqlite3_finalize(prepared);
    sqlite3_close(handle);
    return number;
}

void makeStore(const QString &path)
{
    auto store = db::Store::create(path);
    if (!store || !(*store)->close())
        qFatal("no store at %s", qPrintable(path));
}

AsOrdinaryUser::AsOrdinaryUser()
{
    if (getuid() == 0 && seteuid(nobody) != 0)
        qFatal("cannot become an ordinary user");
}

AsOrdinaryUser::~AsOrdinaryUser()
{
    if (getuid() == 0 && seteuid(0) != 0)
        qFatal("cannot become root again");
}

} // namespace files
