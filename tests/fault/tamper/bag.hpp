// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QString>

#include <vector>

#include "app/package/zip_writer.hpp"

namespace battery {

/// A package's files in the hands of somebody who alters them and makes the digests right again.
class Bag {
public:
    struct File {
        QString path; ///< within the bag's folder
        QByteArray bytes;
        package::Packing packing;
    };

    /// Reads a sound package.
    static Bag of(const QString &package);

    std::vector<File> files;
    QString folder;

    const QByteArray &bytes(const QString &path) const;
    QByteArray &bytes(const QString &path);
    void remove(const QString &path);
    void add(const QString &path, const QByteArray &bytes) { files.push_back({path, bytes, package::Packing::Deflated}); }
    void rename(const QString &from, const QString &to);

    /// Writes the manifest of what is there now, the bytes and files that the labels count, and the manifest of tags.
    void repairDigests();
    /// The manifest of tags alone.
    void repairTagManifest();
    void setLabel(const QString &label, const QString &value);

    /// Packed as the program packs.
    QByteArray zip() const;
};

} // namespace battery
