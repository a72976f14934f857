// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/package/line_reader.hpp"

#include <QCoreApplication>

namespace package {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Package", text); }

} // namespace

core::Result<bool> LineReader::fill()
{
    constexpr qsizetype piece = 256 * 1024;
    auto read = m_stream.read(piece);
    if (!read)
        return core::failure(read.error());
    m_isAtEnd = read->isEmpty();
    m_size += read->size();
    m_digest.add(*read);
    m_buffer = m_buffer.sliced(m_at) + *read;
    m_at = 0;
    return !m_isAtEnd;
}

core::Result<std::optional<QByteArray>> LineReader::next(qsizetype most)
{
    qsizetype looked = m_at;
    for (;;) {
        if (const qsizetype end = m_buffer.indexOf('\n', looked); end >= 0) {
            QByteArray line = m_buffer.sliced(m_at, end - m_at);
            m_at = end + 1;
            ++m_line;
            return line;
        }
        const qsizetype open = m_buffer.size() - m_at;
        if (open > most)
            return core::failure(core::ErrorCode::Damaged, tr("A line is longer than any entry can be."));
        const auto more = fill();
        if (!more)
            return core::failure(more.error());
        if (!*more && open > 0)
            return core::failure(core::ErrorCode::Damaged, tr("The last line has no end: the file was cut off."));
        if (!*more)
            return std::nullopt;
        looked = open;
    }
}

core::Result<void> LineReader::skipRest()
{
    while (!m_isAtEnd) {
        m_at = m_buffer.size();
        if (const auto more = fill(); !more)
            return core::failure(more.error());
    }
    return {};
}

} // namespace package
