// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/credentials.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "db/sqlite/connection.hpp"
#include "db/write_gate.hpp"

namespace db {

using core::Digest;
using core::ErrorCode;
using core::failure;
using core::Instant;
using core::PersonId;
using core::Result;
using core::WrappedKey;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Store", text); }

core::Error noSuchKey(const PersonId &person)
{
    return {ErrorCode::NotFound, tr("This store holds no key of %1. They sign where their key is, or an administrator registers a "
                                    "new one for them.")
                                     .arg(person.text())};
}

core::Error lockedOut(const PersonId &person)
{
    return {ErrorCode::Locked, tr("The key of %1 is locked after too many wrong PINs or passphrases. An administrator registers a "
                                  "new key for them; what they signed stays valid.")
                                   .arg(person.text())};
}

/// `40 seconds`, `5 minutes`; rounded up, since a try that comes too early is refused.
QString spoken(qint64 milliseconds)
{
    const qint64 seconds = (milliseconds + 999) / 1000;
    if (seconds < 100)
        return QCoreApplication::translate("Store", "%n second(s)", nullptr, static_cast<int>(seconds));
    return QCoreApplication::translate("Store", "%n minute(s)", nullptr, static_cast<int>((seconds + 59) / 60));
}

core::Error mustWait(const PersonId &person, qint64 milliseconds)
{
    return {ErrorCode::Locked, tr("After several wrong PINs or passphrases %1 must wait another %2 before the next try.")
                                   .arg(person.text(), spoken(milliseconds))};
}

core::Error wrongSecret(const PersonId &person, int wrongInARow)
{
    if (core::isLockedOut(wrongInARow))
        return lockedOut(person);
    const qint64 wait = core::waitMilliseconds(wrongInARow);
    QString message = tr("That is not the PIN or passphrase of %1.").arg(person.text());
    message += u' ' + (wait > 0 ? tr("The next try is possible in %1.").arg(spoken(wait)) : tr("Try again."));
    return {ErrorCode::WrongSecret, message};
}

} // namespace

Result<void> Credentials::put(const PersonId &person, const Digest &fingerprint, const WrappedKey &key)
{
    const QByteArray name = fingerprint.bytes();
    return m_gate.write([&] {
        return m_connection
            .query("INSERT INTO credentials (person, fingerprint, passes, memory_bytes, salt, nonce, sealed) "
                   "VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT (person, fingerprint) DO UPDATE SET passes = excluded.passes, "
                   "memory_bytes = excluded.memory_bytes, salt = excluded.salt, nonce = excluded.nonce, "
                   "sealed = excluded.sealed")
            .with(person.text())
            .with(QByteArrayView(name))
            .with(key.cost.passes)
            .with(key.cost.memoryBytes)
            .with(QByteArrayView(key.salt))
            .with(QByteArrayView(key.nonce))
            .with(QByteArrayView(key.sealed))
            .run();
    });
}

Result<std::optional<WrappedKey>> Credentials::get(const PersonId &person, const Digest &fingerprint)
{
    const QByteArray name = fingerprint.bytes();
    return m_connection
        .query("SELECT passes, memory_bytes, salt, nonce, sealed FROM credentials WHERE person = ? AND fingerprint = ?")
        .with(person.text())
        .with(QByteArrayView(name))
        .one([](Statement &row) {
            return WrappedKey{{row.integer(0), row.integer(1)},
                              row.bytes(2).toByteArray(),
                              row.bytes(3).toByteArray(),
                              row.bytes(4).toByteArray()};
        });
}

Result<Credentials::Attempts> Credentials::attempts(const PersonId &person, const Digest &fingerprint)
{
    const QByteArray name = fingerprint.bytes();
    auto stored = m_connection.query("SELECT wrong_in_a_row, last_at FROM attempts WHERE person = ? AND fingerprint = ?")
                      .with(person.text())
                      .with(QByteArrayView(name))
                      .one([](const Statement &row) {
                          constexpr qint64 most = 1000;
                          return Attempts{static_cast<int>(std::min(row.integer(0), most)),
                                          Instant::fromMilliseconds(row.integer(1))};
                      });
    return stored.map([](const std::optional<Attempts> &found) { return found.value_or(Attempts{}); });
}

Result<void> Credentials::setAttempts(const PersonId &person, const Digest &fingerprint, const Attempts &attempts)
{
    const QByteArray name = fingerprint.bytes();
    return m_connection
        .query("INSERT INTO attempts (person, fingerprint, wrong_in_a_row, last_at) VALUES (?, ?, ?, ?) "
               "ON CONFLICT (person, fingerprint) DO UPDATE SET wrong_in_a_row = excluded.wrong_in_a_row, "
               "last_at = excluded.last_at")
        .with(person.text())
        .with(QByteArrayView(name))
        .with(qint64{attempts.wrongInARow})
        .with(attempts.last.milliseconds())
        .run();
}

Result<qint64> Credentials::waitLeft(const PersonId &person, const Digest &fingerprint, const Instant &now)
{
    const auto counted = attempts(person, fingerprint);
    if (!counted)
        return failure(counted.error());
    if (core::isLockedOut(counted->wrongInARow))
        return failure(lockedOut(person));
    const qint64 wait = core::waitMilliseconds(counted->wrongInARow);
    const qint64 passed = now.milliseconds() - counted->last.milliseconds();
    return std::clamp<qint64>(wait - passed, 0, wait);
}

Result<int> Credentials::countAttempt(const PersonId &person, const Digest &fingerprint, const Instant &now)
{
    // A wait that is still running is an answer, not a failure of the transaction: a clock that was set back is to be written
    // down even then, or the wait would never end.
    core::Error waiting{ErrorCode::Locked, {}};
    auto count = m_gate.write([&]() -> Result<int> {
        auto counted = attempts(person, fingerprint);
        const auto left = waitLeft(person, fingerprint, now);
        if (!counted || !left)
            return failure(counted ? left.error() : counted.error());
        const bool mayTry = *left == 0;
        const bool clockWentBack = now < counted->last;
        if (!mayTry)
            waiting.message = mustWait(person, *left).message;
        if (!mayTry && !clockWentBack)
            return 0;
        counted->wrongInARow += mayTry ? 1 : 0;
        counted->last = now;
        return setAttempts(person, fingerprint, *counted).map([&] { return mayTry ? counted->wrongInARow : 0; });
    });
    if (count && *count == 0)
        return failure(waiting);
    return count;
}

Result<void> Credentials::forgive(const PersonId &person, const Digest &fingerprint)
{
    const QByteArray name = fingerprint.bytes();
    return m_gate.write([&] {
        return m_connection.query("DELETE FROM attempts WHERE person = ? AND fingerprint = ?")
            .with(person.text())
            .with(QByteArrayView(name))
            .run();
    });
}

Result<void> Credentials::giveBack(const PersonId &person, const Digest &fingerprint)
{
    const QByteArray name = fingerprint.bytes();
    return m_gate.write([&] {
        return m_connection
            .query("UPDATE attempts SET wrong_in_a_row = max(0, wrong_in_a_row - 1) WHERE person = ? AND fingerprint = ?")
            .with(person.text())
            .with(QByteArrayView(name))
            .run();
    });
}

Result<core::SigningKey> Credentials::unlock(const PersonId &person, const Digest &fingerprint, const QString &secret,
                                             const Instant &now)
{
    auto wrapped = get(person, fingerprint);
    if (!wrapped)
        return failure(wrapped.error());
    if (!*wrapped)
        return failure(noSuchKey(person));
    const auto tries = countAttempt(person, fingerprint, now);
    if (!tries)
        return failure(tries.error());
    auto key = core::unwrap(**wrapped, person, secret);
    if (!key && key.error().code == ErrorCode::WrongSecret)
        return failure(wrongSecret(person, *tries));
    // Too little memory, or a damaged row: nothing was learnt about the secret, so the try does not count.
    auto settled = key ? forgive(person, fingerprint) : giveBack(person, fingerprint);
    if (!settled)
        return failure(settled.error());
    if (key && key->publicKey().fingerprint() != fingerprint)
        return failure(ErrorCode::Damaged, tr("The stored key of %1 is not the one it is said to be. Register a new key for them.")
                                               .arg(person.text()));
    return key;
}

} // namespace db
