// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/job/state.hpp"
#include "core/ledger/entry.hpp"

namespace core {

/// Folds a job's statements into its state, one at a time. A struck entry leaves the state as if it had never been made,
/// and what rested on it falls; so a strike folds the job again from its first entry.
class JobFold {
public:
    /// Takes the next statement. It was admitted, or stands in a ledger under verification.
    void take(const Statement &said, const Digest &hash);

    const JobState &state() const { return m_state; }
    const Head &head() const { return m_head; }
    /// All that was said, in order; statement n has sequence number n+1.
    const std::vector<Statement> &said() const { return m_said; }

private:
    void apply(const Statement &said);
    void foldAgain();

    std::vector<Statement> m_said;
    std::vector<std::optional<qint64>> m_struckBy; ///< beside m_said
    JobState m_state;
    Head m_head;
};

} // namespace core
