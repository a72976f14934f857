// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/people.hpp"

#include <QCoreApplication>

#include "core/ledger/wrapped_key.hpp"

namespace session {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Session", text); }

tl::unexpected<NotSigned> notSigned(const core::Error &error) { return tl::unexpected(NotSigned{error, {}}); }

std::optional<core::Error> faultOf(const QString &secret)
{
    if (secret.size() >= core::shortestSecret)
        return std::nullopt;
    return core::Error{core::ErrorCode::BadInput, tr("A PIN or passphrase has at least %1 characters.").arg(core::shortestSecret)};
}

/// The key is stored before the entry that names it: a key without an entry signs nothing, an entry without a key would
/// leave somebody enrolled who can never sign.
core::Result<void> keep(Session &session, const core::PersonId &person, const core::SigningKey &key, const QString &secret)
{
    const auto station = session.station();
    if (!station)
        return core::failure(station.error());
    const auto wrapped = core::wrap(key, person, secret, *station, session.cost());
    if (!wrapped)
        return core::failure(wrapped.error());
    return session.store().credentials().put(person, key.publicKey().fingerprint(), *wrapped, db::Credentials::Others::Remove);
}

core::Draft draft(Session &session, const core::PersonId &author, const QString &kind, const core::PersonId &subject, core::json::Object body)
{
    return {author, session.now(), kind, subject.text(), std::move(body)};
}

/// Signs a draft that brings a new key, keeping the key once the draft was admitted and the signer unlocked.
Signed signWithNewKey(Session &session, const core::LedgerId &ledger, const core::Draft &said, const core::PersonId &owner,
                      const core::SigningKey &newKey, const QString &newSecret, const KeySource &signer)
{
    return session.sign(ledger, {said}, [&]() -> core::Result<core::SigningKey> {
        auto unlocked = signer();
        if (!unlocked)
            return unlocked;
        if (const auto kept = keep(session, owner, newKey, newSecret); !kept)
            return core::failure(kept.error());
        return unlocked;
    });
}

core::Result<core::LedgerId> registerOf(const Session &session)
{
    if (!session.reg().ledger)
        return core::failure(core::ErrorCode::NotFound, tr("This store has no register yet. Found it first."));
    return *session.reg().ledger;
}

Signed enrolWith(Session &session, const NewPerson &person, const core::PersonId &administrator, const KeySource &signer)
{
    const auto ledger = registerOf(session);
    if (!ledger)
        return notSigned(ledger.error());
    if (const auto fault = faultOf(person.secret))
        return notSigned(*fault);
    const auto key = core::SigningKey::generate();
    if (!key)
        return notSigned(key.error());
    const auto said = draft(session, administrator, QStringLiteral("person.enrolled"), person.id,
                            {{QStringLiteral("name"), person.name},
                             {QStringLiteral("public_key"), key->publicKey().hex()},
                             {QStringLiteral("identity"), person.identity}});
    return signWithNewKey(session, *ledger, said, person.id, *key, person.secret, signer);
}

} // namespace

Signed found(Session &session, const QString &organisation, const NewPerson &root)
{
    if (const auto read = session.refresh(); !read)
        return notSigned(read.error());
    if (session.reg().ledger)
        return notSigned({core::ErrorCode::BadInput, tr("This store has a register already.")});
    if (const auto fault = faultOf(root.secret))
        return notSigned(*fault);
    const auto key = core::SigningKey::generate();
    if (!key)
        return notSigned(key.error());
    const auto said = draft(session, root.id, QStringLiteral("register.founded"), root.id,
                            {{QStringLiteral("name"), root.name},
                             {QStringLiteral("public_key"), key->publicKey().hex()},
                             {QStringLiteral("organisation"), organisation}});
    return signWithNewKey(session, Session::newLedgerId(), said, root.id, *key, root.secret,
                          [&]() -> core::Result<core::SigningKey> { return *key; });
}

Signed enrol(Session &session, const NewPerson &person, const Signer &administrator)
{
    return enrolWith(session, person, administrator.person, [&] { return session.unlock(administrator); });
}

Signed enrol(Session &session, const NewPerson &person, const core::PersonId &administrator, const core::SigningKey &key)
{
    return enrolWith(session, person, administrator, [&]() -> core::Result<core::SigningKey> { return key; });
}

Signed replaceKey(Session &session, const core::PersonId &person, const QString &newSecret, const QString &reason, const Signer &administrator,
                  const std::optional<core::Instant> &doubtSince)
{
    const auto ledger = registerOf(session);
    if (!ledger)
        return notSigned(ledger.error());
    if (const auto fault = faultOf(newSecret))
        return notSigned(*fault);
    const auto key = core::SigningKey::generate();
    if (!key)
        return notSigned(key.error());
    core::json::Object body{{QStringLiteral("public_key"), key->publicKey().hex()}, {QStringLiteral("reason"), reason}};
    if (doubtSince)
        body.set(QStringLiteral("since"), doubtSince->text());
    const auto said = draft(session, administrator.person, QStringLiteral("key.replaced"), person, std::move(body));
    return signWithNewKey(session, *ledger, said, person, *key, newSecret, [&] { return session.unlock(administrator); });
}

core::Result<void> changeSecret(Session &session, const Signer &person, const QString &newSecret)
{
    if (const auto fault = faultOf(newSecret))
        return core::failure(*fault);
    const auto key = session.unlock(person);
    if (!key)
        return core::failure(key.error());
    return keep(session, person.person, *key, newSecret);
}

} // namespace session
