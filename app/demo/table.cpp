// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/demo/table.hpp"

#include <QCoreApplication>
#include <QFile>

#include "core/list/csv.hpp"

// Outside any namespace: the macro declares a function of the resource compiler.
static void readyDemo()
{
    Q_INIT_RESOURCE(demo);
}

namespace demo {

core::Result<QByteArray> scenarioFile(const QString &name)
{
    readyDemo();
    QFile file(QStringLiteral(":/demo/") + name);
    if (!file.open(QIODevice::ReadOnly)) {
        return core::failure(core::ErrorCode::Io,
                             QCoreApplication::translate("Demo", "The demo lacks %1. Install the program again.").arg(name),
                             {name, std::nullopt, std::nullopt});
    }
    return file.readAll();
}

std::vector<QString> TableRow::words(const QString &column) const
{
    std::vector<QString> list;
    for (const QString &word : text(column).split(u' ', Qt::SkipEmptyParts))
        list.push_back(word);
    return list;
}

core::Result<std::vector<TableRow>> scenarioTable(const QString &name)
{
    const auto bytes = scenarioFile(name);
    if (!bytes)
        return core::failure(bytes.error());
    const core::csv::Table table = core::csv::read(*bytes, name);
    if (!table.faults.empty())
        return core::failure(table.faults.front());
    std::vector<TableRow> rows;
    for (std::size_t at = 1; at < table.records.size(); ++at) {
        const auto &heads = table.records.front().fields;
        const auto &fields = table.records[at].fields;
        if (fields.size() != heads.size()) {
            return core::failure(core::ErrorCode::BadInput,
                                 QCoreApplication::translate("Demo", "The row has %1 cells instead of %2.").arg(fields.size()).arg(heads.size()),
                                 {name, table.records[at].row, std::nullopt});
        }
        TableRow row{table.records[at].row, {}};
        for (std::size_t column = 0; column < heads.size(); ++column)
            row.cells.insert(heads[column].text, fields[column].text);
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace demo
