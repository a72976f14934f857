// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QRectF>
#include <QWidget>

#include <optional>

#include "core/job/stage.hpp"

class QColor;
class QPainter;

namespace desktop {

/// Draws a coupling in the square within `area`, its stage told by shape: a thin line with an open lozenge (connected, not
/// touched), a gap between two capped ends (disconnected), a thick joined line (reconnected), joined with a stripe across
/// (secured), the same in a ring (inspected).
void paintStageGlyph(QPainter &painter, const QRectF &area, core::Stage stage, const QColor &colour);

/// The glyph with its word beside it.
class StageMark : public QWidget {
    Q_OBJECT

public:
    explicit StageMark(QWidget *parent = nullptr);
    void setStage(core::Stage stage);
    /// Other words than the stage's own: a count.
    void setText(const QString &text);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    int side() const;
    core::Stage m_stage = core::Stage::Connected;
    QString m_text;
};

} // namespace desktop
