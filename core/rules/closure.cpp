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

std::optional<Refusal> limitationIsTold(const Case &c)
{
    QStringList deferred;
    for (const Finding &finding : c.job.findings) {
        if (finding.disposition == u"deferred")
            deferred << inWords(QT_TRANSLATE_NOOP("Rule", "%1 until %2")).arg(finding.id.text(), finding.limit.toString(Qt::ISODate));
    }
    const bool isTold = !c.text(u"limitation").isEmpty();
    const QString releaser = inWords(QT_TRANSLATE_NOOP("Rule", "whoever releases"));
    if (deferred.isEmpty())
        return isTold ? std::optional(refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Nothing is deferred, so this closure is not limited. Leave the limitation out.")), releaser)) : std::nullopt;
    if (isTold)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Findings are deferred (%1), so this closure is limited. Say how.")).arg(deferred.join(u", "_s)), releaser);
}

const Rule closureLimited{"closure.limited"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Whoever flies it has to know what is still to be done."), &limitationIsTold};
const Rule closureNothingLoose{"closure.nothing-loose"_L1, QT_TRANSLATE_NOOP("RuleWhy", "That is what Remate is for."), &nothingIsLoose};
const Rule closureSomething{"closure.something-listed"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An empty list proves nothing."), &somethingWasListed};

} // namespace core::rules
