// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/where_used.hpp"

#include <map>

#include "core/ledger/canonical.hpp"
#include "core/reports/signatures.hpp"
#include "core/reports/timeline.hpp"

namespace session {

using namespace Qt::StringLiterals;

namespace {

/// A job that may name it; folded when it does.
struct JobInQuestion {
    const core::JobSummary *summary;
    std::optional<std::shared_ptr<const core::JobState>> state;
};

void fillIn(UseOf &use, JobInQuestion &job, const Session &session)
{
    if (!job.state)
        job.state = session.look(use.said.ledger);
    use.workOrder = job.summary->workOrder;
    use.aircraft = job.summary->aircraft;
    use.isClosed = job.summary->isClosed;
    const auto &state = *job.state;
    const auto index = static_cast<std::size_t>(use.said.seq - 1);
    if (!state || index >= state->lines.size())
        return;
    use.line = state->lines[index];
    use.moment = core::momentText(*state, use.said.seq, use.said.at);
}

} // namespace

const std::vector<QLatin1String> &wantedSorts()
{
    static const std::vector<QLatin1String> all = {"person"_L1, "tool"_L1, "part"_L1, "batch"_L1, "serial"_L1, "certificate"_L1};
    return all;
}

core::Result<std::vector<UseOf>> whereUsed(Session &session, const db::Wanted &wanted)
{
    const auto jobs = session.jobs();
    if (!jobs)
        return core::failure(jobs.error());
    std::map<core::LedgerId, JobInQuestion> inQuestion;
    for (const JobRow &row : *jobs)
        inQuestion.emplace(row.ledger, JobInQuestion{&row.summary, std::nullopt});
    std::vector<UseOf> uses;
    std::optional<core::Error> trouble;
    const auto done = session.store().whereUsed().forEach(wanted, [&](const core::LedgerId &ledger, const db::StoredEntryView &entry) {
        auto said = core::parseStatement(entry.bytes);
        if (!said) {
            trouble = said.error();
            return db::Walk::Stop;
        }
        UseOf use{std::nullopt, *std::move(said)};
        use.moment = core::momentText(use.said.at);
        use.hash = core::Digest::fromBytes(entry.hash).value_or(core::Digest());
        if (const core::KeyDoubt *doubt = core::signatureDoubt(session.reg(), use.said))
            use.doubt = doubt->reason;
        if (const auto at = inQuestion.find(ledger); at != inQuestion.end())
            fillIn(use, at->second, session);
        uses.push_back(std::move(use));
        return db::Walk::On;
    });
    if (!done || trouble)
        return core::failure(trouble ? *trouble : done.error());
    return uses;
}

core::Result<UsesAnswer> answerTo(Session &session, const UsesQuestion &question)
{
    const auto wanted = wantedBy(question, session.reg());
    if (!wanted)
        return core::failure(wanted.error());
    auto uses = whereUsed(session, *wanted);
    if (!uses)
        return core::failure(uses.error());
    const auto looked = lookedAt(session);
    if (!looked)
        return core::failure(looked.error());
    UsesAnswer answer{*wanted, *std::move(uses), *looked, {}};
    if (!answer.uses.empty())
        return answer;
    auto nothing = whyNothing(session, *wanted, *looked);
    if (!nothing)
        return core::failure(nothing.error());
    answer.nothing = *std::move(nothing);
    return answer;
}

} // namespace session
