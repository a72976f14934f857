// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include <memory>
#include <vector>

#include "core/job/state.hpp"

namespace desktop {

/// The whole job as one seam: a coupling for each interface, zone by zone, within a zone in the order of the list. What is
/// loose shows as a gap. A click chooses the interface; the list page offers the same by keyboard.
class Seam : public QWidget {
    Q_OBJECT

public:
    explicit Seam(QWidget *parent = nullptr);
    void show(std::shared_ptr<const core::JobState> state);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

signals:
    void chosen(const core::InterfaceId &item);

protected:
    void paintEvent(QPaintEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    bool event(QEvent *event) override;

private:
    struct Stitch {
        QRectF area;
        std::size_t item;
        bool isFirstOfZone;
    };
    int labelHeight() const;
    std::vector<Stitch> stitches() const;
    const core::InterfaceState *itemAt(const QPointF &point) const;
    std::shared_ptr<const core::JobState> m_state;
};

} // namespace desktop
