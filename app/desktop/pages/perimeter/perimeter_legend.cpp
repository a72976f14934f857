// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/perimeter/perimeter_legend.hpp"

#include <QPainter>

#include <array>

#include "app/desktop/pages/perimeter/perimeter_picture.hpp"
#include "app/desktop/parts/stage_glyph.hpp"
#include "app/desktop/parts/theme.hpp"

namespace desktop {

PerimeterLegend::PerimeterLegend(QWidget *parent) : QWidget(parent) { setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed); }

int PerimeterLegend::side() const { return fontMetrics().height() * 5 / 4; }
QSize PerimeterLegend::sizeHint() const { return {side() * 30, side() + 4}; }

void PerimeterLegend::show(const picture::Perimeter &perimeter)
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
    m_lines.clear();
    const auto add = [&](Shape shape, const std::optional<core::Stage> &stage, const QString &word, int count) {
        if (count > 0)
            m_lines.push_back({shape, stage, tr("%1 %2").arg(word).arg(count)});
    };
    for (const core::Stage stage : {core::Stage::Disconnected, core::Stage::Reconnected, core::Stage::Secured, core::Stage::Inspected, core::Stage::Connected})
        add(Shape::Stage, stage, core::stageWord(stage), stages[static_cast<std::size_t>(stage)]);
    add(Shape::Mount, {}, tr("Mount"), mounts);
    add(Shape::Applied, {}, tr("Applied for the job"), applied);
    QStringList words;
    for (const Line &line : m_lines)
        words << line.words;
    setAccessibleName(words.join(QStringLiteral(", ")));
    update();
}

void PerimeterLegend::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Shade shade = shadeAround(this);
    const int gap = fontMetrics().averageCharWidth();
    int left = 0;
    for (const Line &line : m_lines) {
        const QRectF area(left, (height() - side()) / 2.0, side(), side());
        // As on the boundary: what is done is quiet.
        const QColor colour = line.stage && *line.stage != core::Stage::Inspected ? stageColour(*line.stage, shade) : line.shape == Shape::Applied ? cautionColour(shade) : quietColour(shade);
        switch (line.shape) {
        case Shape::Stage: paintStageGlyph(painter, area, *line.stage, colour); break;
        case Shape::Mount: paintMountMark(painter, QRectF(area.left(), area.center().y() - side() / 4.0, side(), side() / 2.0), colour); break;
        case Shape::Applied: paintAppliedMark(painter, area, colour); break;
        }
        left += side() + gap;
        painter.setPen(colour);
        const int width = fontMetrics().horizontalAdvance(line.words);
        painter.drawText(QRect(left, 0, width + gap, height()), Qt::AlignVCenter | Qt::AlignLeft, line.words);
        left += width + gap * 3;
    }
}

} // namespace desktop
