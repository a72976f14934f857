// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <QTemporaryDir>

#include <cstdint>
#include <memory>
#include <optional>

#include "db/store.hpp"

namespace files {

/// A folder of the test's own.
class Folder {
public:
    QString operator/(const char *name) const { return m_folder.filePath(QLatin1String(name)); }
    QString path() const { return m_folder.path(); }
    /// The names of all files in it, sorted.
    QStringList names() const;

private:
    QTemporaryDir m_folder;
};

/// The content of a file. Never of one that a Store of this program has open: closing it would drop SQLite's locks.
QByteArray contentOf(const QString &path);
void overwrite(const QString &path, qint64 at, const QByteArray &bytes);
void write(const QString &path, const QByteArray &bytes);
/// `600`, as chmod writes it.
QString modeOf(const QString &path);

/// Runs SQL past the store, as an intruder with another tool would. Empty when all went well, else SQLite's message.
QString rawSql(const QString &path, const char *sql);

/// The single number that a query finds, or nothing.
std::optional<qint64> rawNumber(const QString &path, const char *sql);

/// A new store, closed again.
void makeStore(const QString &path);

/// While it lives, this thread obeys the modes of files even when root runs the test.
class AsOrdinaryUser {
public:
    AsOrdinaryUser();
    ~AsOrdinaryUser();
    AsOrdinaryUser(const AsOrdinaryUser &) = delete;
    AsOrdinaryUser &operator=(const AsOrdinaryUser &) = delete;

private:
    std::uint32_t m_before;
};

} // namespace files
