// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>

#include "core/ledger/seal.hpp"
#include "core/ledger/wrapped_key.hpp"
#include "core/value/digest.hpp"
#include "core/value/id.hpp"
#include "core/value/instant.hpp"
#include "core/value/result.hpp"

namespace db {

class Connection;
class WriteGate;

/// The wrapped private keys of a store and the count of wrong secrets. No part of a ledger: may be changed.
/// A key is found by its person and its fingerprint (SHA-256 of the public key), so an old key stays beside its successor.
class Credentials {
public:
    Credentials(Connection &connection, WriteGate &gate) : m_connection(connection), m_gate(gate) {}

    /// Keeps a wrapped key, replacing the one of that person and fingerprint (a changed PIN). Wrong secrets stay counted.
    core::Result<void> put(const core::PersonId &person, const core::Digest &fingerprint, const core::WrappedKey &key);
    /// Nothing when this store has no key of that person and fingerprint.
    core::Result<std::optional<core::WrappedKey>> get(const core::PersonId &person, const core::Digest &fingerprint);

    /// Unlocks a key. The attempt is counted, durably, before it is known whether the secret was right, and forgiven when it
    /// was; so ending the program early gains nothing. NotFound; WrongSecret; Locked with how long to wait, or for ever after
    /// ten in a row (see core::waitMilliseconds). Setting the clock back starts the wait again.
    core::Result<core::SigningKey> unlock(const core::PersonId &person, const core::Digest &fingerprint,
                                          const QString &secret, const core::Instant &now);

    /// How long this person still has to wait, in milliseconds; 0 when they may try. Locked when they may never.
    core::Result<qint64> waitLeft(const core::PersonId &person, const core::Digest &fingerprint, const core::Instant &now);

private:
    struct Attempts {
        int wrongInARow = 0;
        core::Instant last = core::Instant::fromMilliseconds(0);
    };
    core::Result<Attempts> attempts(const core::PersonId &person, const core::Digest &fingerprint);
    core::Result<int> countAttempt(const core::PersonId &person, const core::Digest &fingerprint, const core::Instant &now);
    core::Result<void> setAttempts(const core::PersonId &person, const core::Digest &fingerprint, const Attempts &attempts);
    core::Result<void> forgive(const core::PersonId &person, const core::Digest &fingerprint);
    core::Result<void> giveBack(const core::PersonId &person, const core::Digest &fingerprint);

    Connection &m_connection;
    WriteGate &m_gate;
};

} // namespace db
