// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/seam.hpp"

#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <numeric>

#include "app/desktop/parts/stage_glyph.hpp"
#include "app/desktop/parts/theme.hpp"
#include "core/job/stage.hpp"

namespace desktop {

Seam::Seam(QWidget *parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("The job as a seam: one coupling for each interface"));
}

void Seam::show(std::shared_ptr<const core::JobState> state)
{
    m_state = std::move(state);
    update();
}

int Seam::labelHeight() const { return fontMetrics().height(); }

QSize Seam::sizeHint() const { return {fontMetrics().height() * 30, fontMetrics().height() * 5 / 2}; }
QSize Seam::minimumSizeHint() const { return {fontMetrics().height() * 8, fontMetrics().height() * 5 / 2}; }

std::vector<Seam::Stitch> Seam::stitches() const
{
    std::vector<Stitch> all;
    if (!m_state || m_state->items.empty())
        return all;
    const auto &items = m_state->items;
    std::vector<QString> zones;
    for (const core::Zone &zone : m_state->facts.zones)
        zones.push_back(zone.name);
    const auto placeOf = [&](std::size_t item) { return std::find(zones.begin(), zones.end(), items[item].listed.zone) - zones.begin(); };
    std::vector<std::size_t> order(items.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return placeOf(a) < placeOf(b); });

    // A gap between zones is worth one stitch and a half.
    constexpr double gap = 1.5;
    const double step = std::min(width() / (static_cast<double>(order.size()) + gap * static_cast<double>(zones.size())), (height() - labelHeight()) * 1.2);
    double x = 0;
    for (std::size_t i = 0; i < order.size(); ++i) {
        const bool isFirst = i == 0 || items[order[i]].listed.zone != items[order[i - 1]].listed.zone;
        x += isFirst && i > 0 ? step * gap : 0;
        all.push_back({QRectF(x, labelHeight(), step, height() - labelHeight()), order[i], isFirst});
        x += step;
    }
    return all;
}

const core::InterfaceState *Seam::itemAt(const QPointF &point) const
{
    for (const Stitch &stitch : stitches()) {
        if (stitch.area.contains(point))
            return &m_state->items[stitch.item];
    }
    return nullptr;
}

void Seam::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    const Shade shade = shadeAround(this);
    for (const Stitch &stitch : stitches()) {
        const core::InterfaceState &item = m_state->items[stitch.item];
        const core::Stage stage = core::stageOf(item);
        if (stitch.isFirstOfZone) {
            painter.setPen(quietColour(shade));
            painter.drawText(QPointF(stitch.area.left(), fontMetrics().ascent()), item.listed.zone);
        }
        paintStageGlyph(painter, stitch.area.adjusted(0.5, 0, -0.5, 0), stage, stageColour(stage, shade));
    }
}

void Seam::mousePressEvent(QMouseEvent *event)
{
    if (const auto *item = itemAt(event->position()))
        emit chosen(item->listed.id);
}

bool Seam::event(QEvent *event)
{
    if (event->type() == QEvent::ToolTip) {
        auto *help = static_cast<QHelpEvent *>(event);
        const auto *item = itemAt(help->pos());
        QToolTip::showText(help->globalPos(), item ? tr("%1 %2: %3").arg(item->listed.id.text(), item->listed.name, core::stageWord(core::stageOf(*item))) : QString(), this);
        return true;
    }
    return QWidget::event(event);
}

} // namespace desktop
