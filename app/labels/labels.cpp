// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/labels/labels.hpp"

#include <QCoreApplication>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include "app/labels/layout.hpp"
#include "app/record/safe_file.hpp"

namespace labels {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Labels", text); }

/// At the corners alone: a line all round would show where a precut sheet is printed a little aside.
void drawTicks(QPainter &painter, const QRectF &label)
{
    constexpr double length = 1.5 * record::millimetre;
    painter.setPen(QPen(record::ink::rule, 0.3 * record::point));
    for (const bool isRight : {false, true}) {
        for (const bool isBottom : {false, true}) {
            const QPointF corner(isRight ? label.right() : label.left(), isBottom ? label.bottom() : label.top());
            painter.drawLine(corner, corner + QPointF(isRight ? -length : length, 0));
            painter.drawLine(corner, corner + QPointF(0, isBottom ? -length : length));
        }
    }
}

void drawLabel(QPainter &painter, const PlacedLabel &label, const record::Typefaces &faces)
{
    drawTicks(painter, label.place);
    const double quiet = quietModules * label.code.module;
    QPainterPath code = pathOf(label.code.code, label.code.module);
    code.translate(label.code.place.topLeft() + QPointF(quiet, quiet));
    painter.fillPath(code, Qt::black);
    for (const record::Run &run : label.words) {
        painter.setFont(faces.font(run.face));
        painter.setPen(run.colour);
        painter.drawText(run.baseline, run.text);
    }
}

core::Result<void> draw(QIODevice &device, const std::vector<LabelSheet> &sheets, const QString &title, const record::Typefaces &faces, record::PageSize paper)
{
    QPdfWriter writer(&device);
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setResolution(static_cast<int>(record::unitsPerInch));
    writer.setPageLayout(QPageLayout(QPageSize(paper == record::PageSize::A4 ? QPageSize::A4 : QPageSize::Letter), QPageLayout::Portrait, QMarginsF(0, 0, 0, 0)));
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Remate"));
    QPainter painter;
    if (!painter.begin(&writer))
        return core::failure(core::ErrorCode::Io, tr("The file could not be begun. Choose another folder and try again."));
    for (std::size_t page = 0; page < sheets.size(); ++page) {
        if (page > 0)
            writer.newPage();
        for (const PlacedLabel &label : sheets[page])
            drawLabel(painter, label, faces);
    }
    return {};
}

} // namespace

core::Result<WrittenLabels> writeLabels(const std::vector<core::Label> &labels, const QString &path, const LabelSize &size, record::PageSize paper)
{
    if (labels.empty())
        return core::failure(core::ErrorCode::BadInput, tr("There is no interface to print a label for. Import the job's list first."));
    const auto faces = record::Typefaces::find();
    if (!faces)
        return core::failure(faces.error());
    const auto sheets = layOut(labels, size, paper, *faces);
    if (!sheets)
        return core::failure(sheets.error());
    const QString title = tr("Labels of %1").arg(labels.front().workOrder);
    const auto written = record::writeSafely(path, [&](QIODevice &device) { return draw(device, *sheets, title, *faces, paper); });
    if (!written)
        return core::failure(written.error());
    return WrittenLabels{static_cast<qint64>(labels.size()), static_cast<qint64>(sheets->size())};
}

} // namespace labels
