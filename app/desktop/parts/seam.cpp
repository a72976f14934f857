// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/seam.hpp"

#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>

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

QSize Seam::sizeHint() const { return {fontMetrics().height() * 30, fontMetrics().height() * 2}; }
QSize Seam::minimumSizeHint() const { return {fontMetrics().height() * 8, fontMetrics().height() * 2}; }

std::vector<Seam::Stitch> Seam::stitches() const
{
    std::vector<Stitch> all;
    if (!m_state || m_state->items.empty())
        return all;
    const auto &items = m_state->items;
    qsizetype gaps = 0;
    for (std::size_t i = 1; i < items.size(); ++i)
        gaps += items[i].listed.zone != items[i - 1].listed.zone;
    // A zone's gap is worth three quarters of a stitch.
    const double units = static_cast<double>(items.size()) + 0.75 * static_cast<double>(gaps);
    const double step = std::min(width() / units, height() * 0.9);
    double x = 0;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (i > 0 && items[i].listed.zone != items[i - 1].listed.zone)
            x += step * 0.75;
        all.push_back({QRectF(x, 0, step, height()), static_cast<qsizetype>(i)});
        x += step;
    }
    return all;
}

const core::InterfaceState *Seam::itemAt(const QPointF &point) const
{
    for (const Stitch &stitch : stitches()) {
        if (stitch.area.contains(point))
            return &m_state->items[static_cast<std::size_t>(stitch.item)];
    }
    return nullptr;
}

void Seam::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    const Shade shade = shadeOf(palette());
    for (const Stitch &stitch : stitches()) {
        const core::Stage stage = core::stageOf(m_state->items[static_cast<std::size_t>(stitch.item)]);
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
