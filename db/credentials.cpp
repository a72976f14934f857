// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/credentials.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/value/counted.hpp"
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

core::Error boundElsewhere(const PersonId &person)
{
    return {ErrorCode::NotFound, tr("The key of %1 is not at this station, so their PIN opens nothing here. At a station where they sign they choose \"Carry your key over\", and type the code "
                                    "here; or an administrator registers a new key for them. What they signed stays valid.")
                                     .arg(person.text())};
}

core::Error noSuchTransfer()
{
    return {ErrorCode::NotFound, tr("No transfer with this code is open. Compare each letter; a code works once, and only until the time that was shown with it. Otherwise make "
                                    "a new one where the key is.")};
}

QByteArray stationOf(const WrappedKey &key) { return key.boundTo ? key.boundTo->bytes() : QByteArray(""); }

/// Five columns from `first` on.
WrappedKey wrappedIn(Statement &row, int first, std::optional<Digest> boundTo)
{
    return {{row.integer(first), row.integer(first + 1)},
            row.bytes(first + 2).toByteArray(),
            row.bytes(first + 3).toByteArray(),
            row.bytes(first + 4).toByteArray(),
            boundTo};
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
        return core::counted(seconds, tr("1 second"), tr("%1 seconds"));
    return core::counted((seconds + 59) / 60, tr("1 minute"), tr("%1 minutes"));
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

Result<void> Credentials::store(const PersonId &person, const Digest &fingerprint, const WrappedKey &key, Others others)
{
    const QByteArray name = fingerprint.bytes();
    const QByteArray station = stationOf(key);
    const auto remove = [&](const char *sql) {
        return m_connection.query(sql).with(person.text()).with(QByteArrayView(name)).run();
    };
    const bool alone = others == Others::Remove;
    return remove(alone ? "DELETE FROM credentials WHERE person = ? AND fingerprint = ?"
                        : "DELETE FROM credentials WHERE person = ? AND fingerprint = ? AND station = x''")
        .and_then([&] { return alone ? remove("DELETE FROM transfers WHERE person = ? AND fingerprint = ?") : Result<void>(); })
        .and_then([&] {
            return m_connection
                .query("INSERT INTO credentials (person, fingerprint, station, passes, memory_bytes, salt, nonce, sealed) "
                       "VALUES (?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (person, fingerprint, station) DO UPDATE SET passes = excluded.passes, "
                       "memory_bytes = excluded.memory_bytes, salt = excluded.salt, nonce = excluded.nonce, "
                       "sealed = excluded.sealed")
                .with(person.text())
                .with(QByteArrayView(name))
                .with(QByteArrayView(station))
                .with(key.cost.passes)
                .with(key.cost.memoryBytes)
                .with(QByteArrayView(key.salt))
                .with(QByteArrayView(key.nonce))
                .with(QByteArrayView(key.sealed))
                .run();
        });
}

Result<void> Credentials::put(const PersonId &person, const Digest &fingerprint, const WrappedKey &key, Others others)
{
    return m_gate.write([&] { return store(person, fingerprint, key, others); });
}

Result<std::optional<WrappedKey>> Credentials::get(const PersonId &person, const Digest &fingerprint, const Digest &station)
{
    const QByteArray name = fingerprint.bytes();
    const QByteArray here = station.bytes();
    // The empty name sorts first, so the copy of this station wins.
    return m_connection
        .query("SELECT passes, memory_bytes, salt, nonce, sealed, station FROM credentials "
               "WHERE person = ? AND fingerprint = ? AND (station = ? OR station = x'') ORDER BY station DESC LIMIT 1")
        .with(person.text())
        .with(QByteArrayView(name))
        .with(QByteArrayView(here))
        .one([](Statement &row) { return wrappedIn(row, 0, Digest::fromBytes(row.bytes(5))); });
}

Result<KeyPlace> Credentials::placeOf(const PersonId &person, const Digest &fingerprint, const Digest &station)
{
    const auto near = get(person, fingerprint, station);
    if (!near)
        return failure(near.error());
    if (*near)
        return (*near)->boundTo ? KeyPlace::Here : KeyPlace::Unbound;
    return stationsOf(person, fingerprint).map([](qint64 count) { return count > 0 ? KeyPlace::Elsewhere : KeyPlace::Nowhere; });
}

Result<qint64> Credentials::stationsOf(const PersonId &person, const Digest &fingerprint)
{
    const QByteArray name = fingerprint.bytes();
    return m_connection.query("SELECT count(*) FROM credentials WHERE person = ? AND fingerprint = ? AND station <> x''")
        .with(person.text())
        .with(QByteArrayView(name))
        .one([](const Statement &row) { return row.integer(0); })
        .map([](const std::optional<qint64> &count) { return count.value_or(0); });
}

Result<Tries> Credentials::tries(const PersonId &person, const Digest &fingerprint)
{
    const QByteArray name = fingerprint.bytes();
    auto stored = m_connection.query("SELECT wrong_in_a_row, last_at FROM attempts WHERE person = ? AND fingerprint = ?")
                      .with(person.text())
                      .with(QByteArrayView(name))
                      .one([](const Statement &row) {
                          constexpr qint64 most = 1000;
                          return Tries{static_cast<int>(std::min(row.integer(0), most)),
                                          Instant::fromMilliseconds(row.integer(1))};
                      });
    return stored.map([](const std::optional<Tries> &found) { return found.value_or(Tries{}); });
}

Result<void> Credentials::setAttempts(const PersonId &person, const Digest &fingerprint, const Tries &tries)
{
    const QByteArray name = fingerprint.bytes();
    return m_connection
        .query("INSERT INTO attempts (person, fingerprint, wrong_in_a_row, last_at) VALUES (?, ?, ?, ?) "
               "ON CONFLICT (person, fingerprint) DO UPDATE SET wrong_in_a_row = excluded.wrong_in_a_row, "
               "last_at = excluded.last_at")
        .with(person.text())
        .with(QByteArrayView(name))
        .with(qint64{tries.wrongInARow})
        .with(tries.last.milliseconds())
        .run();
}

Result<qint64> Credentials::waitLeft(const PersonId &person, const Digest &fingerprint, const Instant &now)
{
    const auto counted = tries(person, fingerprint);
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
        auto counted = tries(person, fingerprint);
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
                                             const core::SecondKey &station, const Instant &now)
{
    auto wrapped = get(person, fingerprint, station.id());
    if (!wrapped)
        return failure(wrapped.error());
    if (*wrapped)
        return tryOn(**wrapped, person, fingerprint, secret, station, now);
    const auto elsewhere = stationsOf(person, fingerprint);
    if (!elsewhere)
        return failure(elsewhere.error());
    return failure(*elsewhere > 0 ? boundElsewhere(person) : noSuchKey(person));
}

Result<core::SigningKey> Credentials::tryOn(const WrappedKey &wrapped, const PersonId &person, const Digest &fingerprint, const QString &secret,
                                            const core::SecondKey &second, const Instant &now)
{
    const auto tries = countAttempt(person, fingerprint, now);
    if (!tries)
        return failure(tries.error());
    auto key = core::unwrap(wrapped, person, secret, second);
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

Result<void> Credentials::offer(const Transfer &transfer)
{
    const QByteArray id = transfer.id.bytes();
    const QByteArray name = transfer.fingerprint.bytes();
    return m_gate.write([&] {
        return m_connection
            .query("INSERT INTO transfers (id, person, fingerprint, until, passes, memory_bytes, salt, nonce, sealed) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)")
            .with(QByteArrayView(id))
            .with(transfer.person.text())
            .with(QByteArrayView(name))
            .with(transfer.until.milliseconds())
            .with(transfer.key.cost.passes)
            .with(transfer.key.cost.memoryBytes)
            .with(QByteArrayView(transfer.key.salt))
            .with(QByteArrayView(transfer.key.nonce))
            .with(QByteArrayView(transfer.key.sealed))
            .run();
    });
}

Result<std::vector<Transfer>> Credentials::transfers()
{
    std::vector<Transfer> all;
    bool isSound = true;
    auto read = m_connection.query("SELECT id, person, fingerprint, until, passes, memory_bytes, salt, nonce, sealed FROM transfers").each([&](Statement &row) {
        const auto id = Digest::fromBytes(row.bytes(0));
        const auto person = PersonId::parse(row.text(1));
        const auto fingerprint = Digest::fromBytes(row.bytes(2));
        isSound = isSound && id && person && fingerprint;
        if (id && person && fingerprint)
            all.push_back({*id, *person, *fingerprint, Instant::fromMilliseconds(row.integer(3)), wrappedIn(row, 4, id)});
        return Walk::On;
    });
    if (!read)
        return failure(read.error());
    if (!isSound)
        return failure(ErrorCode::Damaged, tr("A stored transfer is damaged. Make a new one where the key is."));
    return all;
}

Result<Carried> Credentials::take(QByteArrayView code, const QString &secret, const Instant &now)
{
    const auto all = transfers();
    if (!all)
        return failure(all.error());
    for (const Transfer &transfer : *all) {
        const auto second = core::SecondKey::ofTransfer(code, transfer.until);
        if (!second)
            return failure(second.error());
        if (transfer.until < now || second->id() != transfer.id)
            continue;
        auto key = tryOn(transfer.key, transfer.person, transfer.fingerprint, secret, *second, now);
        return key.map([&](const core::SigningKey &opened) { return Carried{transfer.id, transfer.person, opened}; });
    }
    return failure(noSuchTransfer());
}

Result<void> Credentials::settle(const Carried &carried, const WrappedKey &key)
{
    const QByteArray id = carried.id.bytes();
    return m_gate.write([&]() -> Result<void> {
        const auto open = m_connection.query("SELECT count(*) FROM transfers WHERE id = ?").with(QByteArrayView(id)).one([](const Statement &row) { return row.integer(0); });
        if (!open)
            return failure(open.error());
        if (open->value_or(0) == 0)
            return failure(noSuchTransfer());
        return m_connection.query("DELETE FROM transfers WHERE id = ?").with(QByteArrayView(id)).run().and_then([&] {
            return store(carried.person, carried.key.publicKey().fingerprint(), key, Others::Keep);
        });
    });
}

Result<qint64> Credentials::removeLate(const Instant &now)
{
    return m_gate.write([&]() -> Result<qint64> {
        const auto late = m_connection.query("SELECT count(*) FROM transfers WHERE until < ?").with(now.milliseconds()).one([](const Statement &row) { return row.integer(0); });
        if (!late)
            return failure(late.error());
        return m_connection.query("DELETE FROM transfers WHERE until < ?").with(now.milliseconds()).run().map([&] { return late->value_or(0); });
    });
}

} // namespace db
