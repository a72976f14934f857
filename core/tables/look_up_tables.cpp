// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/tables/look_up_tables.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/tables/catalogue.hpp"

namespace core {

Result<LookUpTables> LookUpTables::of(std::vector<LookUpTable> tables)
{
    const std::vector<TableForm> &forms = tableForms();
    const bool isWhole = std::equal(tables.begin(), tables.end(), forms.begin(), forms.end(),
                                    [](const LookUpTable &table, const TableForm &form) { return table.id == QLatin1String(form.id); });
    if (!isWhole)
        return failure(ErrorCode::NotFound, QCoreApplication::translate("Tables", "The look-up tables are not complete. Install the program again."));
    return LookUpTables(std::move(tables));
}

const LookUpTable *LookUpTables::find(QStringView id) const
{
    const auto at = std::find_if(m_tables.begin(), m_tables.end(), [&](const LookUpTable &table) { return table.id == id; });
    return at == m_tables.end() ? nullptr : &*at;
}

} // namespace core
