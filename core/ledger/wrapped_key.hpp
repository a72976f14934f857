// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QString>

#include <optional>

#include "core/ledger/seal.hpp"
#include "core/ledger/second_key.hpp"
#include "core/value/id.hpp"
#include "core/value/result.hpp"

namespace core {

/// How hard each guess of a secret is made: Argon2id passes and memory (RFC 9106). Stored with each wrapped key, so that
/// they can be raised later without losing old keys.
struct WrapCost {
    qint64 passes;
    qint64 memoryBytes;
    bool operator==(const WrapCost &) const = default;
};

/// About 150 ms a guess on a plain laptop.
constexpr WrapCost everydayCost{2, 96LL * 1024 * 1024};
/// The least that the library takes. For tests alone.
constexpr WrapCost leastCost{1, 8192};

/// A private key locked with a PIN or passphrase and a second key, that of a station or a transfer.
struct WrappedKey {
    WrapCost cost;
    QByteArray salt;   ///< 16 bytes
    QByteArray nonce;  ///< 24 bytes
    QByteArray sealed; ///< XChaCha20-Poly1305 of the seed, bound to the person's id
    std::optional<Digest> boundTo{}; ///< the id of the second key; nothing for keys that were wrapped before there were stations
    bool operator==(const WrappedKey &) const = default;
};

/// The shortest PIN that is taken. Six digits: see the threat model in the manual for what that protects and what not.
constexpr qsizetype shortestSecret = 6;

/// Locks a key. The sealing key is BLAKE2b (RFC 7693), keyed with the second key, of the secret stretched by Argon2id (RFC 9106).
/// Refuses a secret that is too short (BadInput).
Result<WrappedKey> wrap(const SigningKey &key, const PersonId &person, const QString &secret, const SecondKey &second, WrapCost cost = everydayCost);

/// Unlocks it. WrongSecret when the secret or the person does not fit; BadInput when it is bound to another second key, which is
/// told before anything is tried; Crypto when memory ran out. A key that is bound to none needs the secret alone.
Result<SigningKey> unwrap(const WrappedKey &wrapped, const PersonId &person, const QString &secret, const SecondKey &second);

/// How long the program makes a person wait after so many wrong secrets in a row: none for the first two, then 5 s doubling
/// up to 5 min. Ten wrong ones lock until a new key is registered (see isLockedOut).
qint64 waitMilliseconds(int wrongInARow);
bool isLockedOut(int wrongInARow);

} // namespace core
