// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include <array>

#include "app/desktop/pages/photos/photo_view.hpp"

class QGridLayout;
class QLabel;

namespace desktop {

enum class Side { Left, Right };

/// Two photos side by side through one lens: what is enlarged or moved in one is enlarged and moved in the other.
class PhotoPair : public QWidget {
    Q_OBJECT

public:
    explicit PhotoPair(QWidget *parent = nullptr);

    void show(Side side, ShownPhoto photo);
    /// The side that keys and marks are about.
    Side active() const { return m_active; }
    void activate(Side side);
    PhotoView &view(Side side) { return *m_views[at(side)]; }
    void setMarking(bool isMarking);
    const Lens &lens() const { return m_lens; }

signals:
    void activeChanged();
    /// On the active side, in its picture's width and height.
    void placed(const QPointF &place);

private:
    static std::size_t at(Side side) { return side == Side::Left ? 0 : 1; }
    void makeSide(Side side, QGridLayout &grid);
    QWidget *makeButtons();
    void look(const Lens &lens);

    std::array<QLabel *, 2> m_words;
    std::array<PhotoView *, 2> m_views;
    Lens m_lens;
    Side m_active = Side::Left;
};

} // namespace desktop
