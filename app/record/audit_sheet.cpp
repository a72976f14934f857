// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/record/audit_sheet.hpp"

#include <QCoreApplication>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include "app/language/in_record_words.hpp"
#include "app/record/flow.hpp"
#include "app/record/safe_file.hpp"

namespace record {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Record", text); }

Table factsOf(const core::AuditTable &audit)
{
    Table table{{{tr("Asked"), 1, Face::CellBold}, {tr("Answer"), 3}}, {}};
    for (const core::AuditFact &fact : audit.facts)
        table.rows.push_back({{}, {fact.name, fact.value}});
    return table;
}

/// A struck row keeps its number and what became of it legible without a line through them.
Table rowsOf(const core::AuditTable &audit)
{
    Table table;
    std::vector<std::size_t> shown;
    for (std::size_t i = 0; i < audit.columns.size(); ++i) {
        const core::ReportColumn &column = audit.columns[i];
        if (column.width == 0)
            continue;
        const bool isPlain = column.name == "entry"_L1 || column.name == "standing"_L1;
        shown.push_back(i);
        table.columns.push_back({QCoreApplication::translate("Report", column.title), static_cast<double>(column.width), Face::Cell, isPlain ? Strike::Not : Strike::Through});
    }
    for (const core::ReportRow &row : audit.rows) {
        TableRow laid{row.group, {}, row.standing == core::Standing::Stands ? Strike::Not : Strike::Through};
        for (const std::size_t i : shown)
            laid.cells.push_back(row.cells[i]);
        for (std::size_t i = 0; i < audit.columns.size(); ++i) {
            if (audit.columns[i].name == "hash"_L1 && !row.cells[i].isEmpty())
                laid.notes.push_back({row.cells[i], Face::Mono, ink::quiet});
        }
        table.rows.push_back(std::move(laid));
    }
    return table;
}

class Pages {
public:
    Pages(QPainter &painter, const Typefaces &faces, const PageFrame &frame) : m_painter(painter), m_faces(faces), m_frame(frame) {}

    void draw(const Sheet &sheet, const core::AuditTable &audit, const QString &pageText)
    {
        const double head = m_frame.body.top() - 4 * millimetre;
        text({m_frame.body.left(), head}, m_faces.wrapped(audit.title, Face::Small, m_frame.body.width()).first(), Face::Small, ink::quiet);
        rule(head + 1.2 * millimetre);
        for (const Patch &patch : sheet.patches)
            m_painter.fillRect(patch.rect, patch.colour);
        for (const Run &run : sheet.runs)
            text(run.baseline, run.text, run.face, run.colour);
        const double foot = m_frame.body.bottom() + 3 * millimetre;
        const double base = foot + 1.2 * m_faces.lineHeight(Face::Small);
        rule(foot);
        text({m_frame.body.left(), base}, audit.foot, Face::Mono, ink::quiet);
        text({m_frame.body.right() - m_faces.width(pageText, Face::Small), base}, pageText, Face::Small, ink::text);
        text({m_frame.body.left(), base + m_faces.lineHeight(Face::Small)}, tr("An extract, and no release. The signed entries of the store govern what it says."), Face::Small, ink::quiet);
    }

private:
    void rule(double y) { m_painter.fillRect(QRectF(m_frame.body.left(), y, m_frame.body.width(), 0.6 * point), ink::rule); }
    void text(QPointF at, const QString &words, Face face, const QColor &colour)
    {
        m_painter.setFont(m_faces.font(face));
        m_painter.setPen(colour);
        m_painter.drawText(at, words);
    }

    QPainter &m_painter;
    const Typefaces &m_faces;
    const PageFrame &m_frame;
};

std::vector<Sheet> sheetsOf(const core::AuditTable &table, const Typefaces &faces, PageSize size)
{
    const language::InRecordWords english;
    Flow flow(frameOf(size), faces, {});
    flow.title(table.title);
    flow.table(factsOf(table));
    flow.space(6 * point);
    if (table.rows.empty())
        flow.paragraph(table.whenEmpty);
    else
        flow.table(rowsOf(table));
    return flow.takeSheets();
}

core::Result<void> draw(QIODevice &device, const std::vector<Sheet> &sheets, const Typefaces &faces, const core::AuditTable &audit, PageSize size)
{
    const language::InRecordWords english;
    QPdfWriter writer(&device);
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setResolution(static_cast<int>(unitsPerInch));
    writer.setPageLayout(QPageLayout(QPageSize(size == PageSize::A4 ? QPageSize::A4 : QPageSize::Letter), QPageLayout::Portrait, QMarginsF(0, 0, 0, 0)));
    writer.setTitle(audit.title);
    writer.setCreator(u"Remate"_s);
    QPainter painter;
    if (!painter.begin(&writer)) {
        const language::InScreenWords screen;
        return core::failure(core::ErrorCode::Io, tr("The file could not be begun. Choose another folder and export again."));
    }
    const PageFrame frame = frameOf(size);
    Pages pages(painter, faces, frame);
    for (std::size_t page = 0; page < sheets.size(); ++page) {
        if (page > 0)
            writer.newPage();
        pages.draw(sheets[page], audit, tr("Page %1 of %2").arg(page + 1).arg(sheets.size()));
    }
    return {};
}

} // namespace

core::Result<void> writeAuditPdf(const core::AuditTable &table, const QString &path, PageSize size)
{
    const auto faces = Typefaces::find();
    if (!faces)
        return core::failure(faces.error());
    const std::vector<Sheet> sheets = sheetsOf(table, *faces, size);
    return writeSafely(path, [&](QIODevice &device) { return draw(device, sheets, *faces, table, size); });
}

core::Result<void> writeAuditCsv(const core::AuditTable &table, const QString &path)
{
    const QByteArray bytes = core::auditCsv(table);
    return writeSafely(path, [&](QIODevice &device) -> core::Result<void> {
        if (device.write(bytes) != bytes.size())
            return core::failure(core::ErrorCode::Io, tr("The file cannot be written. Make room and export again."), {path, std::nullopt, std::nullopt});
        return {};
    });
}

std::optional<PageSize> parsePageSize(const QString &text)
{
    if (text.compare(u"a4", Qt::CaseInsensitive) == 0)
        return PageSize::A4;
    return text.compare(u"letter", Qt::CaseInsensitive) == 0 ? std::optional(PageSize::Letter) : std::nullopt;
}

} // namespace record
