// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QMetaType>
#include <QString>
#include <QStringList>

#include <functional>
#include <map>

/// The bytes of a file; empty when there is none.
QByteArray contentOf(const QString &path);

/// A package in memory, for somebody who alters it and packs it again. Paths are within the bag's folder.
class Unpacked {
public:
    static Unpacked of(const QString &package);

    const QString &folder() const { return m_folder; }
    /// As in the ZIP file, with the folder.
    QStringList names() const;
    QByteArray bytes(const QString &name) const;

    void renameFolder(const QString &name) { m_folder = name; }
    void put(const QString &path, const QByteArray &bytes);
    void replace(const QString &path, const QByteArray &from, const QByteArray &to); ///< the first one; fatal when there is none
    void append(const QString &path, const QByteArray &bytes);
    void removeAll(const QString &start);
    void dropLastLine(const QString &path);
    void doubleLine(const QString &ledger, int line); ///< of both files
    void swapAttachments();                           ///< the bytes of the first two
    /// The digests beside the entries, as the entries are now.
    void rehash(const QString &ledger);
    /// Both manifests and Payload-Oxum, as the files are now: whatever somebody who altered a file can do without a key.
    void repair();

    bool pack(const QString &path) const;
    bool writeTo(const QString &folder) const;

private:
    QString m_folder;
    QStringList m_order;
    std::map<QString, QByteArray> m_files;
};

using Alteration = std::function<void(Unpacked &)>;
Q_DECLARE_METATYPE(Alteration)
