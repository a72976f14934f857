// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/fold.hpp"

#include "core/acts/act.hpp"

namespace core {

void JobFold::take(const Statement &said, const Digest &hash)
{
    m_said.push_back(said);
    m_head = {said.seq, hash};
    const auto named = said.kind == u"entry.struck" ? said.body.integer(u"entry") : std::nullopt;
    if (named && *named >= 1 && *named < static_cast<qint64>(m_said.size())) {
        m_struckBy[static_cast<std::size_t>(*named - 1)] = said.seq;
        foldAgain();
    } else {
        apply(said);
    }
}

void JobFold::see(const LedgerId &ledger, const Head &head, std::shared_ptr<const JobState> other)
{
    // What the other one sees would keep every state alive that was ever seen.
    if (!other->others.byLedger.empty()) {
        auto alone = std::make_shared<JobState>(*other);
        alone->others = {};
        other = std::move(alone);
    }
    m_state.others.byLedger.insert_or_assign(ledger, SeenJob{head, std::move(other)});
}

void JobFold::apply(const Statement &said)
{
    const auto strike = m_struckBy.find(m_state.lines.size());
    const auto struckBy = strike == m_struckBy.end() ? std::nullopt : std::optional(strike->second);
    const Act *act = findAct(said.kind);
    Standing standing = Standing::Struck;
    if (!struckBy)
        standing = act && act->take && act->take(m_state, said) ? Standing::Stands : Standing::Fallen;
    m_state.lines.push_back({said.seq, said.kind, said.subject, said.author, said.at, standing, struckBy});
    m_state.lastAt = said.at;
}

void JobFold::foldAgain()
{
    SeenJobs others = std::move(m_state.others);
    m_state = JobState();
    m_state.others = std::move(others);
    for (const Statement &said : m_said)
        apply(said);
}

} // namespace core
