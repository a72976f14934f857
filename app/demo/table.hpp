// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QHash>
#include <QString>

#include <vector>

#include "core/value/result.hpp"

namespace demo {

/// The bytes of a file of the scenario: `story.csv`. Io when the program does not carry it.
core::Result<QByteArray> scenarioFile(const QString &name);

/// One record of a table with named columns.
struct TableRow {
    qint64 row; ///< in the file
    QHash<QString, QString> cells;
    QString text(const QString &column) const { return cells.value(column); }
    /// The words of a cell, separated by blanks.
    std::vector<QString> words(const QString &column) const;
};

/// A CSV file of the scenario whose first record names the columns. BadInput, with the row, when it is not sound.
core::Result<std::vector<TableRow>> scenarioTable(const QString &name);

} // namespace demo
