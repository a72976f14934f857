// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/leaks.hpp"

#include <algorithm>

#include "core/acts/act.hpp"
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

std::optional<Refusal> refuse(const Case &c, const QString &sentence) { return refusal(c, sentence, technician()); }

bool drips(const json::Object &body) { return body.text(u"flow") == u"drips or pools"; }

/// By its class or by its size, nothing showed.
bool isToldDry(const json::Object &body)
{
    const auto size = quantityIn(body, u"size", Dimension::Length);
    return body.text(u"class") == dryLeak() || (size && size->coherent() == 0 && !drips(body));
}

/// Something of a class, a size or a flow is told, and it is not that all is dry.
bool showsSomething(const json::Object &body)
{
    const auto size = quantityIn(body, u"size", Dimension::Length);
    const QString seen = body.text(u"class");
    return (!seen.isEmpty() && seen != dryLeak()) || (size && size->coherent() != 0) || drips(body);
}

/// What would be recorded and held against nothing.
std::optional<QString> whyUnlimited(const Case &c, const LeakLimit &limit)
{
    const json::Object &body = c.draft.body;
    if (!limit.rate && (leakRateIn(body) || body.contains(u"drops_per_ml")))
        return inWords(QT_TRANSLATE_NOOP("Rule", "The list limits no rate of %1, so a rate would be judged by nothing. Leave it out and raise a finding, or have the list corrected.")).arg(c.itemName());
    if (limit.worstClass.isEmpty() && showsSomething(body))
        return inWords(QT_TRANSLATE_NOOP("Rule", "The list limits no class of %1, so what shows would be judged by nothing; dry alone is within any limit. Leave it out and raise a finding, or have the list corrected.")).arg(c.itemName());
    return std::nullopt;
}

/// The number of the list is the one; the checker's own stands in where the list has none.
std::optional<QString> whyOtherDropSize(const Case &c, const LeakLimit &limit)
{
    const auto told = Decimal::parse(c.text(u"drops_per_ml"));
    if (!told || !limit.dropsPerMillilitre || *told == *limit.dropsPerMillilitre)
        return std::nullopt;
    return inWords(QT_TRANSLATE_NOOP("Rule", "The list has %1 drops to the millilitre for %2, not %3. Leave the number out.")).arg(limit.dropsPerMillilitre->text(), c.itemName(), told->text());
}

/// Where the scheme has sizes, the class follows from what was seen.
std::optional<QString> whyNotSeen(const Case &c, const LeakLimit &limit, const measure::LeakScheme &scheme)
{
    const QString told = c.text(u"class");
    const auto seen = leakClassIn(c.draft.body, scheme);
    if (!seen)
        return inWords(QT_TRANSLATE_NOOP("Rule", "%1 is checked by class (%2 at worst), and \"%3\" classes by size. Give how far it is wet across, 0 where it is dry, and whether it drips or pools."))
            .arg(c.itemName(), limit.worstClass, scheme.name);
    if (!*seen || told.isEmpty() || told == **seen)
        return std::nullopt;
    return inWords(QT_TRANSLATE_NOOP("Rule", "By \"%1\" what was seen is %2, not %3. Leave the class out: it follows from the size.")).arg(scheme.name, **seen, told);
}

std::optional<QString> whyNotNamed(const Case &c, const LeakLimit &limit, const measure::LeakScheme &scheme)
{
    if (c.text(u"class").isEmpty())
        return inWords(QT_TRANSLATE_NOOP("Rule", "%1 is checked by class (%2 at worst). Say which was seen; dry, where nothing shows.")).arg(c.itemName(), limit.worstClass);
    if (c.draft.body.contains(u"size") || c.draft.body.contains(u"flow"))
        return inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" does not class by size. Choose the class by its description, and tell what was seen under how it was checked.")).arg(scheme.name);
    return std::nullopt;
}

std::optional<QString> whyNoClass(const Case &c, const LeakLimit &limit)
{
    const measure::LeakScheme &scheme = c.job.facts.leakScheme;
    if (limit.worstClass.isEmpty())
        return std::nullopt;
    if (const auto why = scheme.hasSizes() ? whyNotSeen(c, limit, scheme) : whyNotNamed(c, limit, scheme))
        return why;
    return c.draft.body.integer(u"minutes") ? std::nullopt : measure::whyTooSoon(std::nullopt, scheme);
}

/// Of two things that are told, one is not so.
std::optional<QString> whyBothCannotBe(const Case &c)
{
    const json::Object &body = c.draft.body;
    const auto rate = leakRateIn(body);
    if (!rate || rate->coherent() <= 0)
        return std::nullopt;
    if (isToldDry(body))
        return inWords(QT_TRANSLATE_NOOP("Rule", "%1 cannot be dry and leak %2. Say which it is.")).arg(c.itemName(), rate->text());
    if (body.text(u"flow") == u"still")
        return inWords(QT_TRANSLATE_NOOP("Rule", "%1 leaks %2, so the liquid is not still. Say that it drips or pools.")).arg(c.itemName(), rate->text());
    return std::nullopt;
}

std::optional<QString> whyClassIsOver(const Case &c, const LeakLimit &limit)
{
    const measure::LeakScheme &scheme = c.job.facts.leakScheme;
    const auto minutes = c.draft.body.integer(u"minutes");
    const auto seen = leakClassIn(c.draft.body, scheme);
    if (limit.worstClass.isEmpty() || !seen || (scheme.minutes && !minutes)) // leak.told asks for what is missing
        return std::nullopt;
    if (const auto why = measure::whyTooSoon(minutes, scheme))
        return why;
    if (!*seen)
        return seen->error();
    const auto within = isLeakClassWithin(**seen, limit.worstClass, scheme);
    if (!within)
        return within.error();
    if (*within)
        return std::nullopt;
    return inWords(QT_TRANSLATE_NOOP("Rule", "%1 leaks: %2, where %3 is allowed at worst. %4")).arg(c.itemName(), **seen, limit.worstClass, rework());
}

std::optional<QString> whyRateIsOver(const Case &c, const LeakLimit &limit)
{
    const auto rate = leakRateIn(c.draft.body);
    if (!rate || !limit.rate || (c.draft.body.contains(u"rate") && c.draft.body.contains(u"drops"))) // leak.told wants one of them
        return std::nullopt;
    const auto checked = measure::rateAgainstLimit(*rate, *limit.rate, leakDropSizeIn(c.draft.body, limit));
    if (!checked)
        return checked.error();
    return checked->isWithin ? std::nullopt : std::optional(inWords(QT_TRANSLATE_NOOP("Rule", "%1: %2 %3")).arg(c.itemName(), checked->said, rework()));
}

} // namespace

std::optional<Refusal> leakClassesAreSound(const Case &c)
{
    const std::vector<QString> classes = c.draft.body.texts(u"leak_classes");
    const QString lead = inWords(QT_TRANSLATE_NOOP("Rule", "the lead"));
    if (!classes.empty() && c.text(u"leak_scheme").isEmpty())
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Schemes call different leaks by one name. Name the scheme that the leak classes are of.")), lead);
    if (std::find(classes.begin(), classes.end(), dryLeak()) != classes.end())
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" is no leak class: it is always there, below the least. Name the classes without it.")).arg(dryLeak()), lead);
    const auto scheme = leakSchemeIn(c.draft.body);
    return scheme ? std::nullopt : std::optional(refusal(c, scheme.error(), lead));
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
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "Tell a leak by its rate or by drops counted, not by both.")));
    for (const auto &why : {whyUnlimited(c, *limit), whyOtherDropSize(c, *limit), whyNoClass(c, *limit)}) {
        if (why)
            return refuse(c, *why);
    }
    if (limit->rate && !leakRateIn(c.draft.body))
        return refuse(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is checked by rate (%2 at most). Say what was measured, or count drops.")).arg(c.itemName(), limit->rate->text()));
    return std::nullopt;
}

std::optional<Refusal> leakIsWithinLimit(const Case &c)
{
    const LeakLimit *limit = limitOf(c);
    if (!limit)
        return std::nullopt;
    for (const auto &why : {whyBothCannotBe(c), whyClassIsOver(c, *limit), whyRateIsOver(c, *limit)}) {
        if (why)
            return refuse(c, *why);
    }
    return std::nullopt;
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
