// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QHash>
#include <QString>

#include <vector>

#include "core/list/interface_list.hpp"

namespace core {

/// Collects what is wrong with a list, placed by row and by the name of the column.
class ListFaults {
public:
    ListFaults(QString fileName, QHash<QString, qint64> columns) : m_file(std::move(fileName)), m_columns(std::move(columns)) {}

    /// A column that the file does not have leaves the place at the row.
    void add(qint64 row, const QString &column, const QString &message);
    /// In the order of rows, then columns.
    std::vector<Error> sorted() &&;

private:
    QString m_file;
    QHash<QString, qint64> m_columns;
    std::vector<Error> m_errors;
};

/// Whether every cell of a row could be read. What a faulty cell leaves out is not held against the row a second time.
enum class Cells { Read, Faulty };

/// What must hold of a row by itself: kind, zone, limits, requirements with their specifications.
void checkRow(const ListedRow &row, Cells cells, const ListContext &context, ListFaults &faults);

/// What must hold between rows: each id once, access, twins, halves.
void checkTogether(const std::vector<ListedRow> &rows, const ListContext &context, ListFaults &faults);

/// What a row names and so has to be listed before it: what is off before it, and what it depends on.
std::vector<InterfaceId> namedFirst(const Listing &listing);

/// Rows in an order in which each follows what its row names; otherwise as they were. Rows that wait for each other, or
/// for such rows, come back in `waiting`.
struct AccessOrder {
    std::vector<ListedRow> rows;
    std::vector<ListedRow> waiting;
};
AccessOrder inOrderOfAccess(const std::vector<ListedRow> &rows);

} // namespace core
