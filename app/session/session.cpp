// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/session.hpp"

#include <QCoreApplication>
#include <QUuid>

#include "core/acts/act.hpp"
#include "core/job/admit.hpp"

namespace session {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Session", text); }

} // namespace

Session::Session(db::Store &store, Clock clock, KeyCare care)
    : m_store(store), m_clock(std::move(clock)), m_care(std::move(care)), m_folds(store), m_identity(m_clock)
{
}

core::Result<Changes> Session::refresh()
{
    // Everybody looks before they sign, so this is where keys can first be needed.
    if (const auto ready = core::readyCryptography(); !ready)
        return core::failure(ready.error());
    const auto changes = m_folds.refresh();
    if (!changes)
        return changes;
    m_unseen.add(*changes);
    return std::exchange(m_unseen, {});
}

core::Result<std::vector<JobRow>> Session::jobs() { return m_folds.summaries(); }

core::Result<void> Session::openJob(const core::LedgerId &ledger)
{
    const auto followed = m_folds.follow(ledger);
    if (followed)
        m_job = ledger;
    return followed;
}

std::shared_ptr<const core::JobState> Session::state() const { return m_job ? m_folds.state(*m_job) : nullptr; }

core::Series<core::Statement> Session::said() const { return fold() ? fold()->said() : core::Series<core::Statement>(); }

core::Refusals Session::ask(const core::Draft &draft) const
{
    if (const auto damage = trouble())
        return {{QStringLiteral("ledger.damaged"), {}, damage->message, tr("whoever keeps the backups")}};
    core::Draft now = draft;
    now.at = m_clock();
    const core::Act *act = core::findAct(draft.kind);
    if (act && act->ledger == core::LedgerSort::Register)
        return core::admit(reg(), now);
    if (fold() && draft.kind == u"job.linked") {
        core::JobFold seeing = *fold();
        showNamed(seeing, draft);
        return core::admit(seeing.state(), reg(), now);
    }
    const core::JobState none; // named: beside a temporary one, the job would be copied
    return core::admit(fold() ? fold()->state() : none, reg(), now);
}

void Session::showNamed(core::JobFold &fold, const core::Draft &draft) const
{
    const auto named = draft.kind == u"job.linked" ? core::LedgerId::parse(draft.body.text(u"ledger")) : std::nullopt;
    const auto seen = named ? m_folds.glance(*named) : std::nullopt;
    if (seen)
        fold.see(*named, seen->head, seen->job);
}

std::shared_ptr<const core::JobState> Session::look(const core::LedgerId &ledger) const
{
    const auto seen = m_folds.glance(ledger);
    return seen ? seen->job : nullptr;
}

Signed Session::newJob(const core::Draft &opened, const Signer &signer, const std::vector<core::Draft> &next)
{
    std::vector<core::Draft> drafts{opened};
    drafts.insert(drafts.end(), next.begin(), next.end());
    return sign(newLedgerId(), drafts, signer);
}

core::LedgerId Session::newLedgerId() { return *core::LedgerId::parse(QUuid::createUuid().toString(QUuid::WithoutBraces)); }

core::Result<core::SigningKey> Session::unlock(const Signer &signer)
{
    const core::Person *person = reg().person(signer.person);
    if (!person)
        return core::failure(core::ErrorCode::NotFound, tr("Nobody with the id %1 is enrolled here.").arg(signer.person.text()));
    const auto second = station();
    if (!second)
        return core::failure(second.error());
    db::Credentials &credentials = m_store.credentials();
    const core::Digest fingerprint = person->key.fingerprint();
    const auto before = credentials.tries(person->id, fingerprint);
    const auto place = credentials.placeOf(person->id, fingerprint, second->id());
    if (!before || !place)
        return core::failure(before ? place.error() : before.error());
    auto key = credentials.unlock(person->id, fingerprint, signer.secret, *second, m_clock());
    if (!key)
        return key;
    if (before->wrongInARow > 0 && m_tell)
        m_tell(tr("%1: before this, a wrong PIN or passphrase was tried %2 times in a row, the last time on %3. If that was not you, change it, and tell whoever administers the register.")
                   .arg(person->name)
                   .arg(before->wrongInARow)
                   .arg(before->last.spoken()));
    if (*place == db::KeyPlace::Unbound) {
        if (const auto bound = bind(person->id, *key, signer.secret, *second); !bound)
            return core::failure(bound.error());
    }
    return key;
}

core::Result<db::KeyPlace> Session::keyPlace(const core::PersonId &person)
{
    const core::Person *known = reg().person(person);
    if (!known)
        return db::KeyPlace::Nowhere;
    return station().and_then([&](const core::SecondKey &second) { return m_store.credentials().placeOf(person, known->key.fingerprint(), second.id()); });
}

/// From here on a copy of the store is worth nothing without the secret of this station; so the old bytes go from the side file as well.
core::Result<void> Session::bind(const core::PersonId &person, const core::SigningKey &key, const QString &secret, const core::SecondKey &second)
{
    const auto wrapped = core::wrap(key, person, secret, second, cost());
    if (!wrapped)
        return core::failure(wrapped.error());
    const auto kept = m_store.credentials().put(person, key.publicKey().fingerprint(), *wrapped, db::Credentials::Others::Keep);
    if (!kept)
        return kept;
    qInfo("The key of %s was bound to this station.", qUtf8Printable(person.text()));
    return m_store.checkpoint();
}

} // namespace session
