// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/bench/measure/machine.hpp"

#include <QDateTime>
#include <QFile>
#include <QStorageInfo>
#include <QSysInfo>

#include <thread>

#include <sodium.h>
#include <sqlite3.h>

namespace bench {

namespace {

using namespace Qt::StringLiterals;

/// The value of the first line `name : value` of a file under /proc.
QString valueIn(const QString &path, const QString &name)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return {};
    for (const QString &line : QString::fromUtf8(file.readAll()).split(u'\n')) {
        if (line.startsWith(name))
            return line.section(u':', 1).trimmed();
    }
    return {};
}

} // namespace

Machine machineWith(const QString &folder)
{
    return {.date = QDateTime::currentDateTimeUtc().toString(Qt::ISODate),
            .build = QStringLiteral(REMATE_BUILD_TYPE),
            .processor = valueIn(u"/proc/cpuinfo"_s, u"model name"_s),
            .cores = static_cast<int>(std::thread::hardware_concurrency()),
            .memoryMiB = valueIn(u"/proc/meminfo"_s, u"MemTotal"_s).section(u' ', 0, 0).toLongLong() / 1024,
            .system = QSysInfo::prettyProductName() + u", "_s + QSysInfo::kernelVersion(),
            .fileSystem = QString::fromUtf8(QStorageInfo(folder).fileSystemType()),
            .libraries = u"Qt %1, SQLite %2, libsodium %3"_s.arg(QString::fromLatin1(qVersion()), QString::fromLatin1(sqlite3_libversion()),
                                                                QString::fromLatin1(sodium_version_string()))};
}

double load()
{
    QFile file(u"/proc/loadavg"_s);
    bool isNumber = false;
    const double value = file.open(QIODevice::ReadOnly) ? file.readAll().split(' ').value(0).toDouble(&isNumber) : -1;
    return isNumber ? value : -1;
}

bool isReleaseBuild() { return QStringLiteral(REMATE_BUILD_TYPE) == u"Release"; }

} // namespace bench
