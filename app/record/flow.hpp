// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QHash>
#include <QSize>
#include <QString>
#include <QStringList>

#include <map>
#include <vector>

#include "app/record/sheet.hpp"
#include "app/record/typeface.hpp"

namespace record {

enum class Strike { Through, Not };

struct TableColumn {
    QString title;
    double share; ///< of the width, relative to the other columns
    Face face = Face::Cell;
    Strike whenStruck = Strike::Through;
};

/// Text under a row, as wide as the table.
struct Note {
    QString text;
    Face face;
    QColor colour;
};

struct TableRow {
    QString group; ///< a heading over the rows that share it; empty for none
    std::vector<QString> cells;
    Strike strike = Strike::Not;
    std::vector<Note> notes{};
    QString bookmark{}; ///< what the heading of its group is called among the bookmarks; empty for none
};

struct Table {
    std::vector<TableColumn> columns;
    std::vector<TableRow> rows;
};

/// A photo with what stands under it.
struct PhotoTile {
    QByteArray jpeg;
    QSize pixels;
    QString title;
    QString caption;
    QStringList marks; ///< a line for each mark on it
    QString proof;   ///< who, when, digest
    QString note;    ///< that it was struck, and why; empty for none
    QString missing; ///< why there is no picture, in its place; empty where there is one
    Strike strike = Strike::Not;
};

/// Lays text and tables out, page after page. A table's head and the heading of its group come again on each page; a
/// row stays whole unless it is taller than a page, and then it is divided between two of its lines.
class Flow {
public:
    /// `progress` is told of each page begun; once it says Cancel, everything that follows is passed over.
    Flow(PageFrame frame, Typefaces faces, Progress progress);

    void title(const QString &text);
    /// A section, or with depth 1 a part of the one before; each has its bookmark, and groups of rows below have theirs under it.
    void heading(const QString &text, int depth = 0);
    /// A table under its heading, which stands on the page of the first row. Answers as table() does.
    std::vector<int> table(const QString &heading, const Table &table, int depth = 0);
    void paragraph(const QString &text, Face face = Face::Text, const QColor &colour = ink::text);
    /// A framed paragraph with a word in front: the verdict, a caution.
    void box(const QString &word, const QString &text, const QColor &colour);
    /// Answers the page on which each row begins, counted from 1.
    std::vector<int> table(const Table &table);
    /// The picture of a lift under a line that says which one it is.
    void lift(const QString &which, const picture::Lift &lift);
    /// Photos side by side, at most half the page wide each, with their lines under them.
    void photos(const std::vector<PhotoTile> &row);
    void space(double height);

    bool isCancelled() const { return m_going == Going::Cancel; }
    std::vector<Sheet> takeSheets() { return std::move(m_sheets); }
    /// Every heading, in order.
    const std::vector<Bookmark> &bookmarks() const { return m_bookmarks; }

private:
    struct LaidRow;
    struct LaidPhoto;
    Sheet &sheet() { return m_sheets.back(); }
    double left() const { return m_frame.body.left(); }
    double width() const { return m_frame.body.width(); }
    double room() const { return m_frame.body.bottom() - m_y; }
    void mark(const QString &title, int depth);
    void newPage();
    void need(double height);
    double firstRowHeight(const Table &table) const;
    void rule(double y, double thickness, const QColor &colour);
    double line(const QString &text, Face face, const QColor &colour, double x);

    void strikeThrough(const QString &text, Face face, double x);
    LaidPhoto laidPhoto(const PhotoTile &tile, double width) const;
    void placePhoto(const PhotoTile &tile, const LaidPhoto &laid, double x);

    double widestWord(const QString &text, Face face) const;
    double leastWidth(const Table &table, std::size_t column) const;
    std::vector<double> widthsOf(const Table &table) const;
    LaidRow laidRow(const Table &table, const TableRow &row, const std::vector<double> &widths) const;
    void tableHead(const Table &table, const std::vector<double> &widths);
    void groupHead(const QString &group, bool isContinued);
    QStringList groupLines(const QString &group) const;
    double groupHeight(const QString &group) const;
    double headHeight(const Table &table, const std::vector<double> &widths) const;
    void placeLines(const Table &table, const LaidRow &row, const std::vector<double> &widths, qsizetype fromLine, qsizetype toLine);
    void placeGiant(const Table &table, const LaidRow &row, const std::vector<double> &widths, const QString &group);
    void placeNotes(const LaidRow &row);

    PageFrame m_frame;
    Typefaces m_faces;
    Progress m_progress;
    std::vector<Sheet> m_sheets;
    std::vector<Bookmark> m_bookmarks;
    int m_depth = 0; ///< of the last heading
    mutable std::map<Face, QHash<QString, double>> m_wordWidths; ///< measured once: the same words come again and again
    double m_y = 0;
    Going m_going = Going::On;
};

} // namespace record
