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

QString sortInWords(const QString &sort)
{
    if (sort == u"person")
        return tr("Person");
    if (sort == u"tool")
        return tr("Tool");
    if (sort == u"part")
        return tr("Part number");
    if (sort == u"batch")
        return tr("Batch");
    return sort == u"serial" ? tr("Serial number") : tr("Certificate");
}

QString daysInWords(const std::optional<db::Between> &between)
{
    return between ? tr("from %1 to %2").arg(between->from.spoken(), between->until.spoken()) : tr("of all its time");
}

QString nameOf(const db::Wanted &wanted, const core::Register &reg)
{
    const auto person = wanted.sort == u"person" ? core::PersonId::parse(wanted.value) : std::nullopt;
    const auto tool = wanted.sort == u"tool" ? core::ToolId::parse(wanted.value) : std::nullopt;
    if (person && reg.person(*person))
        return tr("%1 (%2)").arg(wanted.value, reg.nameOf(*person));
    return tool && reg.tool(*tool) ? tr("%1 (%2)").arg(wanted.value, reg.tool(*tool)->name) : wanted.value;
}

QString closedText(const UsesInJob &job) { return !job.workOrder ? QString() : job.isClosed ? u"closed"_s : u"open"_s; }

QString headingOf(const UsesInJob &job)
{
    if (!job.workOrder)
        return tr("Register, %1: entries %2").arg(job.ledger.text()).arg(job.uses.size());
    return tr("Work order %1, %2, %3: entries %4. Ledger %5").arg(*job.workOrder, job.aircraft, job.isClosed ? tr("closed") : tr("open"), QString::number(job.uses.size()), job.ledger.text());
}

core::ReportRow rowOf(const UsesInJob &job, const UseOf &use, const core::Register &reg)
{
    return {headingOf(job),
            {job.workOrder.value_or(QString()), job.aircraft, closedText(job), job.ledger.text(), QString::number(use.said.seq), use.moment, use.said.kind, use.said.subject.value_or(QString()),
             use.said.author.text(), reg.nameOf(use.said.author), core::describe(use.said, reg), standingOf(use, reg), use.hash.hex()},
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
            {"hash"_L1, QT_TRANSLATE_NOOP("Report", "Hash"), 0}};
}

} // namespace

std::vector<UsesInJob> byJob(const std::vector<UseOf> &uses)
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

core::AuditTable usesTable(const Session &session, const db::Wanted &wanted, const std::vector<UseOf> &uses)
{
    const core::Register &reg = session.reg();
    const std::vector<UsesInJob> jobs = byJob(uses);
    const auto ofRegister = std::count_if(jobs.begin(), jobs.end(), [](const UsesInJob &job) { return !job.workOrder; });
    core::AuditTable table{tr("Where used: %1 %2").arg(sortInWords(wanted.sort), nameOf(wanted, reg)), {}, columnsOfUses(), {}, tr("No entry of this store names it."), tr("Root %1").arg(reg.fingerprint.hex())};
    table.facts = {{tr("Looked for"), tr("%1 %2, %3").arg(sortInWords(wanted.sort), nameOf(wanted, reg), daysInWords(wanted.between))},
                   {tr("Kinds of entries"), wanted.kind.value_or(tr("all"))},
                   {tr("Found"), tr("in jobs: %1; entries, with those of the register: %2").arg(static_cast<qint64>(jobs.size()) - ofRegister).arg(uses.size())},
                   {tr("Organisation"), reg.organisation},
                   {tr("Fingerprint of the root"), reg.fingerprint.hex()},
                   {tr("Asked at"), core::momentText(session.now())},
                   {tr("Asked of"), tr("Remate %1").arg(QStringLiteral(REMATE_VERSION))}};
    for (const UsesInJob &job : jobs) {
        for (const std::size_t i : job.uses)
            table.rows.push_back(rowOf(job, uses[i], reg));
    }
    return table;
}

} // namespace session
