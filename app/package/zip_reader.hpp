// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QHash>
#include <QString>

#include <memory>
#include <vector>

#include "app/package/zip_layout.hpp"
#include "core/value/result.hpp"

class QFile;

namespace package {

/// A file within a ZIP, unpacked piece by piece from its beginning.
class ZipStream {
public:
    ZipStream(ZipStream &&) noexcept;
    ZipStream &operator=(ZipStream &&) noexcept;
    ~ZipStream();

    /// The next piece, at most that long; empty at the end. Damaged when it does not unpack, is not as long or not what its check sum says, or when
    /// its packed bytes go on behind the end of what they unpack to: other readers pass over those, so anything could stand there.
    core::Result<QByteArray> read(qsizetype most);

private:
    friend class ZipReader;
    struct Unpacking;
    explicit ZipStream(std::unique_ptr<Unpacking> unpacking);
    std::unique_ptr<Unpacking> m_unpacking;
};

/// Reads a ZIP file in place; nothing is ever unpacked to the disk.
class ZipReader {
public:
    using Entry = PackedFile;
    /// NotFound, Io; Damaged when it is no ZIP file, or not laid out as ZipWriter does (readLayout).
    static core::Result<std::unique_ptr<ZipReader>> open(const QString &path);
    const std::vector<Entry> &entries() const { return m_entries; }
    const Entry *find(const QString &name) const;
    ZipStream stream(const Entry &entry) const;
    /// The whole file. Damaged when it is longer than `most`.
    core::Result<QByteArray> bytes(const Entry &entry, qint64 most) const;

private:
    ZipReader(std::shared_ptr<QFile> file, std::vector<Entry> entries);
    std::shared_ptr<QFile> m_file;
    std::vector<Entry> m_entries;
    QHash<QString, std::size_t> m_byName; ///< a package may have tens of thousands of photos
};

} // namespace package
