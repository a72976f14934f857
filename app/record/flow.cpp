// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/record/flow.hpp"

#include <algorithm>

namespace record {

namespace {

constexpr double gap = 4 * point;

} // namespace

Flow::Flow(PageFrame frame, Typefaces faces, Progress progress)
    : m_frame(frame), m_faces(std::move(faces)), m_progress(std::move(progress))
{
    newPage();
}

void Flow::newPage()
{
    m_sheets.emplace_back();
    m_y = m_frame.body.top();
    if (m_progress)
        m_going = m_progress(static_cast<int>(m_sheets.size()), 0);
}

void Flow::need(double height)
{
    if (height > room() && m_y > m_frame.body.top())
        newPage();
}

void Flow::space(double height) { m_y = std::min(m_y + height, m_frame.body.bottom()); }

void Flow::rule(double y, double thickness, const QColor &colour)
{
    sheet().patches.push_back({QRectF(left(), y, width(), thickness), colour});
}

double Flow::line(const QString &text, Face face, const QColor &colour, double x)
{
    const double height = m_faces.lineHeight(face);
    sheet().runs.push_back({QPointF(x, m_y + m_faces.ascent(face)), text, face, colour});
    m_y += height;
    return height;
}

void Flow::mark(const QString &title, int depth) { m_bookmarks.push_back({title, depth, m_sheets.size() - 1, m_y}); }

void Flow::title(const QString &text)
{
    mark(text, 0);
    for (const QString &one : m_faces.wrapped(text, Face::Title, width())) {
        need(m_faces.lineHeight(Face::Title));
        line(one, Face::Title, ink::text, left());
    }
    space(gap);
}

void Flow::heading(const QString &text, int depth)
{
    if (isCancelled())
        return;
    const Face face = depth == 0 ? Face::Heading : Face::Bold;
    const double thickness = (depth == 0 ? 1.2 : 0.6) * point;
    // A heading at the foot of a page heads nothing: it wants room for a few rows.
    space((depth == 0 ? 3 : 2) * gap);
    need(m_faces.lineHeight(face) + 60 * point);
    m_depth = depth;
    mark(text, depth);
    for (const QString &one : m_faces.wrapped(text, face, width()))
        line(one, face, ink::text, left());
    rule(m_y, thickness, ink::text);
    space(thickness + gap);
}

void Flow::paragraph(const QString &text, Face face, const QColor &colour)
{
    if (isCancelled())
        return;
    for (const QString &one : m_faces.wrapped(text, face, width())) {
        need(m_faces.lineHeight(face));
        line(one, face, colour, left());
    }
    space(gap / 2);
}

void Flow::box(const QString &word, const QString &text, const QColor &colour)
{
    if (isCancelled())
        return;
    constexpr double padding = 7 * point;
    constexpr double bar = 3 * point;
    const double inner = width() - 2 * padding - bar;
    const QStringList lines = m_faces.wrapped(text, Face::Text, inner);
    const double height = m_faces.lineHeight(Face::Heading) + static_cast<double>(lines.size()) * m_faces.lineHeight(Face::Text) + 2 * padding;
    if (height > m_frame.body.height()) {
        // No frame holds it; it runs on as plain text instead.
        paragraph(word, Face::Bold, colour);
        paragraph(text);
        return;
    }
    need(height);
    const double top = m_y;
    sheet().patches.push_back({QRectF(left(), top, width(), height), ink::group});
    sheet().patches.push_back({QRectF(left(), top, bar, height), colour});
    m_y += padding;
    line(word, Face::Heading, colour, left() + bar + padding);
    for (const QString &one : lines)
        line(one, Face::Text, ink::text, left() + bar + padding);
    m_y = top + height;
    space(2 * gap);
}

void Flow::lift(const QString &which, const picture::Lift &lift)
{
    if (isCancelled())
        return;
    constexpr double height = 84 * millimetre;
    space(2 * gap);
    need(m_faces.lineHeight(Face::Bold) + gap + height);
    line(which, Face::Bold, ink::text, left());
    space(gap);
    const QRectF area(left(), m_y, width(), height);
    sheet().lifts.push_back(picture::layLift(lift, area, m_faces.font(Face::Text)));
    m_y += height;
    space(gap);
}

} // namespace record
