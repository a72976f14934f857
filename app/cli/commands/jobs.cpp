// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include "app/cli/opened.hpp"
#include "app/cli/tell.hpp"
#include "core/job/stage.hpp"
#include "core/reports/timeline.hpp"
#include "core/value/error_words.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;
using core::json::Array;
using core::json::Object;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

constexpr core::Stage stages[] = {core::Stage::Connected, core::Stage::Disconnected, core::Stage::Reconnected, core::Stage::Secured, core::Stage::Inspected};

Object jsonOf(const session::JobRow &row)
{
    if (row.trouble)
        return {{u"ledger"_s, row.ledger.text()}, {u"error"_s, errorJson(*row.trouble)}};
    const core::JobSummary &summary = row.summary;
    Object byStage;
    for (const core::Stage stage : stages)
        byStage.set(core::stageName(stage), summary.byStage[static_cast<std::size_t>(stage)]);
    return {{u"ledger"_s, row.ledger.text()},       {u"title"_s, summary.title},
            {u"work_order"_s, summary.workOrder},   {u"aircraft"_s, summary.aircraft},
            {u"unit"_s, summary.unit},              {u"closed"_s, summary.isClosed},
            {u"interfaces"_s, summary.interfaces},  {u"by_stage"_s, std::move(byStage)},
            {u"loose_ends"_s, summary.looseEnds},
            {u"last_at"_s, core::Instant::fromMilliseconds(summary.lastAtMilliseconds).text()}};
}

std::vector<QString> cellsOf(const session::JobRow &row)
{
    if (row.trouble)
        return {row.ledger.text(), {}, tr("cannot be read")};
    const core::JobSummary &summary = row.summary;
    return {row.ledger.text(), summary.workOrder, summary.isClosed ? tr("closed") : tr("open"), QString::number(summary.interfaces),
            QString::number(summary.looseEnds), core::momentText(core::Instant::fromMilliseconds(summary.lastAtMilliseconds)), summary.title};
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    auto opened = openStore(arguments, context, db::Access::ReadOnly);
    if (!opened)
        return core::failure(opened.error());
    const auto rows = opened->session->jobs();
    if (!rows)
        return core::failure(rows.error());
    std::vector<std::vector<QString>> cells{{tr("Ledger"), tr("Work order"), tr("State"), tr("Interfaces"), tr("Loose ends"), tr("Last entry"), tr("Title")}};
    Array json;
    QStringList trouble;
    for (const session::JobRow &row : *rows) {
        cells.push_back(cellsOf(row));
        json.emplace_back(jsonOf(row));
        if (row.trouble)
            trouble << core::errorInWords(*row.trouble);
    }
    return Answer{trouble.isEmpty() ? Exit::Good : Exit::World, rows->empty() ? tr("No jobs yet.") : columns(cells), {{u"jobs"_s, std::move(json)}}, trouble.join(u'\n')};
}

} // namespace

Command jobsCommand()
{
    return {"jobs"_L1, QT_TRANSLATE_NOOP("Cli", "List the jobs of a store."), {storeOption()}, Fonts::NotNeeded, &run};
}

} // namespace cli
