// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include "app/cli/administer.hpp"
#include "app/cli/audit_files.hpp"
#include "app/cli/opened.hpp"
#include "app/cli/tell.hpp"
#include "app/session/where_used.hpp"
#include "core/reports/timeline.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

/// What is looked for: the one sort that was given, within its days.
core::Result<db::Wanted> wantedOf(const Arguments &arguments)
{
    std::optional<db::Wanted> wanted;
    for (const QLatin1String sort : session::wantedSorts()) {
        if (!arguments.has(QString(sort)))
            continue;
        if (wanted)
            return core::failure(core::ErrorCode::BadInput, tr("Look for one thing at a time: --%1 or --%2.").arg(wanted->sort, sort));
        wanted = db::Wanted{sort, arguments.text(QString(sort))};
    }
    if (!wanted)
        return core::failure(core::ErrorCode::BadInput, tr("Say what is looked for: --person, --tool, --part, --batch, --serial or --certificate."));
    wanted->kind = arguments.textIfGiven(u"kind"_s);
    if (!arguments.has(u"from"_s) && !arguments.has(u"until"_s))
        return *wanted;
    const auto from = dayIn(arguments.has(u"from"_s) ? arguments.text(u"from"_s) : u"1970-01-01"_s);
    const auto until = dayIn(arguments.has(u"until"_s) ? arguments.text(u"until"_s) : u"9998-12-31"_s);
    if (!from || !until)
        return core::failure(from ? until.error() : from.error());
    const auto start = [](QDate day) { return core::Instant::fromMilliseconds(day.startOfDay(Qt::UTC).toMSecsSinceEpoch()); };
    wanted->between = db::Between{start(*from), core::Instant::fromMilliseconds(start(until->addDays(1)).milliseconds() - 1)};
    return *wanted;
}

core::json::Array jobsJson(const std::vector<session::UseOf> &found)
{
    core::json::Array jobs;
    for (const session::UsesInJob &job : session::byJob(found)) {
        core::json::Object object{{u"ledger"_s, job.ledger.text()}, {u"work_order"_s, job.workOrder.value_or(tr("register"))}, {u"aircraft"_s, job.aircraft}, {u"entries"_s, static_cast<qint64>(job.uses.size())}};
        if (job.workOrder)
            object.set(u"closed"_s, job.isClosed);
        jobs.emplace_back(std::move(object));
    }
    return jobs;
}

core::json::Array usesJson(const std::vector<session::UseOf> &found, const core::Register &reg)
{
    core::json::Array uses;
    for (const session::UseOf &use : found) {
        uses.emplace_back(core::json::Object{{u"ledger"_s, use.said.ledger.text()}, {u"work_order"_s, use.workOrder.value_or(tr("register"))}, {u"seq"_s, use.said.seq}, {u"at"_s, use.said.at.text()},
                                             {u"moment"_s, use.moment}, {u"kind"_s, use.said.kind}, {u"subject"_s, use.said.subject.value_or(QString())}, {u"author"_s, use.said.author.text()},
                                             {u"standing"_s, session::standingOf(use, reg)}, {u"hash"_s, use.hash.hex()}});
    }
    return uses;
}

/// The jobs first, then the entries.
QString usesText(const std::vector<session::UseOf> &found, const core::Register &reg)
{
    const QString count = tr("Entries: %1").arg(found.size());
    if (found.empty())
        return count;
    std::vector<std::vector<QString>> jobs;
    for (const session::UsesInJob &job : session::byJob(found))
        jobs.push_back({job.workOrder.value_or(tr("register")), job.aircraft, !job.workOrder ? QString() : job.isClosed ? tr("closed") : tr("open"), QString::number(job.uses.size())});
    std::vector<std::vector<QString>> rows;
    for (const session::UseOf &use : found)
        rows.push_back({use.workOrder.value_or(tr("register")), QString::number(use.said.seq), use.moment, use.said.subject.value_or(QString()), session::standingOf(use, reg), core::describe(use.said, reg)});
    return columns(jobs) + u"\n\n"_s + columns(rows) + u'\n' + count;
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    const auto wanted = wantedOf(arguments);
    if (!wanted)
        return core::failure(wanted.error());
    const auto files = auditFilesIn(arguments);
    if (!files)
        return core::failure(files.error());
    auto opened = openStore(arguments, context, db::Access::ReadOnly);
    if (!opened)
        return core::failure(opened.error());
    const auto found = session::whereUsed(*opened->session, *wanted);
    if (!found)
        return core::failure(found.error());
    const auto written = writeAudit(session::usesTable(*opened->session, *wanted, *found), *files);
    if (!written)
        return core::failure(written.error());
    const core::Register &reg = opened->session->reg();
    core::json::Object json{{u"jobs"_s, jobsJson(*found)}, {u"uses"_s, usesJson(*found, reg)}};
    files->addTo(json);
    return Answer{Exit::Good, usesText(*found, reg) + files->inWords(), std::move(json)};
}

} // namespace

Command whereUsedCommand()
{
    return {"where-used"_L1,
            QT_TRANSLATE_NOOP("Cli", "List every entry of every job, open or closed, that names a person, tool, part, batch, serial number or certificate."),
            {storeOption(), value("person"_L1, "ID", QT_TRANSLATE_NOOP("Cli", "A person.")), value("tool"_L1, "ID", QT_TRANSLATE_NOOP("Cli", "A tool, as marked on it.")),
             value("part"_L1, "NUMBER", QT_TRANSLATE_NOOP("Cli", "A part number.")), value("batch"_L1, "NUMBER", QT_TRANSLATE_NOOP("Cli", "A batch.")),
             value("serial"_L1, "NUMBER", QT_TRANSLATE_NOOP("Cli", "A serial number.")), value("certificate"_L1, "NUMBER", QT_TRANSLATE_NOOP("Cli", "A certificate.")),
             value("kind"_L1, "KIND", QT_TRANSLATE_NOOP("Cli", "Only entries of this kind, such as torque.applied.")), value("from"_L1, "DATE", QT_TRANSLATE_NOOP("Cli", "From this day on.")),
             value("until"_L1, "DATE", QT_TRANSLATE_NOOP("Cli", "Up to this day.")), csvOption(), pdfOption(), paperOption()},
            Fonts::Needed,
            &run};
}

} // namespace cli
