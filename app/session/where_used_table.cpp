// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>

#include <algorithm>

#include "app/session/where_used.hpp"
#include "core/reports/timeline.hpp"

namespace session {

using namespace Qt::StringLiterals;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Report", text); }

QString closedText(const UsesInJob &job) { return !job.workOrder ? QString() : job.isClosed ? u"closed"_s : u"open"_s; }

QString headingOf(const UsesInJob &job)
{
    if (!job.workOrder)
        return tr("Register, %1: entries %2").arg(job.ledger.text()).arg(job.uses.size());
    return tr("Work order %1, %2, %3: entries %4. Ledger %5").arg(*job.workOrder, job.aircraft, job.isClosed ? tr("closed") : tr("open"), QString::number(job.uses.size()), job.ledger.text());
}

/// Paper has no room for a column that is empty as a rule: what is in doubt says so beside the name.
QString signedByOf(const UseOf &use, const core::Register &reg)
{
    const QString name = reg.nameOf(use.said.author);
    return use.doubt.isEmpty() ? name : tr("%1 (signature in doubt)").arg(name);
}

core::ReportRow rowOf(const UsesInJob &job, const UseOf &use, const core::Register &reg)
{
    return {headingOf(job),
            {job.workOrder.value_or(QString()), job.aircraft, closedText(job), job.ledger.text(), QString::number(use.said.seq), use.moment, use.said.kind, use.said.subject.value_or(QString()),
             use.said.author.text(), signedByOf(use, reg), core::describe(use.said, reg), standingOf(use, reg), use.doubt, use.hash.hex()},
            use.line ? use.line->standing : core::Standing::Stands};
}

std::vector<core::ReportColumn> columnsOfUses()
{
    return {{"work_order"_L1, QT_TRANSLATE_NOOP("Report", "Work order"), 0},
            {"aircraft"_L1, QT_TRANSLATE_NOOP("Report", "Aircraft"), 0},
            {"job"_L1, QT_TRANSLATE_NOOP("Report", "Job"), 0},
            {"ledger"_L1, QT_TRANSLATE_NOOP("Report", "Ledger"), 0},
            {"entry"_L1, QT_TRANSLATE_NOOP("Report", "Entry"), 7},
            {"at"_L1, QT_TRANSLATE_NOOP("Report", "Time"), 17},
            {"kind"_L1, QT_TRANSLATE_NOOP("Report", "Kind"), 0},
            {"subject"_L1, QT_TRANSLATE_NOOP("Report", "Subject"), 0},
            {"author"_L1, QT_TRANSLATE_NOOP("Report", "Id"), 10},
            {"signed_by"_L1, QT_TRANSLATE_NOOP("Report", "Signed by"), 15},
            {"statement"_L1, QT_TRANSLATE_NOOP("Report", "Statement"), 40},
            {"standing"_L1, QT_TRANSLATE_NOOP("Report", "Standing"), 10},
            {"signature_doubt"_L1, QT_TRANSLATE_NOOP("Report", "Signature in doubt"), 0},
            {"hash"_L1, QT_TRANSLATE_NOOP("Report", "Hash"), 0}};
}

} // namespace

std::vector<UsesInJob> byJob(std::span<const UseOf> uses)
{
    std::vector<UsesInJob> jobs;
    for (std::size_t i = 0; i < uses.size(); ++i) {
        const UseOf &use = uses[i];
        auto at = std::find_if(jobs.begin(), jobs.end(), [&](const UsesInJob &job) { return job.ledger == use.said.ledger; });
        if (at == jobs.end())
            at = jobs.insert(at, {use.said.ledger, use.workOrder, use.aircraft, use.isClosed, {}});
        at->uses.push_back(i);
    }
    return jobs;
}

QString standingOf(const UseOf &use, const core::Register &reg)
{
    if (use.line)
        return core::standingName(use.line->standing);
    return use.said.ledger == reg.ledger ? core::standingName(core::Standing::Stands) : u"not known"_s;
}

QString standingWordOf(const UseOf &use, const core::Register &reg)
{
    if (use.line)
        return core::standingWord(*use.line);
    return use.said.ledger == reg.ledger ? QString() : tr("not known: the job is damaged before it");
}

core::AuditTable usesTable(const Session &session, const UsesAnswer &answer)
{
    const core::Register &reg = session.reg();
    const auto &[wanted, uses, looked, nothing] = answer;
    const std::vector<UsesInJob> jobs = byJob(uses);
    const auto ofRegister = std::count_if(jobs.begin(), jobs.end(), [](const UsesInJob &job) { return !job.workOrder; });
    const auto doubted = std::count_if(uses.begin(), uses.end(), [](const UseOf &use) { return !use.doubt.isEmpty(); });
    core::AuditTable table{tr("Where used: %1 %2").arg(sortInWords(wanted.sort), thingInWords(wanted, reg)), {}, columnsOfUses(), {}, nothing ? nothing->sentences : QString(), tr("Root %1").arg(reg.fingerprint.hex())};
    table.facts = {{tr("Looked for"), tr("%1 %2, %3").arg(sortInWords(wanted.sort), thingInWords(wanted, reg), daysInWords(wanted.between))},
                   {tr("Kinds of entries"), wanted.kind.value_or(tr("all"))},
                   {tr("Looked through"), tr("jobs: %1; their entries: %2; entries of the register: %3").arg(looked.jobs).arg(looked.entriesOfJobs).arg(looked.entriesOfRegister)},
                   {tr("Found"), tr("in jobs: %1; entries, with those of the register: %2; of these with a signature in doubt: %3").arg(static_cast<qint64>(jobs.size()) - ofRegister).arg(uses.size()).arg(doubted)}};
    if (!looked.damaged.isEmpty())
        table.facts.push_back({tr("Damaged"), tr("%1: something may not have been found. Verify the store.").arg(looked.damaged.join(u", "_s))});
    const std::vector<core::AuditFact> ofStore{{tr("Organisation"), reg.organisation},
                                               {tr("Fingerprint of the root"), reg.fingerprint.hex()},
                                               {tr("Asked at"), core::momentText(session.now())},
                                               {tr("Asked of"), tr("Remate %1").arg(QStringLiteral(REMATE_VERSION))}};
    table.facts.insert(table.facts.end(), ofStore.begin(), ofStore.end());
    for (const UsesInJob &job : jobs) {
        for (const std::size_t i : job.uses)
            table.rows.push_back(rowOf(job, uses[i], reg));
    }
    return table;
}

} // namespace session
