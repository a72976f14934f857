// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QByteArrayView>
#include <QString>

#include <vector>

#include "core/value/result.hpp"

/// Comma-separated values after RFC 4180, with what spreadsheets make of them: a line feed alone ends a line too, a byte
/// order mark in front is passed over, and a semicolon may stand in place of the comma.
namespace core::csv {

struct Field {
    QString text;
    bool isQuoted = false; ///< blanks at the ends of a quoted field are meant
    bool operator==(const Field &) const = default;
};

/// One record. `row` is its number as a spreadsheet shows it: the first is 1, empty lines count, a line break inside a
/// quoted field does not.
struct Record {
    qint64 row;
    std::vector<Field> fields;
    bool isEmpty() const; ///< nothing in any field, as in the lines that spreadsheets leave at the end
    bool operator==(const Record &) const = default;
};

/// What a file holds and everything that is wrong with its form. With faults, records are there for the sake of further
/// messages alone.
struct Table {
    char separator; ///< `,` or `;`
    std::vector<Record> records;
    std::vector<Error> faults;
};

/// In bytes; a longer file is refused as a whole.
constexpr qsizetype largestFile = 64 * 1024 * 1024;

/// Reads UTF-8. The separator is the semicolon when the first record has more of them, outside quotes, than commas. Faults, each
/// with row and column: invalid UTF-8, a quote inside an unquoted field, text after a closing quote, a quote that never
/// closes, a carriage return alone, a control character. Source: RFC 4180 section 2.
Table read(QByteArrayView bytes, const QString &fileName);

/// Writes UTF-8 without a byte order mark, comma and CRLF, each record ended. Fields are quoted when they hold a comma, a
/// semicolon, a quote, a line break, a tab, or a blank at either end.
QByteArray write(const std::vector<std::vector<QString>> &records);

/// Puts an apostrophe in front of text that a spreadsheet would run as a formula: text that begins with = + - @, tab or
/// carriage return, after any number of apostrophes. So unguarded(guarded(x)) is x for every x.
QString guarded(const QString &text);
/// Takes that apostrophe away again; other text stays as it is.
QString unguarded(const QString &text);

} // namespace core::csv
