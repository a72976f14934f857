// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/row_model.hpp"

#include <QFont>
#include <QSet>

#include <algorithm>

namespace desktop {

namespace {

/// A line through a row is not heard.
QString saidOf(const Row &row, int column)
{
    if (column > 0)
        return row.cells.value(column);
    const QString words = row.said.isEmpty() ? row.cells.value(0) : row.said;
    return row.isStruck ? RowModel::tr("%1, struck").arg(words) : words;
}

} // namespace

RowModel::RowModel(QStringList titles, QObject *parent) : QAbstractTableModel(parent), m_titles(std::move(titles)) {}

int RowModel::rowOf(const QString &key) const
{
    const auto at = std::find_if(m_rows.begin(), m_rows.end(), [&](const Row &row) { return row.key == key; });
    return at == m_rows.end() ? -1 : static_cast<int>(at - m_rows.begin());
}

void RowModel::removeGone(const std::vector<Row> &rows)
{
    QSet<QString> kept;
    for (const Row &row : rows)
        kept.insert(row.key);
    for (int row = static_cast<int>(m_rows.size()) - 1; row >= 0; --row) {
        if (kept.contains(m_rows[static_cast<std::size_t>(row)].key))
            continue;
        beginRemoveRows({}, row, row);
        m_rows.erase(m_rows.begin() + row);
        endRemoveRows();
    }
}

void RowModel::take(const std::vector<Row> &rows)
{
    removeGone(rows);
    for (int at = 0; at < static_cast<int>(rows.size()); ++at) {
        const Row &wanted = rows[static_cast<std::size_t>(at)];
        const bool isInPlace = at < static_cast<int>(m_rows.size()) && m_rows[static_cast<std::size_t>(at)].key == wanted.key;
        const int old = isInPlace ? at : rowOf(wanted.key);
        if (old < 0) {
            beginInsertRows({}, at, at);
            m_rows.insert(m_rows.begin() + at, wanted);
            endInsertRows();
            continue;
        }
        if (old != at) {
            beginMoveRows({}, old, old, {}, at);
            std::rotate(m_rows.begin() + at, m_rows.begin() + old, m_rows.begin() + old + 1);
            endMoveRows();
        }
        if (!(m_rows[static_cast<std::size_t>(at)] == wanted)) {
            m_rows[static_cast<std::size_t>(at)] = wanted;
            emit dataChanged(index(at, 0), index(at, columnCount() - 1));
        }
    }
}

int RowModel::rowCount(const QModelIndex &parent) const { return parent.isValid() ? 0 : static_cast<int>(m_rows.size()); }
int RowModel::columnCount(const QModelIndex &parent) const { return parent.isValid() ? 0 : static_cast<int>(m_titles.size()); }

QVariant RowModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid() || index.row() >= static_cast<int>(m_rows.size()))
        return {};
    const Row &row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case Qt::ToolTipRole: return row.cells.value(index.column());
    case Qt::AccessibleTextRole: return saidOf(row, index.column());
    case Qt::FontRole:
        if (row.isStruck) {
            QFont font;
            font.setStrikeOut(true);
            return font;
        }
        return {};
    case KeyRole: return row.key;
    case StruckRole: return row.isStruck;
    case AlarmRole: return row.isAlarm;
    case CellsRole: return row.cells;
    default: return {};
    }
}

QVariant RowModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    return orientation == Qt::Horizontal && role == Qt::DisplayRole ? m_titles.value(section) : QVariant();
}

} // namespace desktop
