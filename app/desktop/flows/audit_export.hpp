// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/ask.hpp"
#include "core/reports/audit_table.hpp"

namespace desktop {

/// Asks for a file, and for PDF for the paper, writes what an auditor asked into it, and tells what came of it.
/// `name` is suggested, without an ending.
void exportAuditCsv(const core::AuditTable &table, const QString &name, Ask &ask);
void exportAuditPdf(const core::AuditTable &table, const QString &name, Ask &ask);

} // namespace desktop
