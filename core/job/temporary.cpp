// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/temporary.hpp"

#include <algorithm>

namespace core {

using namespace Qt::StringLiterals;

QString temporarySortText(TemporarySort sort)
{
    switch (sort) {
    case TemporarySort::Isolation: return u"isolation"_s;
    case TemporarySort::WarningTag: return u"warning tag"_s;
    case TemporarySort::SafetyPin: return u"safety pin"_s;
    case TemporarySort::Blank: return u"blank"_s;
    case TemporarySort::Hoist: return u"hoist"_s;
    case TemporarySort::Sling: return u"sling"_s;
    case TemporarySort::Stand: return u"stand"_s;
    case TemporarySort::Platform: return u"platform"_s;
    }
    Q_UNREACHABLE();
}

const std::vector<TemporarySort> &allTemporarySorts()
{
    static const std::vector<TemporarySort> all = {TemporarySort::Isolation, TemporarySort::WarningTag, TemporarySort::SafetyPin, TemporarySort::Blank,
                                                   TemporarySort::Hoist,     TemporarySort::Sling,      TemporarySort::Stand,     TemporarySort::Platform};
    return all;
}

std::optional<TemporarySort> parseTemporarySort(QStringView text)
{
    const auto &all = allTemporarySorts();
    const auto at = std::find_if(all.begin(), all.end(), [&](TemporarySort sort) { return temporarySortText(sort) == text; });
    return at == all.end() ? std::nullopt : std::optional(*at);
}

QString temporaryKindId(TemporarySort sort) { return temporarySortText(sort).replace(u' ', u'_'); }

bool isLockout(TemporarySort sort)
{
    return sort == TemporarySort::Isolation || sort == TemporarySort::WarningTag || sort == TemporarySort::SafetyPin;
}

} // namespace core
