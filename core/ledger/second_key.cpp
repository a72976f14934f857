// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/ledger/second_key.hpp"

#include <QCoreApplication>

#include <cstring>

#include <sodium.h>

#include "core/ledger/seal.hpp"
#include "core/ledger/transfer_code.hpp"

namespace core {

namespace {

// One secret, several uses: each has its own label, so that no result of one is a result of another.
constexpr char idLabel[] = "remate: which second key";
constexpr char mixLabel[] = "remate: sealing a private key";
constexpr char transferLabel[] = "remate: second key of a transfer until ";

QString tr(const char *text) { return QCoreApplication::translate("Seal", text); }

const unsigned char *raw(QByteArrayView bytes) { return reinterpret_cast<const unsigned char *>(bytes.data()); }

} // namespace

QByteArray blake2b(QByteArrayView message, QByteArrayView key, qsizetype size)
{
    QByteArray hash(size, '\0');
    const int status = crypto_generichash(reinterpret_cast<unsigned char *>(hash.data()), static_cast<std::size_t>(size), raw(message),
                                          static_cast<unsigned long long>(message.size()), key.isEmpty() ? nullptr : raw(key),
                                          static_cast<std::size_t>(key.size()));
    // It fails for lengths alone, which the callers fix. A key that was not mixed must never seal anything.
    if (status != 0)
        qFatal("BLAKE2b was asked for %lld bytes with a key of %lld", static_cast<long long>(size), static_cast<long long>(key.size()));
    return hash;
}

Result<SecondKey> SecondKey::holding(QByteArrayView bytes)
{
    Secret secret(static_cast<unsigned char *>(sodium_malloc(size)), [](unsigned char *memory) { sodium_free(memory); });
    if (!secret)
        return failure(ErrorCode::Crypto, tr("There was not enough protected memory for a key. Close other programs and try again."));
    std::memcpy(secret.get(), bytes.data(), size);
    return SecondKey(std::move(secret));
}

Result<SecondKey> SecondKey::ofStation(QByteArrayView secret)
{
    if (secret.size() != size)
        return failure(ErrorCode::BadInput, tr("A station's secret is %1 bytes long, not %2.").arg(size).arg(secret.size()));
    return holding(secret);
}

Result<SecondKey> SecondKey::ofTransfer(QByteArrayView code, const Instant &until)
{
    if (code.size() != transferCodeSize)
        return failure(ErrorCode::BadInput, tr("A transfer code is %1 bytes long, not %2.").arg(transferCodeSize).arg(code.size()));
    QByteArray derived = blake2b(transferLabel + until.text().toLatin1(), code, size);
    auto key = holding(derived);
    wipe(derived);
    return key;
}

QByteArrayView SecondKey::bytes() const { return {m_secret.get(), size}; }

Digest SecondKey::id() const { return *Digest::fromBytes(blake2b(QByteArrayView(idLabel), bytes(), Digest::size)); }

QByteArray SecondKey::mixedWith(QByteArrayView stretched) const
{
    QByteArray message = QByteArray(mixLabel) + stretched.toByteArray();
    QByteArray mixed = blake2b(message, bytes(), size);
    wipe(message);
    return mixed;
}

QByteArray newStationSecret()
{
    QByteArray secret(SecondKey::size, '\0');
    randombytes_buf(secret.data(), static_cast<std::size_t>(secret.size()));
    return secret;
}

} // namespace core
