// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/db/support/files.hpp"

#include <QDir>
#include <QFile>

#include <sqlite3.h>
#include <linux/capability.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

namespace files {

namespace {

/// What lets root pass over the modes of files.
constexpr std::uint32_t passOverModes = (1u << CAP_DAC_OVERRIDE) | (1u << CAP_DAC_READ_SEARCH);

/// Sets the low effective capabilities of this thread and returns those it had.
std::uint32_t setCapabilities(std::uint32_t dropped, std::uint32_t added)
{
    __user_cap_header_struct header{_LINUX_CAPABILITY_VERSION_3, 0};
    __user_cap_data_struct data[2]{};
    if (syscall(SYS_capget, &header, data) != 0)
        qFatal("cannot read capabilities");
    const std::uint32_t before = data[0].effective;
    data[0].effective = (before & ~dropped) | added;
    if (syscall(SYS_capset, &header, data) != 0)
        qFatal("cannot change capabilities");
    return before;
}

} // namespace

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

AsOrdinaryUser::AsOrdinaryUser() : m_before(setCapabilities(passOverModes, 0)) {}

AsOrdinaryUser::~AsOrdinaryUser() { setCapabilities(0, m_before & passOverModes); }

} // namespace files
