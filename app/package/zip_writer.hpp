// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QString>

#include <memory>
#include <vector>

#include "app/package/going.hpp"
#include "core/value/result.hpp"

struct zip;

namespace package {

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

} // namespace package
