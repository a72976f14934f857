// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/left_in_words.hpp"

#include <QCoreApplication>

#include "core/value/counted.hpp"

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Left", text); }

} // namespace

QString looseEndsInWords(qsizetype count)
{
    return count == 0 ? tr("Nothing is loose") : counted(count, tr("1 loose end"), tr("%1 loose ends"));
}

QString unfinishedInWords(const ReleaseCounts &counts)
{
    if (counts.open == 0)
        return tr("Every interface is finished");
    const QString all = counted(counts.open, tr("1 interface not finished"), tr("%1 interfaces not finished"));
    return tr("%1: %2 undone and not inspected, %3 not undone").arg(all).arg(counts.undone).arg(counts.open - counts.undone);
}

QString undoneInWords(qsizetype count)
{
    return counted(count, tr("1 interface undone and not inspected"), tr("%1 interfaces undone and not inspected"));
}

} // namespace core
