// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include "app/cli/opened.hpp"
#include "app/cli/tell.hpp"
#include "core/holds/standing.hpp"
#include "resources/resources.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

/// Stable, for scripts.
QString stateText(const core::HoldStanding &standing)
{
    switch (standing.state) {
    case core::HoldState::Open: return standing.areConditionsMet() ? u"ready"_s : u"waits"_s;
    case core::HoldState::Passed: return u"passed"_s;
    case core::HoldState::Void: return u"void"_s;
    }
    Q_UNREACHABLE();
}

QStringList linesOf(const core::HoldPoint &hold, const core::HoldStanding &standing)
{
    QStringList lines{tr("%1  %2: %3").arg(hold.id.text(), stateText(standing), hold.title)};
    if (!standing.undermined.isEmpty())
        lines << tr("    void: %1").arg(standing.undermined);
    for (const core::ConditionShown &one : standing.conditions) {
        lines << tr("    %1 %2").arg(one.isOver ? u"-"_s : one.isMet() ? u"+"_s : u"!"_s, one.said);
        for (const QString &missing : one.missing)
            lines << tr("        %1").arg(missing);
    }
    for (const QString &statement : hold.statements)
        lines << tr("    ? %1").arg(statement);
    return lines;
}

/// The standard set as lines of a drafts file, for `enter`.
core::Result<Answer> standard(const QString &author)
{
    const auto holds = resources::loadHoldPoints();
    if (!holds)
        return core::failure(holds.error());
    QStringList lines;
    core::json::Array all;
    for (const core::NamedHold &hold : *holds) {
        const core::json::Object draft{{u"author"_s, author}, {u"kind"_s, u"hold.set"_s}, {u"subject"_s, hold.id.text()}, {u"body"_s, hold.body}};
        lines << QString::fromUtf8(core::json::canonical(draft));
        all.emplace_back(draft);
    }
    return Answer{Exit::Good, lines.join(u'\n'), {{u"drafts"_s, all}}};
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    if (arguments.has(u"standard"_s))
        return standard(arguments.text(u"standard"_s));
    auto opened = openJob(arguments, context, db::Access::ReadOnly);
    if (!opened)
        return core::failure(opened.error());
    const core::JobState &job = *opened->session->state();
    QStringList lines;
    core::json::Array all;
    bool isAllPassed = true;
    for (const core::HoldPoint &hold : job.holds) {
        const core::HoldStanding standing = core::standingOf(job, hold);
        isAllPassed = isAllPassed && standing.state == core::HoldState::Passed;
        lines += linesOf(hold, standing);
        all.emplace_back(core::json::Object{{u"hold_point"_s, hold.id.text()}, {u"title"_s, hold.title}, {u"state"_s, stateText(standing)}, {u"missing"_s, standing.firstMissing()}, {u"undermined"_s, standing.undermined}});
    }
    if (lines.isEmpty())
        lines << tr("This job has no hold points.");
    return Answer{isAllPassed ? Exit::Good : Exit::No, lines.join(u'\n'), {{u"ledger"_s, opened->session->job()->text()}, {u"hold_points"_s, all}}};
}

} // namespace

Command holdsCommand()
{
    return {"holds"_L1,
            QT_TRANSLATE_NOOP("Cli", "Show the hold points of a job, condition by condition; exit code 1 when one is not passed or is void."),
            {storeOption(), jobOption(), value("standard"_L1, "PERSON", QT_TRANSLATE_NOOP("Cli", "Instead, write the standard hold points as drafts of that person, for enter."))},
            Fonts::NotNeeded,
            &run};
}

} // namespace cli
