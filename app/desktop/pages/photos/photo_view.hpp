// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QFrame>
#include <QImage>

#include <optional>
#include <vector>

#include "app/desktop/pages/photos/lens.hpp"
#include "core/job/state.hpp"

namespace desktop {

/// What a view shows.
struct ShownPhoto {
    QImage picture; ///< upright; null where there is none
    QString words;  ///< what is told of it, or why there is none
    std::vector<core::PhotoMark> marks{};  ///< signed
    std::vector<core::PhotoMark> drafts{}; ///< not signed yet
};

/// One photo, seen through a lens that somebody else keeps. + and - enlarge, 0 shows all of it, arrow keys move; a tap brings a place into the middle, the
/// wheel enlarges and what is dragged moves: neither is needed. While marks are placed, arrow keys move a cross, Return or a tap places a mark.
class PhotoView : public QFrame {
    Q_OBJECT

public:
    explicit PhotoView(const QString &name, QWidget *parent = nullptr);

    void show(ShownPhoto photo);
    const ShownPhoto &shown() const { return m_shown; }
    void setLens(const Lens &lens);
    const Lens &lens() const { return m_lens; }
    /// From the picture, its width and height as 1, to the view.
    QTransform transform() const;
    void setMarking(bool isMarking);
    /// Shown by a frame: keys and marks are about this one.
    void setActive(bool isActive);
    QSize sizeHint() const override;

signals:
    void lensWanted(const desktop::Lens &lens);
    /// A mark is to be at this place, of the picture's width and height.
    void placed(const QPointF &place);
    /// It was pressed, or keys go to it now.
    void touched();

protected:
    void paintEvent(QPaintEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void wheelEvent(QWheelEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;

private:
    QRectF room() const;
    QRectF pictureHere() const;
    QPointF inPicture(const QPointF &inView) const;
    bool moveBy(const QPointF &direction);
    void drawCross(QPainter &painter, const QRectF &picture) const;
    void sayMarks();

    QString m_name;
    ShownPhoto m_shown;
    Lens m_lens;
    bool m_isMarking = false;
    bool m_isActive = false;
    QPointF m_cross{0.5, 0.5};
    std::optional<QPointF> m_pressedAt;
    std::optional<Lens> m_draggedFrom; ///< once it is a drag and no tap
};

} // namespace desktop
