// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include "app/cli/audit_files.hpp"
#include "app/cli/opened.hpp"
#include "app/cli/tell.hpp"
#include "app/session/where_used.hpp"
#include "core/reports/timeline.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

/// What is looked for: the one sort that was given.
core::Result<session::UsesQuestion> questionIn(const Arguments &arguments)
{
    std::optional<session::UsesQuestion> question;
    for (const QLatin1String sort : session::wantedSorts()) {
        if (!arguments.has(QString(sort)))
            continue;
        if (question)
            return core::failure(core::ErrorCode::BadInput, tr("Look for one thing at a time: --%1 or --%2.").arg(question->sort, sort));
        question = session::UsesQuestion{sort, arguments.text(QString(sort)), arguments.textIfGiven(u"kind"_s), arguments.textIfGiven(u"from"_s), arguments.textIfGiven(u"until"_s)};
    }
    if (!question)
        return core::failure(core::ErrorCode::BadInput, tr("Say what is looked for: --person, --tool, --part, --batch, --serial or --certificate."));
    return *question;
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
                                             {u"standing"_s, session::standingOf(use, reg)}, {u"signature_doubt"_s, use.doubt}, {u"hash"_s, use.hash.hex()}});
    }
    return uses;
}

QString doubtText(const session::UseOf &use) { return use.doubt.isEmpty() ? QString() : tr(" (Signature in doubt: %1)").arg(use.doubt); }

core::json::Object nothingJson(const session::NothingFound &nothing)
{
    core::json::Object object{{u"sentences"_s, nothing.sentences}, {u"spelt_alike"_s, core::json::arrayOf(nothing.speltAlike)}, {u"without_kind_and_days"_s, nothing.without}};
    if (nothing.isRegistered)
        object.set(u"registered"_s, *nothing.isRegistered);
    return object;
}

/// A script that reads the exit code alone must not take a slip of the pen for an all-clear.
Exit exitOf(const session::UsesAnswer &answer)
{
    if (answer.nothing && answer.nothing->isRegistered == false)
        return Exit::No;
    return answer.looked.damaged.isEmpty() ? Exit::Good : Exit::Partly;
}

/// The jobs first, then the entries.
QString usesText(const std::vector<session::UseOf> &found, const core::Register &reg)
{
    std::vector<std::vector<QString>> jobs;
    for (const session::UsesInJob &job : session::byJob(found))
        jobs.push_back({job.workOrder.value_or(tr("register")), job.aircraft, !job.workOrder ? QString() : job.isClosed ? tr("closed") : tr("open"), QString::number(job.uses.size())});
    std::vector<std::vector<QString>> rows;
    for (const session::UseOf &use : found)
        rows.push_back({use.workOrder.value_or(tr("register")), QString::number(use.said.seq), use.moment, use.said.subject.value_or(QString()), session::standingOf(use, reg), core::describe(use.said, reg) + doubtText(use)});
    return columns(jobs) + u"\n\n"_s + columns(rows) + u'\n' + tr("Entries: %1").arg(found.size());
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    const auto question = questionIn(arguments);
    if (!question)
        return core::failure(question.error());
    const auto files = auditFilesIn(arguments);
    if (!files)
        return core::failure(files.error());
    auto opened = openStore(arguments, context, db::Access::ReadOnly);
    if (!opened)
        return core::failure(opened.error());
    const auto answer = session::answerTo(*opened->session, *question);
    if (!answer)
        return core::failure(answer.error());
    const auto written = writeAudit(session::usesTable(*opened->session, *answer), *files);
    if (!written)
        return core::failure(written.error());
    const core::Register &reg = opened->session->reg();
    const auto &looked = answer->looked;
    core::json::Object json{{u"jobs"_s, jobsJson(answer->uses)}, {u"uses"_s, usesJson(answer->uses, reg)}};
    json.set(u"looked_through"_s, core::json::Object{{u"jobs"_s, looked.jobs}, {u"entries_of_jobs"_s, looked.entriesOfJobs}, {u"entries_of_register"_s, looked.entriesOfRegister}, {u"damaged"_s, core::json::arrayOf({looked.damaged.begin(), looked.damaged.end()})}});
    if (answer->nothing)
        json.set(u"nothing_found"_s, nothingJson(*answer->nothing));
    files->addTo(json);
    const QString damaged = looked.damaged.isEmpty() || answer->nothing ? QString() : tr("Damaged, so that something may not have been found: %1. Verify the store.").arg(looked.damaged.join(u", "_s));
    return Answer{exitOf(*answer), (answer->nothing ? answer->nothing->sentences : usesText(answer->uses, reg)) + files->inWords(), std::move(json), damaged};
}

} // namespace

Command whereUsedCommand()
{
    return {"where-used"_L1,
            QT_TRANSLATE_NOOP("Cli", "List every entry of every job, open or closed, that names a person, tool, part, batch, serial number or certificate."),
            {storeOption(), value("person"_L1, "ID", QT_TRANSLATE_NOOP("Cli", "A person, by id or name.")), value("tool"_L1, "ID", QT_TRANSLATE_NOOP("Cli", "A tool, as marked on it.")),
             value("part"_L1, "NUMBER", QT_TRANSLATE_NOOP("Cli", "A part number.")), value("batch"_L1, "NUMBER", QT_TRANSLATE_NOOP("Cli", "A batch.")),
             value("serial"_L1, "NUMBER", QT_TRANSLATE_NOOP("Cli", "A serial number.")), value("certificate"_L1, "NUMBER", QT_TRANSLATE_NOOP("Cli", "A certificate.")),
             value("kind"_L1, "KIND", QT_TRANSLATE_NOOP("Cli", "Only entries of this kind, such as torque.applied.")), value("from"_L1, "DATE", QT_TRANSLATE_NOOP("Cli", "From this day on.")),
             value("until"_L1, "DATE", QT_TRANSLATE_NOOP("Cli", "Up to this day.")), csvOption(), pdfOption(), paperOption()},
            Fonts::Needed,
            &run};
}

} // namespace cli
