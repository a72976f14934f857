// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/record/one_page_sheet.hpp"

#include <QCoreApplication>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include <algorithm>

#include "app/record/flow.hpp"
#include "app/record/safe_file.hpp"

namespace record {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Record", text); }

/// Laid out on a smaller page and drawn larger: a cell of a record's table, 7 points, becomes 9. Nothing smaller stands on a sheet.
constexpr double magnified = 1.29;

PageFrame smallFrame(PageSize size)
{
    const PageFrame frame = frameOf(size);
    // Nothing runs along the top of a single page, and nobody binds it: the body takes what a record leaves for that.
    const QRectF body = frame.body.adjusted(-3 * millimetre, -9 * millimetre, 3 * millimetre, 7 * millimetre);
    return {frame.size / magnified, QRectF(body.topLeft() / magnified, body.size() / magnified)};
}

/// Two facts a row, the first two in place of a head: the room is for what is open.
Table factsOf(const core::OnePage &page)
{
    std::vector<core::AuditFact> facts = page.facts;
    facts.resize((std::max(facts.size(), std::size_t{3}) + 1) / 2 * 2); // a table of a head alone is not drawn
    Table table{{{facts[0].name, 2, Face::CellBold}, {facts[0].value, 6}, {facts[1].name, 2, Face::CellBold}, {facts[1].value, 4}}, {}};
    for (std::size_t i = 2; i < facts.size(); i += 2)
        table.rows.push_back({{}, {facts[i].name, facts[i].value, facts[i + 1].name, facts[i + 1].value}});
    return table;
}

/// The title of the part stands over the first column: a line a part is a line for what is open.
Table tableOf(const core::SheetPart &part, qsizetype most)
{
    Table table{{{part.title, 3}, {part.columns[0], 3, Face::CellBold}, {part.columns[1], 7}}, {}};
    const bool isOneLine = part.setting == core::SheetSetting::LineAHeading;
    if (isOneLine)
        table.columns = {{part.title, 3}, {tr("%1: %2").arg(part.columns[0], part.columns[1]), 10}};
    for (const core::SheetLine &line : core::linesOf(part, most))
        table.rows.push_back(isOneLine ? TableRow{{}, {line.under, line.what}} : TableRow{{}, {line.under, line.state, line.what}});
    return table;
}

/// Of a part that nothing fits of, the title tells what is left out.
void layPart(Flow &flow, const core::SheetPart &part, qsizetype most)
{
    const QString left = core::leftOutInWords(part, most);
    if (part.things.empty())
        flow.paragraph(tr("%1: %2").arg(part.title, part.whenEmpty), Face::Cell);
    else if (most == 0)
        flow.paragraph(tr("%1: %2").arg(part.title, left), Face::CellBold, ink::alarm);
    else
        flow.table(tableOf(part, most));
    if (most > 0 && !left.isEmpty())
        flow.paragraph(left, Face::CellBold, ink::alarm);
}

std::vector<Sheet> laid(const core::OnePage &page, qsizetype most, const Typefaces &faces, PageSize size)
{
    Flow flow(smallFrame(size), faces, {});
    flow.paragraph(page.title, Face::Heading);
    flow.paragraph(tr("PRINTED, NOT THE RECORD. What was signed since is not on it. The approved maintenance data governs."), Face::Cell, ink::alarm);
    flow.table(factsOf(page));
    for (const core::SheetPart &part : page.parts) {
        flow.space(2 * point);
        layPart(flow, part, most);
    }
    return flow.takeSheets();
}

/// The fewer things, the less room they take, so the most that fits is found by halving.
std::optional<qsizetype> roomFor(const core::OnePage &page, const Typefaces &faces, PageSize size)
{
    const auto fits = [&](qsizetype most) { return laid(page, most, faces, size).size() == 1; };
    std::size_t longest = 0;
    for (const core::SheetPart &part : page.parts)
        longest = std::max(longest, part.things.size());
    auto tooMany = static_cast<qsizetype>(longest) + 1;
    if (fits(tooMany - 1))
        return tooMany - 1;
    if (!fits(0))
        return std::nullopt;
    qsizetype most = 0;
    while (tooMany - most > 1) {
        const qsizetype middle = most + (tooMany - most) / 2;
        (fits(middle) ? most : tooMany) = middle;
    }
    return most;
}

void drawText(QPainter &painter, const Typefaces &faces, const Run &run)
{
    painter.setFont(faces.font(run.face));
    painter.setPen(run.colour);
    painter.drawText(run.baseline, run.text);
}

core::Result<void> draw(QPagedPaintDevice &device, const core::OnePage &page, PageSize size)
{
    const auto faces = Typefaces::find();
    if (!faces)
        return core::failure(faces.error());
    const auto most = roomFor(page, *faces, size);
    if (!most)
        return core::failure(core::ErrorCode::BadInput, tr("The sheet does not fit one page. Shorten the title of the job, or look at it in the program."));
    QPainter painter;
    if (!painter.begin(&device))
        return core::failure(core::ErrorCode::Io, tr("The sheet could not be begun. Choose another folder or printer and try again."));
    const PageFrame frame = smallFrame(size);
    // Sheets count in units of their own; a printer has dots of its own. On paper that lies across or is of another shape, small and whole beats cut off.
    const double scale = std::min(painter.viewport().width() / frame.size.width(), painter.viewport().height() / frame.size.height());
    painter.scale(scale, scale);
    const Sheet sheet = laid(page, *most, *faces, size).front();
    for (const Patch &patch : sheet.patches)
        painter.fillRect(patch.rect, patch.colour);
    for (const Run &run : sheet.runs)
        drawText(painter, *faces, run);
    const double foot = frame.body.bottom() + 1 * millimetre;
    painter.fillRect(QRectF(frame.body.left(), foot, frame.body.width(), 0.6 * point), ink::rule);
    drawText(painter, *faces, {{frame.body.left(), foot + 1.2 * faces->lineHeight(Face::Cell)}, page.foot, Face::Cell, ink::text});
    return {};
}

} // namespace

std::optional<qsizetype> roomFor(const core::OnePage &page, PageSize size)
{
    const auto faces = Typefaces::find();
    return faces ? roomFor(page, *faces, size) : std::nullopt;
}

core::Result<void> writeOnePagePdf(const core::OnePage &page, const QString &path, PageSize size)
{
    return writeSafely(path, [&](QIODevice &device) {
        QPdfWriter writer(&device);
        writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
        writer.setResolution(static_cast<int>(unitsPerInch));
        writer.setPageLayout(QPageLayout(QPageSize(size == PageSize::A4 ? QPageSize::A4 : QPageSize::Letter), QPageLayout::Portrait, QMarginsF(0, 0, 0, 0)));
        writer.setTitle(page.title);
        writer.setCreator(u"Remate"_s);
        return draw(writer, page, size);
    });
}

core::Result<void> printOnePage(const core::OnePage &page, QPagedPaintDevice &printer)
{
    return draw(printer, page, printer.pageLayout().pageSize().id() == QPageSize::Letter ? PageSize::Letter : PageSize::A4);
}

} // namespace record
