// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/blanks.hpp"

#include <algorithm>
#include <tuple>

#include "core/job/struck.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString technician() { return inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")); }

QString endWord(End end) { return end == End::Aircraft ? inWords(QT_TRANSLATE_NOOP("Rule", "the aircraft's end")) : inWords(QT_TRANSLATE_NOOP("Rule", "the unit's end")); }

/// What is missing was found, or is known to be elsewhere.
bool isAccountedFor(const Finding &finding) { return finding.closed && finding.disposition == u"rectified"; }

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
        if (finding && !isAccountedFor(*finding))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "A blank of %1 is missing and may be inside. It is joined when finding %2 is rectified, and says what became of it; there are no limits for it, and to put it off is not enough.")).arg(c.itemName(), missing.finding.text()),
                           inWords(QT_TRANSLATE_NOOP("Rule", "an inspector, by disposing of the finding")));
    }
    return std::nullopt;
}

std::optional<Refusal> nothingTurnsWithABlankMissing(const Case &c)
{
    for (const FindingId &id : c.job.blanksMissed) {
        const Finding *finding = c.job.finding(id);
        if (finding && !isAccountedFor(*finding))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "A blank is missing and may be inside (finding %1). Nothing is run or tested until it is known where it is.")).arg(id.text()), inWords(QT_TRANSLATE_NOOP("Rule", "an inspector, by disposing of the finding")));
    }
    return std::nullopt;
}

std::optional<Refusal> missingBlankIsRectified(const Case &c)
{
    const auto id = FindingId::parse(c.draft.subject.value_or(QString()));
    const bool isOfABlank = id && std::find(c.job.blanksMissed.begin(), c.job.blanksMissed.end(), *id) != c.job.blanksMissed.end();
    if (!isOfABlank || c.text(u"disposition") == u"rectified")
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Finding %1 is about a blank that is missing. There are no limits within which it may be inside, nor a day until which: it is closed when it is known where the blank is.")).arg(id->text()), inWords(QT_TRANSLATE_NOOP("Rule", "an inspector, once it is found")));
}

std::optional<Refusal> noLessThanWasSaid(const Case &c)
{
    const auto id = InterfaceId::parse(c.draft.subject.value_or(QString()));
    const LeftByStrikes *left = id ? leftOf(c.job, *id) : nullptr;
    if (!left || !left->undoing)
        return std::nullopt;
    const QString who = inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew; or a person with authority to overrule"));
    for (const auto &[end, member, said] : {std::tuple(End::Aircraft, u"blanks_fitted", left->blanks), std::tuple(End::Unit, u"unit_blanks_fitted", left->unitBlanks)}) {
        const qint64 now = c.draft.body.integer(member).value_or(0);
        if (now < said)
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1, struck since, said that %2 blanks are on %3 of %4; now it is said to be %5. Log as many, and what is not there as missing; or have somebody with authority to overrule strike that entry as never so.")).arg(QString::number(left->undoing->seq), QString::number(said), endWord(end), c.itemName(), QString::number(now)), who);
    }
    // Hardware of what is on no list is counted when its details follow.
    for (const HardwareRemoved &off : c.draft.kind == u"interface.unlisted" ? std::vector<HardwareRemoved>() : left->hardware) {
        qint64 now = 0;
        for (const HardwareRemoved &one : hardwareRemovedIn(c.draft.body))
            now += one.part == off.part ? one.quantity : 0;
        if (now < off.quantity)
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1, struck since, said that %2 of %3 came off %4; now it is said to be %5. Log as many, and what became of each when it is joined; or have somebody with authority to overrule strike that entry as never so.")).arg(QString::number(left->undoing->seq), QString::number(off.quantity), off.part, c.itemName(), QString::number(now)), who);
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
const Rule blanksFound{"blanks.running"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A blank that is missing is found by the engine."), &nothingTurnsWithABlankMissing};
const Rule blanksRectified{"blanks.rectified"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An engine with a blank in it is within no limits."), &missingBlankIsRectified};
const Rule countedAgain{"removal.counted"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What was counted once does not become less by counting again."), &noLessThanWasSaid};
const Rule unitOpenings{"unit.openings"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A unit that leaves takes its blanks along, each of them counted."), &openingsAreBlanked};

} // namespace core::rules
