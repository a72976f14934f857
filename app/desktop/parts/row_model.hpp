// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QAbstractTableModel>
#include <QStringList>

#include <vector>

namespace desktop {

/// One row of a plain table.
struct Row {
    QString key; ///< tells rows apart and stays while the row does
    QStringList cells;
    bool isStruck = false; ///< shown struck through, and legible
    bool isAlarm = false;  ///< the first cell is shown as what it is: something wrong or loose
    QString said{};        ///< what a screen reader says of the row's first cell, where it shows more than its text
    bool operator==(const Row &) const = default;
};

/// Rows of text that follow what is taken: rows come, go, move and change one by one, so selection and scroll stay.
class RowModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Role { KeyRole = Qt::UserRole, StruckRole, AlarmRole, CellsRole };

    explicit RowModel(QStringList titles, QObject *parent = nullptr);

    void take(const std::vector<Row> &rows);
    const std::vector<Row> &rows() const { return m_rows; }
    /// The row of that key, or -1.
    int rowOf(const QString &key) const;

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    void removeGone(const std::vector<Row> &rows);
    QStringList m_titles;
    std::vector<Row> m_rows;
};

} // namespace desktop
