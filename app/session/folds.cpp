// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/folds.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <utility>

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
        return Changes{false, std::exchange(m_sawMore, {})};
    // Jobs before the register, so that the register is never older than what a job's entries pin.
    auto jobs = readJobs();
    if (!jobs)
        return core::failure(jobs.error());
    const auto reg = readRegister();
    if (!reg)
        return core::failure(reg.error());
    m_token = *token;
    Changes changes{*reg, std::move(*jobs)};
    changes.add({false, std::exchange(m_sawMore, {})});
    return changes;
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
    if (const auto linked = followLinked(); !linked)
        return linked;
    showLinked();
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
    if (const auto linked = followLinked(); !linked)
        return core::failure(linked.error());
    showLinked();
    return moved;
}

/// Follows every job that a followed one is linked with, and those that they are linked with.
core::Result<void> Folds::followLinked()
{
    std::vector<core::LedgerId> missing;
    do {
        missing.clear();
        for (const auto &[ledger, job] : m_followed) {
            for (const core::Link &link : job.fold.state().links) {
                if (!m_followed.contains(link.ledger) && m_heads.contains(link.ledger))
                    missing.push_back(link.ledger);
            }
        }
        for (const core::LedgerId &ledger : missing) {
            const auto [at, isNew] = m_followed.try_emplace(ledger);
            if (!isNew)
                continue;
            if (const auto read = readOn(ledger, at->second); !read) {
                m_followed.erase(at); // tried again with the next look
                return read;
            }
        }
    } while (!missing.empty());
    return {};
}

/// Shows each followed job what its linked ones are now.
void Folds::showLinked()
{
    for (auto &[ledger, job] : m_followed) {
        const core::JobState &state = job.fold.state();
        for (const core::Link &link : std::vector<core::Link>(state.links)) {
            const auto other = m_followed.find(link.ledger);
            if (other == m_followed.end())
                continue;
            const auto seen = state.others.byLedger.find(link.ledger);
            const core::Head &head = other->second.fold.head();
            if (seen != state.others.byLedger.end() && seen->second.head == head)
                continue;
            job.fold.see(link.ledger, head, this->state(link.ledger));
            job.state = nullptr;
            if (std::find(m_sawMore.begin(), m_sawMore.end(), ledger) == m_sawMore.end())
                m_sawMore.push_back(ledger);
        }
    }
}

std::optional<core::SeenJob> Folds::glance(const core::LedgerId &ledger) const
{
    if (const core::JobFold *followed = job(ledger))
        return core::SeenJob{followed->head(), state(ledger)};
    Followed &job = m_glanced[ledger];
    if (!readOn(ledger, job) || job.trouble || job.fold.head().seq == 0)
        return std::nullopt;
    if (!job.state)
        job.state = std::make_shared<const core::JobState>(job.fold.state());
    return core::SeenJob{job.fold.head(), job.state};
}

std::vector<core::LinkedHead> Folds::linkedHeadsOf(const core::LedgerId &ledger) const
{
    std::vector<core::LinkedHead> heads;
    const core::JobFold *fold = job(ledger);
    for (const core::Link &link : fold ? fold->state().links : std::vector<core::Link>()) {
        const core::JobFold *other = job(link.ledger);
        heads.push_back({link.ledger, other ? other->head() : core::Head()});
    }
    return heads;
}

core::Result<void> Folds::readOn(const core::LedgerId &ledger, Followed &job) const
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
    m_glanced.erase(ledger);
    const auto linked = followLinked();
    showLinked();
    return linked;
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
    if (at == m_followed.end())
        return m_registerTrouble;
    if (at->second.trouble)
        return at->second.trouble;
    // What a linked job says from its damage on cannot be known, so nothing that rests on it can be judged.
    for (const core::Link &link : at->second.fold.state().links) {
        const auto other = m_followed.find(link.ledger);
        if (other != m_followed.end() && other->second.trouble)
            return other->second.trouble;
    }
    return m_registerTrouble;
}

core::Result<Folds::Followed> Folds::fresh(const core::LedgerId &ledger)
{
    if (const auto followed = m_followed.find(ledger); followed != m_followed.end())
        return followed->second;
    Followed passing;
    const auto read = readOn(ledger, passing);
    return read.map([&] { return std::move(passing); });
}

/// Whether the linked jobs are where they were. The store is asked, since a job that nobody follows may have moved as well.
core::Result<bool> Folds::standAt(const std::vector<core::LinkedHead> &linked) const
{
    for (const core::LinkedHead &one : linked) {
        const auto head = m_store.head(one.ledger);
        if (!head)
            return core::failure(head.error());
        if (*head != one.head)
            return false;
    }
    return true;
}

/// What the store remembers of a job as it and its linked ones are now.
core::Result<std::optional<Folds::Summarised>> Folds::remembered(const core::LedgerId &ledger) const
{
    const auto head = m_store.head(ledger);
    if (!head)
        return core::failure(head.error());
    const auto kept = m_store.summaries().find({ledger, head->hash, m_register.head.hash});
    if (!kept)
        return core::failure(kept.error());
    if (!*kept)
        return std::nullopt;
    return standAt((*kept)->linked).map([&](bool stand) { return stand ? std::optional(Summarised{(*kept)->summary, m_heads.at(ledger), m_register.head, (*kept)->linked}) : std::nullopt; });
}

core::Result<JobRow> Folds::summarise(const core::LedgerId &ledger, std::vector<db::KeptSummary> &made)
{
    const qint64 headSeq = m_heads.at(ledger);
    const bool isKnownDamaged = trouble(ledger).has_value();
    if (const auto known = m_summaries.find(ledger); known != m_summaries.end() && known->second.jobHead == headSeq && known->second.regHead == m_register.head) {
        const auto stand = standAt(known->second.linked);
        if (!stand)
            return core::failure(stand.error());
        if (*stand)
            return JobRow{ledger, known->second.summary, std::nullopt};
    }
    const auto kept = isKnownDamaged ? core::Result<std::optional<Summarised>>() : remembered(ledger);
    if (!kept)
        return core::failure(kept.error());
    if (*kept) {
        m_summaries.insert_or_assign(ledger, **kept);
        return JobRow{ledger, (*kept)->summary, std::nullopt};
    }
    auto folded = fresh(ledger);
    if (!folded)
        return core::failure(folded.error());
    if (!folded->fold.state().links.empty()) {
        // Its summary moves with the others, so it is followed from now on.
        if (const auto followed = follow(ledger); !followed)
            return core::failure(followed.error());
        folded = m_followed.at(ledger);
    }
    const core::JobSummary summary = core::summaryOf(folded->fold.state(), m_register);
    if (const auto why = folded->trouble ? folded->trouble : trouble(ledger))
        return JobRow{ledger, summary, why};
    // Kept under the heads that were folded: others may have appended since we asked.
    const auto linked = linkedHeadsOf(ledger);
    made.push_back({{ledger, folded->fold.head().hash, m_register.head.hash}, summary, linked});
    m_summaries.insert_or_assign(ledger, Summarised{summary, headSeq, m_register.head, linked});
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
