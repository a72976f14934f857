// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QByteArrayView>

#include <memory>

#include "core/value/digest.hpp"
#include "core/value/instant.hpp"
#include "core/value/result.hpp"

namespace core {

/// BLAKE2b of `message`, keyed unless `key` is empty. Source: RFC 7693. `size` 16 to 64 bytes, `key` none or 16 to 64 bytes;
/// nothing else may be asked for.
QByteArray blake2b(QByteArrayView message, QByteArrayView key, qsizetype size);

/// What a wrapped key needs beside the PIN of its owner, and what no store holds: without it a copied store gives no way to
/// find out whether a guessed PIN is right. 32 bytes in memory that is wiped when it goes.
class SecondKey {
public:
    static constexpr qsizetype size = 32;

    /// The secret of a station: exactly `size` random bytes. BadInput for any other length.
    static Result<SecondKey> ofStation(QByteArrayView secret);
    /// That of a transfer code and the moment after which it is worth nothing; so a stored moment that was put off matches no code.
    static Result<SecondKey> ofTransfer(QByteArrayView code, const Instant &until);

    /// Says which one it is without giving it away: a keyed hash under the secret itself, which nobody can test a guess against
    /// without guessing all of its bits.
    Digest id() const;
    /// Mixes it with a stretched PIN: the key that seals. 32 bytes; the caller wipes them.
    QByteArray mixedWith(QByteArrayView stretched) const;

private:
    using Secret = std::shared_ptr<unsigned char>;
    static Result<SecondKey> holding(QByteArrayView bytes);
    explicit SecondKey(Secret secret) : m_secret(std::move(secret)) {}
    QByteArrayView bytes() const;
    Secret m_secret;
};

/// `size` random bytes for a new station. The caller wipes them.
QByteArray newStationSecret();

} // namespace core
