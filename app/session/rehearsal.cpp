// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/rehearsal.hpp"

#include "app/session/ahead.hpp"
#include "core/job/working_of.hpp"

namespace session {

namespace {

template <class Ahead>
core::Refusals ask(const Ahead &ahead, const core::LedgerId &ledger, const core::Draft &draft, std::optional<core::Statement> &said)
{
    auto refusals = ahead.ask(draft);
    if (refusals.empty())
        said = statementOf(ahead, ledger, draft, core::Digest());
    return refusals;
}

} // namespace

Rehearsal::Rehearsal(const Session &session)
    : m_session(&session), m_now(session.now()), m_register(session.reg()), m_ledger(session.job().value_or(Session::newLedgerId()))
{
    if (const core::JobFold *fold = session.fold())
        m_job = *fold;
}

core::Refusals Rehearsal::take(const core::Draft &draft)
{
    core::Draft now = draft;
    now.at = m_now;
    std::optional<core::Statement> said;
    const core::Act *act = core::findAct(draft.kind);
    if (act && act->ledger == core::LedgerSort::Register) {
        auto refusals = ask(RegisterAhead(m_register, std::nullopt), m_register.ledger.value_or(m_ledger), now, said);
        if (said)
            core::fold(m_register, *said, core::Digest());
        return refusals;
    }
    if (draft.kind == u"job.opened")
        m_job = {};
    m_session->showNamed(m_job, draft);
    auto refusals = ask(JobAhead(m_register, m_job), m_ledger, now, said);
    if (said)
        m_job.take(*said, core::Digest());
    return refusals;
}

std::optional<core::measure::Working> Rehearsal::workingOf(const core::Draft &draft) const
{
    core::Draft now = draft;
    now.at = m_now;
    return core::workingOf(m_job.state(), m_register, now);
}

} // namespace session
