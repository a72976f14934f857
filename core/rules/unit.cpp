// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/unit.hpp"

#include <algorithm>

#include "core/job/linked.hpp"
#include "core/job/stage.hpp"
#include "core/rules/people.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString technician() { return inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")); }

bool isRemoval(const Case &c) { return c.draft.kind == u"unit.removed"; }

} // namespace

std::optional<Refusal> serialIsTheJobs(const Case &c)
{
    const QString asked = c.draft.kind == u"unit.positioned" ? serialToPutUp(c.job) : isRemoval(c) ? c.job.facts.outgoingSerial : c.job.facts.incomingSerial;
    if (c.text(u"serial") == asked)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "This job is about the unit %1; the plate is said to read %2. Read it again. If the unit is another one, this is another job.")).arg(asked, c.text(u"serial")), technician());
}

std::optional<Refusal> unitMovesInOrder(const Case &c)
{
    const UnitChange &unit = c.job.unit;
    const QString kind = c.draft.kind;
    const std::optional<Mark> done = kind == u"unit.removed" ? (unit.off ? std::optional(unit.off->mark) : std::nullopt)
                                     : kind == u"unit.received" ? (unit.in ? std::optional(unit.in->mark) : std::nullopt)
                                                                : (unit.up ? std::optional(unit.up->mark) : std::nullopt);
    if (done)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Done, by %1 in entry %2. If it was wrong, strike that entry.")).arg(c.reg.nameOf(done->by)).arg(done->seq), technician());
    if (kind != u"unit.positioned")
        return std::nullopt;
    if (!unit.off)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The outgoing unit is not off yet.")), technician());
    if (!unit.in && !c.job.reversed)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The incoming unit was not received yet: its plate, its certificate and its blanks are looked at first.")), technician());
    return std::nullopt;
}

std::optional<Refusal> nothingHoldsTheUnit(const Case &c)
{
    for (const InterfaceState &one : c.job.items) {
        const InterfaceState &item = asItIsNow(c.job, one);
        if (isNotApplicable(item))
            continue;
        if (stageOf(item) != Stage::Disconnected || item.stillAttached || isHeldInPlace(item))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 (%2) is not logged as free, so the unit cannot be off. Log what was undone first.")).arg(item.listed.id.text(), item.listed.name), technician());
    }
    return std::nullopt;
}

std::optional<Refusal> shippingBlanksAreOut(const Case &c)
{
    // The outgoing unit that goes back has the blanks of its own openings.
    const UnitChange &unit = c.job.unit;
    const qint64 counted = blanksOfTheUnitToPutUp(c.job);
    const auto removed = c.draft.body.integer(u"shipping_blanks_removed");
    if ((!unit.in && !c.job.reversed) || removed == counted)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 blanks were counted on the unit, and %2 are said to be removed. Find the difference before it goes up: a blank left in is found by the engine.")).arg(counted).arg(removed.value_or(0)), technician());
}

std::optional<Refusal> unitIsCountedAgain(const Case &c)
{
    const qint64 said = c.job.shippingBlanksStruck;
    const qint64 now = c.draft.body.integer(u"shipping_blanks").value_or(0);
    if (now >= said || mayInspectSomething(c))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 blanks were counted on the unit, which was struck, and now %2. What was counted once is there, or inside: look for it. Where the first count was wrong, an inspector counts, and signs this.")).arg(said).arg(now), inWords(QT_TRANSLATE_NOOP("Rule", "an authorised inspector")));
}

std::optional<Refusal> mountsWaitForAUnit(const Case &c)
{
    const UnitChange &unit = c.job.unit;
    if (!c.item || c.item->listed.kind != u"mount" || !unit.off || unit.up || unit.in || c.job.reversed)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The outgoing unit is off (entry %1), and none was received since that %2 could be joined to.")).arg(QString::number(unit.off->mark.seq), c.itemName()), technician());
}

std::optional<Refusal> unitIsCarried(const Case &c)
{
    const bool hangsOnItsMounts = c.job.unit.up || (c.job.reversed && !c.job.unit.off);
    if (!c.item || c.item->listed.kind != u"mount" || !hangsOnItsMounts)
        return std::nullopt;
    const bool hangs = std::any_of(c.job.temporaries.begin(), c.job.temporaries.end(), [](const TemporaryItem &one) { return !one.removed && one.sort == TemporarySort::Hoist; });
    if (hangs)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The unit hangs in its place, and no hoist is applied that carries it while %1 is undone. Give it the load first, and log it.")).arg(c.itemName()), technician());
}

std::optional<Refusal> isNotReversedYet(const Case &c)
{
    if (c.job.unit.up)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The incoming unit hangs in its place. To take it off again is a job of its own.")), inWords(QT_TRANSLATE_NOOP("Rule", "the lead, by opening a follow-on job")));
    if (!c.job.reversed)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The change was given up already, by %1 in entry %2.")).arg(c.reg.nameOf(c.job.reversed->by)).arg(c.job.reversed->seq), {});
}

const Rule reversedOnce{"job.reversed-once"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A job that is given up is not deleted: what was undone closes in full."), &isNotReversedYet};
const Rule unitSerial{"unit.serial"_L1, QT_TRANSLATE_NOOP("RuleWhy", "The wrong unit fits as well as the right one."), &serialIsTheJobs};
const Rule unitOrder{"unit.order"_L1, QT_TRANSLATE_NOOP("RuleWhy", "One place, one unit."), &unitMovesInOrder};
const Rule unitCounted{"unit.counted"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What was counted once does not become less by counting again."), &unitIsCountedAgain};
const Rule unitThere{"unit.there"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A mount that carries nothing is not restored."), &mountsWaitForAUnit};
const Rule unitCarried{"unit.carried"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A mount that is undone again hands its load to the others, or to nobody."), &unitIsCarried};
const Rule unitFree{"unit.free"_L1, QT_TRANSLATE_NOOP("RuleWhy", "The one bolt that everybody left to the others tears out what it holds."), &nothingHoldsTheUnit};
const Rule unitBlanks{"unit.shipping-blanks"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What was put in for the journey must come out before the work."), &shippingBlanksAreOut};

} // namespace core::rules
