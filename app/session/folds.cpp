// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/folds.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "app/session/read_on.hpp"

namespace session {

namespace {

/// The error when it says that the ledger is damaged; anything else may pass and is the store's.
std::optional<core::Error> damageIn(const core::Result<void> &read)
{
    if (!read && read.error().code == core::ErrorCode::Damaged)
        return read.error();
    return std::nullopt;
}

} // namespace

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
    if (m_registerTrouble)
        return false;
    const core::Head before = m_register.head;
    const auto read = session::readOn(m_store, **ledger, before, [this](const core::Statement &said, const core::Digest &hash) {
        core::fold(m_register, said, hash);
    });
    m_registerTrouble = damageIn(read);
    if (!read && !m_registerTrouble)
        return core::failure(read.error());
    return m_register.head != before || m_registerTrouble;
}

void Folds::takeIntoRegister(std::span<const core::Entry> entries)
{
    for (const core::Entry &entry : entries)
        core::fold(m_register, entry.said, entry.hash);
}

void Folds::takeIntoJob(Followed &job, std::span<const core::Entry> entries)
{
    for (const core::Entry &entry : entries)
        job.fold.take(entry.said, entry.hash);
    job.state = nullptr;
}

core::Result<void> Folds::took(const core::LedgerId &ledger, std::span<const core::Entry> entries)
{
    if (entries.empty())
        return {};
    const core::Statement &first = entries.front().said;
    const bool isRegister = !first.reg;
    if (first.seq == 1 && !isRegister) {
        m_followed.try_emplace(ledger);
        m_order.push_back(ledger);
    }
    const core::JobFold *before = job(ledger);
    const core::Head known = isRegister ? m_register.head : before ? before->head() : core::Head();
    if (known.seq + 1 != first.seq || known.hash != first.prev)
        return {};
    if (isRegister)
        takeIntoRegister(entries);
    else
        takeIntoJob(m_followed.at(ledger), entries);
    if (!isRegister)
        m_heads.insert_or_assign(ledger, entries.back().said.seq);
    const auto token = m_store.changeToken();
    if (!token)
        return core::failure(token.error());
    // With nothing but our own commit since the last look, there is nothing else to read.
    if (m_token && token->elsewhere == m_token->elsewhere && token->here == m_token->here + 1)
        m_token = *token;
    return {};
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
    if (job.trouble)
        return {};
    const auto read = session::readOn(m_store, ledger, job.fold.head(), [&job](const core::Statement &said, const core::Digest &hash) {
        job.fold.take(said, hash);
    });
    job.state = nullptr;
    job.trouble = damageIn(read);
    return job.trouble ? core::Result<void>() : read;
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
    if (at == m_followed.end())
        return nullptr;
    const Followed &job = at->second;
    if (!job.state)
        job.state = std::make_shared<const core::JobState>(job.fold.state());
    return job.state;
}

std::optional<core::Error> Folds::trouble(const core::LedgerId &ledger) const
{
    const auto at = m_followed.find(ledger);
    return at != m_followed.end() && at->second.trouble ? at->second.trouble : m_registerTrouble;
}

core::Result<Folds::Followed> Folds::fresh(const core::LedgerId &ledger)
{
    if (const auto followed = m_followed.find(ledger); followed != m_followed.end())
        return followed->second;
    Followed passing;
    const auto read = readOn(ledger, passing);
    return read.map([&] { return std::move(passing); });
}

core::Result<JobRow> Folds::summarise(const core::LedgerId &ledger, std::vector<db::KeptSummary> &made)
{
    const qint64 headSeq = m_heads.at(ledger);
    const auto known = m_summaries.find(ledger);
    if (known != m_summaries.end() && known->second.jobHead == headSeq && known->second.regHead == m_register.head)
        return JobRow{ledger, known->second.summary, std::nullopt};
    const auto head = m_store.head(ledger);
    if (!head)
        return core::failure(head.error());
    const auto kept = m_store.summaries().find({ledger, head->hash, m_register.head.hash});
    if (!kept)
        return core::failure(kept.error());
    core::JobSummary summary;
    const bool isKnownDamaged = trouble(ledger).has_value();
    if (*kept && !isKnownDamaged) {
        summary = **kept;
    } else {
        const auto folded = fresh(ledger);
        if (!folded)
            return core::failure(folded.error());
        summary = core::summaryOf(folded->fold.state(), m_register);
        if (folded->trouble || m_registerTrouble)
            return JobRow{ledger, summary, folded->trouble ? folded->trouble : m_registerTrouble};
        // Kept under the head that was folded: others may have appended since we asked.
        made.push_back({{ledger, folded->fold.head().hash, m_register.head.hash}, summary});
    }
    m_summaries.insert_or_assign(ledger, Summarised{summary, headSeq, m_register.head});
    return JobRow{ledger, summary, std::nullopt};
}

core::Result<std::vector<JobRow>> Folds::summaries()
{
    std::vector<JobRow> rows;
    std::vector<db::KeptSummary> made;
    for (const core::LedgerId &ledger : m_order) {
        auto row = summarise(ledger, made);
        rows.push_back(row ? *std::move(row) : JobRow{ledger, {}, row.error()});
    }
    // Remembering saves time alone: a store that cannot be written just now tells its jobs all the same.
    if (!made.empty())
        (void)m_store.summaries().remember(made);
    return rows;
}

} // namespace session
