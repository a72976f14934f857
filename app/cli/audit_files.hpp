// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStringList>

#include "app/cli/command.hpp"
#include "app/record/audit_sheet.hpp"

/// What the commands for auditors share: the answer as files, beside what is printed.
namespace cli {

struct AuditFiles {
    std::optional<QString> csv;
    std::optional<QString> pdf;
    record::PageSize paper = record::PageSize::A4;

    /// A line each for what was written, each begun on a line of its own.
    QString inWords() const;
    void addTo(core::json::Object &json) const;
};

Option csvOption();
Option pdfOption();
Option paperOption();

/// What paperOption() was given. BadInput for a paper that is none.
core::Result<record::PageSize> paperIn(const Arguments &arguments);

/// BadInput for a paper that is none.
core::Result<AuditFiles> auditFilesIn(const Arguments &arguments);

/// What is printed of a row under its heading.
using RowInWords = QStringList (*)(const core::AuditTable &table, const core::ReportRow &row);

/// The table for a terminal: every fact, then the rows under the heading of their group, or what there is to say when there is none.
QString auditInWords(const core::AuditTable &table, RowInWords rowInWords);

core::Result<void> writeAudit(const core::AuditTable &table, const AuditFiles &files);

} // namespace cli
