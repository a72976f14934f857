// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/labels/label_words.hpp"

#include <QCoreApplication>
#include <QFontMetricsF>

#include <algorithm>

namespace labels {

namespace {

using record::Face;

QString tr(const char *text) { return QCoreApplication::translate("Labels", text); }

struct Line {
    QString text;
    Face face;
};

QString cut(const QString &text, Face face, double width, const record::Typefaces &faces)
{
    return QFontMetricsF(faces.font(face)).elidedText(text, Qt::ElideRight, width);
}

/// The largest face that the id fits in; the smallest where it fits in none.
Face faceOfId(const QString &id, Face largest, double width, const record::Typefaces &faces)
{
    constexpr Face bySize[] = {Face::Title, Face::Heading, Face::Bold, Face::CellBold, Face::Small};
    const Face *from = std::find(std::begin(bySize), std::end(bySize), largest);
    const Face *fits = std::find_if(from, std::end(bySize), [&](Face face) { return faces.width(id, face) <= width; });
    return fits == std::end(bySize) ? Face::Small : *fits;
}

/// The name in as many lines as there is height for, at least one; none of no name.
QStringList nameLines(const QString &name, Face face, const QSizeF &room, const record::Typefaces &faces)
{
    if (name.isEmpty())
        return {};
    const QStringList all = faces.wrapped(name.simplified(), face, room.width());
    const qsizetype most = std::max<qsizetype>(1, static_cast<qsizetype>(room.height() / faces.lineHeight(face)));
    if (all.size() <= most)
        return all;
    QStringList lines = all.first(most - 1);
    lines << cut(all.sliced(most - 1).join(u' '), face, room.width(), faces);
    return lines;
}

double heightOf(const std::vector<Line> &lines, const record::Typefaces &faces)
{
    double height = 0;
    for (const Line &line : lines)
        height += faces.lineHeight(line.face);
    return height;
}

Face bold(Face face)
{
    if (face == Face::Cell)
        return Face::CellBold;
    return face == Face::Text ? Face::Bold : face;
}

/// What stands under the name.
std::vector<Line> below(const core::Label &label, Face words)
{
    std::vector<Line> lines;
    if (!label.tag.isEmpty())
        lines.push_back({tr("Tag %1").arg(label.tag), bold(words)});
    if (!label.zone.isEmpty())
        lines.push_back({tr("Zone %1").arg(label.zone), words});
    lines.push_back({label.workOrder, words});
    return lines;
}

} // namespace

std::vector<record::Run> wordsOf(const core::Label &label, const LabelSize &size, const QRectF &room, const record::Typefaces &faces)
{
    std::vector<Line> lines{{label.id, faceOfId(label.id, size.largestId, room.width(), faces)}};
    const std::vector<Line> last = below(label, size.words);
    const double left = room.height() - heightOf(lines, faces) - heightOf(last, faces);
    for (const QString &line : nameLines(label.name, size.words, {room.width(), left}, faces))
        lines.push_back({line, size.words});
    lines.insert(lines.end(), last.begin(), last.end());

    std::vector<record::Run> runs;
    double y = room.top() + std::max(0.0, (room.height() - heightOf(lines, faces)) / 2);
    for (const Line &line : lines) {
        runs.push_back({{room.left(), y + faces.ascent(line.face)}, cut(line.text, line.face, room.width(), faces), line.face, record::ink::text});
        y += faces.lineHeight(line.face);
    }
    return runs;
}

} // namespace labels
