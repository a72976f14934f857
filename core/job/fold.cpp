// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/fold.hpp"

#include "core/acts/act.hpp"
#include "core/job/asked_less.hpp"
#include "core/job/struck.hpp"

namespace core {

JobFold::JobFold(const JobState &job, const Head &head) : m_state(job), m_head(head)
{
    for (const Line &line : job.lines) {
        if (line.struckBy)
            m_struckBy.emplace(static_cast<std::size_t>(line.seq - 1), *line.struckBy);
    }
}

void JobFold::take(const Statement &said, const Digest &hash)
{
    m_state.said.push_back(said);
    m_head = {said.seq, hash};
    const auto named = said.kind == u"entry.struck" ? said.body.integer(u"entry") : std::nullopt;
    if (named && *named >= 1 && *named < static_cast<qint64>(m_state.said.size())) {
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
    const bool ofTheCrew = isOfTheCrew(m_state, said.author);
    const Act *act = findAct(said.kind);
    Standing standing = Standing::Struck;
    if (!struckBy)
        standing = act && act->take && act->take(m_state, said) ? Standing::Stands : Standing::Fallen;
    if (said.kind == u"entry.struck" && standing == Standing::Stands)
        noteStruckRow(said);
    if (standing != Standing::Stands && !(struckBy && nothingOfItWasSo(*struckBy)))
        keepWhatIsLeft(m_state, said);
    m_state.lines.push_back({said.seq, said.kind, said.subject, said.author, said.at, standing, struckBy, ofTheCrew});
    m_state.lastAt = said.at;
}

void JobFold::foldAgain()
{
    SeenJobs others = std::move(m_state.others);
    const Series<Statement> said = std::move(m_state.said);
    m_state = JobState();
    m_state.others = std::move(others);
    m_state.said = said;
    for (const Statement &one : said)
        apply(one);
}

void JobFold::noteStruckRow(const Statement &strike)
{
    const qint64 seq = strike.body.integer(u"entry").value_or(0);
    if (seq < 1 || seq > static_cast<qint64>(m_state.said.size()))
        return;
    const Statement &row = m_state.said[static_cast<std::size_t>(seq - 1)];
    const bool isRow = row.kind == u"interface.listed" || row.kind == u"interface.detailed" || row.kind == u"interface.relisted";
    const auto id = InterfaceId::parse(row.subject.value_or(QString()));
    InterfaceState *item = isRow && id ? m_state.item(*id) : nullptr;
    if (item && !isWithoutDetails(*item))
        noteAskedLess(*item, strike.author);
}

bool JobFold::nothingOfItWasSo(qint64 strike) const
{
    return m_state.said[static_cast<std::size_t>(strike - 1)].body.isTrue(u"never_was");
}

JobState afterTaking(const JobState &job, const Draft &draft)
{
    const qint64 seq = static_cast<qint64>(job.lines.size()) + 1;
    JobFold fold(job, {});
    fold.take({.ledger = *job.ledger, .seq = seq, .at = draft.at, .author = draft.author, .key = {}, .meaning = {}, .kind = draft.kind, .subject = draft.subject, .body = draft.body, .reg = {}, .prev = {}}, {});
    return fold.state();
}

} // namespace core
