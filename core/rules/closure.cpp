// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/closure.hpp"

#include "core/job/loose_ends.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

std::optional<Refusal> nothingIsLoose(const Case &c)
{
    const LooseEnds ends = looseEnds(c.job, c.reg);
    if (ends.empty())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The job has loose ends: %1. The first: %2")).arg(ends.size()).arg(ends.front().sentence), ends.front().clearedBy);
}

std::optional<Refusal> somethingWasListed(const Case &c)
{
    if (!c.job.items.empty())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The job lists no interface; there is nothing to release.")), inWords(QT_TRANSLATE_NOOP("Rule", "the lead, by importing the list")));
}

const Rule closureNothingLoose{"closure.nothing-loose"_L1, QT_TRANSLATE_NOOP("RuleWhy", "That is what Remate is for."), &nothingIsLoose};
const Rule closureSomething{"closure.something-listed"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An empty list proves nothing."), &somethingWasListed};

} // namespace core::rules
