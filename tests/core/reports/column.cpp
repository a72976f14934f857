// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/reports/column.hpp"

#include <algorithm>

using namespace core;

QStringList column(const JobRecord &record, QStringView report, QLatin1String name)
{
    const Report *found = findReport(report);
    const auto at = std::find_if(found->columns.begin(), found->columns.end(), [&](const ReportColumn &c) { return c.name == name; });
    QStringList cells;
    for (const ReportRow &row : found->rows(record))
        cells << row.cells[static_cast<std::size_t>(at - found->columns.begin())];
    return cells;
}
