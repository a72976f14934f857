// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/folds.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "app/session/read_on.hpp"

namespace session {

void Changes::add(const Changes &more)
{
    reg = reg || more.reg;
    for (const core::LedgerId &job : more.jobs) {
        if (std::find(jobs.begin(), jobs.end(), job) == jobs.end())
            jobs.push_back(job);
    }
}

core::Result<Changes> Folds::refresh()
{
    // The token is taken first: what is written while we read is seen again next time, never missed.
    const auto token = m_store.changeToken();
    if (!token)
        return core::failure(token.error());
    if (m_token == *token)
        return Changes{};
    // Jobs before the register, so that the register is never older than what a job's entries pin.
    auto jobs = readJobs();
    if (!jobs)
        return core::failure(jobs.error());
    const auto reg = readRegister();
    if (!reg)
        return core::failure(reg.error());
    m_token = *token;
    return Changes{*reg, std::move(*jobs)};
}

core::Result<bool> Folds::readRegister()
{
    const auto ledger = m_store.registerLedger();
    if (!ledger)
        return core::failure(ledger.error());
    if (!*ledger)
        return false;
    const core::Head before = m_register.head;
    const auto read = session::readOn(m_store, **ledger, before, [this](const core::Statement &said, const core::Digest &hash) {
        core::fold(m_register, said, hash);
    });
    if (!read)
        return core::failure(read.error());
    return m_register.head != before;
}

core::Result<std::vector<core::LedgerId>> Folds::readJobs()
{
    const auto ledgers = m_store.ledgers();
    if (!ledgers)
        return core::failure(ledgers.error());
    std::vector<core::LedgerId> moved;
    for (const db::StoredLedger &stored : *ledgers) {
        const auto id = stored.id();
        if (!id || stored.role != db::LedgerRole::Job)
            continue;
        const auto [at, isNew] = m_heads.try_emplace(*id, 0);
        if (isNew)
            m_order.push_back(*id);
        if (at->second == stored.headSeq)
            continue;
        if (const auto followed = m_followed.find(*id); followed != m_followed.end()) {
            if (const auto read = readOn(*id, followed->second); !read)
                return core::failure(read.error());
        }
        at->second = stored.headSeq;
        moved.push_back(*id);
    }
    return moved;
}

core::Result<void> Folds::readOn(const core::LedgerId &ledger, Followed &job)
{
    const auto read = session::readOn(m_store, ledger, job.fold.head(), [&job](const core::Statement &said, const core::Digest &hash) {
        job.fold.take(said, hash);
    });
    job.state = std::make_shared<const core::JobState>(job.fold.state());
    return read;
}

core::Result<void> Folds::follow(const core::LedgerId &ledger)
{
    if (m_followed.contains(ledger))
        return {};
    if (!m_heads.contains(ledger)) {
        return core::failure(core::ErrorCode::NotFound,
                             QCoreApplication::translate("Session", "This store has no job with the ledger %1.").arg(ledger.text()));
    }
    Followed job;
    if (const auto read = readOn(ledger, job); !read)
        return read;
    m_followed.emplace(ledger, std::move(job));
    return {};
}

const core::JobFold *Folds::job(const core::LedgerId &ledger) const
{
    const auto at = m_followed.find(ledger);
    return at == m_followed.end() ? nullptr : &at->second.fold;
}

std::shared_ptr<const core::JobState> Folds::state(const core::LedgerId &ledger) const
{
    const auto at = m_followed.find(ledger);
    return at == m_followed.end() ? nullptr : at->second.state;
}

core::Result<Folds::Fresh> Folds::fresh(const core::LedgerId &ledger)
{
    if (const core::JobFold *followed = job(ledger))
        return Fresh{followed->head(), core::summaryOf(followed->state(), m_register)};
    Followed passing;
    if (const auto read = readOn(ledger, passing); !read)
        return core::failure(read.error());
    return Fresh{passing.fold.head(), core::summaryOf(*passing.state, m_register)};
}

core::Result<core::JobSummary> Folds::summarise(const core::LedgerId &ledger, std::vector<db::KeptSummary> &made)
{
    const qint64 headSeq = m_heads.at(ledger);
    const auto known = m_summaries.find(ledger);
    if (known != m_summaries.end() && known->second.jobHead == headSeq && known->second.regHead == m_register.head)
        return known->second.summary;
    const auto head = m_store.head(ledger);
    if (!head)
        return core::failure(head.error());
    const auto kept = m_store.summaries().find({ledger, head->hash, m_register.head.hash});
    if (!kept)
        return core::failure(kept.error());
    core::JobSummary summary;
    if (*kept) {
        summary = **kept;
    } else if (const auto folded = fresh(ledger)) {
        // Kept under the head that was folded: others may have appended since we asked.
        summary = folded->summary;
        made.push_back({{ledger, folded->head.hash, m_register.head.hash}, summary});
    } else {
        return core::failure(folded.error());
    }
    m_summaries.insert_or_assign(ledger, Summarised{summary, headSeq, m_register.head});
    return summary;
}

core::Result<std::vector<JobRow>> Folds::summaries()
{
    std::vector<JobRow> rows;
    std::vector<db::KeptSummary> made;
    for (const core::LedgerId &ledger : m_order) {
        const auto summary = summarise(ledger, made);
        if (summary)
            rows.push_back({ledger, *summary, std::nullopt});
        else
            rows.push_back({ledger, {}, summary.error()});
    }
    // Remembering saves time alone: a store that cannot be written just now tells its jobs all the same.
    if (!made.empty())
        (void)m_store.summaries().remember(made);
    return rows;
}

} // namespace session
