// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/station.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <cerrno>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "app/logging/state_folder.hpp"
#include "core/ledger/seal.hpp"
#include "db/durable.hpp"

namespace session {

namespace {

using core::ErrorCode;
using core::failure;

QString tr(const char *text) { return QCoreApplication::translate("Session", text); }

// Told first, so that whoever finds the file knows what it is.
constexpr char firstLine[] = "Remate station secret. Keep it from others, and apart from every store and backup.\n";

core::Error unwritable(const QString &path, const QString &why)
{
    return {ErrorCode::Io, tr("The secret of this station could not be kept in %1: %2 Without it no key is opened. Make the folder writable, or name another file in REMATE_STATION.").arg(path, why)};
}

bool isBeside(const QString &path, const QString &storePath)
{
    const QString folder = QFileInfo(QFileInfo(path).absolutePath()).canonicalFilePath();
    return !folder.isEmpty() && folder == QFileInfo(QFileInfo(storePath).absolutePath()).canonicalFilePath();
}

/// A file that several programs may make at once appears once: written under a name of its own, then linked, which fails when there is one.
core::Result<void> makeStation(const QString &path)
{
    const QFileInfo info(path);
    const QByteArray folder = QFile::encodeName(info.absolutePath());
    // The folder is the user's alone, like the file.
    const mode_t before = umask(0077);
    const bool hasFolder = QDir().mkpath(info.absolutePath());
    umask(before);
    if (!hasFolder)
        return failure(unwritable(path, tr("its folder cannot be made.")));
    QByteArray name = folder + "/.station-XXXXXX";
    const int handle = mkstemp(name.data()); // mode 0600
    if (handle < 0)
        return failure(unwritable(path, qt_error_string(errno)));
    QByteArray secret = core::newStationSecret();
    QByteArray content = firstLine + secret.toHex() + '\n';
    core::wipe(secret);
    const bool written = ::write(handle, content.constData(), static_cast<std::size_t>(content.size())) == content.size() && fsync(handle) == 0;
    const int fault = errno;
    core::wipe(content);
    const bool closed = ::close(handle) == 0;
    const bool linked = written && closed && (::link(name.constData(), QFile::encodeName(path).constData()) == 0 || errno == EEXIST);
    const int linkFault = errno;
    (void)::unlink(name.constData());
    if (!linked)
        return failure(unwritable(path, qt_error_string(written ? linkFault : fault)));
    return db::syncFolder(info.absolutePath());
}

/// Who may read it, asked of the open file: another one cannot take its place in between.
bool isOpenToOthers(const QFile &file, bool isShared)
{
    struct stat facts{};
    const mode_t others = isShared ? S_IRWXO : S_IRWXG | S_IRWXO;
    return fstat(file.handle(), &facts) != 0 || (facts.st_mode & others) != 0;
}

} // namespace

StationFile stationFile(const QProcessEnvironment &environment)
{
    const QString named = environment.value(QStringLiteral("REMATE_STATION"));
    if (QDir::isAbsolutePath(named))
        return {named, true};
    return {logging::stateFolder(environment) + QStringLiteral("/station"), false};
}

core::Result<core::SecondKey> readStation(const StationFile &file, const QString &storePath)
{
    if (const auto ready = core::readyCryptography(); !ready)
        return failure(ready.error());
    if (isBeside(file.path, storePath))
        return failure(ErrorCode::BadInput, tr("The secret of this station lies in the folder of the store (%1), so whoever copies the folder has both. Move one of them, or name another file in REMATE_STATION.").arg(file.path));
    if (!QFileInfo::exists(file.path)) {
        if (const auto made = makeStation(file.path); !made)
            return failure(made.error());
    }
    QFile opened(file.path);
    if (!opened.open(QIODevice::ReadOnly))
        return failure(ErrorCode::Io, tr("The secret of this station (%1) cannot be read: %2").arg(file.path, opened.errorString()));
    if (isOpenToOthers(opened, file.isShared))
        return failure(ErrorCode::Refused, tr("Others may read the secret of this station. Close it to them (chmod 600 %1) and consider it seen: the manual says what then.").arg(file.path));
    QByteArray content = opened.read(1024);
    QByteArray secret = QByteArray::fromHex(content.mid(content.indexOf('\n') + 1).trimmed());
    const bool isOne = content.startsWith(firstLine);
    core::wipe(content);
    auto key = isOne ? core::SecondKey::ofStation(secret) : failure(ErrorCode::Damaged, QString());
    core::wipe(secret);
    if (!key && key.error().code != ErrorCode::Crypto)
        return failure(ErrorCode::Damaged, tr("%1 does not hold the secret of a station. Put the copy back that was locked away; without one, move the file aside and have new keys registered.").arg(file.path));
    return key;
}

Station stationOfThisComputer()
{
    return [](const QString &storePath) { return readStation(stationFile(QProcessEnvironment::systemEnvironment()), storePath); };
}

} // namespace session
