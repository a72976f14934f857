// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/perimeter/perimeter_view.hpp"

#include <QAccessible>
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
    std::vector<QString> ids;
    for (const std::size_t coupling : m_chosen)
        ids.push_back(itemOf(coupling).id);
    m_perimeter = std::move(perimeter);
    m_chosen.clear();
    layOut();
    for (std::size_t i = 0; i < m_layout.couplings.size(); ++i) {
        if (std::find(ids.begin(), ids.end(), itemOf(i).id) != ids.end())
            m_chosen.push_back(i);
    }
    sayCurrent();
}

void PerimeterView::choose(const std::vector<QString> &ids)
{
    m_chosen.clear();
    for (std::size_t i = 0; i < m_layout.couplings.size(); ++i) {
        if (!itemOf(i).isTemporary() && std::find(ids.begin(), ids.end(), itemOf(i).id) != ids.end())
            m_chosen.push_back(i);
    }
    sayCurrent();
    showCurrent();
    viewport()->update();
}

const picture::PerimeterItem &PerimeterView::itemOf(std::size_t coupling) const
{
    const picture::PlacedCoupling &placed = m_layout.couplings[coupling];
    return m_perimeter[placed.zone].items[placed.item];
}

const picture::PerimeterItem *PerimeterView::current() const { return m_chosen.empty() ? nullptr : &itemOf(m_chosen.front()); }
const picture::PerimeterZone *PerimeterView::currentZone() const { return m_chosen.empty() ? nullptr : &m_perimeter[m_layout.couplings[m_chosen.front()].zone]; }

void PerimeterView::layOut()
{
    m_room = maximumViewportSize();
    const double aspect = std::clamp(m_room.width() / std::max(m_room.height() * 1.0, 1.0), 0.5, 3.0);
    // Names stand beside the stages where the whole can still be read then.
    m_layout = picture::layPerimeter(m_perimeter, perimeterMeasure(font(), Names::Yes, aspect));
    if (!isLegible(font(), fittingScale()))
        m_layout = picture::layPerimeter(m_perimeter, perimeterMeasure(font(), Names::No, aspect));
    setScale(m_isFitted ? fittingScale() : m_scale);
}

double PerimeterView::fittingScale() const
{
    const QRectF &bounds = m_layout.bounds;
    if (bounds.isEmpty())
        return 1;
    return std::clamp(std::min(m_room.width() / bounds.width(), m_room.height() / bounds.height()), 0.001, 1.0);
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
    setScale(fittingScale());
}

/// What lies under the point stays there.
void PerimeterView::zoom(double factor, const QPointF &about)
{
    if (m_layout.couplings.empty())
        return;
    const QPointF kept = inDrawing(about);
    m_isFitted = false;
    setScale(std::clamp(m_scale * factor, std::min(fittingScale(), 1.0), mostScale));
    const QPointF moved = origin() + kept * m_scale - about;
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() + qRound(moved.x()));
    verticalScrollBar()->setValue(verticalScrollBar()->value() + qRound(moved.y()));
}

/// Where on the screen the drawing's own origin lies. What is smaller than the view stands in its middle.
QPointF PerimeterView::origin() const
{
    const QSizeF whole = m_layout.bounds.size() * m_scale;
    const QPointF middle(std::max(0.0, (viewport()->width() - whole.width()) / 2), std::max(0.0, (viewport()->height() - whole.height()) / 2));
    return middle - m_layout.bounds.topLeft() * m_scale - QPointF(horizontalScrollBar()->value(), verticalScrollBar()->value());
}

QPointF PerimeterView::inDrawing(const QPointF &onScreen) const { return (onScreen - origin()) / m_scale; }

std::optional<std::size_t> PerimeterView::couplingAt(const QPointF &onScreen) const
{
    const QPointF at = inDrawing(onScreen);
    // A gloved finger is as wide as this.
    double least = touchHeight(fontMetrics()) / 2.0 / m_scale;
    std::optional<std::size_t> nearest;
    for (std::size_t i = 0; i < m_layout.couplings.size(); ++i) {
        const picture::PlacedCoupling &placed = m_layout.couplings[i];
        if (placed.label.contains(at) && isLegible(font(), m_scale))
            return i;
        const double distance = QLineF(placed.glyph.center(), at).length();
        if (distance < least) {
            least = distance;
            nearest = i;
        }
    }
    return nearest;
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

/// A screen reader says what is chosen.
void PerimeterView::sayCurrent()
{
    const picture::PerimeterItem *item = current();
    const QString words = item ? tr("%1, %2").arg(inWords(*item), currentZone()->name) : QString();
    if (words == accessibleDescription())
        return;
    setAccessibleDescription(words);
    QAccessibleEvent event(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&event);
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
    paintPerimeter(painter, m_perimeter, m_layout, {font(), window()->palette(), shadeAround(this), m_scale}, visible, m_chosen);
}

} // namespace desktop
