// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/calculator/calculation_print.hpp"

#include <QCoreApplication>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QPrinter>

#include "app/desktop/parts/words.hpp"
#include "app/record/flow.hpp"
#include "app/record/safe_file.hpp"

namespace desktop {

namespace {

struct CalculationPrint {
    Q_DECLARE_TR_FUNCTIONS(CalculationPrint)
};

void addLines(record::Flow &flow, const QString &heading, const QStringList &lines)
{
    if (lines.isEmpty())
        return;
    flow.heading(heading);
    for (const QString &line : lines)
        flow.paragraph(line);
}

void addGiven(record::Flow &flow, const WorkedOut &worked)
{
    record::Table table{{{CalculationPrint::tr("Field"), 2}, {CalculationPrint::tr("Given"), 3, record::Face::CellBold}}, {}};
    for (const core::Given &one : core::givenIn(*worked.calculation, worked.body))
        table.rows.push_back({{}, {one.label, one.text}});
    flow.heading(CalculationPrint::tr("Given"));
    flow.table(table);
}

void addSteps(record::Flow &flow, const core::measure::Working &working)
{
    if (working.steps.empty())
        return;
    record::Table table{{{CalculationPrint::tr("What"), 3}, {CalculationPrint::tr("Formula"), 3}, {CalculationPrint::tr("Numbers"), 4}, {CalculationPrint::tr("Result"), 3, record::Face::CellBold}}, {}};
    for (const core::measure::WorkingStep &step : working.steps)
        table.rows.push_back({{}, {step.what, step.formula, step.numbers, step.result}});
    flow.heading(CalculationPrint::tr("Working"));
    flow.table(table);
}

std::vector<record::Sheet> sheetsOf(const WorkedOut &worked, const core::Instant &at, record::PageSize size, const record::Typefaces &faces)
{
    const core::measure::Working &working = worked.result.working;
    const bool isAnswered = worked.result.verdict == core::Verdict::Answered;
    record::Flow flow(record::frameOf(size), faces, {});
    flow.title(titleOf(*worked.calculation));
    flow.paragraph(summaryOf(*worked.calculation));
    flow.paragraph(CalculationPrint::tr("Worked out outside any job, printed %1.").arg(momentInWords(at)), record::Face::Text, record::ink::quiet);
    const QStringList cautions = worked.calculation->cautions();
    if (!cautions.isEmpty())
        flow.box(CalculationPrint::tr("Caution"), cautions.join(u'\n'), record::ink::alarm);
    addGiven(flow, worked);
    addSteps(flow, working);
    flow.space(12 * record::point);
    flow.box(isAnswered ? CalculationPrint::tr("Answer") : CalculationPrint::tr("No"), working.answer, isAnswered ? record::ink::text : record::ink::alarm);
    addLines(flow, CalculationPrint::tr("For the record"), worked.result.forRecord);
    addLines(flow, CalculationPrint::tr("Notes"), working.notes);
    addLines(flow, CalculationPrint::tr("Sources"), working.sources);
    return flow.takeSheets();
}

void drawRun(QPainter &painter, const record::Typefaces &faces, const record::Run &run)
{
    painter.setFont(faces.font(run.face));
    painter.setPen(run.colour);
    painter.drawText(run.baseline, run.text);
}

void drawFoot(QPainter &painter, const record::Typefaces &faces, const record::PageFrame &frame, const QString &pageText)
{
    constexpr record::Face face = record::Face::Small;
    const double top = frame.body.bottom() + 3 * record::millimetre;
    const double base = top + 1.2 * faces.lineHeight(face);
    painter.fillRect(QRectF(frame.body.left(), top, frame.body.width(), 0.6 * record::point), record::ink::rule);
    drawRun(painter, faces, {{frame.body.left(), base}, core::measure::dataGoverns(), face, record::ink::text});
    drawRun(painter, faces, {{frame.body.right() - faces.width(pageText, face), base}, pageText, face, record::ink::text});
}

core::Result<void> draw(QPagedPaintDevice &device, const WorkedOut &worked, const core::Instant &at)
{
    const auto faces = record::Typefaces::find();
    if (!faces)
        return core::failure(faces.error());
    const bool isLetter = device.pageLayout().pageSize().id() == QPageSize::Letter;
    const record::PageSize size = isLetter ? record::PageSize::Letter : record::PageSize::A4;
    const record::PageFrame frame = record::frameOf(size);
    const std::vector<record::Sheet> sheets = sheetsOf(worked, at, size, *faces);
    QPainter painter;
    if (!painter.begin(&device))
        return core::failure(core::ErrorCode::Io, CalculationPrint::tr("Nothing was printed. Look whether the printer is there and switched on, or choose another file."));
    // Sheets count in units of their own; a printer has dots of its own.
    painter.scale(painter.viewport().width() / frame.size.width(), painter.viewport().width() / frame.size.width());
    for (std::size_t page = 0; page < sheets.size(); ++page) {
        if (page > 0)
            device.newPage();
        for (const record::Patch &patch : sheets[page].patches)
            painter.fillRect(patch.rect, patch.colour);
        for (const record::Run &run : sheets[page].runs)
            drawRun(painter, *faces, run);
        drawFoot(painter, *faces, frame, CalculationPrint::tr("Page %1 of %2").arg(page + 1).arg(sheets.size()));
    }
    return {};
}

} // namespace

core::Result<void> print(const WorkedOut &worked, const core::Instant &at, QPrinter &printer)
{
    printer.setDocName(titleOf(*worked.calculation));
    printer.setCreator(QStringLiteral("Remate"));
    printer.setFullPage(true);
    return draw(printer, worked, at);
}

core::Result<void> writePdf(const WorkedOut &worked, const core::Instant &at, const QString &path)
{
    return record::writeSafely(path, [&](QIODevice &device) {
        QPdfWriter writer(&device);
        writer.setResolution(static_cast<int>(record::unitsPerInch));
        writer.setPageLayout(QPageLayout(QPageSize(QPageSize::A4), QPageLayout::Portrait, QMarginsF()));
        writer.setTitle(titleOf(*worked.calculation));
        writer.setCreator(QStringLiteral("Remate"));
        return draw(writer, worked, at);
    });
}

} // namespace desktop
