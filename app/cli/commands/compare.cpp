// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include "app/cli/audit_files.hpp"
#include "app/cli/opened.hpp"
#include "core/reports/comparison.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

/// The rows by their columns' names, without what is empty.
core::json::Array changesJson(const core::AuditTable &table)
{
    core::json::Array changes;
    for (const core::ReportRow &row : table.rows) {
        core::json::Object change;
        for (std::size_t i = 0; i < table.columns.size(); ++i) {
            if (!row.cells[i].isEmpty())
                change.set(QString(table.columns[i].name), row.cells[i]);
        }
        changes.emplace_back(std::move(change));
    }
    return changes;
}

QStringList changeInWords(const core::AuditTable &, const core::ReportRow &row)
{
    QStringList cells;
    for (std::size_t i = 1; i + 1 < row.cells.size(); ++i) {
        if (!row.cells[i].isEmpty())
            cells << row.cells[i];
    }
    return {u"  "_s + cells.join(u"  "_s)};
}

core::json::Object headJson(const core::Head &head) { return {{u"seq"_s, head.seq}, {u"hash"_s, head.hash.hex()}}; }

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    const auto files = auditFilesIn(arguments);
    if (!files)
        return core::failure(files.error());
    auto opened = openJob(arguments, context, db::Access::ReadOnly);
    if (!opened)
        return core::failure(opened.error());
    const auto job = opened->session->state();
    const core::Register &reg = opened->session->reg();
    const auto from = core::headMeant(*job, arguments.text(u"from"_s));
    const auto to = core::headMeant(*job, arguments.has(u"to"_s) ? arguments.text(u"to"_s) : QString::number(job->said.size()));
    if (!from || !to)
        return core::failure(from ? to.error() : from.error());
    if (from->seq > to->seq)
        return core::failure(core::ErrorCode::BadInput, tr("Entry %1 is later than entry %2: name the earlier one with --from.").arg(from->seq).arg(to->seq));
    const core::AuditTable table = core::comparisonTable(*job, reg, core::compareHeads(*job, reg, *from, *to));
    if (const auto written = writeAudit(table, *files); !written)
        return core::failure(written.error());
    core::json::Object json{{u"from"_s, headJson(*from)}, {u"to"_s, headJson(*to)}, {u"changes"_s, changesJson(table)}};
    files->addTo(json);
    return Answer{Exit::Good, auditInWords(table, &changeInWords) + files->inWords(), std::move(json)};
}

} // namespace

Command compareCommand()
{
    return {"compare"_L1,
            QT_TRANSLATE_NOOP("Cli", "Tell what came between two entries of a job, such as the last one of an earlier print and now."),
            {storeOption(), jobOption(), value("from"_L1, "ENTRY", QT_TRANSLATE_NOOP("Cli", "The earlier entry, by its number or its hash: both stand at the foot of a printed record."), Given::Always),
             value("to"_L1, "ENTRY", QT_TRANSLATE_NOOP("Cli", "The later one; the last when left out.")), csvOption(), pdfOption(), paperOption()},
            Fonts::Needed,
            &run};
}

} // namespace cli
