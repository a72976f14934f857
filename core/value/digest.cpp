// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/value/digest.hpp"

#include <algorithm>
#include <cstring>

#include <sodium.h>

namespace core {

std::optional<Digest> Digest::fromBytes(QByteArrayView bytes)
{
    if (bytes.size() != size)
        return std::nullopt;
    Digest digest;
    std::memcpy(digest.m_bytes.data(), bytes.data(), static_cast<std::size_t>(size));
    return digest;
}

std::optional<Digest> Digest::parse(QStringView hex)
{
    const bool lowerHex = hex.size() == 2 * size && std::all_of(hex.begin(), hex.end(), [](QChar c) {
                              return (c >= u'0' && c <= u'9') || (c >= u'a' && c <= u'f');
                          });
    if (!lowerHex)
        return std::nullopt;
    return fromBytes(QByteArray::fromHex(hex.toLatin1()));
}

Digest Digest::of(QByteArrayView bytes)
{
    Digest digest;
    const int status = crypto_hash_sha256(digest.m_bytes.data(), reinterpret_cast<const unsigned char *>(bytes.data()),
                                          static_cast<unsigned long long>(bytes.size()));
    // libsodium's SHA-256 works on the stack alone and is documented to return 0; anything else is a broken library.
    if (status != 0)
        qFatal("SHA-256 failed with status %d", status);
    return digest;
}

QString Digest::hex() const
{
    return QString::fromLatin1(bytes().toHex());
}

QByteArray Digest::bytes() const
{
    return QByteArray(reinterpret_cast<const char *>(m_bytes.data()), size);
}

} // namespace core
