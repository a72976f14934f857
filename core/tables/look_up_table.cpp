// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/tables/look_up_table.hpp"

#include <QCoreApplication>
#include <QSet>
#include <QStringList>

#include <algorithm>

#include "core/list/csv.hpp"
#include "core/tables/catalogue.hpp"

namespace core {

using namespace Qt::StringLiterals;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Tables", text); }

/// What every table has behind the columns of its form.
constexpr std::size_t noteBehind = 0;
constexpr std::size_t sourceBehind = 1;
constexpr std::size_t seenHowBehind = 2;
constexpr std::size_t behind = 3;

/// Lower-case letters, digits, and what stands in the name of a thread: it stands in records beside the table's own.
bool isRowId(QStringView id)
{
    return !id.isEmpty() && std::all_of(id.begin(), id.end(), [](QChar c) {
        return (c >= u'a' && c <= u'z') || (c >= u'0' && c <= u'9') || c == u'-' || c == u'/' || c == u'.';
    });
}

std::optional<Seen> seenOf(QStringView text)
{
    if (text == u"read")
        return Seen::Read;
    if (text == u"from memory")
        return Seen::FromMemory;
    return std::nullopt;
}

QStringList namesOf(const TableForm &form)
{
    QStringList names{u"id"_s};
    for (const TableColumnForm &column : form.columns)
        names << QString::fromUtf8(column.id);
    return names << u"note"_s << u"source"_s << u"seen"_s;
}

QStringList choicesOf(const TableColumnForm &column) { return QString::fromUtf8(column.choices).split(u'|'); }

/// What is wrong with a cell, or nothing. A source is checked by its own rule.
std::optional<QString> faultOf(const TableColumnForm &column, const QString &cell)
{
    if (cell.isEmpty())
        return column.filled == Filled::OrEmpty ? std::nullopt : std::optional(tr("This cell may not be empty."));
    switch (column.holds) {
    case Holds::Words:
        return std::nullopt;
    case Holds::Number:
        if (const auto number = Decimal::parse(cell); number && !number->isNegative())
            return std::nullopt;
        return tr("\"%1\" is not a number, zero or more, with a decimal point.").arg(cell);
    case Holds::OneOf:
        if (const QStringList choices = choicesOf(column); !choices.contains(cell))
            return tr("\"%1\" is not one of: %2.").arg(cell, choices.join(u", "_s));
        return std::nullopt;
    }
    Q_UNREACHABLE();
}

class TableReader {
public:
    TableReader(const TableForm &form, QString file) : m_form(form), m_file(std::move(file)) {}

    Result<std::vector<LookUpRow>> read(QByteArrayView bytes)
    {
        const csv::Table table = csv::read(bytes, m_file);
        if (!table.faults.empty())
            return failure(table.faults.front());
        if (table.records.empty())
            return no(1, {}, tr("The table is empty."));
        if (const auto named = readNames(table.records.front()); !named)
            return failure(named.error());
        std::vector<LookUpRow> rows;
        for (std::size_t i = 1; i < table.records.size(); ++i) {
            auto row = readRow(table.records[i]);
            if (!row)
                return failure(row.error());
            rows.push_back(*std::move(row));
        }
        if (rows.empty())
            return no(1, {}, tr("The table has no row."));
        return rows;
    }

private:
    tl::unexpected<Error> no(qint64 row, std::optional<qint64> column, const QString &why) const
    {
        return failure(ErrorCode::BadInput, why, {m_file, row, column});
    }

    Result<void> readNames(const csv::Record &record) const
    {
        const QStringList names = namesOf(m_form);
        for (qsizetype i = 0; i < names.size(); ++i) {
            const auto at = static_cast<std::size_t>(i);
            if (at >= record.fields.size() || record.fields[at].text != names[i])
                return no(record.row, i + 1, tr("The column \"%1\" is expected here.").arg(names[i]));
        }
        if (static_cast<qsizetype>(record.fields.size()) > names.size())
            return no(record.row, names.size() + 1, tr("There is no column after \"%1\".").arg(names.last()));
        return {};
    }

    Result<LookUpRow> readRow(const csv::Record &record)
    {
        const std::size_t own = m_form.columns.size();
        const std::size_t expected = 1 + own + behind;
        if (record.fields.size() != expected)
            return no(record.row, {}, tr("Cells in this row: %1. Expected: %2.").arg(QString::number(record.fields.size()), QString::number(expected)));
        for (std::size_t i = 0; i < expected; ++i) {
            if (const QString &cell = record.fields[i].text; cell != cell.trimmed())
                return no(record.row, static_cast<qint64>(i) + 1, tr("A cell begins or ends with a blank."));
        }
        LookUpRow row{.id = record.fields.front().text, .cells = {}, .note = {}, .source = {}, .seen = Seen::FromMemory};
        if (!isRowId(row.id))
            return no(record.row, 1, tr("\"%1\" names no row. An id holds lower-case letters, digits, -, / and . alone.").arg(row.id));
        if (m_ids.contains(row.id))
            return no(record.row, 1, tr("Two rows have the id \"%1\".").arg(row.id));
        m_ids.insert(row.id);
        for (std::size_t i = 0; i < own; ++i) {
            row.cells.push_back(record.fields[1 + i].text);
            if (const auto fault = faultOf(m_form.columns[i], row.cells.back()))
                return no(record.row, static_cast<qint64>(i) + 2, *fault);
        }
        const auto field = [&](std::size_t which) { return record.fields[1 + own + which].text; };
        const auto column = [&](std::size_t which) { return static_cast<qint64>(1 + own + which) + 1; };
        row.note = field(noteBehind);
        row.source = field(sourceBehind);
        if (row.source.isEmpty())
            return no(record.row, column(sourceBehind), tr("A figure without a source is taken from nowhere. Name the document and its section."));
        const auto seen = seenOf(field(seenHowBehind));
        if (!seen)
            return no(record.row, column(seenHowBehind), tr("\"%1\" is neither \"read\" nor \"from memory\".").arg(field(seenHowBehind)));
        row.seen = *seen;
        return row;
    }

    const TableForm &m_form;
    QString m_file;
    QSet<QString> m_ids;
};

bool isSame(const QString &cell, QStringView value)
{
    if (cell == value)
        return true;
    const auto a = Decimal::parse(cell);
    const auto b = Decimal::parse(value);
    return a && b && *a == *b;
}

} // namespace

QString LookUpTable::text(const LookUpRow &row, QStringView column) const
{
    for (std::size_t i = 0; i < columns.size() && i < row.cells.size(); ++i)
        if (columns[i].id == column)
            return row.cells[i];
    return {};
}

std::optional<Decimal> LookUpTable::number(const LookUpRow &row, QStringView column) const { return Decimal::parse(text(row, column)); }

std::vector<const LookUpRow *> LookUpTable::rowsWith(QStringView column, QStringView value) const
{
    std::vector<const LookUpRow *> found;
    if (value.isEmpty())
        return found; // what a source left open is no value
    for (const LookUpRow &row : rows)
        if (column == u"id" ? row.id == value : isSame(text(row, column), value))
            found.push_back(&row);
    return found;
}

const LookUpRow *LookUpTable::row(QStringView column, QStringView value) const
{
    const auto found = rowsWith(column, value);
    return found.size() == 1 ? found.front() : nullptr;
}

QString tableCaution()
{
    return tr("The approved maintenance data governs. This table is a help: compare with the data, and enter no figure from here that the data does not give.");
}

Result<LookUpTable> parseTable(const TableForm &form, QByteArrayView bytes, const QString &fileName)
{
    return TableReader(form, fileName).read(bytes).map([&](std::vector<LookUpRow> rows) {
        LookUpTable table{.id = QString::fromUtf8(form.id), .title = tr(form.title), .about = tr(form.about), .columns = {}, .rows = std::move(rows), .caution = tableCaution()};
        for (const TableColumnForm &column : form.columns)
            table.columns.push_back({QString::fromUtf8(column.id), tr(column.title), QString::fromUtf8(column.unit)});
        return table;
    });
}

} // namespace core
