// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/value/id.hpp"

#include <algorithm>

#include "core/value/plain_text.hpp"

namespace core {

bool isIdText(QStringView text)
{
    if (text.isEmpty() || text.size() > 128 || !text.isValidUtf16() || text.front().isSpace() || text.back().isSpace())
        return false;
    // Nearly all names are of such letters, and each entry has several.
    if (std::all_of(text.begin(), text.end(), [](QChar c) { return c >= u' ' && c <= u'~'; }))
        return true;
    // A name is one line, and written one way.
    return !hiddenCharacterIn(text) && !text.contains(u'\n') && !text.contains(u'\t') && hasSomethingToSee(text) && isPlainlyWritten(text);
}

} // namespace core
