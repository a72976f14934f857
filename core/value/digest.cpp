// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/value/digest.hpp"

#include <algorithm>
#include <cstring>

#include <openssl/evp.h>

namespace core {

namespace {

/// OpenSSL's SHA-256 allocates, and when it fails it leaves the result as it was: every answer counts.
void require(bool done)
{
    if (!done)
        qFatal("SHA-256 could not be computed; most likely there is no memory left");
}

/// Looked up once; it never changes.
const EVP_MD *sha256()
{
    static const std::unique_ptr<EVP_MD, decltype(&EVP_MD_free)> found(EVP_MD_fetch(nullptr, "SHA256", nullptr), &EVP_MD_free);
    require(found != nullptr);
    return found.get();
}

} // namespace

/// A digest under way. OpenSSL's, since it uses the processor's SHA instructions: four times as fast as libsodium's on entries.
struct DigestStream::State {
    std::unique_ptr<EVP_MD_CTX, decltype(&EVP_MD_CTX_free)> context{EVP_MD_CTX_new(), &EVP_MD_CTX_free};

    void begin() { require(context && EVP_DigestInit_ex2(context.get(), sha256(), nullptr) == 1); }
    void add(QByteArrayView bytes) { require(EVP_DigestUpdate(context.get(), bytes.data(), static_cast<std::size_t>(bytes.size())) == 1); }
    void end(std::uint8_t *digest)
    {
        unsigned int size = 0;
        require(EVP_DigestFinal_ex(context.get(), digest, &size) == 1 && size == Digest::size);
    }
    void continueFrom(const State &other) { require(context && EVP_MD_CTX_copy_ex(context.get(), other.context.get()) == 1); }
};

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
    // Making a context takes as long as the digest of an entry, so each thread keeps one. It holds nothing between calls.
    thread_local DigestStream::State state;
    state.begin();
    state.add(bytes);
    Digest digest;
    state.end(digest.m_bytes.data());
    return digest;
}

DigestStream::DigestStream() : m_state(std::make_unique<State>()) { m_state->begin(); }

DigestStream::~DigestStream() = default;
DigestStream::DigestStream(DigestStream &&) noexcept = default;
DigestStream &DigestStream::operator=(DigestStream &&) noexcept = default;

void DigestStream::add(QByteArrayView bytes) { m_state->add(bytes); }

Digest DigestStream::soFar() const
{
    State copy;
    copy.continueFrom(*m_state);
    Digest digest;
    copy.end(digest.m_bytes.data());
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
