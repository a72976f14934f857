// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/calculations/leak_scheme.hpp"

#include <QCoreApplication>

namespace core {

namespace {

using namespace Qt::StringLiterals;

std::optional<measure::SizeBound> boundIn(const LookUpTable &table, const LookUpRow &row, QStringView column, QStringView edgeColumn)
{
    const auto inches = table.number(row, column);
    const auto size = inches ? Quantity::parse(inches->text(), u"in") : std::nullopt;
    return size ? std::optional(measure::SizeBound{*size, table.text(row, edgeColumn) == u"excluded" ? measure::Edge::Excluded : measure::Edge::Included}) : std::nullopt;
}

/// `30 min`; a time that is told in other words is for people to keep.
std::optional<qint64> minutesIn(const QString &time)
{
    const QStringList parts = time.split(u' ');
    bool isNumber = false;
    const qint64 number = parts.front().toLongLong(&isNumber);
    return parts.size() == 2 && parts.back() == u"min" && isNumber ? std::optional(number) : std::nullopt;
}

} // namespace

QStringList leakSchemesIn(const LookUpTables &tables)
{
    QStringList names;
    const LookUpTable *table = tables.find(u"leak_classes");
    Q_ASSERT(table);
    for (const LookUpRow &row : table->rows)
        names << table->text(row, u"scheme");
    names.removeDuplicates();
    return names;
}

std::optional<measure::LeakScheme> leakSchemeNamed(const QString &name, const LookUpTables &tables)
{
    const LookUpTable *table = tables.find(u"leak_classes");
    Q_ASSERT(table);
    const std::vector<const LookUpRow *> rows = table->rowsWith(u"scheme", name);
    if (rows.empty())
        return std::nullopt;
    measure::LeakScheme scheme{name, {}, minutesIn(table->text(*rows.front(), u"observation_time")), {}};
    bool isFromMemory = false;
    for (const LookUpRow *row : rows) {
        scheme.classes.push_back({table->text(*row, u"class"), boundIn(*table, *row, u"above", u"above_edge"), boundIn(*table, *row, u"up_to", u"up_to_edge")});
        isFromMemory = isFromMemory || row->seen == Seen::FromMemory;
    }
    const QString source = rows.front()->source;
    scheme.note = isFromMemory ? QCoreApplication::translate("Calculation", "%1 (from memory)").arg(source) : source;
    return scheme;
}

} // namespace core
