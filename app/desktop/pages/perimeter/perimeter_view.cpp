// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/perimeter/perimeter_view.hpp"

#include <QApplication>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>
#include <QToolTip>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace desktop {

namespace {

constexpr double mostScale = 4;

std::optional<picture::Step> stepOf(int key)
{
    switch (key) {
    case Qt::Key_Left: return picture::Step::Left;
    case Qt::Key_Right: return picture::Step::Right;
    case Qt::Key_Up: return picture::Step::Up;
    case Qt::Key_Down: return picture::Step::Down;
    case Qt::Key_PageDown: return picture::Step::NextSide;
    case Qt::Key_PageUp: return picture::Step::PreviousSide;
    case Qt::Key_Home: return picture::Step::First;
    case Qt::Key_End: return picture::Step::Last;
    default: return std::nullopt;
    }
}

} // namespace

PerimeterView::PerimeterView(QWidget *parent) : QAbstractScrollArea(parent)
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("The unit as a boundary: one coupling for each interface, zone by zone"));
    setFrameShape(QFrame::NoFrame);
    viewport()->setBackgroundRole(QPalette::Window);
    viewport()->setAutoFillBackground(true);
}

QSize PerimeterView::sizeHint() const { return {fontMetrics().height() * 40, fontMetrics().height() * 22}; }

void PerimeterView::show(picture::Perimeter perimeter)
{
    QSet<QString> items, applied;
    for (const std::size_t coupling : m_chosen)
        (itemOf(coupling).isTemporary() ? applied : items).insert(itemOf(coupling).id);
    m_perimeter = std::move(perimeter);
    m_chosen.clear();
    layOut();
    mark(items, applied);
    sayCurrent();
}

void PerimeterView::choose(const std::vector<QString> &ids)
{
    m_chosen.clear();
    mark(QSet<QString>(ids.begin(), ids.end()), {});
    sayCurrent();
    showCurrent();
    viewport()->update();
}

void PerimeterView::mark(const QSet<QString> &items, const QSet<QString> &applied)
{
    for (std::size_t i = 0; i < m_layout.couplings.size(); ++i) {
        if ((itemOf(i).isTemporary() ? applied : items).contains(itemOf(i).id))
            m_chosen.push_back(i);
    }
}

const picture::PerimeterItem &PerimeterView::itemOf(std::size_t coupling) const
{
    const picture::PlacedCoupling &placed = m_layout.couplings[coupling];
    return m_perimeter[placed.zone].items[placed.item];
}

const picture::PerimeterItem *PerimeterView::current() const { return m_chosen.empty() ? nullptr : &itemOf(m_chosen.front()); }
const picture::PerimeterZone *PerimeterView::currentZone() const { return m_chosen.empty() ? nullptr : &m_perimeter[m_layout.couplings[m_chosen.front()].zone]; }

picture::PerimeterLayout PerimeterView::laidOut(Detail detail) const
{
    const double aspect = std::clamp(m_room.width() / std::max(m_room.height() * 1.0, 1.0), 0.5, 3.0);
    return picture::layPerimeter(m_perimeter, perimeterMeasure(m_perimeter, font(), detail, aspect));
}

double PerimeterView::scaleToFit(const picture::PerimeterLayout &layout) const
{
    const QRectF &bounds = layout.bounds;
    if (bounds.isEmpty())
        return 1;
    return std::clamp(std::min(m_room.width() / bounds.width(), m_room.height() / bounds.height()), 0.001, 1.0);
}

void PerimeterView::layOut()
{
    m_room = maximumViewportSize();
    for (const Detail detail : {Detail::Names, Detail::Stages, Detail::Numbers}) {
        m_layout = laidOut(detail);
        m_detail = m_fitDetail = detail;
        m_fitScale = scaleToFit(m_layout);
        if (isLegible(font(), m_fitScale, leastToReadWell))
            break;
    }
    const double scale = m_isFitted ? m_fitScale : m_scale;
    take(scale >= 1 ? Detail::Names : m_fitDetail);
    setScale(scale);
}

void PerimeterView::take(Detail detail)
{
    if (detail == m_detail)
        return;
    m_detail = detail;
    m_layout = laidOut(detail);
}

void PerimeterView::setScale(double scale)
{
    m_scale = scale;
    const QSizeF whole = m_layout.bounds.size() * m_scale;
    const bool isAllInSight = whole.width() < m_room.width() + 1 && whole.height() < m_room.height() + 1;
    const auto range = [&](QScrollBar *bar, double length, int page) {
        bar->setPageStep(page);
        bar->setSingleStep(std::max(1, page / 20));
        bar->setRange(0, isAllInSight ? 0 : std::max(0, static_cast<int>(std::ceil(length)) - page));
    };
    range(horizontalScrollBar(), whole.width(), viewport()->width());
    range(verticalScrollBar(), whole.height(), viewport()->height());
    viewport()->update();
}

void PerimeterView::fit()
{
    m_isFitted = true;
    take(m_fitDetail);
    setScale(m_fitScale);
}

/// What is nearest to the point stays as near to it as the scale says; at full size the names come beside it.
void PerimeterView::zoom(double factor, const QPointF &about)
{
    if (m_layout.couplings.empty())
        return;
    const double scale = std::clamp(m_scale * factor, m_fitScale, mostScale);
    if (scale <= m_fitScale) {
        fit();
        return;
    }
    const std::size_t kept = nearestTo(about);
    const QPointF wanted = about + (onScreen(kept) - about) * (scale / m_scale);
    m_isFitted = false;
    take(scale >= 1 ? Detail::Names : m_fitDetail);
    setScale(scale);
    const QPointF off = onScreen(kept) - wanted;
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() + qRound(off.x()));
    verticalScrollBar()->setValue(verticalScrollBar()->value() + qRound(off.y()));
    if (!m_chosen.empty() && kept == m_chosen.front())
        showCurrent();
}

/// Where on the screen the drawing's own origin lies. What is smaller than the view stands in its middle.
QPointF PerimeterView::origin() const
{
    const QSizeF whole = m_layout.bounds.size() * m_scale;
    const QPointF middle(std::max(0.0, (viewport()->width() - whole.width()) / 2), std::max(0.0, (viewport()->height() - whole.height()) / 2));
    return middle - m_layout.bounds.topLeft() * m_scale - QPointF(horizontalScrollBar()->value(), verticalScrollBar()->value());
}

QPointF PerimeterView::onScreen(std::size_t coupling) const { return origin() + m_layout.couplings[coupling].glyph.center() * m_scale; }

/// About which keys and buttons enlarge: what is chosen, where it is in sight.
QPointF PerimeterView::middle() const
{
    const QPointF chosen = m_chosen.empty() ? QPointF(-1, -1) : onScreen(m_chosen.front());
    return viewport()->rect().contains(chosen.toPoint()) ? chosen : QPointF(viewport()->rect().center());
}

std::size_t PerimeterView::nearestTo(const QPointF &onScreen) const
{
    const QPointF at = inDrawing(onScreen);
    const auto distance = [&](const picture::PlacedCoupling &placed) { return QLineF(placed.glyph.center(), at).length(); };
    const auto &all = m_layout.couplings;
    return static_cast<std::size_t>(std::min_element(all.begin(), all.end(), [&](const auto &a, const auto &b) { return distance(a) < distance(b); }) - all.begin());
}

QPointF PerimeterView::inDrawing(const QPointF &onScreen) const { return (onScreen - origin()) / m_scale; }

std::optional<std::size_t> PerimeterView::couplingAt(const QPointF &onScreen) const
{
    const QPointF at = inDrawing(onScreen);
    // A gloved finger is as wide as this.
    const double reach = touchHeight(fontMetrics()) / 2.0 / m_scale;
    if (m_layout.couplings.empty())
        return std::nullopt;
    for (std::size_t i = 0; i < m_layout.couplings.size(); ++i) {
        if (m_layout.couplings[i].label.contains(at) && isLegible(font(), m_scale, leastOnScreen))
            return i;
    }
    const std::size_t nearest = nearestTo(onScreen);
    return QLineF(m_layout.couplings[nearest].glyph.center(), at).length() < reach ? std::optional(nearest) : std::nullopt;
}

void PerimeterView::makeCurrent(std::size_t coupling)
{
    m_chosen = {coupling};
    showCurrent();
    sayCurrent();
    viewport()->update();
    emit currentChanged();
}

void PerimeterView::showCurrent()
{
    if (m_chosen.empty())
        return;
    const picture::PlacedCoupling &placed = m_layout.couplings[m_chosen.front()];
    const QRectF wanted = placed.label | placed.glyph;
    const QRectF onScreen(origin() + wanted.topLeft() * m_scale, wanted.size() * m_scale);
    const auto bring = [](QScrollBar *bar, double from, double to, int room) {
        if (from < 0)
            bar->setValue(bar->value() + static_cast<int>(std::floor(from)));
        else if (to > room)
            bar->setValue(bar->value() + static_cast<int>(std::ceil(to - room)));
    };
    bring(horizontalScrollBar(), onScreen.left(), onScreen.right(), viewport()->width());
    bring(verticalScrollBar(), onScreen.top(), onScreen.bottom(), viewport()->height());
}

/// A screen reader is told with it.
void PerimeterView::sayCurrent()
{
    const picture::PerimeterItem *item = current();
    setAccessibleDescription(item ? tr("%1, %2").arg(inWords(*item), currentZone()->name) : QString());
}

void PerimeterView::step(picture::Step step)
{
    if (m_layout.couplings.empty())
        return;
    if (m_chosen.empty())
        makeCurrent(step == picture::Step::Last ? m_layout.couplings.size() - 1 : 0);
    else if (const auto next = picture::stepFrom(m_layout, m_chosen.front(), step))
        makeCurrent(*next);
}

void PerimeterView::keyPressEvent(QKeyEvent *event)
{
    const auto step = stepOf(event->key());
    if (step && !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier)))
        this->step(*step);
    else if (event->key() == Qt::Key_Plus || event->key() == Qt::Key_Equal)
        enlarge();
    else if (event->key() == Qt::Key_Minus)
        reduce();
    else if (event->key() == Qt::Key_0)
        fit();
    else if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && current())
        emit opened();
    else
        QAbstractScrollArea::keyPressEvent(event);
}

void PerimeterView::mousePressEvent(QMouseEvent *event)
{
    if (event->button() != Qt::LeftButton)
        return;
    m_dragFrom = event->position();
    m_hasDragged = false;
}

void PerimeterView::mouseMoveEvent(QMouseEvent *event)
{
    if (!m_dragFrom)
        return;
    const QPointF by = event->position() - *m_dragFrom;
    m_hasDragged = m_hasDragged || by.manhattanLength() >= QApplication::startDragDistance();
    if (!m_hasDragged)
        return;
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() - qRound(by.x()));
    verticalScrollBar()->setValue(verticalScrollBar()->value() - qRound(by.y()));
    m_dragFrom = event->position();
}

void PerimeterView::mouseReleaseEvent(QMouseEvent *event)
{
    if (m_dragFrom && !m_hasDragged) {
        if (const auto coupling = couplingAt(event->position()))
            makeCurrent(*coupling);
    }
    m_dragFrom.reset();
}

void PerimeterView::mouseDoubleClickEvent(QMouseEvent *event)
{
    if (const auto coupling = couplingAt(event->position())) {
        makeCurrent(*coupling);
        emit opened();
    }
}

void PerimeterView::wheelEvent(QWheelEvent *event)
{
    if (event->angleDelta().y() != 0)
        zoom(std::pow(1.25, event->angleDelta().y() / 120.0), event->position());
    event->accept();
}

bool PerimeterView::viewportEvent(QEvent *event)
{
    if (event->type() != QEvent::ToolTip)
        return QAbstractScrollArea::viewportEvent(event);
    auto *help = static_cast<QHelpEvent *>(event);
    const auto coupling = couplingAt(help->pos());
    QToolTip::showText(help->globalPos(), coupling ? inWords(itemOf(*coupling)) : QString(), viewport());
    return true;
}

void PerimeterView::changeEvent(QEvent *event)
{
    QAbstractScrollArea::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        layOut();
}

void PerimeterView::resizeEvent(QResizeEvent *event)
{
    QAbstractScrollArea::resizeEvent(event);
    if (m_room == maximumViewportSize()) // a scroll bar came or went
        setScale(m_scale);
    else
        layOut();
}

void PerimeterView::paintEvent(QPaintEvent *event)
{
    if (m_layout.couplings.empty() && m_layout.sides.empty())
        return;
    QPainter painter(viewport());
    painter.translate(origin());
    painter.scale(m_scale, m_scale);
    const QRectF visible(inDrawing(event->rect().topLeft()), QSizeF(event->rect().size()) / m_scale);
    paintPerimeter(painter, m_perimeter, m_layout, {font(), window()->palette(), shadeAround(this), m_scale, m_detail, leastOnScreen}, visible, m_chosen);
}

} // namespace desktop
