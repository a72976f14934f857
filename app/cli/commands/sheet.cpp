// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "app/cli/audit_files.hpp"
#include "app/cli/opened.hpp"
#include "app/record/one_page_sheet.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

/// How many things of all parts had no room.
qint64 leftOut(const core::OnePage &page, qsizetype most)
{
    qsizetype left = 0;
    for (const core::SheetPart &part : page.parts)
        left += std::max(static_cast<qsizetype>(part.things.size()) - most, qsizetype{0});
    return left;
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    if (arguments.has(u"wall"_s) == arguments.has(u"handover"_s))
        return core::failure(core::ErrorCode::BadInput, tr("Say which sheet: --wall for what is open now, or --handover for the person who comes."));
    const auto paper = paperIn(arguments);
    if (!paper)
        return core::failure(paper.error());
    auto opened = openJob(arguments, context, db::Access::ReadOnly);
    if (!opened)
        return core::failure(opened.error());
    const auto job = opened->session->state();
    const core::OnePage page = core::sheetOf(arguments.has(u"wall"_s) ? core::SheetSort::Wall : core::SheetSort::Handover, *job, opened->session->reg(), opened->session->now());
    const QString path = arguments.text(u"to"_s);
    if (const auto written = record::writeOnePagePdf(page, path, *paper); !written)
        return core::failure(written.error());
    const qint64 left = leftOut(page, record::roomFor(page, *paper).value_or(0));
    const QString words = left == 0 ? QString() : u'\n' + tr("Without room on the page, and counted there: %1").arg(left);
    return Answer{Exit::Good, tr("Wrote %1").arg(path) + words, {{u"sheet"_s, path}, {u"entries"_s, static_cast<qint64>(job->said.size())}, {u"left_out"_s, left}}};
}

} // namespace

Command sheetCommand()
{
    return {"sheet"_L1,
            QT_TRANSLATE_NOOP("Cli", "Write one page to print: what is open now for the wall, or what the next shift reads first."),
            {storeOption(), jobOption(), flag("wall"_L1, QT_TRANSLATE_NOOP("Cli", "What is open now, zone by zone.")), flag("handover"_L1, QT_TRANSLATE_NOOP("Cli", "What the person who comes reads.")),
             value("to"_L1, "FILE", QT_TRANSLATE_NOOP("Cli", "Write the page to this PDF file."), Given::Always), paperOption()},
            Fonts::Needed,
            &run};
}

} // namespace cli
