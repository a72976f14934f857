// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/ledger/seal.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <cstring>

#include <sodium.h>

#include "core/ledger/canonical.hpp"

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Seal", text); }

const unsigned char *raw(QByteArrayView bytes) { return reinterpret_cast<const unsigned char *>(bytes.data()); }

tl::unexpected<Error> cryptoFailure()
{
    return failure(ErrorCode::Crypto, tr("The cryptographic library failed; nothing was signed. Free some memory and try again."));
}

} // namespace

Result<void> readyCryptography()
{
    if (sodium_init() < 0)
        return failure(ErrorCode::Crypto, tr("The cryptographic library could not be started. Nothing can be signed or verified."));
    return {};
}

std::optional<PublicKey> PublicKey::fromBytes(QByteArrayView bytes)
{
    if (bytes.size() != crypto_sign_PUBLICKEYBYTES)
        return std::nullopt;
    return PublicKey(bytes.toByteArray());
}

std::optional<PublicKey> PublicKey::parse(QStringView lowerHex)
{
    // A digest has the same spelling as a key: 64 lower-case hex digits.
    const auto bytes = Digest::parse(lowerHex);
    return bytes ? fromBytes(bytes->bytes()) : std::nullopt;
}

void SigningKey::Wipe::operator()(unsigned char *memory) const { sodium_free(memory); }

Result<SigningKey> SigningKey::fromSeed(QByteArrayView seed)
{
    if (seed.size() != crypto_sign_SEEDBYTES)
        return failure(ErrorCode::Crypto, tr("A private key must be 32 bytes long."));
    Secret secret(static_cast<unsigned char *>(sodium_malloc(crypto_sign_SECRETKEYBYTES)), Wipe{});
    QByteArray publicBytes(crypto_sign_PUBLICKEYBYTES, '\0');
    if (!secret || crypto_sign_seed_keypair(reinterpret_cast<unsigned char *>(publicBytes.data()), secret.get(), raw(seed)) != 0)
        return cryptoFailure();
    return SigningKey(std::move(secret), *PublicKey::fromBytes(publicBytes));
}

Result<SigningKey> SigningKey::generate()
{
    QByteArray seed(crypto_sign_SEEDBYTES, '\0');
    randombytes_buf(seed.data(), static_cast<std::size_t>(seed.size()));
    auto key = fromSeed(seed);
    wipe(seed);
    return key;
}

Result<QByteArray> SigningKey::sign(QByteArrayView bytes) const
{
    QByteArray signature(crypto_sign_BYTES, '\0');
    const int status = crypto_sign_detached(reinterpret_cast<unsigned char *>(signature.data()), nullptr, raw(bytes),
                                            static_cast<unsigned long long>(bytes.size()), m_secret.get());
    if (status != 0)
        return cryptoFailure();
    return signature;
}

Result<QByteArray> SigningKey::seed() const
{
    QByteArray seed(crypto_sign_SEEDBYTES, '\0');
    if (crypto_sign_ed25519_sk_to_seed(reinterpret_cast<unsigned char *>(seed.data()), m_secret.get()) != 0)
        return cryptoFailure();
    return seed;
}

bool isSignedBy(const PublicKey &key, QByteArrayView bytes, QByteArrayView signature)
{
    return signature.size() == crypto_sign_BYTES &&
           crypto_sign_verify_detached(raw(signature), raw(bytes), static_cast<unsigned long long>(bytes.size()),
                                       raw(key.bytes())) == 0;
}

Result<Entry> seal(const Statement &said, const SigningKey &key)
{
    Entry entry = writtenOut(said);
    return sign(entry, key).map([&] { return std::move(entry); });
}

Entry writtenOut(const Statement &said)
{
    Entry entry{said, canonicalBytes(said), {}, {}};
    entry.hash = Digest::of(entry.bytes);
    return entry;
}

Result<void> sign(Entry &entry, const SigningKey &key)
{
    if (entry.said.key != key.publicKey().fingerprint())
        return failure(ErrorCode::WrongSecret, tr("The private key is not the one registered for %1.").arg(entry.said.author.text()));
    return key.sign(entry.bytes).map([&](QByteArray signature) { entry.signature = std::move(signature); });
}

void wipe(QByteArray &secret)
{
    sodium_memzero(secret.data(), static_cast<std::size_t>(secret.size()));
    secret.clear();
}

} // namespace core
