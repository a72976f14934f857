// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "core/acts/act.hpp"
#include "core/value/json.hpp"
#include "core/value/result.hpp"

namespace core {

/// Whether lines of this field stand in a cell of the list: a text, a whole number, then flags.
bool isLineOfCell(const Field &field);

/// One line as the list writes it: `BOLT-6 x 4`, `SEAL-28 x 1 new`. The text, ` x `, the number, and the name of each flag that is set.
QString lineText(const Field &field, const json::Object &line);

/// The same, read. `×` is understood for `x`. Of a text with several `x` the last one parts text and number. The error says what is wrong.
tl::expected<json::Object, QString> lineIn(const Field &field, const QString &text);

/// As an example of what is expected: `part x quantity`, with `new` behind it where it is so.
QString lineForm(const Field &field);

} // namespace core
