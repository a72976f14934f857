// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/nothing_found.hpp"

#include <QCoreApplication>

#include <set>

#include "app/session/where_used_question.hpp"
#include "core/value/spelt_alike.hpp"

namespace session {

using namespace Qt::StringLiterals;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("WhereUsed", text); }

/// What the entries name, and what the register knows beside it.
core::Result<std::vector<QString>> namesOf(Session &session, const QString &sort)
{
    const auto named = session.store().whereUsed().names(sort);
    if (!named)
        return core::failure(named.error());
    std::set<QString> names(named->begin(), named->end());
    if (sort == u"person") {
        for (const auto &one : session.reg().people)
            names.insert(one.first.text());
    }
    if (sort == u"tool") {
        for (const auto &one : session.reg().tools)
            names.insert(one.first.text());
    }
    return std::vector<QString>(names.begin(), names.end());
}

/// People are often known by their names alone, so a name that is spelt alike is worth its id.
std::vector<QString> peopleSpeltAlike(const QString &typed, const core::Register &reg)
{
    std::vector<QString> ids;
    for (const auto &[id, person] : reg.people) {
        if (!core::speltAlike(typed, {person.name}).empty())
            ids.push_back(id.text());
    }
    return ids;
}

QString alikeInWords(const NothingFound &nothing, const QString &sort, const core::Register &reg)
{
    QStringList things;
    for (const QString &one : nothing.speltAlike)
        things << thingInWords({sort, one}, reg);
    return things.join(u", "_s);
}

QString firstSentence(const NothingFound &nothing, const db::Wanted &wanted, const core::Register &reg)
{
    const QString thing = thingInWords(wanted, reg);
    if (nothing.isRegistered == false && nothing.without == 0)
        return tr("The register knows no %1 %2, and no entry names it.").arg(sortInSentence(wanted.sort), thing);
    if (wanted.kind || wanted.between)
        return tr("No entry of those asked for names %1 %2.").arg(sortInSentence(wanted.sort), thing);
    return tr("No entry of any job names %1 %2.").arg(sortInSentence(wanted.sort), thing);
}

QString sentencesOf(const NothingFound &nothing, const db::Wanted &wanted, const LookedAt &looked, const core::Register &reg)
{
    QStringList all{firstSentence(nothing, wanted, reg)};
    if (!nothing.speltAlike.empty())
        all << tr("Known that are spelt alike: %1.").arg(alikeInWords(nothing, wanted.sort, reg));
    if (!isOfRegister(wanted.sort) && nothing.without == 0)
        all << tr("The register keeps no list of these: whether it is spelt right cannot be told.");
    if (wanted.kind || wanted.between)
        all << tr("Asked for were entries of kind %1, %2; of every kind and all its time there are: %3.").arg(wanted.kind.value_or(tr("(all)")), daysInWords(wanted.between)).arg(nothing.without);
    all << tr("Looked through were jobs: %1; their entries: %2; entries of the register: %3.").arg(looked.jobs).arg(looked.entriesOfJobs).arg(looked.entriesOfRegister);
    if (!looked.damaged.isEmpty())
        all << tr("Damaged, so that something may not have been found: %1. Verify the store.").arg(looked.damaged.join(u", "_s));
    return all.join(u' ');
}

} // namespace

core::Result<LookedAt> lookedAt(Session &session)
{
    const auto jobs = session.jobs();
    if (!jobs)
        return core::failure(jobs.error());
    const auto ledgers = session.store().ledgers();
    if (!ledgers)
        return core::failure(ledgers.error());
    LookedAt looked;
    for (const db::StoredLedger &ledger : *ledgers) {
        const bool isJob = ledger.role == db::LedgerRole::Job;
        looked.jobs += isJob ? 1 : 0;
        (isJob ? looked.entriesOfJobs : looked.entriesOfRegister) += ledger.headSeq;
    }
    for (const JobRow &row : *jobs) {
        if (row.trouble)
            looked.damaged << row.summary.workOrder;
    }
    if (session.registerTrouble())
        looked.damaged << tr("the register");
    return looked;
}

core::Result<NothingFound> whyNothing(Session &session, const db::Wanted &wanted, const LookedAt &looked)
{
    const core::Register &reg = session.reg();
    NothingFound nothing{isOfRegister(wanted.sort) ? std::optional(isRegistered(wanted, reg)) : std::nullopt, {}, 0, {}};
    const auto walked = session.store().whereUsed().forEach({wanted.sort, wanted.value}, [&](const core::LedgerId &, const db::StoredEntryView &) {
        ++nothing.without;
        return db::Walk::On;
    });
    if (!walked)
        return core::failure(walked.error());
    // Of what is there, another name would lead astray.
    if (nothing.without == 0 && nothing.isRegistered != true) {
        const auto names = namesOf(session, wanted.sort);
        if (!names)
            return core::failure(names.error());
        nothing.speltAlike = core::speltAlike(wanted.value, *names);
        if (nothing.speltAlike.empty() && wanted.sort == u"person")
            nothing.speltAlike = peopleSpeltAlike(wanted.value, reg);
    }
    nothing.sentences = sentencesOf(nothing, wanted, looked, reg);
    return nothing;
}

} // namespace session
