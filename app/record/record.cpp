// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/record/record.hpp"

#include <QBuffer>
#include <QCoreApplication>
#include <QImage>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include "app/language/in_record_words.hpp"
#include "app/picture/lift_picture.hpp"
#include "app/record/contents.hpp"
#include "app/record/finish.hpp"
#include "app/record/flow.hpp"
#include "app/record/safe_file.hpp"
#include "core/reports/report.hpp"

namespace record {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Record", text); }

/// Whoever watches an export has screens that go on meanwhile.
Progress inScreenWords(const Progress &progress)
{
    if (!progress)
        return {};
    return [&progress](int page, int pages) {
        const language::InScreenWords screen;
        return progress(page, pages);
    };
}

tl::unexpected<core::Error> cancelled()
{
    const language::InScreenWords screen;
    return core::failure(core::ErrorCode::Cancelled, tr("The export was cancelled; no file was written."));
}

/// What every page carries besides its own sheet.
struct Running {
    QString head;
    QString foot;
    QString mark; ///< NOT CLOSED, on a draft
};

void drawText(QPainter &painter, const Typefaces &faces, const Run &run)
{
    painter.setFont(faces.font(run.face));
    painter.setPen(run.colour);
    painter.drawText(run.baseline, run.text);
}

/// Text cut to a width with an ellipsis: heads and feet have one line.
QString cut(const Typefaces &faces, const QString &text, Face face, double width)
{
    const QStringList lines = faces.wrapped(text, face, width);
    return lines.size() > 1 ? lines.first() + QStringLiteral(" …") : text;
}

void drawHead(QPainter &painter, const Typefaces &faces, const PageFrame &frame, const Running &running)
{
    const double base = frame.body.top() - 4 * millimetre;
    const double markWidth = faces.width(running.mark, Face::Heading);
    drawText(painter, faces, {{frame.body.left(), base}, cut(faces, running.head, Face::Small, frame.body.width() - markWidth - 20 * point), Face::Small, ink::quiet});
    if (!running.mark.isEmpty())
        drawText(painter, faces, {{frame.body.right() - markWidth, base}, running.mark, Face::Heading, ink::alarm});
    painter.fillRect(QRectF(frame.body.left(), base + 1.2 * millimetre, frame.body.width(), 0.6 * point), ink::rule);
}

void drawFoot(QPainter &painter, const Typefaces &faces, const PageFrame &frame, const Running &running, const QString &pageText)
{
    const double top = frame.body.bottom() + 3 * millimetre;
    const double base = top + 1.2 * faces.lineHeight(Face::Small);
    painter.fillRect(QRectF(frame.body.left(), top, frame.body.width(), 0.6 * point), ink::rule);
    drawText(painter, faces, {{frame.body.left(), base}, running.foot, Face::Mono, ink::quiet});
    const double pageWidth = faces.width(pageText, Face::Small);
    drawText(painter, faces, {{frame.body.right() - pageWidth, base}, pageText, Face::Small, ink::text});
    drawText(painter, faces,
             {{frame.body.left(), base + faces.lineHeight(Face::Small)}, tr("The approved maintenance data governs."), Face::Small, ink::quiet});
}

void drawSheet(QPainter &painter, const Typefaces &faces, const Sheet &sheet)
{
    // A struck line's rule is a patch that must lie over the text, legible on both sides of it; tints lie under it. Rules
    // are thin, so the order of drawing costs no legibility: everything flat first.
    for (const Patch &patch : sheet.patches)
        painter.fillRect(patch.rect, patch.colour);
    for (const picture::LiftLayout &lift : sheet.lifts)
        picture::paintLift(painter, lift, {ink::text, ink::quiet, ink::group, ink::paper, ink::caution, ink::alarm});
    for (const Picture &photo : sheet.photos)
        painter.drawImage(photo.rect, QImage::fromData(photo.jpeg, "JPG"));
    for (const Run &run : sheet.runs)
        drawText(painter, faces, run);
}

void setUp(QPdfWriter &writer, PageSize size)
{
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setResolution(static_cast<int>(unitsPerInch));
    const QPageSize paper(size == PageSize::A4 ? QPageSize::A4 : QPageSize::Letter);
    writer.setPageLayout(QPageLayout(paper, QPageLayout::Portrait, QMarginsF(0, 0, 0, 0)));
}

core::Result<void> draw(QIODevice &device, const std::vector<Sheet> &sheets, const Typefaces &faces, const core::JobRecord &job, PageSize size, const Progress &progress)
{
    const PageFrame frame = frameOf(size);
    const Running running{runningHead(job), runningFoot(job), job.isClosed() ? QString() : tr("NOT CLOSED")};
    const int pages = static_cast<int>(sheets.size());
    QPdfWriter writer(&device);
    setUp(writer, size);
    QPainter painter;
    if (!painter.begin(&writer)) {
        const language::InScreenWords screen;
        return core::failure(core::ErrorCode::Io, tr("The record could not be begun. Choose another folder and export again."));
    }
    for (int page = 1; page <= pages; ++page) {
        if (page > 1)
            writer.newPage();
        drawHead(painter, faces, frame, running);
        drawSheet(painter, faces, sheets[static_cast<std::size_t>(page - 1)]);
        drawFoot(painter, faces, frame, running, tr("Page %1 of %2").arg(page).arg(pages));
        if (progress && progress(page, pages) == Going::Cancel)
            return cancelled();
    }
    return {};
}

Particulars particularsOf(const core::JobRecord &job)
{
    const core::Instant at = job.entries().empty() ? core::Instant::fromMilliseconds(0) : job.entries().back().said.at;
    return {tr("Record of a unit change: %1").arg(job.job().facts.workOrder), job.reg().organisation, at, job.head().hash};
}

core::Result<void> writeBytes(const QString &path, const QByteArray &bytes)
{
    return writeSafely(path, [&](QIODevice &device) -> core::Result<void> {
        if (device.write(bytes) != bytes.size())
            return core::failure(core::ErrorCode::Io, tr("The file cannot be written. Make room and export again."), {path, std::nullopt, std::nullopt});
        return {};
    });
}

} // namespace

core::Result<QByteArray> recordPdf(const core::JobRecord &job, const RecordOptions &options)
{
    if (!job.isClosed() && options.whenOpen == WhenOpen::Refuse)
        return core::failure(core::ErrorCode::Refused, tr("The job is not closed. Close it first, or export a draft that says so on each page."));
    const auto faces = Typefaces::find();
    if (!faces)
        return core::failure(faces.error());
    const Progress progress = inScreenWords(options.progress);
    const language::InRecordWords english;
    Flow flow(frameOf(options.pageSize), *faces, progress);
    setContents(flow, job, options.attachment);
    if (flow.isCancelled())
        return cancelled();
    QBuffer drawn;
    drawn.open(QIODevice::WriteOnly);
    if (const auto done = draw(drawn, flow.takeSheets(), *faces, job, options.pageSize, progress); !done)
        return core::failure(done.error());
    const Particulars particulars = particularsOf(job);
    const language::InScreenWords screen; // the words of the record are all said
    return finished(drawn.data(), particulars, flow.bookmarks());
}

core::Result<void> writeRecord(const core::JobRecord &job, const QString &path, const RecordOptions &options)
{
    const auto pdf = recordPdf(job, options);
    return pdf ? writeBytes(path, *pdf) : core::Result<void>(core::failure(pdf.error()));
}

core::Result<void> writeInterfacesCsv(const core::JobRecord &job, const QString &path)
{
    const auto csv = [&job] {
        const language::InRecordWords english;
        return core::reportCsv(*core::findReport(u"interfaces"), job);
    };
    return writeBytes(path, csv());
}

} // namespace record
