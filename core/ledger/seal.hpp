// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QByteArrayView>

#include <memory>

#include "core/ledger/entry.hpp"
#include "core/value/digest.hpp"
#include "core/value/result.hpp"

namespace core {

/// Readies the cryptographic library; safe to call more than once and from several threads. Call before anything below.
Result<void> readyCryptography();

/// An Ed25519 public key (RFC 8032): 32 bytes.
class PublicKey {
public:
    static std::optional<PublicKey> fromBytes(QByteArrayView bytes);
    static std::optional<PublicKey> parse(QStringView lowerHex);
    const QByteArray &bytes() const { return m_bytes; }
    QString hex() const { return QString::fromLatin1(m_bytes.toHex()); }
    /// SHA-256 of the 32 bytes: how entries name the key, and the fingerprint that is shown and printed.
    Digest fingerprint() const { return Digest::of(m_bytes); }
    bool operator==(const PublicKey &) const = default;

private:
    explicit PublicKey(QByteArray bytes) : m_bytes(std::move(bytes)) {}
    QByteArray m_bytes;
};

/// An Ed25519 private key in memory that is wiped when it goes, and kept out of swap where the system allows it.
class SigningKey {
public:
    /// A new random key.
    static Result<SigningKey> generate();
    /// The key of a 32-byte seed (RFC 8032 section 5.1.5).
    static Result<SigningKey> fromSeed(QByteArrayView seed);

    const PublicKey &publicKey() const { return m_public; }
    /// Ed25519 signature over `bytes`, 64 bytes.
    Result<QByteArray> sign(QByteArrayView bytes) const;
    /// The 32-byte seed, for wrapping. The caller wipes it.
    Result<QByteArray> seed() const;

private:
    struct Wipe {
        void operator()(unsigned char *memory) const;
    };
    using Secret = std::shared_ptr<unsigned char>;
    SigningKey(Secret secret, PublicKey key) : m_secret(std::move(secret)), m_public(std::move(key)) {}
    Secret m_secret; ///< libsodium's 64 bytes: seed, then public key
    PublicKey m_public;
};

/// True when `signature` is `key`'s Ed25519 signature over `bytes` (RFC 8032 section 5.1.7).
bool isSignedBy(const PublicKey &key, QByteArrayView bytes, QByteArrayView signature);

/// Signs a statement. Refuses when the key is not the one that the statement names.
Result<Entry> seal(const Statement &said, const SigningKey &key);

/// The first half of sealing: bytes and digest, and no signature yet. The next statement can be chained to it.
Entry writtenOut(const Statement &said);
/// The second half, which takes long and may be done for several entries at once, each in a thread of its own. The same
/// refusal as seal().
Result<void> sign(Entry &entry, const SigningKey &key);

/// Overwrites the bytes with zeros, in a way that the compiler does not remove.
void wipe(QByteArray &secret);

} // namespace core
