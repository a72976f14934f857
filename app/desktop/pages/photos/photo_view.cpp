// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/photos/photo_view.hpp"

#include <QApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

#include "app/desktop/parts/theme.hpp"
#include "app/photos/mark_picture.hpp"

namespace desktop {

namespace {

constexpr double step = 1.25;
/// How far an arrow key goes: the picture by a part of the view, the cross by a part of the picture in sight.
constexpr double panStep = 0.1;
constexpr double crossStep = 0.02;
constexpr double wheelNotch = 120;

QPointF within(const QPointF &place) { return {std::clamp(place.x(), 0.0, 1.0), std::clamp(place.y(), 0.0, 1.0)}; }

} // namespace

PhotoView::PhotoView(const QString &name, QWidget *parent) : QFrame(parent), m_name(name)
{
    setFocusPolicy(Qt::StrongFocus);
    setMinimumSize(fontMetrics().averageCharWidth() * 20, fontMetrics().height() * 8);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    sayMarks();
}

QSize PhotoView::sizeHint() const { return {fontMetrics().averageCharWidth() * 50, fontMetrics().height() * 18}; }

void PhotoView::show(ShownPhoto photo)
{
    m_shown = std::move(photo);
    sayMarks();
    update();
}

/// Whoever does not see the picture hears what is on it.
void PhotoView::sayMarks()
{
    QStringList lines{m_shown.words};
    for (const core::PhotoMark &mark : m_shown.marks)
        lines << tr("Mark %1: %2").arg(QString::number(mark.number), mark.what);
    for (const core::PhotoMark &mark : m_shown.drafts)
        lines << tr("Mark %1, not signed: %2").arg(QString::number(mark.number), mark.what);
    setAccessibleName(m_name);
    setAccessibleDescription(lines.join(u'\n'));
}

void PhotoView::setLens(const Lens &lens)
{
    m_lens = lens;
    update();
}

void PhotoView::setMarking(bool isMarking)
{
    m_isMarking = isMarking;
    m_cross = m_lens.centre;
    setCursor(isMarking ? Qt::CrossCursor : Qt::ArrowCursor);
    update();
}

void PhotoView::setActive(bool isActive)
{
    m_isActive = isActive;
    update();
}

QRectF PhotoView::room() const { return QRectF(rect()).marginsRemoved({4, 4, 4, 4}); }
QRectF PhotoView::pictureHere() const { return pictureIn(room(), QSizeF(m_shown.picture.size()), m_lens); }

QTransform PhotoView::transform() const
{
    const QRectF picture = pictureHere();
    return QTransform::fromTranslate(picture.left(), picture.top()).scale(picture.width(), picture.height());
}

QPointF PhotoView::inPicture(const QPointF &inView) const
{
    const QRectF picture = pictureHere();
    return {(inView.x() - picture.left()) / picture.width(), (inView.y() - picture.top()) / picture.height()};
}

void PhotoView::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    const QPalette colours = window()->palette();
    painter.fillRect(rect(), colours.color(QPalette::Base));
    if (m_shown.picture.isNull()) {
        painter.setPen(quietColour(shadeAround(this)));
        const int gap = fontMetrics().height();
        painter.drawText(rect().marginsRemoved({gap, gap, gap, gap}), Qt::AlignCenter | Qt::TextWordWrap, m_shown.words);
    } else {
        painter.save();
        painter.setClipRect(room());
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        const QRectF picture = pictureHere();
        painter.drawImage(picture, m_shown.picture);
        for (const core::PhotoMark &mark : m_shown.marks)
            photos::drawMark(painter, mark, picture, fontMetrics().height(), photos::MarkLook::Signed);
        for (const core::PhotoMark &mark : m_shown.drafts)
            photos::drawMark(painter, mark, picture, fontMetrics().height(), photos::MarkLook::Draft);
        if (m_isMarking && hasFocus())
            drawCross(painter, picture);
        painter.restore();
    }
    const int width = hasFocus() ? 3 : m_isActive ? 2 : 1;
    painter.setPen(QPen(colours.color(hasFocus() || m_isActive ? QPalette::Highlight : QPalette::Mid), width, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.drawRect(QRectF(rect()).marginsRemoved({width / 2.0, width / 2.0, width / 2.0, width / 2.0}));
}

void PhotoView::drawCross(QPainter &painter, const QRectF &picture) const
{
    const QPointF at(picture.left() + m_cross.x() * picture.width(), picture.top() + m_cross.y() * picture.height());
    const double arm = fontMetrics().height();
    for (const auto &[colour, width] : {std::pair(Qt::white, 5), std::pair(Qt::black, 2)}) {
        painter.setPen(QPen(colour, width));
        painter.drawLine(at - QPointF(arm, 0), at + QPointF(arm, 0));
        painter.drawLine(at - QPointF(0, arm), at + QPointF(0, arm));
    }
}

bool PhotoView::moveBy(const QPointF &direction)
{
    if (!m_isMarking) {
        emit lensWanted(moved(m_lens, direction * panStep));
        return true;
    }
    m_cross = within(m_cross + direction * (crossStep / m_lens.zoom));
    // The cross does not leave what is in sight.
    const double half = 0.5 / m_lens.zoom;
    const QPointF off = m_cross - m_lens.centre;
    if (std::abs(off.x()) > half || std::abs(off.y()) > half)
        emit lensWanted(withinPicture({m_lens.zoom, m_cross}));
    update();
    return true;
}

void PhotoView::keyPressEvent(QKeyEvent *event)
{
    if (m_shown.picture.isNull())
        return QFrame::keyPressEvent(event);
    switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal: emit lensWanted(zoomed(m_lens, step, m_isMarking ? m_cross : m_lens.centre)); return;
    case Qt::Key_Minus: emit lensWanted(zoomed(m_lens, 1 / step, m_lens.centre)); return;
    case Qt::Key_0: emit lensWanted(Lens()); return;
    case Qt::Key_Left: (void)moveBy({-1, 0}); return;
    case Qt::Key_Right: (void)moveBy({1, 0}); return;
    case Qt::Key_Up: (void)moveBy({0, -1}); return;
    case Qt::Key_Down: (void)moveBy({0, 1}); return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        if (m_isMarking) {
            emit placed(m_cross);
            return;
        }
        break;
    default: break;
    }
    QFrame::keyPressEvent(event);
}

void PhotoView::mousePressEvent(QMouseEvent *event)
{
    emit touched();
    m_draggedFrom.reset();
    if (event->button() == Qt::LeftButton)
        m_pressedAt = event->position();
}

void PhotoView::mouseMoveEvent(QMouseEvent *event)
{
    if (!m_pressedAt || m_shown.picture.isNull())
        return;
    const QPointF way = event->position() - *m_pressedAt;
    if (!m_draggedFrom && way.manhattanLength() >= QApplication::startDragDistance())
        m_draggedFrom = m_lens;
    const QRectF picture = pictureHere();
    if (m_draggedFrom)
        emit lensWanted(withinPicture({m_lens.zoom, m_draggedFrom->centre - QPointF(way.x() / picture.width(), way.y() / picture.height())}));
}

void PhotoView::mouseReleaseEvent(QMouseEvent *event)
{
    const bool isTap = m_pressedAt && !m_draggedFrom;
    m_pressedAt.reset();
    m_draggedFrom.reset();
    if (!isTap || m_shown.picture.isNull())
        return;
    const QPointF place = inPicture(event->position());
    if (place != within(place))
        return; // beside the picture
    if (m_isMarking)
        emit placed(place);
    else
        emit lensWanted(withinPicture({m_lens.zoom, place}));
}

void PhotoView::wheelEvent(QWheelEvent *event)
{
    if (!m_shown.picture.isNull())
        emit lensWanted(zoomed(m_lens, std::pow(step, event->angleDelta().y() / wheelNotch), within(inPicture(event->position()))));
}

void PhotoView::focusInEvent(QFocusEvent *event)
{
    emit touched();
    update();
    QFrame::focusInEvent(event);
}

} // namespace desktop
