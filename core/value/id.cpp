// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/value/id.hpp"

namespace core {

bool isIdText(QStringView text)
{
    if (text.isEmpty() || text.size() > 128 || !text.isValidUtf16() || text.front().isSpace() || text.back().isSpace())
        return false;
    for (const QChar c : text) {
        if (c.category() == QChar::Other_Control || c.category() == QChar::Other_Format)
            return false;
    }
    return true;
}

} // namespace core
