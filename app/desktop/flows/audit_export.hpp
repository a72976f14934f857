// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>

#include "app/desktop/ask.hpp"
#include "core/reports/audit_table.hpp"

namespace desktop {

/// Puts an answer into words: those of the screen for the screen, and the record's for a file.
using AuditAnswer = std::function<core::AuditTable()>;

/// Asks for a file, and for PDF for the paper, writes what an auditor asked into it in the record's words, and tells what came of it.
/// `name` is suggested, without an ending.
void exportAuditCsv(const AuditAnswer &answer, const QString &name, Ask &ask);
void exportAuditPdf(const AuditAnswer &answer, const QString &name, Ask &ask);

} // namespace desktop
