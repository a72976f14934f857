// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include "app/cli/opened.hpp"
#include "app/cli/tell.hpp"
#include "core/job/loose_ends.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

QString textOf(const core::LooseEnds &ends)
{
    std::vector<std::vector<QString>> rows;
    for (const core::LooseEnd &end : ends)
        rows.push_back({end.subject, end.rule, end.sentence + tr(" Cleared by: %1.").arg(end.clearedBy)});
    return columns(rows) + u'\n' + tr("Loose ends: %1").arg(ends.size());
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    auto opened = openJob(arguments, context, db::Access::ReadOnly);
    if (!opened)
        return core::failure(opened.error());
    const core::LooseEnds ends = core::looseEnds(*opened->session->state(), opened->session->reg());
    return Answer{ends.empty() ? Exit::Good : Exit::No, ends.empty() ? tr("Nothing is loose.") : textOf(ends),
                  {{u"ledger"_s, opened->session->job()->text()}, {u"loose_ends"_s, refusalsJson(ends)}}};
}

} // namespace

Command looseEndsCommand()
{
    return {"loose-ends"_L1,
            QT_TRANSLATE_NOOP("Cli", "List everything that stops a job's closure; exit code 1 when there is anything."),
            {storeOption(), jobOption()},
            Fonts::NotNeeded,
            &run};
}

} // namespace cli
