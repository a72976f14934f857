// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>

#include "app/session/session.hpp"

namespace session {

/// Somebody who gets a key. They type their secret themselves; nobody else ever knows it.
struct NewPerson {
    core::PersonId id;
    QString name;
    QString secret;   ///< at least core::shortestSecret characters
    QString identity; ///< how it was proved who they are; not asked of the root person
};

/// Founds the register of a new store: its first entry, signed by the root person with a key made for them now.
/// BadInput when the store has a register already or the secret is too short.
Signed found(Session &session, const QString &organisation, const NewPerson &root);

/// Makes a key for a person, locks it with their secret, and enrols them; signed by an administrator.
Signed enrol(Session &session, const NewPerson &person, const Signer &administrator);

/// The same with the administrator's key unlocked before.
Signed enrol(Session &session, const NewPerson &person, const core::PersonId &administrator, const core::SigningKey &key);

/// Gives a person who lost their secret or key a new one; signed by an administrator. What they signed before stays valid;
/// what was signed from `doubtSince` on, when somebody else may have had the key, is listed as doubtful.
Signed replaceKey(Session &session, const core::PersonId &person, const QString &newSecret, const QString &reason,
                  const Signer &administrator, const std::optional<core::Instant> &doubtSince = {});

/// Locks a person's key with another secret. Needs the old one; writes no entry, since the key stays the same. The copies that other
/// stations have go, since they would still open with the old secret.
core::Result<void> changeSecret(Session &session, const Signer &person, const QString &newSecret);

/// An authorisation to grant.
struct Grant {
    core::AuthorisationId id;
    core::PersonId person;
    core::Authority authority;
    std::vector<QString> kinds;         ///< of interface; empty for all
    std::vector<QString> aircraftTypes; ///< empty for all
    QDate from;
    std::optional<QDate> until;
    QString reference; ///< the approval document behind it
};

// Drafts of the register's other acts, to be signed on session.reg().ledger. Their moment is set when they are signed.
core::Draft grantDraft(const core::PersonId &author, const Grant &grant);
core::Draft withdrawGrantDraft(const core::PersonId &author, const core::AuthorisationId &id, const QString &reason);
/// A tool that measures nothing has no range. Its calibrations and withdrawal are drafts of their own.
core::Draft toolDraft(const core::PersonId &author, const core::Tool &tool);
/// That a tool was found out of tolerance, having been right on the day `after` for the last time.
core::Draft doubtDraft(const core::PersonId &author, const core::ToolId &id, QDate after, const QString &found, const QString &certificate);
core::Draft calibrationDraft(const core::PersonId &author, const core::ToolId &id, const core::Calibration &calibration);
core::Draft withdrawToolDraft(const core::PersonId &author, const core::ToolId &id, const QString &reason);

/// That a key signs nothing more from now on, and since when somebody else may have had it.
core::Draft stopKeyDraft(const core::PersonId &author, const core::PersonId &person, const core::Instant &doubtSince, const QString &reason);

/// The next authorisation number that nobody holds: `A1`, `A2` …
core::AuthorisationId nextAuthorisation(const core::Register &reg);

} // namespace session
