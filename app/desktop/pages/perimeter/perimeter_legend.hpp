// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include <optional>
#include <vector>

#include "app/picture/perimeter_layout.hpp"

namespace desktop {

/// What each shape of the boundary stands for, in one word, and how many there are of it. What is on no item is left out.
class PerimeterLegend : public QWidget {
    Q_OBJECT

public:
    explicit PerimeterLegend(QWidget *parent = nullptr);
    void show(const picture::Perimeter &perimeter);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return {0, sizeHint().height()}; }

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    enum class Shape { Stage, Mount, Applied };
    struct Line {
        Shape shape;
        std::optional<core::Stage> stage;
        QString words;
    };
    int side() const;
    std::vector<Line> m_lines;
};

} // namespace desktop
