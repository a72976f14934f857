// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/photos/watched_folder.hpp"

#include <QDir>
#include <QFileInfo>

#include "app/photos/photo_file.hpp"

namespace photos {

WatchedFolder::WatchedFolder(QObject *parent) : QObject(parent)
{
    m_settle.setInterval(settleMilliseconds);
    connect(&m_settle, &QTimer::timeout, this, &WatchedFolder::settle);
    connect(&m_watcher, &QFileSystemWatcher::directoryChanged, this, &WatchedFolder::look);
}

core::Result<void> WatchedFolder::watch(const QString &path)
{
    stop();
    if (!QFileInfo(path).isDir())
        return core::failure(core::ErrorCode::NotFound, tr("There is no folder %1. Choose another.").arg(path));
    if (!QFileInfo(path).isReadable() || !m_watcher.addPath(path))
        return core::failure(core::ErrorCode::Io, tr("The folder %1 cannot be watched. Choose another, or add the photos as files.").arg(path));
    m_path = path;
    const QStringList there = photosThere();
    m_known = QSet<QString>(there.begin(), there.end());
    return {};
}

void WatchedFolder::stop()
{
    if (!m_path.isEmpty())
        m_watcher.removePath(m_path);
    m_path.clear();
    m_known.clear();
    m_grows.clear();
    m_settle.stop();
}

QStringList WatchedFolder::photosThere() const
{
    QStringList photos;
    for (const QString &name : QDir(m_path).entryList(QDir::Files | QDir::NoDotAndDotDot)) {
        if (endsLikeAPhoto(name))
            photos << name;
    }
    return photos;
}

void WatchedFolder::look()
{
    if (!QFileInfo(m_path).isDir()) {
        const QString gone = m_path;
        stop();
        emit lost(gone);
        return;
    }
    const QStringList there = photosThere();
    m_known.intersect(QSet<QString>(there.begin(), there.end())); // a name that was freed may come again with another photo
    for (const QString &name : there) {
        if (!m_known.contains(name) && !m_grows.contains(name))
            m_grows.insert(name, -1);
    }
    if (!m_grows.isEmpty() && !m_settle.isActive())
        m_settle.start();
}

void WatchedFolder::settle()
{
    QStringList whole;
    for (auto at = m_grows.begin(); at != m_grows.end();) {
        const QFileInfo file(QDir(m_path).filePath(at.key()));
        const bool isGone = !file.exists();
        const bool isWhole = !isGone && file.size() > 0 && file.size() == at.value();
        if (isWhole) {
            whole << file.filePath();
            m_known.insert(at.key());
        }
        if (isGone || isWhole) {
            at = m_grows.erase(at);
        } else {
            at.value() = file.size();
            ++at;
        }
    }
    if (m_grows.isEmpty())
        m_settle.stop();
    for (const QString &path : whole)
        emit arrived(path);
}

} // namespace photos
