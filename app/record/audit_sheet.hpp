// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>

#include "app/record/record.hpp"
#include "core/reports/audit_table.hpp"

namespace record {

/// Writes what an auditor asked and was answered as PDF/A-1b: the facts, then the rows under the headings of their groups; a hash stands under
/// its row, and what fixes the answer at the foot of each page. Replaces a file of that name, with the care and the errors of writeRecord.
core::Result<void> writeAuditPdf(const core::AuditTable &table, const QString &path, PageSize size);

/// The rows as CSV, with the same care.
core::Result<void> writeAuditCsv(const core::AuditTable &table, const QString &path);

/// `a4` or `letter`, in any case; nothing for anything else.
std::optional<PageSize> parsePageSize(const QString &text);

} // namespace record
