// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>

#include <algorithm>

#include "app/record/column_widths.hpp"
#include "app/record/flow.hpp"

namespace record {

namespace {

constexpr double padX = 3 * point;
constexpr double padY = 2.2 * point;
constexpr double noteIndent = 12 * point;
constexpr double hairline = 0.5 * point;

/// Names have no limit of their own; a heading that filled the page would leave no room for what it heads.
constexpr qsizetype mostHeadingLines = 3;

QString continued(const QString &group)
{
    return QCoreApplication::translate("Record", "%1  (continued)").arg(group);
}

} // namespace

/// A row broken into lines: one list of lines a cell, and the lines of its notes.
struct Flow::LaidRow {
    std::vector<QStringList> cells;
    std::vector<Note> notes; ///< one a line
    qsizetype lines = 1; ///< of the tallest cell
    Strike strike = Strike::Not;
    double lineHeight = 0;
    double notesHeight = 0;
    double height(qsizetype ofLines) const { return static_cast<double>(ofLines) * lineHeight + 2 * padY; }
    double whole() const { return height(lines) + notesHeight; }
};

/// Of the words that a column can be made wide enough for: a hash is broken wherever it stands.
double Flow::widestWord(const QString &text, Face face) const
{
    QHash<QString, double> &known = m_wordWidths[face];
    double widest = 0;
    for (const QString &word : Typefaces::unbrokenParts(text)) {
        auto at = known.find(word);
        if (at == known.end())
            at = known.insert(word, m_faces.width(word, face));
        if (*at < width() / 4)
            widest = std::max(widest, *at);
    }
    return widest;
}

double Flow::leastWidth(const Table &table, std::size_t column) const
{
    double widest = widestWord(table.columns[column].title, Face::CellBold);
    for (const TableRow &row : table.rows) {
        if (column < row.cells.size())
            widest = std::max(widest, widestWord(row.cells[column], table.columns[column].face));
    }
    return widest + 2 * padX + 1 * point;
}

std::vector<double> Flow::widthsOf(const Table &table) const
{
    std::vector<double> shares;
    std::vector<double> least;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        shares.push_back(table.columns[i].share);
        least.push_back(leastWidth(table, i));
    }
    return columnWidths(width(), shares, least);
}

void Flow::strikeThrough(const QString &text, Face face, double x)
{
    const double middle = m_y + m_faces.ascent(face) * 0.68;
    sheet().patches.push_back({QRectF(x, middle, m_faces.width(text, face), 0.6 * point), ink::alarm});
}

Flow::LaidRow Flow::laidRow(const Table &table, const TableRow &row, const std::vector<double> &widths) const
{
    LaidRow laid;
    laid.strike = row.strike;
    laid.lineHeight = m_faces.lineHeight(Face::Cell);
    for (std::size_t i = 0; i < table.columns.size() && i < row.cells.size(); ++i) {
        laid.cells.push_back(m_faces.wrapped(row.cells[i], table.columns[i].face, widths[i] - 2 * padX));
        laid.lines = std::max(laid.lines, laid.cells.back().size());
    }
    for (const Note &note : row.notes) {
        for (const QString &one : m_faces.wrapped(note.text, note.face, width() - noteIndent - 3 * padX)) {
            laid.notes.push_back({one, note.face, note.colour});
            laid.notesHeight += m_faces.lineHeight(note.face);
        }
    }
    if (!laid.notes.empty())
        laid.notesHeight += padY;
    return laid;
}

double Flow::headHeight(const Table &table, const std::vector<double> &widths) const
{
    qsizetype lines = 1;
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        lines = std::max(lines, m_faces.wrapped(table.columns[i].title, Face::CellBold, widths[i] - 2 * padX).size());
    return static_cast<double>(lines) * m_faces.lineHeight(Face::CellBold) + 2 * padY;
}

void Flow::tableHead(const Table &table, const std::vector<double> &widths)
{
    const double height = headHeight(table, widths);
    sheet().patches.push_back({QRectF(left(), m_y, width(), height), ink::head});
    double x = left();
    const double top = m_y;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        m_y = top + padY;
        for (const QString &one : m_faces.wrapped(table.columns[i].title, Face::CellBold, widths[i] - 2 * padX))
            line(one, Face::CellBold, ink::text, x + padX);
        x += widths[i];
    }
    m_y = top + height;
}

QStringList Flow::groupLines(const QString &group) const
{
    QStringList lines = m_faces.wrapped(group, Face::Group, width() - 2 * padX);
    if (lines.size() <= mostHeadingLines)
        return lines;
    lines.resize(mostHeadingLines);
    lines.last() += QStringLiteral(" …");
    return lines;
}

double Flow::groupHeight(const QString &group) const
{
    if (group.isEmpty())
        return 0;
    return static_cast<double>(groupLines(group).size()) * m_faces.lineHeight(Face::Group) + 2 * padY;
}

void Flow::groupHead(const QString &group, bool isContinued)
{
    if (group.isEmpty())
        return;
    const QString text = isContinued ? continued(group) : group;
    const double top = m_y;
    const double height = groupHeight(text);
    sheet().patches.push_back({QRectF(left(), top, width(), height), ink::group});
    m_y = top + padY;
    for (const QString &one : groupLines(text))
        line(one, Face::Group, ink::text, left() + padX);
    m_y = top + height;
    rule(m_y - hairline, hairline, ink::rule);
}

void Flow::placeLines(const Table &table, const LaidRow &row, const std::vector<double> &widths, qsizetype fromLine, qsizetype toLine)
{
    const double top = m_y;
    double x = left();
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const TableColumn &column = table.columns[i];
        const bool isStruck = row.strike == Strike::Through && column.whenStruck == Strike::Through;
        m_y = top + padY;
        for (qsizetype at = fromLine; at < std::min(toLine, row.cells[i].size()); ++at) {
            const QString &text = row.cells[i][at];
            if (isStruck && !text.isEmpty())
                strikeThrough(text, column.face, x + padX);
            line(text, column.face, isStruck ? ink::quiet : ink::text, x + padX);
            m_y += row.lineHeight - m_faces.lineHeight(column.face);
        }
        x += widths[i];
    }
    m_y = top + row.height(toLine - fromLine);
}

void Flow::placeNotes(const LaidRow &row)
{
    for (const Note &note : row.notes) {
        need(m_faces.lineHeight(note.face));
        line(note.text, note.face, note.colour, left() + noteIndent);
    }
    if (!row.notes.empty())
        space(padY);
}

void Flow::placeGiant(const Table &table, const LaidRow &row, const std::vector<double> &widths, const QString &group)
{
    // As many whole lines as there is room for, page after page.
    for (qsizetype from = 0; from < row.lines && !isCancelled();) {
        const auto fitting = static_cast<qsizetype>((room() - 2 * padY) / row.lineHeight);
        if (fitting < 1) {
            newPage();
            tableHead(table, widths);
            groupHead(group, true);
            continue;
        }
        const qsizetype to = std::min(row.lines, from + fitting);
        placeLines(table, row, widths, from, to);
        from = to;
    }
}

double Flow::firstRowHeight(const Table &table) const
{
    const std::vector<double> widths = widthsOf(table);
    const TableRow &first = table.rows.front();
    const double head = headHeight(table, widths) + groupHeight(first.group);
    const LaidRow laid = laidRow(table, first, widths);
    return head + (laid.whole() > m_frame.body.height() - head ? laid.height(1) : laid.whole());
}

std::vector<int> Flow::table(const QString &text, const Table &table, int depth)
{
    if (isCancelled() || table.rows.empty())
        return {};
    const double headings = static_cast<double>(m_faces.wrapped(text, Face::Heading, width()).size()) * m_faces.lineHeight(Face::Heading);
    need(headings + 20 * point + firstRowHeight(table)); // with what stands above and below a heading
    heading(text, depth);
    return this->table(table);
}

std::vector<int> Flow::table(const Table &table)
{
    std::vector<int> pages;
    if (isCancelled() || table.rows.empty())
        return pages;
    const std::vector<double> widths = widthsOf(table);
    const double head = headHeight(table, widths);
    const double body = m_frame.body.height();
    QString group;
    bool isHeaded = false;
    for (const TableRow &row : table.rows) {
        if (isCancelled())
            return pages;
        const LaidRow laid = laidRow(table, row, widths);
        const bool isNewGroup = row.group != group || !isHeaded;
        const bool isGiant = laid.whole() > body - head - groupHeight(continued(row.group));
        const double wanted = (isHeaded ? 0 : head) + (isNewGroup ? groupHeight(row.group) : 0) + (isGiant ? laid.height(1) : laid.whole());
        const bool turns = wanted > room();
        if (turns)
            newPage();
        if (turns || !isHeaded)
            tableHead(table, widths);
        if (isNewGroup && !row.bookmark.isEmpty())
            mark(row.bookmark, m_depth + 1);
        if (turns || isNewGroup)
            groupHead(row.group, !isNewGroup);
        isHeaded = true;
        group = row.group;
        pages.push_back(static_cast<int>(m_sheets.size()));

        if (isGiant)
            placeGiant(table, laid, widths, row.group);
        else
            placeLines(table, laid, widths, 0, laid.lines);
        placeNotes(laid);
        rule(m_y - hairline, hairline, ink::rule);
    }
    space(2 * point);
    return pages;
}

} // namespace record
