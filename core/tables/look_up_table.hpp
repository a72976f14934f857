// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArrayView>
#include <QString>
#include <QStringView>

#include <optional>
#include <vector>

#include "core/value/decimal.hpp"
#include "core/value/result.hpp"

namespace core {

struct TableForm;

/// Whether somebody of the project saw the figure in its source (or in a page that quotes it, and then the source says so).
enum class Seen { Read, FromMemory };

struct LookUpColumn {
    QString id;    ///< stable: `tension_least`
    QString title; ///< for screens
    QString unit;  ///< of its numbers: `lbf·in`; empty where there is none
    bool operator==(const LookUpColumn &) const = default;
};

/// One row, with where its figures come from. Sources that disagree have a row each.
struct LookUpRow {
    QString id;                 ///< stable, once in its table: `fine-1/4-28`
    std::vector<QString> cells; ///< one a column, as printed: `0.020` stays `0.020`; empty where the source says nothing
    QString note;               ///< what the row alone would not tell, another source that differs first of all; may be empty
    QString source;             ///< document and section
    Seen seen;
    bool operator==(const LookUpRow &) const = default;
};

/// Published figures to look up. A help and never a limit: no rule reads one, and no form takes a figure from one unasked.
struct LookUpTable {
    QString id; ///< `thread_torque`
    QString title;
    QString about; ///< what to mind when reading it
    std::vector<LookUpColumn> columns;
    std::vector<LookUpRow> rows; ///< in the order of the file
    QString caution;             ///< to be shown with every figure: tableCaution()

    /// The cell of a column; empty as well where there is no such column.
    QString text(const LookUpRow &row, QStringView column) const;
    /// Its number, exact; nothing where it is empty or words.
    std::optional<Decimal> number(const LookUpRow &row, QStringView column) const;
    /// All rows with that value in that column, or with that id in `id`. Numbers are compared as numbers: 60 finds 60.0.
    std::vector<const LookUpRow *> rowsWith(QStringView column, QStringView value) const;
    /// The only such row. Nullptr when there is none, and when there are several: choosing among sources is for people.
    const LookUpRow *row(QStringView column, QStringView value) const;

    bool operator==(const LookUpTable &) const = default;
};

/// The same sentence for every table.
QString tableCaution();

/// Reads one table (CSV, form: csv.hpp). The first record names the columns: `id`, those of the form, `note`, `source`, `seen`,
/// in this order. Refused, with file, row and column: a file that is not sound CSV, other columns, no row, a row that is
/// shorter or longer, an id that is not lower-case letters, digits, `-`, `/` and `.`, or that stands twice, blanks at the ends
/// of a cell, an empty cell that the form needs, a number that is none or is negative, a word that the form does not know, a
/// row without a source, and a `seen` other than `read` and `from memory`.
Result<LookUpTable> parseTable(const TableForm &form, QByteArrayView bytes, const QString &fileName);

} // namespace core
