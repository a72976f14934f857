// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <map>

#include "core/job/state.hpp"
#include "core/ledger/entry.hpp"

namespace core {

/// Folds a job's statements into its state, one at a time. A struck entry leaves the state as if it had never been made, but for what
/// LeftByStrikes keeps, and what rested on it falls; so a strike folds the job again from its first entry.
/// A copy is cheap and independent: fold on in one to see what would come.
class JobFold {
public:
    JobFold() = default;
    /// Goes on from a job as it stands.
    explicit JobFold(const JobState &job, const Head &head);

    /// Takes the next statement. It was admitted, or stands in a ledger under verification.
    void take(const Statement &said, const Digest &hash);

    /// Shows the job another one as it stood at `head`, in place of what was shown of it before. Entries are taken in alike with and without;
    /// rules, loose ends and reports find it in the state. Kept when the job is folded again.
    void see(const LedgerId &ledger, const Head &head, std::shared_ptr<const JobState> other);

    const JobState &state() const { return m_state; }
    const Head &head() const { return m_head; }
    /// All that was said, in order; statement n has sequence number n+1.
    const Series<Statement> &said() const { return m_state.said; }

private:
    void apply(const Statement &said);
    void foldAgain();
    /// Whoever strikes a row made the list ask less, where it does.
    void noteStruckRow(const Statement &strike);
    bool nothingOfItWasSo(qint64 strike) const;

    std::map<std::size_t, qint64> m_struckBy; ///< index in what was said, and the entry that strikes it
    JobState m_state;
    Head m_head;
};

/// The job as it would be with this draft as its next entry. The job must be open.
JobState afterTaking(const JobState &job, const Draft &draft);

} // namespace core
