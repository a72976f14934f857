// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/audit_table.hpp"

#include <QCoreApplication>

#include "core/ledger/canonical.hpp"
#include "core/list/csv.hpp"

namespace core {

using namespace Qt::StringLiterals;

QByteArray auditCsv(const AuditTable &table)
{
    std::vector<std::vector<QString>> records(1);
    for (const ReportColumn &column : table.columns)
        records.front().push_back(column.name);
    for (const ReportRow &row : table.rows) {
        std::vector<QString> cells;
        for (const QString &cell : row.cells)
            cells.push_back(csv::guarded(cell));
        records.push_back(std::move(cells));
    }
    // A title alone reads as if nobody had looked.
    if (table.rows.empty() && !table.columns.empty()) {
        records.emplace_back(table.columns.size());
        records.back().front() = csv::guarded(table.whenEmpty);
    }
    return csv::write(records);
}

QString standingName(Standing standing)
{
    switch (standing) {
    case Standing::Stands: return u"stands"_s;
    case Standing::Struck: return u"struck"_s;
    case Standing::Fallen: return u"fell"_s;
    }
    Q_UNREACHABLE();
}

QString standingWord(const Line &line)
{
    switch (line.standing) {
    case Standing::Stands: return {};
    case Standing::Struck: return QCoreApplication::translate("Report", "struck by entry %1").arg(line.struckBy.value_or(0));
    case Standing::Fallen: return QCoreApplication::translate("Report", "fell with what it rested on");
    }
    Q_UNREACHABLE();
}

std::vector<Digest> hashesOf(const Series<Statement> &said)
{
    std::vector<Digest> hashes;
    for (std::size_t i = 0; i < said.size(); ++i)
        hashes.push_back(i + 1 < said.size() ? said[i + 1].prev : Digest::of(canonicalBytes(said[i])));
    return hashes;
}

} // namespace core
