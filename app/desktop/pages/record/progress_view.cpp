// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/record/progress_view.hpp"

#include <QPainter>

#include <algorithm>

#include "app/desktop/parts/picture_role.hpp"
#include "app/desktop/parts/theme.hpp"

namespace desktop {

ProgressView::ProgressView(QWidget *parent) : QWidget(parent)
{
    tellPicture(*this);
    setAccessibleName(tr("Picture of how many interfaces were undone and not inspected over time"));
    setMinimumSize(fontMetrics().averageCharWidth() * 50, fontMetrics().height() * 14);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void ProgressView::show(core::Progress progress)
{
    m_progress = std::move(progress);
    describe();
}

void ProgressView::showBeside(const std::optional<core::ProgressLine> &line)
{
    m_beside = line;
    describe();
}

void ProgressView::describe()
{
    if (!m_progress)
        return;
    const QString whole = core::progressInWords(m_progress->total);
    setAccessibleDescription(m_beside ? tr("%1 %2").arg(whole, core::progressInWords(*m_beside)) : whole);
    update();
}

void ProgressView::paintEvent(QPaintEvent *)
{
    if (!m_progress)
        return;
    const picture::ProgressLayout layout = picture::layProgress(*m_progress, m_beside ? &*m_beside : nullptr, QRectF(rect()), font());
    const QColor ink = window()->palette().color(QPalette::WindowText);
    const QColor quiet = quietColour(shadeAround(this));
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(layout.font);
    painter.setPen(QPen(quiet, 0.5));
    for (const QLineF &line : layout.grid)
        painter.drawLine(line);
    painter.setPen(quiet);
    for (const picture::AxisText &text : layout.texts)
        painter.drawText(text.rect, static_cast<int>(text.alignment) | Qt::TextDontClip, text.text);
    const double thick = std::max(2.5, fontMetrics().height() / 6.0);
    for (const picture::StepPath &line : layout.lines) {
        // Told apart by breadth and dashes as well: colours alone tell nothing to many.
        const QColor colour = line.isWhole ? ink : cautionColour(shadeAround(this));
        painter.setPen(line.isWhole ? QPen(colour, thick, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin) : QPen(colour, thick / 2, Qt::DashLine, Qt::FlatCap, Qt::MiterJoin));
        painter.drawPolyline(line.path);
        painter.setPen(colour);
        painter.drawText(line.label.rect, static_cast<int>(line.label.alignment) | Qt::TextDontClip, line.label.text);
    }
}

} // namespace desktop
