// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QAbstractScrollArea>
#include <QSet>

#include <optional>
#include <vector>

#include "app/desktop/pages/perimeter/perimeter_picture.hpp"
#include "app/picture/perimeter_walk.hpp"

namespace desktop {

/// The unit as a boundary with every interface across it. Arrow keys walk along the boundary and across it, Page Up and Page Down from zone to zone,
/// Return opens; + and - enlarge, 0 shows all of it. A wheel enlarges as well, and what is dragged moves; neither is needed.
class PerimeterView : public QAbstractScrollArea {
    Q_OBJECT

public:
    explicit PerimeterView(QWidget *parent = nullptr);

    /// What was chosen stays chosen where it is still there.
    void show(picture::Perimeter perimeter);
    /// Marks the interfaces of these ids, and brings the first into sight.
    void choose(const std::vector<QString> &ids);

    /// The item that the keys walk from; nullptr while none is chosen.
    const picture::PerimeterItem *current() const;
    const picture::PerimeterZone *currentZone() const;
    const picture::Perimeter &perimeter() const { return m_perimeter; }
    double scale() const { return m_scale; }
    QSize sizeHint() const override;

public slots:
    void enlarge() { zoom(1.25, middle()); }
    void reduce() { zoom(0.8, middle()); }
    void fit();

signals:
    /// By the person, not by choose().
    void currentChanged();
    void opened();

protected:
    void paintEvent(QPaintEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void mouseDoubleClickEvent(QMouseEvent *event) override;
    void wheelEvent(QWheelEvent *event) override;
    bool viewportEvent(QEvent *event) override;
    void changeEvent(QEvent *event) override;

private:
    void mark(const QSet<QString> &items, const QSet<QString> &applied);
    void layOut();
    picture::PerimeterLayout laidOut(Detail detail) const;
    void take(Detail detail);
    double scaleToFit(const picture::PerimeterLayout &layout) const;
    void setScale(double scale);
    void zoom(double factor, const QPointF &about);
    void step(picture::Step step);
    void makeCurrent(std::size_t coupling);
    void showCurrent();
    void sayCurrent();
    QPointF origin() const;
    QPointF middle() const;
    QPointF onScreen(std::size_t coupling) const;
    std::size_t nearestTo(const QPointF &onScreen) const;
    QPointF inDrawing(const QPointF &onScreen) const;
    std::optional<std::size_t> couplingAt(const QPointF &onScreen) const;
    const picture::PerimeterItem &itemOf(std::size_t coupling) const;

    picture::Perimeter m_perimeter;
    picture::PerimeterLayout m_layout;
    std::vector<std::size_t> m_chosen; ///< couplings; the first is where the keys walk from
    QSize m_room; ///< for which it was laid out
    Detail m_detail = Detail::Names;
    Detail m_fitDetail = Detail::Names; ///< the most that can be read while all of it is in sight
    double m_fitScale = 1;
    double m_scale = 1;
    bool m_isFitted = true; ///< until somebody enlarges it
    std::optional<QPointF> m_dragFrom;
    bool m_hasDragged = false;
};

} // namespace desktop
