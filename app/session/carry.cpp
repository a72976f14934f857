// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/carry.hpp"

#include <QCoreApplication>

#include "core/ledger/transfer_code.hpp"

namespace session {

namespace {

using core::ErrorCode;
using core::failure;

QString tr(const char *text) { return QCoreApplication::translate("Session", text); }

} // namespace

core::Result<TransferOffer> offerTransfer(Session &session, const Signer &person, std::chrono::minutes open)
{
    if (open < std::chrono::minutes(1) || open > longestTransfer)
        return failure(ErrorCode::BadInput, tr("A transfer is open for 1 minute to %1 hours.").arg(static_cast<int>(longestTransfer.count())));
    const auto key = session.unlock(person);
    if (!key)
        return failure(key.error());
    const core::Instant now = session.now();
    const core::Instant until = core::Instant::fromMilliseconds(now.milliseconds() + std::chrono::milliseconds(open).count());
    QByteArray code = core::newTransferCode();
    const TransferOffer offer{core::spelledCode(code), until};
    const auto second = core::SecondKey::ofTransfer(code, until);
    core::wipe(code);
    if (!second)
        return failure(second.error());
    const auto wrapped = core::wrap(*key, person.person, person.secret, *second, session.cost());
    if (!wrapped)
        return failure(wrapped.error());
    db::Credentials &credentials = session.store().credentials();
    if (const auto tidied = credentials.removeLate(now); !tidied)
        return failure(tidied.error());
    if (const auto kept = credentials.offer({second->id(), person.person, key->publicKey().fingerprint(), until, *wrapped}); !kept)
        return failure(kept.error());
    return offer;
}

core::Result<core::PersonId> takeTransfer(Session &session, const QString &code, const QString &secret)
{
    auto typed = core::typedCode(code);
    if (!typed)
        return failure(typed.error());
    const auto station = session.station();
    if (!station)
        return failure(station.error());
    db::Credentials &credentials = session.store().credentials();
    const auto carried = credentials.take(*typed, secret, session.now());
    core::wipe(*typed);
    if (!carried)
        return failure(carried.error());
    const core::Person *person = session.reg().person(carried->person);
    if (!person || person->key != carried->key.publicKey() || person->keyStopped)
        return failure(ErrorCode::NotFound, tr("The key of %1 was replaced or stopped since this transfer was made. It signs nothing any more.").arg(carried->person.text()));
    const auto wrapped = core::wrap(carried->key, carried->person, secret, *station, session.cost());
    if (!wrapped)
        return failure(wrapped.error());
    if (const auto settled = credentials.settle(*carried, *wrapped); !settled)
        return failure(settled.error());
    return carried->person;
}

} // namespace session
