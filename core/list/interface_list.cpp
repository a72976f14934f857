// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/list/interface_list.hpp"

#include <QCoreApplication>
#include <QHash>
#include <QStringList>

#include "core/acts/act.hpp"
#include "core/acts/listing.hpp"
#include "core/list/cells.hpp"
#include "core/list/csv.hpp"
#include "core/list/list_checks.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("InterfaceList", text); }

const std::vector<Field> &listedFields() { return findAct(u"interface.listed")->fields; }

QStringList knownColumns()
{
    QStringList names{u"id"_s};
    for (const Field &field : listedFields())
        names << field.name;
    return names;
}

/// The name of a column as the program writes it: a heading typed by hand may say `Torque min`.
QString columnName(const csv::Field &cell) { return cell.text.trimmed().toLower().replace(u' ', u'_'); }

struct Header {
    QHash<QString, qint64> columns; ///< name to place, from 1
    std::vector<Error> faults;
};

Header headerOf(const csv::Record &record, const QString &fileName)
{
    Header header;
    const QStringList known = knownColumns();
    const auto fault = [&](std::optional<qint64> column, const QString &message) {
        header.faults.push_back({ErrorCode::BadInput, message, {fileName, record.row, column}});
    };
    for (std::size_t i = 0; i < record.fields.size(); ++i) {
        const QString name = columnName(record.fields[i]);
        const qint64 column = static_cast<qint64>(i) + 1;
        if (!known.contains(name))
            fault(column, tr("There is no column \"%1\". Expected: some of %2.").arg(name, known.join(u", "_s)));
        else if (header.columns.contains(name))
            fault(column, tr("The column \"%1\" stands twice.").arg(name));
        else
            header.columns.insert(name, column);
    }
    for (const QString &name : {u"id"_s, u"name"_s, u"kind"_s, u"zone"_s}) {
        if (!header.columns.contains(name))
            fault(std::nullopt, tr("The column \"%1\" is missing.").arg(name));
    }
    return header;
}

/// Reads one record into a row, reporting each cell that cannot be taken.
class RowReader {
public:
    RowReader(const csv::Record &record, const Header &header, const ListContext &context, ListFaults &faults)
        : m_record(record), m_header(header), m_context(context), m_faults(faults)
    {
    }

    /// Nothing when the row has no sound id; everything else about it is reported all the same.
    std::optional<ListedRow> read()
    {
        checkWidth();
        for (const Field &field : listedFields())
            take(field);
        fillIn();
        const QString idText = csv::unguarded(cell(u"id"_s).text).trimmed();
        const auto id = InterfaceId::parse(idText);
        if (!id)
            fault(u"id"_s, tr("\"%1\" cannot be an id. Expected: 1 to 128 characters, such as E12.").arg(idText));
        // Without an id the rest is judged under a stand-in, which never leaves this file.
        const InterfaceId shown = id ? *id : *InterfaceId::parse(u"?");
        const ListedRow row{m_record.row, shown, m_body, listingIn(shown, m_body)};
        checkRow(row, m_cells, m_context, m_faults);
        return id ? std::optional(row) : std::nullopt;
    }

private:
    csv::Field cell(const QString &column) const
    {
        const qint64 at = m_header.columns.value(column, 0);
        const bool isThere = at >= 1 && at <= static_cast<qint64>(m_record.fields.size());
        return isThere ? m_record.fields[static_cast<std::size_t>(at - 1)] : csv::Field();
    }

    void fault(const QString &column, const QString &message)
    {
        m_cells = Cells::Faulty;
        m_faults.add(m_record.row, column, message);
    }

    void checkWidth()
    {
        const auto fields = static_cast<qint64>(m_record.fields.size());
        if (fields != m_header.columns.size())
            fault({}, tr("The row has %1 fields. Expected: %2, as in the first row.").arg(fields).arg(m_header.columns.size()));
    }

    void take(const Field &field)
    {
        const CellValue value = cellValue(field, cell(field.name));
        if (!value)
            fault(field.name, value.error());
        else if (*value)
            m_body.set(field.name, **value);
        else if (field.needed == Needed::Always)
            fault(field.name, tr("\"%1\" is empty. Expected: %2.").arg(field.name, QCoreApplication::translate("Field", field.label)));
    }

    /// What an empty cell stands for.
    void fillIn()
    {
        const Kind *kind = m_context.kinds.find(m_body.text(u"kind"));
        if (!m_body.contains(u"requirements"))
            m_body.set(u"requirements"_s, json::arrayOf(kind ? kind->requirements : std::vector<QString>()));
        else if (m_body.texts(u"requirements") == std::vector{u"none"_s})
            m_body.set(u"requirements"_s, json::Array());
        if (!m_body.contains(u"inspections"))
            m_body.set(u"inspections"_s, json::Value(1));
    }

    const csv::Record &m_record;
    const Header &m_header;
    const ListContext &m_context;
    ListFaults &m_faults;
    json::Object m_body;
    Cells m_cells = Cells::Read;
};

tl::unexpected<std::vector<Error>> refused(std::vector<Error> errors) { return tl::unexpected<std::vector<Error>>(std::move(errors)); }

tl::unexpected<std::vector<Error>> refused(const QString &fileName, const QString &message)
{
    return refused({Error{ErrorCode::BadInput, message, {fileName, std::nullopt, std::nullopt}}});
}

} // namespace

InterfaceList readInterfaceList(QByteArrayView bytes, const ListContext &context)
{
    // A file of broken form is not judged further: where its rows begin is not certain.
    csv::Table table = csv::read(bytes, context.fileName);
    if (!table.faults.empty())
        return refused(std::move(table.faults));
    std::erase_if(table.records, [](const csv::Record &record) { return record.isEmpty(); });
    if (table.records.empty())
        return refused(context.fileName, tr("The file is empty. Expected: a first row that names the columns, then one row an interface."));
    Header header = headerOf(table.records.front(), context.fileName);
    if (!header.faults.empty())
        return refused(std::move(header.faults));
    if (table.records.size() == 1)
        return refused(context.fileName, tr("The file names columns but lists no interface."));

    ListFaults faults(context.fileName, header.columns);
    std::vector<ListedRow> rows;
    for (std::size_t i = 1; i < table.records.size(); ++i) {
        if (auto row = RowReader(table.records[i], header, context, faults).read())
            rows.push_back(*std::move(row));
    }
    checkTogether(rows, context, faults);
    if (auto errors = std::move(faults).sorted(); !errors.empty())
        return refused(std::move(errors));
    return inOrderOfAccess(rows).rows;
}

} // namespace core
