// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <algorithm>
#include <optional>
#include <vector>

#include "core/acts/act.hpp"
#include "core/job/admit.hpp"
#include "core/job/fold.hpp"
#include "core/job/linked.hpp"
#include "core/register/register.hpp"

namespace session {

/// The register with drafts taken in, to see what the next one meets.
class RegisterAhead {
public:
    /// `jobsLastAt`: of the last entry of any job. A register's entry comes after all that was signed without it, so that whatever is
    /// signed later and does not know of it can be told.
    RegisterAhead(const core::Register &reg, const std::optional<core::Instant> &jobsLastAt) : m_now(reg) { m_now.jobsLastAt = jobsLastAt; }
    const core::Register &reg() const { return m_now; }
    core::Head head() const { return m_now.head; }
    std::optional<core::Instant> lastAt() const { return std::max(m_now.lastAt, m_now.jobsLastAt); }
    std::optional<core::Head> pinned() const { return std::nullopt; }
    std::vector<core::LinkedHead> linked(const core::Draft &) const { return {}; }
    core::Refusals ask(const core::Draft &draft) const { return core::admit(m_now, draft); }
    void take(const core::Statement &said, const core::Digest &hash) { core::fold(m_now, said, hash); }

private:
    core::Register m_now;
};

/// The same of a job. Copied only when there is a next draft.
class JobAhead {
public:
    JobAhead(const core::Register &reg, const core::JobFold &now) : m_reg(reg), m_now(now) {}
    const core::Register &reg() const { return m_reg; }
    core::Head head() const { return fold().head(); }
    std::optional<core::Instant> lastAt() const { return std::max(fold().state().lastAt, m_reg.lastAt); }
    std::optional<core::Head> pinned() const { return m_reg.head; }
    /// The heads of the linked jobs that the draft rests on, as far as they can be seen; the rules refuse what cannot.
    std::vector<core::LinkedHead> linked(const core::Draft &draft) const
    {
        std::vector<core::LinkedHead> heads;
        const core::JobState &job = fold().state();
        for (const core::LedgerId &ledger : core::ledgersPinnedBy(job, draft.kind, draft.body)) {
            if (const auto seen = job.others.byLedger.find(ledger); seen != job.others.byLedger.end())
                heads.push_back({ledger, seen->second.head});
        }
        return heads;
    }
    core::Refusals ask(const core::Draft &draft) const { return core::admit(fold().state(), m_reg, draft); }
    void take(const core::Statement &said, const core::Digest &hash)
    {
        if (!m_ahead)
            m_ahead = m_now;
        m_ahead->take(said, hash);
    }

private:
    const core::JobFold &fold() const { return m_ahead ? *m_ahead : m_now; }
    const core::Register &m_reg;
    const core::JobFold &m_now;
    std::optional<core::JobFold> m_ahead;
};

/// What is said when a draft is signed next. The draft was admitted, so its kind is known.
template <class Ahead>
core::Statement statementOf(const Ahead &ahead, const core::LedgerId &ledger, const core::Draft &draft, const core::Digest &key)
{
    const core::Head head = ahead.head();
    return {.ledger = ledger,
            .seq = head.seq + 1,
            .at = draft.at,
            .author = draft.author,
            .key = key,
            .meaning = core::findAct(draft.kind)->meaning,
            .kind = draft.kind,
            .subject = draft.subject,
            .body = draft.body,
            .reg = ahead.pinned(),
            .prev = head.hash,
            .linked = ahead.linked(draft)};
}

} // namespace session
