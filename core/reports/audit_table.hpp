// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/reports/report.hpp"

namespace core {

/// One thing that an auditor has to know about the answer: what was asked, of which store, up to which entry.
struct AuditFact {
    QString name;
    QString value;
    bool operator==(const AuditFact &) const = default;
};

/// What an auditor asked, and the answer: the same rows for paper, CSV and screen. Titles and facts are translated.
struct AuditTable {
    QString title;
    std::vector<AuditFact> facts;
    std::vector<ReportColumn> columns; ///< of width 0: for files alone; on paper `hash` stands under its row
    std::vector<ReportRow> rows;
    QString whenEmpty; ///< what stands where there are no rows
    QString foot;      ///< on every page: what fixes the answer, such as the hash of the last entry
};

/// The columns' stable names, then the rows, or one that says in its first cell why there is none; cells guarded against being run
/// as formulas (csv.hpp). The facts are not in it: a CSV is one table.
QByteArray auditCsv(const AuditTable &table);

/// Whether an entry counts, in files: `stands`, `struck`, `fell`.
QString standingName(Standing standing);
/// The same for a person, translated; nothing for what stands.
QString standingWord(const Line &line);

/// The hash of each entry of a ledger that holds together: entry n+1 carries that of entry n, and the last is worked out from its canonical bytes.
std::vector<Digest> hashesOf(const Series<Statement> &said);

} // namespace core
