// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringList>
#include <QTemporaryDir>

#include <memory>

/// A file system of the test's own, gone when this goes. Not there when nobody here may mount one.
class Mounted {
public:
    /// A tmpfs with these options.
    static Mounted memory(const QString &options);
    /// A memory stick's file system in a file: FAT where the system knows it, else exFAT through FUSE.
    static Mounted stick();
    Mounted(Mounted &&) = default;
    Mounted &operator=(Mounted &&) = delete;
    ~Mounted();

    bool isThere() const { return m_whyNot.isEmpty(); }
    const QString &whyNot() const { return m_whyNot; }
    const QString &kind() const { return m_kind; }
    QString path() const { return m_folder->filePath(QStringLiteral("mounted")); }

    /// Makes a file so large that so many bytes stay free.
    bool fill(const QString &ballast, qint64 bytesLeft) const;

private:
    Mounted();
    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_kind;
    QString m_whyNot;
};
