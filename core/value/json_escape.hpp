// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string>

namespace core::json {

/// Whether a character of a string stands for itself in canonical form (RFC 8785 section 3.2.2.2). True also of a unit or byte
/// of a longer character.
constexpr bool standsForItself(char16_t c) { return c >= 0x20 && c != u'"' && c != u'\\'; }

/// How one that does not is written: the escape of two characters where there is one, else \u00xx in lower case.
std::string escapeOf(char16_t c);

} // namespace core::json
