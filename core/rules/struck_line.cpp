// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/struck_line.hpp"

#include <algorithm>

#include "core/rules/corrections.hpp"

namespace core::rules {

const Line *lineNamed(const Case &c)
{
    const qint64 seq = c.draft.body.integer(u"entry").value_or(0);
    return seq >= 1 && seq <= static_cast<qint64>(c.job.lines.size()) ? &c.job.lines[static_cast<std::size_t>(seq - 1)] : nullptr;
}

const Line *lineToStrike(const Case &c)
{
    const Line *line = lineNamed(c);
    return line && !struckEntryExists(c) && !entryMayBeStruck(c) ? line : nullptr;
}

bool saysNeverWas(const Case &c) { return c.draft.body.isTrue(u"never_was"); }

const InterfaceState *itemOf(const Case &c, const Line &line)
{
    const auto id = InterfaceId::parse(line.subject.value_or(QString()));
    return id ? c.job.item(*id) : nullptr;
}

const Line *laterOfTheSame(const Case &c, const Line &line, std::initializer_list<QLatin1String> kinds)
{
    for (auto at = static_cast<std::size_t>(line.seq); at < c.job.lines.size(); ++at) { // line n stands at n-1
        const Line &one = c.job.lines[at];
        const bool isOfThese = kinds.size() == 0 || std::any_of(kinds.begin(), kinds.end(), [&](QLatin1String kind) { return one.kind == kind; });
        if (one.standing == Standing::Stands && one.subject == line.subject && isOfThese)
            return &one;
    }
    return nullptr;
}

} // namespace core::rules
