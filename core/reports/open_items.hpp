// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "core/value/json.hpp"

namespace core {

/// One thing that was handed over open, as the body of `handover.given` holds it, in a sentence of the record:
/// `E12 disconnected`, `tool R-14 out (Ratchet)`.
QString openItemInWords(const json::Object &item);

/// The member that names it: `interface`, `tool`.
QStringView openMember(const json::Object &item);

/// What it is and how it stands, for a column beside its name: `tool, out`, `test, failed`. Empty for an interface, whose stage says it.
QString openStateInWords(const json::Object &item);

/// The same in two, for a table.
struct OpenItem {
    QString name;  ///< `E12`, `R-14 (Ratchet)`
    QString state; ///< `disconnected`, `tool, out`
};
OpenItem openItemOf(const json::Object &item);

} // namespace core
