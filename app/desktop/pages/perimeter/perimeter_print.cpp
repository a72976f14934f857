// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/perimeter/perimeter_print.hpp"

#include <QCoreApplication>
#include <QFontDatabase>
#include <QFontMetricsF>
#include <QPainter>
#include <QPrinter>

#include <algorithm>

#include "app/desktop/pages/perimeter/perimeter_legend.hpp"
#include "app/desktop/pages/perimeter/perimeter_picture.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/measure/working.hpp"

namespace desktop {

namespace {

struct PerimeterPrint {
    Q_DECLARE_TR_FUNCTIONS(PerimeterPrint)
};

/// The page is drawn in pixels of 96 to the inch, whatever dots the printer has.
constexpr double pixelsPerInch = 96;
constexpr int letters = 13;

QFont lettersOf(int pixels, QFont::Weight weight = QFont::Normal)
{
    QFont font = QFontDatabase::systemFont(QFontDatabase::GeneralFont);
    font.setPixelSize(pixels);
    font.setWeight(weight);
    return font;
}

/// Writes a line, as much of it as there is room for, and gives the room below it.
QRectF writeLine(QPainter &painter, const QRectF &room, const QString &text, const QFont &font, const QColor &colour)
{
    const QFontMetricsF metrics(font);
    painter.setFont(font);
    painter.setPen(colour);
    painter.drawText(QPointF(room.left(), room.top() + metrics.ascent()), metrics.elidedText(text, Qt::ElideRight, room.width()));
    return room.adjusted(0, metrics.lineSpacing() * 1.15, 0, 0);
}

QRectF head(QPainter &painter, const QRectF &page, const core::JobState &job, const QStringList &said, Shade shade)
{
    const core::JobFacts &facts = job.facts;
    const QColor ink = paletteFor(shade).color(QPalette::Text);
    QRectF room = writeLine(painter, page, facts.title, lettersOf(20, QFont::DemiBold), ink);
    room = writeLine(painter, room, PerimeterPrint::tr("%1 · %2 · %3 · %4 rev. %5").arg(facts.workOrder, facts.aircraft, facts.unit, facts.maintenanceData, facts.revision), lettersOf(letters), quietColour(shade));
    QStringList words;
    for (const QString &one : said) {
        if (!one.isEmpty())
            words << one;
    }
    room = writeLine(painter, room, words.join(PerimeterPrint::tr(" · ")), lettersOf(letters + 2, QFont::DemiBold), ink);
    if (job.lastAt)
        room = writeLine(painter, room, PerimeterPrint::tr("As of the last entry, %1. What was signed later is not in this picture.").arg(momentInWords(*job.lastAt)), lettersOf(letters), quietColour(shade));
    return room;
}

void drawing(QPainter &painter, const QRectF &room, const picture::Perimeter &perimeter, Shade shade)
{
    const QFont font = lettersOf(letters);
    picture::PerimeterLayout layout;
    Detail shown = Detail::Numbers;
    double scale = 1;
    for (const Detail detail : {Detail::Names, Detail::Stages, Detail::Numbers}) {
        layout = picture::layPerimeter(perimeter, perimeterMeasure(perimeter, font, detail, room.width() / room.height()));
        scale = std::min({room.width() / layout.bounds.width(), room.height() / layout.bounds.height(), 1.0});
        shown = detail;
        if (isLegible(font, scale, leastOnPaper))
            break;
    }
    QPalette palette = paletteFor(shade);
    palette.setColor(QPalette::Window, Qt::white);
    painter.save();
    painter.translate(room.center());
    painter.scale(scale, scale);
    painter.translate(-layout.bounds.center());
    paintPerimeter(painter, perimeter, layout, {font, palette, shade, scale, shown, leastOnPaper}, layout.bounds, {});
    painter.restore();
}

} // namespace

core::Result<void> printPerimeter(const picture::Perimeter &perimeter, const core::JobState &job, const QStringList &said, QPrinter &printer)
{
    constexpr Shade shade = Shade::Light; // paper
    printer.setDocName(PerimeterPrint::tr("%1, perimeter").arg(job.facts.workOrder));
    printer.setCreator(QStringLiteral("Remate"));
    printer.setPageOrientation(QPageLayout::Landscape);
    QPainter painter;
    if (!painter.begin(&printer))
        return core::failure(core::ErrorCode::Io, PerimeterPrint::tr("Nothing was printed. Look whether the printer is there and switched on, or choose another file."));
    const double dots = printer.resolution() / pixelsPerInch;
    painter.scale(dots, dots);
    const QRectF page(0, 0, printer.width() / dots, printer.height() / dots);
    QRectF room = head(painter, page, job, said, shade);
    const double line = QFontMetricsF(lettersOf(letters)).lineSpacing();
    writeLine(painter, QRectF(page.left(), page.bottom() - line * 1.1, page.width(), line), core::measure::dataGoverns(), lettersOf(letters - 2), quietColour(shade));
    const auto legend = legendOf(perimeter);
    const double high = legendHeight(legend, page.width(), lettersOf(letters));
    paintLegend(painter, legend, QRectF(page.left(), page.bottom() - line * 1.4 - high, page.width(), high), lettersOf(letters), shade);
    drawing(painter, room.adjusted(0, line / 2, 0, -line * 2 - high), perimeter, shade);
    return {};
}

} // namespace desktop
