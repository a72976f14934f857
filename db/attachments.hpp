// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QByteArrayView>
#include <QString>

#include <vector>

#include "core/value/digest.hpp"
#include "core/value/result.hpp"

namespace db {

class Connection;
class WriteGate;

struct Attachment {
    core::Digest digest;
    QString mediaType; ///< `image/jpeg`
    qint64 size;       ///< bytes
    bool operator==(const Attachment &) const = default;
};

/// Photos and papers inside the store, named by their SHA-256. Never changed, never removed.
class Attachments {
public:
    /// The largest attachment taken: 64 MiB.
    static constexpr qint64 largest = 64LL * 1024 * 1024;

    Attachments(Connection &connection, WriteGate &gate) : m_connection(connection), m_gate(gate) {}

    /// Keeps the bytes and returns their name. The same bytes again are kept once, with the media type of the first time.
    /// BadInput when empty, larger than `largest`, or without a media type.
    core::Result<core::Digest> put(const QByteArray &bytes, const QString &mediaType);
    /// The bytes, checked against their digest: NotFound, or Damaged.
    core::Result<QByteArray> get(const core::Digest &digest);
    core::Result<bool> exists(const core::Digest &digest);
    /// All of them, in the order in which they came, without their bytes and unchecked.
    core::Result<std::vector<Attachment>> list();

private:
    Connection &m_connection;
    WriteGate &m_gate;
};

} // namespace db
