// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/flows/look_up.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "app/desktop/ask.hpp"
#include "app/desktop/parts/table_dialog.hpp"
#include "app/desktop/parts/words.hpp"

namespace desktop {

namespace {

struct LookUp {
    Q_DECLARE_TR_FUNCTIONS(LookUp)
};

} // namespace

TableDialog *lookUp(const core::LookUpTables &tables, const std::vector<core::FromTable> &lines, const core::Field &field, Ask &ask, QWidget *parent)
{
    std::vector<const core::LookUpTable *> fitting;
    QStringList titles;
    for (const core::FromTable &line : lines) {
        const core::LookUpTable *table = line.field == field.name ? tables.find(QString(line.table)) : nullptr;
        if (table && !titles.contains(table->title)) {
            fitting.push_back(table);
            titles << table->title;
        }
    }
    if (fitting.empty())
        return nullptr;
    const auto wanted = fitting.size() == 1 ? std::optional(titles.front()) : ask.oneOf(LookUp::tr("Look up"), LookUp::tr("Which table?"), titles);
    if (!wanted || !titles.contains(*wanted))
        return nullptr;
    const core::LookUpTable &table = *fitting[static_cast<std::size_t>(titles.indexOf(*wanted))];
    QStringList columns;
    for (const core::FromTable &line : lines) {
        if (line.field == field.name && line.table == table.id && !line.column.isEmpty())
            columns << line.column;
    }
    auto *dialog = new TableDialog(table, columns, labelOf(field), parent);
    dialog->open();
    return dialog;
}

} // namespace desktop
