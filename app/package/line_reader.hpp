// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/package/zip_reader.hpp"
#include "core/value/digest.hpp"

namespace package {

/// Reads a file of a ZIP line by line, whatever its length, and digests it on the way.
class LineReader {
public:
    explicit LineReader(ZipStream stream) : m_stream(std::move(stream)) {}

    /// The next line without its end; nothing after the last one. Damaged: a line longer than `most`, a last line without its end, what does not unpack.
    core::Result<std::optional<QByteArray>> next(qsizetype most);
    /// Reads the rest away, so that the digest is of it all.
    core::Result<void> skipRest();

    qint64 line() const { return m_line; } ///< number of the line that was read last
    qint64 size() const { return m_size; } ///< bytes read so far
    core::Digest digest() const { return m_digest.soFar(); }

private:
    core::Result<bool> fill();
    ZipStream m_stream;
    QByteArray m_buffer;
    qsizetype m_at = 0;
    bool m_isAtEnd = false;
    qint64 m_line = 0;
    qint64 m_size = 0;
    core::DigestStream m_digest;
};

} // namespace package
