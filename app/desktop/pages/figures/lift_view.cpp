// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/figures/lift_view.hpp"

#include <QPainter>
#include <QStringList>

#include <algorithm>

#include "app/desktop/parts/theme.hpp"
#include "app/picture/lift_picture.hpp"

namespace desktop {

LiftView::LiftView(QWidget *parent) : QWidget(parent)
{
    setAccessibleName(tr("Picture of the lift"));
    setMinimumSize(320, std::max(240, fontMetrics().height() * 25));
}

picture::LiftLayout LiftView::layOut() const { return picture::layLift(*m_lift, rect(), font()); }

void LiftView::show(const std::optional<picture::Lift> &lift)
{
    m_lift = lift;
    setVisible(lift.has_value());
    if (!lift)
        return;
    QStringList texts;
    for (const picture::TextRun &run : layOut().texts)
        texts << run.text;
    setAccessibleDescription(texts.join(QStringLiteral(", ")));
    update();
}

void LiftView::paintEvent(QPaintEvent *)
{
    if (!m_lift)
        return;
    const Shade shade = shadeAround(this);
    const QPalette colours = window()->palette();
    QPainter painter(this);
    picture::paintLift(painter, layOut(),
                       {colours.color(QPalette::WindowText), quietColour(shade), colours.color(QPalette::Button), colours.color(QPalette::Window), cautionColour(shade), alarmColour(shade)});
}

} // namespace desktop
