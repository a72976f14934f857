// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "app/record/flow.hpp"

namespace record {

namespace {

constexpr double between = 6 * millimetre;
constexpr double highest = 62 * millimetre;
constexpr double placeOfMissing = 24 * millimetre;
constexpr double frameWidth = 0.6 * point;
constexpr double gap = 2 * point;

/// A caption has no limit of its own; the entry further on has all of it.
constexpr qsizetype mostLines = 14;

struct TileLine {
    QString text;
    Face face;
    QColor colour;
    Strike strike;
};

} // namespace

/// One photo with the lines under it, in a column of that width.
struct Flow::LaidPhoto {
    QSizeF picture;
    std::vector<TileLine> lines;
    double linesHeight = 0;
    double whole() const { return picture.height() + gap + linesHeight; }
};

Flow::LaidPhoto Flow::laidPhoto(const PhotoTile &tile, double width) const
{
    LaidPhoto laid;
    const auto add = [&](const QString &text, Face face, const QColor &colour, Strike strike) {
        if (text.isEmpty())
            return;
        QStringList lines = m_faces.wrapped(text, face, width);
        if (lines.size() > mostLines) {
            lines.resize(mostLines);
            lines.last() += QStringLiteral(" …");
        }
        for (const QString &one : lines) {
            laid.lines.push_back({one, face, colour, strike});
            laid.linesHeight += m_faces.lineHeight(face);
        }
    };
    if (tile.missing.isEmpty()) {
        // A small picture is not blown up beyond the dots of a screen.
        const double dot = unitsPerInch / 96;
        const QSizeF natural(tile.pixels.width() * dot, tile.pixels.height() * dot);
        const QSizeF place(width, highest);
        laid.picture = natural.width() > place.width() || natural.height() > place.height() ? natural.scaled(place, Qt::KeepAspectRatio) : natural;
    } else {
        laid.picture = {width, placeOfMissing};
    }
    add(tile.title, Face::CellBold, ink::text, tile.strike);
    add(tile.caption, Face::Cell, ink::text, tile.strike);
    for (const QString &mark : tile.marks)
        add(mark, Face::Cell, ink::text, tile.strike);
    add(tile.proof, Face::Small, ink::quiet, Strike::Not);
    add(tile.note, Face::CellBold, ink::alarm, Strike::Not);
    return laid;
}

void Flow::placePhoto(const PhotoTile &tile, const LaidPhoto &laid, double x)
{
    const double top = m_y;
    const QRectF picture(QPointF(x, top), laid.picture);
    const bool isStruck = tile.strike == Strike::Through;
    const QColor frame = isStruck || !tile.missing.isEmpty() ? ink::alarm : ink::rule;
    sheet().patches.push_back({picture, frame});
    const QRectF inside = picture.marginsRemoved({frameWidth, frameWidth, frameWidth, frameWidth});
    if (tile.missing.isEmpty()) {
        sheet().photos.push_back({inside, tile.jpeg});
    } else {
        sheet().patches.push_back({inside, ink::group});
        QStringList lines = m_faces.wrapped(tile.missing, Face::Cell, inside.width() - 4 * gap);
        lines.resize(std::min<qsizetype>(lines.size(), 6));
        m_y = top + 2 * gap;
        for (const QString &one : lines)
            line(one, Face::Cell, ink::alarm, x + 2 * gap);
    }
    m_y = top + laid.picture.height() + gap;
    for (const TileLine &one : laid.lines) {
        if (one.strike == Strike::Through)
            strikeThrough(one.text, one.face, x);
        line(one.text, one.face, one.strike == Strike::Through ? ink::quiet : one.colour, x);
    }
}

void Flow::photos(const std::vector<PhotoTile> &row)
{
    if (isCancelled() || row.empty())
        return;
    const double column = (width() - between * static_cast<double>(row.size() < 2 ? 1 : row.size() - 1)) / static_cast<double>(std::max<std::size_t>(2, row.size()));
    std::vector<LaidPhoto> laid;
    double height = 0;
    for (const PhotoTile &tile : row) {
        laid.push_back(laidPhoto(tile, column));
        height = std::max(height, laid.back().whole());
    }
    need(height);
    const double top = m_y;
    for (std::size_t i = 0; i < row.size(); ++i) {
        m_y = top;
        placePhoto(row[i], laid[i], left() + static_cast<double>(i) * (column + between));
    }
    m_y = top + height;
    space(4 * millimetre);
}

} // namespace record
