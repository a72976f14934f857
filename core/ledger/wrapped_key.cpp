// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/ledger/wrapped_key.hpp"

#include <QCoreApplication>

#include <algorithm>

#include <sodium.h>

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Seal", text); }

const unsigned char *raw(const QByteArray &bytes) { return reinterpret_cast<const unsigned char *>(bytes.constData()); }
unsigned char *raw(QByteArray &bytes) { return reinterpret_cast<unsigned char *>(bytes.data()); }

tl::unexpected<Error> noMemory()
{
    return failure(ErrorCode::Crypto, tr("There was not enough memory to check the secret. Close other programs and try again."));
}

Result<QByteArray> stretch(const QString &secret, const QByteArray &salt, WrapCost cost)
{
    QByteArray utf8 = secret.toUtf8();
    QByteArray key(crypto_aead_xchacha20poly1305_ietf_KEYBYTES, '\0');
    const int status = crypto_pwhash(raw(key), static_cast<unsigned long long>(key.size()), utf8.constData(),
                                     static_cast<unsigned long long>(utf8.size()), raw(salt),
                                     static_cast<unsigned long long>(cost.passes), static_cast<std::size_t>(cost.memoryBytes),
                                     crypto_pwhash_ALG_ARGON2ID13);
    wipe(utf8);
    if (status != 0)
        return noMemory();
    return key;
}

QByteArray random(qsizetype size)
{
    QByteArray bytes(size, '\0');
    randombytes_buf(bytes.data(), static_cast<std::size_t>(size));
    return bytes;
}

bool isWellFormed(const WrappedKey &wrapped)
{
    constexpr qint64 mostMemory = 1LL << 32;
    return wrapped.salt.size() == crypto_pwhash_SALTBYTES &&
           wrapped.nonce.size() == crypto_aead_xchacha20poly1305_ietf_NPUBBYTES &&
           wrapped.sealed.size() == crypto_sign_SEEDBYTES + crypto_aead_xchacha20poly1305_ietf_ABYTES &&
           wrapped.cost.passes >= 1 && wrapped.cost.passes <= 64 && wrapped.cost.memoryBytes >= 8192 &&
           wrapped.cost.memoryBytes <= mostMemory;
}

/// The key that seals: stretched, and mixed with the second key where there is one.
Result<QByteArray> sealingKey(const QString &secret, const WrappedKey &wrapped, const SecondKey &second)
{
    auto stretched = stretch(secret, wrapped.salt, wrapped.cost);
    if (!stretched || !wrapped.boundTo)
        return stretched;
    QByteArray mixed = second.mixedWith(*stretched);
    wipe(*stretched);
    return mixed;
}

} // namespace

Result<WrappedKey> wrap(const SigningKey &key, const PersonId &person, const QString &secret, const SecondKey &second, WrapCost cost)
{
    if (secret.size() < shortestSecret)
        return failure(ErrorCode::BadInput, tr("A PIN or passphrase needs at least %1 characters.").arg(shortestSecret));
    WrappedKey wrapped{cost, random(crypto_pwhash_SALTBYTES), random(crypto_aead_xchacha20poly1305_ietf_NPUBBYTES), {}, second.id()};
    auto sealing = sealingKey(secret, wrapped, second);
    auto seed = key.seed();
    if (!sealing || !seed)
        return failure(sealing ? seed.error() : sealing.error());
    const QByteArray owner = person.text().toUtf8();
    wrapped.sealed.resize(seed->size() + crypto_aead_xchacha20poly1305_ietf_ABYTES);
    const int status = crypto_aead_xchacha20poly1305_ietf_encrypt(
        raw(wrapped.sealed), nullptr, raw(std::as_const(*seed)), static_cast<unsigned long long>(seed->size()), raw(owner),
        static_cast<unsigned long long>(owner.size()), nullptr, raw(std::as_const(wrapped.nonce)), raw(std::as_const(*sealing)));
    wipe(*seed);
    wipe(*sealing);
    if (status != 0)
        return noMemory();
    return wrapped;
}

Result<SigningKey> unwrap(const WrappedKey &wrapped, const PersonId &person, const QString &secret, const SecondKey &second)
{
    if (!isWellFormed(wrapped))
        return failure(ErrorCode::Damaged, tr("The stored key of %1 is damaged. Register a new key for them.").arg(person.text()));
    if (wrapped.boundTo && *wrapped.boundTo != second.id())
        return failure(ErrorCode::BadInput, tr("The stored key of %1 is bound to another station.").arg(person.text()));
    auto sealing = sealingKey(secret, wrapped, second);
    if (!sealing)
        return failure(sealing.error());
    const QByteArray owner = person.text().toUtf8();
    QByteArray seed(crypto_sign_SEEDBYTES, '\0');
    const int status = crypto_aead_xchacha20poly1305_ietf_decrypt(
        raw(seed), nullptr, nullptr, raw(wrapped.sealed), static_cast<unsigned long long>(wrapped.sealed.size()), raw(owner),
        static_cast<unsigned long long>(owner.size()), raw(wrapped.nonce), raw(std::as_const(*sealing)));
    wipe(*sealing);
    if (status != 0)
        return failure(ErrorCode::WrongSecret, tr("That is not the PIN or passphrase of %1.").arg(person.text()));
    auto key = SigningKey::fromSeed(seed);
    wipe(seed);
    return key;
}

qint64 waitMilliseconds(int wrongInARow)
{
    if (wrongInARow < 3)
        return 0;
    constexpr qint64 first = 5'000;
    constexpr qint64 longest = 300'000;
    return std::min(longest, first << std::min(wrongInARow - 3, 16));
}

bool isLockedOut(int wrongInARow)
{
    return wrongInARow >= 10;
}

} // namespace core
