// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/leaks.hpp"

#include <QSet>

#include "core/job/leak_reading.hpp"
#include "core/requirements/catalogue.hpp"
#include "core/requirements/torque.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString technician() { return inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")); }

/// The limit that the draft is held against, when there is one.
const LeakLimit *limitOf(const Case &c) { return c.item && c.item->listed.leak ? &*c.item->listed.leak : nullptr; }

QString rework() { return inWords(QT_TRANSLATE_NOOP("Rule", "Find the cause, mark the item disturbed, and restore it as the maintenance data says.")); }

/// Drops are counted with how many of them make a millilitre: 10 to 20 from usual edges, 60 from the finest tips (conversion pages).
std::optional<QString> whyNoDropSize(const Case &c)
{
    const auto drops = Decimal::parse(c.text(u"drops_per_ml"));
    if (!drops)
        return std::nullopt;
    if (!c.draft.body.contains(u"drops"))
        return inWords(QT_TRANSLATE_NOOP("Rule", "Drops to the millilitre are told where drops were counted. Fill in the drops, or leave this out."));
    if (Rational(*drops) >= 5 && Rational(*drops) <= 100)
        return std::nullopt;
    return inWords(QT_TRANSLATE_NOOP("Rule", "%1 drops to the millilitre come from no edge: 10 to 20 are usual. Count how many fill a measure.")).arg(drops->text());
}

} // namespace

std::optional<Refusal> leakClassesAreSound(const Case &c)
{
    const std::vector<QString> classes = c.draft.body.texts(u"leak_classes");
    const QString lead = inWords(QT_TRANSLATE_NOOP("Rule", "the lead"));
    if (!classes.empty() && c.text(u"leak_scheme").isEmpty())
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Schemes call different leaks by one name. Name the scheme that the leak classes are of.")), lead);
    QSet<QString> names;
    for (const QString &name : classes) {
        if (name == dryLeak() || names.contains(name))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" is no leak class of its own. Name each class once, from the least to the worst, without \"%2\".")).arg(name, dryLeak()), lead);
        names.insert(name);
    }
    return std::nullopt;
}

std::optional<Refusal> leakIsAskedFor(const Case &c)
{
    if (!c.item || (asksFor(c.item->listed, "leak"_L1) && c.item->listed.leak))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The list asks for no leak check on %1. What is seen leaking is a finding.")).arg(c.itemName()), technician());
}

std::optional<Refusal> leakIsTold(const Case &c)
{
    const LeakLimit *limit = limitOf(c);
    if (!limit)
        return std::nullopt;
    if (c.draft.body.contains(u"rate") && c.draft.body.contains(u"drops"))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Tell a leak by its rate or by drops counted, not by both.")), technician());
    if (const auto why = whyNoDropSize(c))
        return refusal(c, *why, technician());
    if (!limit->worstClass.isEmpty() && c.text(u"class").isEmpty())
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is checked by class (%2 at worst). Say which was seen; dry, where nothing shows.")).arg(c.itemName(), limit->worstClass), technician());
    if (limit->rate && !leakRateIn(c.draft.body))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is checked by rate (%2 at most). Say what was measured, or count drops.")).arg(c.itemName(), limit->rate->text()), technician());
    return std::nullopt;
}

std::optional<Refusal> leakIsWithinLimit(const Case &c)
{
    const LeakLimit *limit = limitOf(c);
    if (!limit)
        return std::nullopt;
    const QString seen = c.text(u"class");
    const auto rate = leakRateIn(c.draft.body);
    if (rate && rate->value().isNegative())
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "A leak of %1 is none. Say what was measured.")).arg(rate->text()), technician());
    if (rate && seen == dryLeak() && rate->coherent() > 0)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 cannot be dry and leak %2. Say which it is.")).arg(c.itemName(), rate->text()), technician());
    if (!seen.isEmpty()) {
        const auto within = isLeakClassWithin(seen, limit->worstClass, c.job.facts);
        if (!within)
            return refusal(c, within.error(), technician());
        if (!*within)
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 leaks: %2, where %3 is allowed at worst. %4")).arg(c.itemName(), seen, limit->worstClass.isEmpty() ? dryLeak() : limit->worstClass, rework()), technician());
    }
    if (!rate || !limit->rate)
        return std::nullopt;
    const auto checked = measure::rateAgainstLimit(*rate, *limit->rate, Decimal::parse(c.text(u"drops_per_ml")));
    if (!checked)
        return refusal(c, checked.error(), technician());
    if (checked->isWithin)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1: %2 %3")).arg(c.itemName(), checked->said, rework()), technician());
}

std::optional<Refusal> leakIsCheckedAfterTorque(const Case &c)
{
    if (!c.item || !c.item->restoration || !asksFor(c.item->listed, "torque"_L1))
        return std::nullopt;
    const auto missing = missingTorque(*c.item);
    return missing ? std::optional(refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is checked for leaks after it was torqued. %2")).arg(c.itemName(), *missing), technician())) : std::nullopt;
}

const Rule leakClasses{"job.leak-classes"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A seep of one scheme is a heavy seep of another."), &leakClassesAreSound};
const Rule leakAsked{"leak.asked-for"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A check without a limit can only be passed."), &leakIsAskedFor};
const Rule leakTold{"leak.told"_L1, QT_TRANSLATE_NOOP("RuleWhy", "No leak is something that was looked for."), &leakIsTold};
const Rule leakLimit{"leak.limit"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A leak grows in flight, beside what is hot."), &leakIsWithinLimit};

const Rule leakAfterTorque{"leak.after-torque"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A loose union may stay dry for an hour."), &leakIsCheckedAfterTorque};

} // namespace core::rules
