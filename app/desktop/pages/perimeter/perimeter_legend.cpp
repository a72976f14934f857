// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/perimeter/perimeter_legend.hpp"

#include <QFontMetricsF>
#include <QPainter>

#include <array>
#include <cmath>

#include "app/desktop/pages/perimeter/perimeter_picture.hpp"
#include "app/desktop/parts/stage_glyph.hpp"

namespace desktop {

namespace {

double sideOf(const QFontMetricsF &metrics) { return metrics.height() * 1.25; }

/// As on the boundary: what is done is quiet.
QColor colourOf(const LegendLine &line, Shade shade)
{
    switch (line.shape) {
    case LegendLine::Shape::Stage: return *line.stage == core::Stage::Inspected ? quietColour(shade) : stageColour(*line.stage, shade);
    case LegendLine::Shape::Mount: return quietColour(shade);
    case LegendLine::Shape::Applied: return cautionColour(shade);
    }
    Q_UNREACHABLE();
}

void paintShape(QPainter &painter, const LegendLine &line, const QRectF &area, const QColor &colour)
{
    switch (line.shape) {
    case LegendLine::Shape::Stage: paintStageGlyph(painter, area, *line.stage, colour); break;
    case LegendLine::Shape::Mount: paintMountMark(painter, QRectF(area.left(), area.center().y() - area.height() / 4, area.width(), area.height() / 2), colour); break;
    case LegendLine::Shape::Applied: paintAppliedMark(painter, area, colour); break;
    }
}

} // namespace

std::vector<LegendLine> legendOf(const picture::Perimeter &perimeter)
{
    std::array<int, 5> stages{};
    int mounts = 0;
    int applied = 0;
    for (const picture::PerimeterZone &zone : perimeter) {
        for (const picture::PerimeterItem &item : zone.items) {
            ++(item.stage ? stages[static_cast<std::size_t>(*item.stage)] : applied);
            mounts += item.isMount ? 1 : 0;
        }
    }
    std::vector<LegendLine> lines;
    const auto add = [&](LegendLine::Shape shape, const std::optional<core::Stage> &stage, const QString &word, int count) {
        if (count > 0)
            lines.push_back({shape, stage, PerimeterLegend::tr("%1 %2").arg(word).arg(count)});
    };
    for (const core::Stage stage : {core::Stage::Disconnected, core::Stage::Reconnected, core::Stage::Secured, core::Stage::Inspected, core::Stage::Connected})
        add(LegendLine::Shape::Stage, stage, core::stageWord(stage), stages[static_cast<std::size_t>(stage)]);
    add(LegendLine::Shape::Mount, {}, PerimeterLegend::tr("Mount"), mounts);
    add(LegendLine::Shape::Applied, {}, PerimeterLegend::tr("Applied for the job"), applied);
    return lines;
}

namespace {

/// Where each shape stands, with its word to its right: side by side, and on as many rows as that takes.
struct Placed {
    double left;
    int row;
};

std::vector<Placed> placesOf(const std::vector<LegendLine> &lines, double width, const QFontMetricsF &metrics)
{
    std::vector<Placed> places;
    const double gap = metrics.averageCharWidth();
    Placed next{0, 0};
    for (const LegendLine &line : lines) {
        const double wide = sideOf(metrics) + gap + metrics.horizontalAdvance(line.words);
        if (next.left > 0 && next.left + wide > width)
            next = {0, next.row + 1};
        places.push_back(next);
        next.left += wide + gap * 3;
    }
    return places;
}

double rowOf(const QFontMetricsF &metrics) { return sideOf(metrics) + 4; }

} // namespace

double legendHeight(const std::vector<LegendLine> &lines, double width, const QFont &font)
{
    const QFontMetricsF metrics(font);
    const auto places = placesOf(lines, width, metrics);
    return rowOf(metrics) * (places.empty() ? 1 : places.back().row + 1);
}

void paintLegend(QPainter &painter, const std::vector<LegendLine> &lines, const QRectF &area, const QFont &font, Shade shade)
{
    const QFontMetricsF metrics(font);
    const double side = sideOf(metrics);
    const double row = rowOf(metrics);
    const auto places = placesOf(lines, area.width(), metrics);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(font);
    for (std::size_t at = 0; at < lines.size(); ++at) {
        const QColor colour = colourOf(lines[at], shade);
        const double left = area.left() + places[at].left;
        const double top = area.top() + row * places[at].row;
        paintShape(painter, lines[at], QRectF(left, top + (row - side) / 2, side, side), colour);
        painter.setPen(colour);
        painter.drawText(QPointF(left + side + metrics.averageCharWidth(), top + (row - metrics.height()) / 2 + metrics.ascent()), lines[at].words);
    }
}

PerimeterLegend::PerimeterLegend(QWidget *parent) : QWidget(parent) { setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed); }

int PerimeterLegend::heightForWidth(int width) const { return static_cast<int>(std::ceil(legendHeight(m_lines, width, font()))); }

QSize PerimeterLegend::sizeHint() const { return {fontMetrics().height() * 40, static_cast<int>(std::ceil(rowOf(QFontMetricsF(font()))))}; }

void PerimeterLegend::show(const picture::Perimeter &perimeter)
{
    m_lines = legendOf(perimeter);
    QStringList words;
    for (const LegendLine &line : m_lines)
        words << line.words;
    setAccessibleName(words.join(QStringLiteral(", ")));
    setFixedHeight(heightForWidth(width()));
    update();
}

void PerimeterLegend::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    setFixedHeight(heightForWidth(width()));
}

void PerimeterLegend::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    paintLegend(painter, m_lines, QRectF(rect()), font(), shadeAround(this));
}

} // namespace desktop
