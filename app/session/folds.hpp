// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <map>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "core/job/fold.hpp"
#include "core/job/summary.hpp"
#include "core/register/register.hpp"
#include "core/value/result.hpp"
#include "db/store.hpp"

namespace session {

/// What moved since the last look. A job moves too when one that it is linked with does.
struct Changes {
    bool reg = false;                 ///< people, authorisations, tools
    std::vector<core::LedgerId> jobs; ///< jobs with new entries, new jobs among them; each once
    bool isNone() const { return !reg && jobs.empty(); }
    void add(const Changes &more);
};

/// A job on the start page.
struct JobRow {
    core::LedgerId ledger;
    core::JobSummary summary;
    std::optional<core::Error> trouble; ///< why it could not be read to its end; the summary is of what is sound
};

/// The store's ledgers, folded. A job that is followed sees the jobs that it is linked with, each as it is now; so those are followed too. Follows what any program appends; each entry is read once. Only entries whose chain holds are
/// folded: of a damaged ledger all that comes before the damage, and trouble() says what is wrong.
class Folds {
public:
    explicit Folds(db::Store &store) : m_store(store) {}

    /// Reads what is new. Cheap when nothing was written. An error means that the store could not be read now; a damaged
    /// ledger is none, see trouble().
    core::Result<Changes> refresh();
    /// Takes what was just appended, so that it is not read back. Entries that do not follow what is folded are left to refresh().
    core::Result<void> took(const core::LedgerId &ledger, std::span<const core::Entry> entries);

    const core::Register &reg() const { return m_register; }
    /// Folds a job and follows it from then on. NotFound when the store has no such job.
    core::Result<void> follow(const core::LedgerId &ledger);
    /// Why a followed job, or else the register, takes no more entries: an entry is not what its digest says, or does not
    /// follow the one before. It stays so until the store is opened again; verifying names all that is wrong.
    std::optional<core::Error> trouble(const core::LedgerId &ledger) const;
    std::optional<core::Error> registerTrouble() const { return m_registerTrouble; }
    /// The fold of a job that is followed, or nullptr.
    const core::JobFold *job(const core::LedgerId &ledger) const;
    /// The same as a state that stays as it is while a screen shows it; null when the job is not followed.
    std::shared_ptr<const core::JobState> state(const core::LedgerId &ledger) const;
    /// A job as it is now, whether it is followed or not; nothing when the store has none of that name or it cannot be read.
    std::optional<core::SeenJob> glance(const core::LedgerId &ledger) const;
    /// Every job in one line, in the order in which they were begun.
    core::Result<std::vector<JobRow>> summaries();

private:
    struct Summarised {
        core::JobSummary summary;
        qint64 jobHead;    ///< sequence number of the job's last entry when it was made
        core::Head regHead; ///< and the register's head
        std::vector<core::LinkedHead> linked; ///< and the heads of the jobs that it is linked with
    };
    struct Followed {
        core::JobFold fold;
        std::optional<core::Error> trouble;
        mutable std::shared_ptr<const core::JobState> state; ///< of the fold as it is, once somebody asked for it
    };
    core::Result<bool> readRegister();
    void takeIntoRegister(std::span<const core::Entry> entries);
    static void takeIntoJob(Followed &job, std::span<const core::Entry> entries);
    core::Result<std::vector<core::LedgerId>> readJobs();
    core::Result<void> readOn(const core::LedgerId &ledger, Followed &job) const;
    core::Result<void> followLinked();
    void showLinked();
    std::vector<core::LinkedHead> linkedHeadsOf(const core::LedgerId &ledger) const;
    core::Result<bool> standAt(const std::vector<core::LinkedHead> &linked) const;
    core::Result<std::optional<Summarised>> remembered(const core::LedgerId &ledger) const;
    core::Result<Followed> fresh(const core::LedgerId &ledger);
    core::Result<JobRow> summarise(const core::LedgerId &ledger, std::vector<db::KeptSummary> &made);

    db::Store &m_store;
    std::optional<db::ChangeToken> m_token;
    core::Register m_register;
    std::optional<core::Error> m_registerTrouble;
    std::vector<core::LedgerId> m_order; ///< jobs as they were begun
    std::map<core::LedgerId, qint64> m_heads;
    std::map<core::LedgerId, Summarised> m_summaries;
    std::map<core::LedgerId, Followed> m_followed;
    mutable std::map<core::LedgerId, Followed> m_glanced; ///< jobs that somebody looked at and does not follow
    std::vector<core::LedgerId> m_sawMore; ///< followed jobs whose linked ones moved, for refresh() to tell
};

} // namespace session
