// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QByteArrayView>
#include <QHash>
#include <QString>

#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "core/value/result.hpp"

struct zip;
struct zip_file;

namespace package {

/// Told how much of it all is done; false stops.
using Going = std::function<bool(qint64 done, qint64 all)>;

/// How a file lies in the ZIP: pictures and papers are packed already.
enum class Packing { Stored, Deflated };

/// Writes a ZIP file of plain files in the order in which they are added. Nothing is written before finish(); what was added from
/// disk must stay until then. The same files give the same bytes, as long as the compression library is the same.
class ZipWriter {
public:
    /// Io when the file cannot be begun.
    static core::Result<ZipWriter> create(const QString &path);
    core::Result<void> addFile(const QString &name, const QString &path, Packing packing);
    core::Result<void> addBytes(const QString &name, QByteArray bytes, Packing packing);
    /// NoSpace, Io, Cancelled: there is no file then.
    core::Result<void> finish(const Going &going);

private:
    struct Discard {
        void operator()(zip *archive) const;
    };
    ZipWriter(zip *archive, QString path) : m_archive(archive), m_path(std::move(path)) {}
    core::Result<void> add(const QString &name, void *source, Packing packing);
    std::unique_ptr<zip, Discard> m_archive;
    QString m_path;
    std::vector<std::unique_ptr<QByteArray>> m_bytes; ///< live until finish()
};

/// A file within a ZIP, read from its beginning.
class ZipStream {
public:
    /// The next piece, at most that long; empty at the end. Damaged when it does not unpack, or is not what its check sum says.
    core::Result<QByteArray> read(qsizetype most);

private:
    friend class ZipReader;
    struct Close {
        void operator()(zip_file *file) const;
    };
    ZipStream(zip_file *file, QString name, qint64 size) : m_file(file), m_name(std::move(name)), m_left(size) {}
    std::unique_ptr<zip_file, Close> m_file;
    QString m_name;
    qint64 m_left; ///< of what the directory says that there is
};

/// Reads a ZIP file in place; nothing is ever unpacked to the disk.
class ZipReader {
public:
    struct Entry {
        QString name;
        quint64 index;
        qint64 size; ///< unpacked, as its header says; a stream that goes beyond is Damaged
        qint64 packed;
    };
    /// NotFound, Io; Damaged when it is no ZIP file, or not laid out as ZipWriter does (checkLayout).
    static core::Result<std::unique_ptr<ZipReader>> open(const QString &path);
    const std::vector<Entry> &entries() const { return m_entries; }
    const Entry *find(const QString &name) const;
    core::Result<ZipStream> stream(const Entry &entry) const;
    /// The whole file. Damaged when it is longer than `most`.
    core::Result<QByteArray> bytes(const Entry &entry, qint64 most) const;

private:
    struct Discard {
        void operator()(zip *archive) const;
    };
    explicit ZipReader(zip *archive) : m_archive(archive) {}
    std::unique_ptr<zip, Discard> m_archive;
    std::vector<Entry> m_entries;
    QHash<QString, std::size_t> m_byName; ///< a package may have tens of thousands of photos
};

} // namespace package
