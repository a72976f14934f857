// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/blanks.hpp"

#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString technician() { return inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")); }

QString endWord(End end) { return end == End::Aircraft ? inWords(QT_TRANSLATE_NOOP("Rule", "the aircraft's end")) : inWords(QT_TRANSLATE_NOOP("Rule", "the unit's end")); }

} // namespace

std::optional<Refusal> blanksBalance(const Case &c)
{
    if (!c.item || !isOff(*c.item))
        return std::nullopt;
    for (const auto &[end, member] : {std::pair(End::Aircraft, u"blanks_removed"), std::pair(End::Unit, u"unit_blanks_removed")}) {
        const qint64 fitted = blanksToComeOut(c.job, *c.item, end);
        const qint64 removed = c.draft.body.integer(member).value_or(0);
        if (removed != fitted)
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 blanks were fitted to %2 of %3, and %4 are removed. Find the difference before you join it: one may be inside."))
                                  .arg(fitted).arg(endWord(end), c.itemName()).arg(removed), technician());
    }
    return std::nullopt;
}

std::optional<Refusal> missingBlanksWereFitted(const Case &c)
{
    const auto end = parseEnd(c.text(u"end"));
    if (!c.item || !end)
        return std::nullopt;
    if (!isOff(*c.item))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is not open, so no blank is on it that could be missing.")).arg(c.itemName()), {});
    const qint64 fitted = blanksToComeOut(c.job, *c.item, *end);
    const qint64 missing = c.draft.body.integer(u"count").value_or(0);
    if (missing >= 1 && missing <= fitted)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 blanks are logged on %2 of %3; %4 cannot be missing from it.")).arg(fitted).arg(endWord(*end), c.itemName()).arg(missing), technician());
}

std::optional<Refusal> missingBlanksAreAccountedFor(const Case &c)
{
    if (!c.item || !isOff(*c.item))
        return std::nullopt;
    for (const MissingBlanks &missing : c.item->removal->blanksMissing) {
        const Finding *finding = c.job.finding(missing.finding);
        if (finding && (!finding->closed || finding->disposition == u"deferred"))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "A blank of %1 is missing and may be inside. It is joined when finding %2 says what became of it; to put that off is not enough.")).arg(c.itemName(), missing.finding.text()),
                           inWords(QT_TRANSLATE_NOOP("Rule", "an inspector, by disposing of the finding")));
    }
    return std::nullopt;
}

std::optional<Refusal> openingsAreBlanked(const Case &c)
{
    const qint64 logged = blanksOnTheUnit(c.job);
    const qint64 blanked = c.draft.body.integer(u"openings_blanked").value_or(0);
    if (blanked >= logged)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 blanks were logged on the unit's ends, and %2 openings are said to be blanked. Count again: one may be inside it.")).arg(logged).arg(blanked), technician());
}

const Rule blanks{"balance.blanks"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A blank left in a line looks like a finished joint."), &blanksBalance};
const Rule blanksMissed{"blanks.missed"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Only what was fitted can be missing."), &missingBlanksWereFitted};
const Rule blanksSearch{"blanks.search"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What is missing is looked for before the way to it is closed."), &missingBlanksAreAccountedFor};
const Rule unitOpenings{"unit.openings"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A unit that leaves takes its blanks along, each of them counted."), &openingsAreBlanked};

} // namespace core::rules
