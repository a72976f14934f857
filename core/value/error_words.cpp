// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/value/error_words.hpp"

#include <QCoreApplication>

namespace core {

using namespace Qt::StringLiterals;

QString errorInWords(const Error &error)
{
    QString where = error.where.file;
    if (error.where.row)
        where += (where.isEmpty() ? QCoreApplication::translate("Error", "line ") : u":"_s) + QString::number(*error.where.row);
    if (error.where.column)
        where += u':' + QString::number(*error.where.column);
    return where.isEmpty() ? error.message : where + u": "_s + error.message;
}

} // namespace core
