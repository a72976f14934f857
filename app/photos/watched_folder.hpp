// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QFileSystemWatcher>
#include <QHash>
#include <QObject>
#include <QSet>
#include <QTimer>

#include "core/value/result.hpp"

namespace photos {

/// A folder into which a camera or phone puts its photos. It tells of each photo that comes in from now on, once it is there whole, and takes none.
class WatchedFolder : public QObject {
    Q_OBJECT

public:
    /// A file that has not grown for so long is there whole.
    static constexpr int settleMilliseconds = 700;

    explicit WatchedFolder(QObject *parent = nullptr);

    /// From now on. NotFound, Io: with the folder's name; then nothing is watched.
    core::Result<void> watch(const QString &path);
    void stop();
    /// Empty while nothing is watched.
    const QString &path() const { return m_path; }

signals:
    void arrived(const QString &path);
    /// The folder is gone; nothing is watched any more.
    void lost(const QString &path);

private:
    void look();
    void settle();
    QStringList photosThere() const;

    QString m_path;
    QFileSystemWatcher m_watcher;
    QTimer m_settle;
    QSet<QString> m_known;         ///< was there before, or was told
    QHash<QString, qint64> m_grows; ///< how large it was when it was looked at last
};

} // namespace photos
