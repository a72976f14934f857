// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>
#include <vector>

#include "core/ledger/seal.hpp"
#include "core/ledger/second_key.hpp"
#include "core/ledger/wrapped_key.hpp"
#include "core/value/digest.hpp"
#include "core/value/id.hpp"
#include "core/value/instant.hpp"
#include "core/value/result.hpp"

namespace db {

class Connection;
class WriteGate;

/// Where the wrapped key of a person is, seen from one station.
enum class KeyPlace {
    Here,      ///< bound to this station
    Unbound,   ///< wrapped before there were stations: opens with the secret alone, anywhere
    Elsewhere, ///< bound to other stations alone
    Nowhere,
};

/// How often a wrong secret was tried in a row, and when last.
struct Tries {
    int wrongInARow = 0;
    core::Instant last = core::Instant::fromMilliseconds(0);
};

/// A key on its way to another station.
struct Transfer {
    core::Digest id; ///< of the code, see core::SecondKey::ofTransfer
    core::PersonId person;
    core::Digest fingerprint;
    core::Instant until;
    core::WrappedKey key;
};

/// What a transfer code brought: the key, and whose it is.
struct Carried {
    core::Digest id;
    core::PersonId person;
    core::SigningKey key;
};

/// The wrapped private keys of a store and the count of wrong secrets. No part of a ledger: may be changed.
/// A key is found by its person, its fingerprint (SHA-256 of the public key) and its station, so an old key stays beside its successor, and
/// one person may sign at several stations.
class Credentials {
public:
    Credentials(Connection &connection, WriteGate &gate) : m_connection(connection), m_gate(gate) {}

    /// What becomes of the copies that other stations have of the same key. They open with the secret of then: whoever changes a
    /// secret because it was seen wants them gone.
    enum class Others { Keep, Remove };

    /// Keeps a wrapped key, replacing the one of that person, fingerprint and station. A copy that is bound to no station goes in
    /// any case, and so do open transfers with Others::Remove. Wrong secrets stay counted.
    core::Result<void> put(const core::PersonId &person, const core::Digest &fingerprint, const core::WrappedKey &key, Others others);
    /// The one bound to that station, or the one bound to none, or nothing.
    core::Result<std::optional<core::WrappedKey>> get(const core::PersonId &person, const core::Digest &fingerprint, const core::Digest &station);
    core::Result<KeyPlace> placeOf(const core::PersonId &person, const core::Digest &fingerprint, const core::Digest &station);
    /// How many stations have a copy.
    core::Result<qint64> stationsOf(const core::PersonId &person, const core::Digest &fingerprint);

    /// Unlocks a key. The attempt is counted, durably, before it is known whether the secret was right, and forgiven when it
    /// was; so ending the program early gains nothing. NotFound, also for a key that is bound to other stations; WrongSecret; Locked with how long to wait, or for ever after
    /// ten in a row (see core::waitMilliseconds). Setting the clock back starts the wait again.
    core::Result<core::SigningKey> unlock(const core::PersonId &person, const core::Digest &fingerprint,
                                          const QString &secret, const core::SecondKey &station, const core::Instant &now);

    /// How long this person still has to wait, in milliseconds; 0 when they may try. Locked when they may never.
    core::Result<qint64> waitLeft(const core::PersonId &person, const core::Digest &fingerprint, const core::Instant &now);
    /// Wrong secrets since the last right one.
    core::Result<Tries> tries(const core::PersonId &person, const core::Digest &fingerprint);

    /// Keeps a key for another station to take.
    core::Result<void> offer(const Transfer &transfer);
    /// Opens what the code brings. The secret counts as a try, as in unlock(); the code does not, being too long to be guessed.
    /// NotFound when no transfer of the code is open (used, too late, never made, mistyped); else as unlock(). Nothing is used up yet.
    core::Result<Carried> take(QByteArrayView code, const QString &secret, const core::Instant &now);
    /// Keeps the key for the new station and uses the transfer up, both or neither. NotFound when another program was faster.
    core::Result<void> settle(const Carried &carried, const core::WrappedKey &key);
    /// Removes transfers that are too late. How many there were.
    core::Result<qint64> removeLate(const core::Instant &now);

private:
    core::Result<int> countAttempt(const core::PersonId &person, const core::Digest &fingerprint, const core::Instant &now);
    core::Result<void> setAttempts(const core::PersonId &person, const core::Digest &fingerprint, const Tries &tries);
    core::Result<void> forgive(const core::PersonId &person, const core::Digest &fingerprint);
    core::Result<void> giveBack(const core::PersonId &person, const core::Digest &fingerprint);
    core::Result<core::SigningKey> tryOn(const core::WrappedKey &wrapped, const core::PersonId &person, const core::Digest &fingerprint,
                                         const QString &secret, const core::SecondKey &second, const core::Instant &now);
    core::Result<void> store(const core::PersonId &person, const core::Digest &fingerprint, const core::WrappedKey &key, Others others);
    core::Result<std::vector<Transfer>> transfers();

    Connection &m_connection;
    WriteGate &m_gate;
};

} // namespace db
