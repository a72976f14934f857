// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/list/interface_delegate.hpp"

#include <QApplication>
#include <QPainter>

#include "app/desktop/pages/list/interface_model.hpp"
#include "app/desktop/parts/stage_glyph.hpp"
#include "app/desktop/parts/theme.hpp"

namespace desktop {

void InterfaceDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    QStyleOptionViewItem cell = option;
    initStyleOption(&cell, index);
    cell.state &= ~QStyle::State_HasFocus; // the row is told by its selection; a box around one cell says nothing
    if (index.column() != InterfaceModel::Stage) {
        QStyledItemDelegate::paint(painter, cell, index);
        return;
    }
    const QString word = cell.text;
    cell.text.clear();
    const QWidget *view = option.widget;
    (view ? view->style() : QApplication::style())->drawControl(QStyle::CE_ItemViewItem, &cell, painter, view);

    const auto stage = static_cast<core::Stage>(index.data(InterfaceModel::StageRole).toInt());
    const bool isSelected = option.state & QStyle::State_Selected;
    const QColor colour = isSelected ? option.palette.color(QPalette::HighlightedText) : stageColour(stage, shadeAround(option.widget));
    const int gap = option.fontMetrics.averageCharWidth();
    const int side = option.fontMetrics.height() * 5 / 4;
    const QRect inner = option.rect.adjusted(gap, 0, -gap, 0);
    paintStageGlyph(*painter, QRectF(inner.left(), inner.center().y() - side / 2.0 + 0.5, side, side), stage, colour);
    painter->save();
    painter->setPen(colour);
    painter->setFont(option.font);
    const QRect words = inner.adjusted(side + gap, 0, 0, 0);
    painter->drawText(words, Qt::AlignVCenter | Qt::AlignLeft, option.fontMetrics.elidedText(word, Qt::ElideRight, words.width()));
    painter->restore();
}

QSize InterfaceDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    QSize size = QStyledItemDelegate::sizeHint(option, index);
    if (index.column() == InterfaceModel::Stage)
        size.rwidth() += option.fontMetrics.height() * 2;
    size.setHeight(touchHeight(option.fontMetrics));
    return size;
}

} // namespace desktop
