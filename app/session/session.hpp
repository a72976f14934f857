// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "app/session/clock.hpp"
#include "app/session/folds.hpp"
#include "app/session/identity_rule.hpp"
#include "app/session/signed.hpp"
#include "app/session/station.hpp"
#include "core/ledger/wrapped_key.hpp"
#include "core/rules/refusal.hpp"
#include "db/store.hpp"

namespace session {

/// How keys are kept: how hard a guess is, and where the secret of this station comes from.
struct KeyCare {
    KeyCare(core::WrapCost guess, Station where = stationOfThisComputer()) : cost(guess), station(std::move(where)) {}
    core::WrapCost cost;
    Station station;
};

/// Somebody working on one store: the one place where a draft becomes an entry. Screens and commands make drafts, ask
/// whether they would be admitted, have them signed here, and show the state that comes out.
/// One thread; the store must outlive it.
class Session {
public:
    Session(db::Store &store, Clock clock, KeyCare care = core::everydayCost);

    // --- what there is ---

    /// Reads what was appended since the last look, by any program. Call it first, and then as often as a screen should be
    /// fresh. See Folds::refresh for its errors.
    core::Result<Changes> refresh();
    const core::Register &reg() const { return m_folds.reg(); }
    /// Every job in one line.
    core::Result<std::vector<JobRow>> jobs();
    /// Makes a job the one that ask() and state() are about. NotFound when there is none of that name. A damaged job opens
    /// too, up to the damage: see trouble().
    core::Result<void> openJob(const core::LedgerId &ledger);
    /// The ledger of the opened job, or nothing.
    const std::optional<core::LedgerId> &job() const { return m_job; }
    /// The opened job; never changes once handed out. Null while no job is open.
    std::shared_ptr<const core::JobState> state() const;
    /// Everything that was said in the opened job, in order: statement n has sequence number n+1. Empty while none is open.
    core::Series<core::Statement> said() const;
    /// The opened job's fold, or nullptr. Valid until the next call that is not const.
    const core::JobFold *fold() const { return m_job ? m_folds.job(*m_job) : nullptr; }
    /// Why the opened job takes no entries: it or the register is damaged. What is shown is what came before the damage.
    std::optional<core::Error> trouble() const { return m_job ? m_folds.trouble(*m_job) : m_folds.registerTrouble(); }
    /// Why nothing more can be read of the register, which every job rests on.
    std::optional<core::Error> registerTrouble() const { return m_folds.registerTrouble(); }
    core::Instant now() const { return m_clock(); }
    const Clock &clock() const { return m_clock; }
    db::Store &store() { return m_store; }
    core::WrapCost cost() const { return m_care.cost; }
    /// The second key of this station for this store; see readStation for its errors.
    core::Result<core::SecondKey> station() const { return m_care.station(m_store.path()); }

    // --- saying something ---

    /// What the rules would say if this were signed now; empty when it would be admitted. Acts of the register are asked of
    /// the register, all others of the opened job. The draft's own `at` is passed over: the clock's moment counts.
    core::Refusals ask(const core::Draft &draft) const;
    /// Why they could not be signed whatever the rules say: NotFound for an attachment that the store does not hold, Io where it cannot be asked.
    std::optional<core::Error> missingAttachment(const std::vector<core::Draft> &drafts) const;

    /// Signs drafts with one signature: one entry each, all appended or none. Each is admitted on the state that those
    /// before it leave. Their `at` becomes the moment of signing. The secret is tried only after every draft was admitted, so
    /// a refused draft costs no attempt.
    /// Errors: Refused with the refusals; BadInput when a draft is by another author than `signer`, or there is none;
    /// WrongSecret and Locked as in db::Credentials::unlock; HeadMoved when others kept appending; and what the store says.
    Signed sign(const core::LedgerId &ledger, const std::vector<core::Draft> &drafts, const Signer &signer);

    /// The same with a key that was unlocked before, for scripts that sign many drafts of one person.
    Signed sign(const core::LedgerId &ledger, const std::vector<core::Draft> &drafts, const core::SigningKey &key);

    /// The same with a key that is fetched once every draft was admitted. All drafts are by one author.
    Signed sign(const core::LedgerId &ledger, const std::vector<core::Draft> &drafts, const KeySource &key);

    /// Opens a job: signs the draft of `job.opened` as the first entry of a new ledger, and `next` behind it, its hold points. The ledger's
    /// name is in the entry.
    Signed newJob(const core::Draft &opened, const Signer &signer, const std::vector<core::Draft> &next = {});

    /// Shows the job that a draft of `job.linked` names, as it is now. Any other draft needs nothing that the fold does not see already.
    void showNamed(core::JobFold &fold, const core::Draft &draft) const;
    /// A job as it is now, to look at: a linked one, or one that may become so. Nothing when the store has none of that name.
    std::shared_ptr<const core::JobState> look(const core::LedgerId &ledger) const;

    /// A name for a ledger that nobody else has: a random UUID (RFC 4122).
    static core::LedgerId newLedgerId();

    // --- who signs ---

    /// Tries a secret; see db::Credentials::unlock. NotFound when nobody of that id is enrolled, or the key is at other stations only.
    /// A key that was wrapped before there were stations is bound to this one at its first right secret.
    core::Result<core::SigningKey> unlock(const Signer &signer);

    /// Where the key of a person is, seen from this station.
    core::Result<db::KeyPlace> keyPlace(const core::PersonId &person);

    /// Who is told what concerns a person's own key: that wrong secrets were tried since their last right one. Called with a
    /// sentence, while unlock() runs.
    using Tell = std::function<void(const QString &sentence)>;
    void setTell(Tell tell) { m_tell = std::move(tell); }

    /// Who may sign with the secret alone, or nothing while the sitting is locked.
    std::optional<core::PersonId> currentSigner() const { return m_identity.currentSigner(); }
    Asks asksOf(const core::PersonId &person) const { return m_identity.asksOf(person); }
    /// Somebody is at the computer.
    void touch() { m_identity.touch(); }
    void lock() { m_identity.lock(); }
    IdentityRule &identity() { return m_identity; }

private:
    struct Sealed {
        std::vector<core::Entry> entries;
        core::Head seen;
    };
    core::Result<void> bind(const core::PersonId &person, const core::SigningKey &key, const QString &secret, const core::SecondKey &station);
    std::optional<core::Error> whyNotNow(const std::vector<core::Draft> &drafts);
    core::Result<void> catchUp(const core::LedgerId &ledger);
    tl::expected<Sealed, NotSigned> sealAll(const core::LedgerId &ledger, const std::vector<core::Draft> &drafts,
                                            const core::SigningKey *key) const;
    Signed sealAndAppend(const core::LedgerId &ledger, const std::vector<core::Draft> &drafts, const core::SigningKey &key);

    db::Store &m_store;
    Clock m_clock;
    KeyCare m_care;
    Tell m_tell;
    Folds m_folds;
    IdentityRule m_identity;
    Changes m_unseen; ///< what signing came across and refresh() has not told yet
    std::optional<core::LedgerId> m_job;
};

} // namespace session
