// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/record/signings_view.hpp"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>

#include "app/desktop/parts/picture_role.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/picture/signings_picture.hpp"

namespace desktop {

SigningsView::SigningsView(QWidget *parent) : QWidget(parent)
{
    setFocusPolicy(Qt::StrongFocus);
    tellPicture(*this);
    setAccessibleName(tr("Picture of who signed what when; the table below says the same"));
}

picture::SigningLayout SigningsView::layOut() const { return picture::laySignings(m_signings, QRectF(rect()), font()); }

void SigningsView::show(core::Signings signings)
{
    m_signings = std::move(signings);
    setMinimumHeight(static_cast<int>(picture::signingsHeight(m_signings, font())) + 1);
    m_chosen = std::nullopt;
    update();
}

void SigningsView::choose(std::optional<qint64> seq)
{
    m_chosen = seq;
    update();
    emit chosenChanged();
}

/// To the next or the last entry, whoever signed it.
void SigningsView::step(int by)
{
    const auto marks = layOut().marks;
    if (marks.empty())
        return;
    const auto at = std::find_if(marks.begin(), marks.end(), [&](const picture::PlacedMark &mark) { return mark.seq == m_chosen; });
    if (at == marks.end()) {
        choose(marks.front().seq);
        return;
    }
    const auto to = std::clamp<std::ptrdiff_t>(at - marks.begin() + by, 0, static_cast<std::ptrdiff_t>(marks.size()) - 1);
    choose(marks[static_cast<std::size_t>(to)].seq);
}

void SigningsView::paintEvent(QPaintEvent *)
{
    const Shade shade = shadeAround(this);
    const QPalette colours = window()->palette();
    QPainter painter(this);
    picture::paintSignings(painter, layOut(), {colours.color(QPalette::WindowText), quietColour(shade), colours.color(QPalette::Window), cautionColour(shade)}, m_chosen);
}

void SigningsView::mousePressEvent(QMouseEvent *event)
{
    std::optional<qint64> nearest;
    double best = layOut().markSize * 2;
    for (const picture::PlacedMark &mark : layOut().marks) {
        const double distance = QLineF(mark.centre, event->position()).length();
        if (distance <= best) {
            best = distance;
            nearest = mark.seq;
        }
    }
    choose(nearest);
}

void SigningsView::mouseDoubleClickEvent(QMouseEvent *event)
{
    mousePressEvent(event);
    if (m_chosen)
        emit opened(*m_chosen);
}

void SigningsView::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Right || event->key() == Qt::Key_Left)
        step(event->key() == Qt::Key_Right ? 1 : -1);
    else if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && m_chosen)
        emit opened(*m_chosen);
    else
        QWidget::keyPressEvent(event);
}

} // namespace desktop
