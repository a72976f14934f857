// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStyledItemDelegate>

#include "app/desktop/parts/row_model.hpp"
#include "app/session/folds.hpp"

namespace desktop {

/// The rows of the start page: one a job; the cells are what JobCardDelegate draws, in one column.
std::vector<Row> jobCards(const std::vector<session::JobRow> &jobs);

/// A job as a card: its title and facts, how many interfaces are at each stage, and in large figures what is loose.
class JobCardDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    enum Cell { Title, Facts, State, LooseEnds, FirstStage };

    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const override;
    QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;
};

} // namespace desktop
