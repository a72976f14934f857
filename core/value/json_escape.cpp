// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/value/json_escape.hpp"

namespace core::json {

std::string escapeOf(char16_t c)
{
    switch (c) {
    case u'"': return "\\\"";
    case u'\\': return "\\\\";
    case u'\b': return "\\b";
    case u'\f': return "\\f";
    case u'\n': return "\\n";
    case u'\r': return "\\r";
    case u'\t': return "\\t";
    default: break;
    }
    constexpr char hex[] = "0123456789abcdef";
    return {'\\', 'u', '0', '0', hex[c >> 4 & 0x0f], hex[c & 0x0f]};
}

} // namespace core::json
