// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QByteArrayView>

#include "core/ledger/entry.hpp"
#include "core/value/result.hpp"

namespace core {

/// The canonical bytes of a statement: RFC 8785 JSON with `"v":1`. `linked` stands in it only where the job has links.
QByteArray canonicalBytes(const Statement &said);

/// Reads what canonicalBytes wrote. Refuses anything else: another order, a blank, a missing or unknown name, a value of the
/// wrong type, a version other than 1. So what parses has exactly one spelling.
Result<Statement> parseStatement(QByteArrayView bytes);
/// The same, for whoever reads many.
Result<Statement> parseStatement(QByteArrayView bytes, json::ObjectReader &objects);

} // namespace core
