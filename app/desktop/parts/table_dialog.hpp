// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDialog>

#include "core/tables/look_up_table.hpp"

class QLabel;
class QPushButton;

namespace desktop {

class RowTable;

/// A look-up table with the source of each row, opened from a field. A row that is chosen fills nothing: only a button that names the
/// value does, and only where a column fits the field.
class TableDialog : public QDialog {
    Q_OBJECT

public:
    /// `columns` are those whose cells fit the field; none: the table is there to be read.
    TableDialog(core::LookUpTable table, const QStringList &columns, const QString &fieldLabel, QWidget *parent);

signals:
    /// As it would be typed: `50 lbf·in`.
    void taken(const QString &value);

private:
    struct Take {
        QString column;
        QPushButton *button;
    };
    void offer(const QString &rowId);
    /// The cell with its unit; empty where the row leaves it open.
    QString valueOf(const QString &rowId, const QString &column) const;

    core::LookUpTable m_table;
    RowTable *m_rows;
    QLabel *m_detail;
    std::vector<Take> m_takes;
};

} // namespace desktop
