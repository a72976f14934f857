// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/rows/mounted.hpp"

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QStandardPaths>

#include <algorithm>

#include <fcntl.h>
#include <sys/mount.h>
#include <sys/statvfs.h>
#include <unistd.h>

using namespace Qt::StringLiterals;

namespace {

/// Empty when it ended well.
QString complaintOf(const QString &program, const QStringList &arguments)
{
    const QString found = QStandardPaths::findExecutable(program, {u"/usr/sbin"_s, u"/sbin"_s, u"/usr/bin"_s});
    if (found.isEmpty())
        return program + u" is not installed"_s;
    QProcess process;
    process.start(found, arguments);
    if (!process.waitForFinished() || process.exitCode() != 0)
        return program + u": "_s + QString::fromLocal8Bit(process.readAllStandardError()).simplified();
    return {};
}

} // namespace

Mounted::Mounted() : m_folder(std::make_unique<QTemporaryDir>())
{
    QDir(m_folder->path()).mkdir(u"mounted"_s);
    if (geteuid() != 0)
        m_whyNot = u"only root may mount"_s;
}

Mounted::~Mounted()
{
    if (m_folder && isThere())
        umount2(QFile::encodeName(path()), MNT_DETACH);
}

Mounted Mounted::memory(const QString &options)
{
    Mounted made;
    made.m_kind = u"tmpfs"_s;
    if (made.isThere() && mount("tmpfs", QFile::encodeName(made.path()), "tmpfs", 0, options.toLatin1().constData()) != 0)
        made.m_whyNot = u"a tmpfs could not be mounted here"_s;
    return made;
}

Mounted Mounted::stick()
{
    Mounted made;
    if (!made.isThere())
        return made;
    const QString image = made.m_folder->filePath(u"image"_s);
    QFile file(image);
    if (!file.open(QIODevice::WriteOnly) || !file.resize(64LL * 1024 * 1024)) {
        made.m_whyNot = u"no room for an image"_s;
        return made;
    }
    file.close();
    made.m_kind = u"FAT"_s;
    QString fat = complaintOf(u"mkfs.vfat"_s, {image});
    if (fat.isEmpty())
        fat = complaintOf(u"mount"_s, {u"-t"_s, u"vfat"_s, u"-o"_s, u"loop"_s, image, made.path()});
    if (fat.isEmpty())
        return made;
    made.m_kind = u"exFAT"_s;
    QString other = complaintOf(u"mkfs.exfat"_s, {image});
    if (other.isEmpty())
        other = complaintOf(u"mount"_s, {u"-t"_s, u"exfat-fuse"_s, u"-o"_s, u"loop"_s, image, made.path()});
    if (!other.isEmpty())
        made.m_whyNot = fat + u"; "_s + other;
    return made;
}

bool Mounted::fill(const QString &ballast, qint64 bytesLeft) const
{
    struct statvfs now {};
    if (statvfs(QFile::encodeName(path()), &now) != 0)
        return false;
    const qint64 size = static_cast<qint64>(now.f_bavail * now.f_frsize) - bytesLeft;
    const int file = open(QFile::encodeName(ballast), O_WRONLY | O_CREAT | O_CLOEXEC, 0600);
    if (file < 0)
        return false;
    const bool isFilled = size <= 0 || posix_fallocate(file, 0, size) == 0;
    return close(file) == 0 && isFilled;
}
