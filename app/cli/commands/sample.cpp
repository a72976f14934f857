// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>
#include <QRandomGenerator>

#include "app/cli/audit_files.hpp"
#include "app/cli/opened.hpp"
#include "core/job/stage.hpp"
#include "core/reports/sample.hpp"
#include "core/reports/timeline.hpp"
#include "resources/resources.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

core::Result<QString> seedIn(const Arguments &arguments)
{
    const auto seed = arguments.textIfGiven(u"seed"_s);
    if (!seed)
        return QString::number(QRandomGenerator::system()->generate64(), 16).rightJustified(16, u'0');
    if (!core::isIdText(*seed))
        return core::failure(core::ErrorCode::BadInput, tr("A seed is 1 to 128 characters in one line, each to be seen, and no blank at either end."));
    return *seed;
}

core::json::Array drawnJson(const core::JobState &job, const core::Sample &sample)
{
    const std::vector<core::Digest> hashes = core::hashesOf(job.said);
    core::json::Array drawn;
    for (const core::Drawn &one : sample.drawn) {
        core::json::Array entries;
        for (const qint64 seq : one.entries) {
            const auto index = static_cast<std::size_t>(seq - 1);
            const core::Statement &said = job.said[index];
            entries.emplace_back(core::json::Object{{u"seq"_s, seq}, {u"at"_s, said.at.text()}, {u"author"_s, said.author.text()}, {u"meaning"_s, said.meaning}, {u"kind"_s, said.kind}, {u"body"_s, said.body},
                                                    {u"standing"_s, core::standingName(job.lines[index].standing)}, {u"hash"_s, hashes[index].hex()}});
        }
        drawn.emplace_back(core::json::Object{{u"interface"_s, one.id.text()}, {u"rank"_s, one.rank.hex()}, {u"stage"_s, core::stageName(core::stageOf(*job.item(one.id)))}, {u"entries"_s, std::move(entries)}});
    }
    return drawn;
}

/// What the sheet shows, and the hash on a line of its own.
QStringList entryInWords(const core::AuditTable &table, const core::ReportRow &row)
{
    QStringList cells;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        if (table.columns[i].width > 0)
            cells << row.cells[i];
    }
    return {u"  "_s + cells.join(u"  "_s), u"    "_s + row.cells.back()};
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    bool isNumber = false;
    const int count = arguments.text(u"count"_s).toInt(&isNumber);
    if (!isNumber || count < 1)
        return core::failure(core::ErrorCode::BadInput, tr("\"%1\" is no number of interfaces: 1 or more.").arg(arguments.text(u"count"_s)));
    const auto seed = seedIn(arguments);
    const auto files = auditFilesIn(arguments);
    const auto kinds = resources::loadKinds();
    if (!seed || !files)
        return core::failure(seed ? files.error() : seed.error());
    if (!kinds)
        return core::failure(kinds.error());
    auto opened = openJob(arguments, context, db::Access::ReadOnly);
    if (!opened)
        return core::failure(opened.error());
    const auto job = opened->session->state();
    const core::Sample sample = core::sampleOf(*job, count, *seed);
    const core::AuditTable table = core::sampleTable(*job, opened->session->reg(), *kinds, sample);
    if (const auto written = writeAudit(table, *files); !written)
        return core::failure(written.error());
    core::json::Object json{{u"seed"_s, *seed}, {u"among"_s, static_cast<qint64>(sample.among)}, {u"drawn"_s, drawnJson(*job, sample)}};
    files->addTo(json);
    return Answer{Exit::Good, table.title + u'\n' + auditInWords(table, &entryInWords) + files->inWords(), std::move(json)};
}

} // namespace

Command sampleCommand()
{
    return {"sample"_L1,
            QT_TRANSLATE_NOOP("Cli", "Draw interfaces of a job at random, in a way that anybody can repeat, with every entry about them."),
            {storeOption(), jobOption(), value("count"_L1, "N", QT_TRANSLATE_NOOP("Cli", "So many interfaces."), Given::Always),
             value("seed"_L1, "TEXT", QT_TRANSLATE_NOOP("Cli", "Draws the same again; made and shown when left out.")), csvOption(), pdfOption(), paperOption()},
            Fonts::Needed,
            &run};
}

} // namespace cli
