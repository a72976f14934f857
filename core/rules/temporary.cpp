// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/temporary.hpp"

#include <algorithm>

#include "core/rules/people.hpp"
#include "core/rules/struck_line.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

const TemporaryItem *itemOf(const Case &c)
{
    const auto id = TemporaryId::parse(c.draft.subject.value_or(QString()));
    return id ? c.job.temporary(*id) : nullptr;
}

QString nameOf(const TemporaryItem &item) { return item.id.text() + u" ("_s + item.name + u')'; }

QString technician() { return inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")); }

} // namespace

std::optional<Refusal> temporaryIsNew(const Case &c)
{
    if (const TemporaryItem *item = itemOf(c))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The job has a temporary item %1 already. Give this one a number of its own.")).arg(nameOf(*item)), technician());
    const QString zone = c.text(u"zone");
    const auto &zones = c.job.facts.zones;
    if (zone.isEmpty() || std::any_of(zones.begin(), zones.end(), [&](const Zone &one) { return one.name == zone; }))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "This job has no zone \"%1\".")).arg(zone), technician());
}

std::optional<Refusal> temporaryIsApplied(const Case &c)
{
    const TemporaryItem *item = itemOf(c);
    if (!item)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "No temporary item \"%1\" was applied in this job.")).arg(c.draft.subject.value_or(QString())), technician());
    if (!item->removed)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was removed by %2 in entry %3.")).arg(nameOf(*item), c.reg.nameOf(item->removed->by)).arg(item->removed->seq), technician());
}

std::optional<Refusal> lockoutIsOnesOwn(const Case &c)
{
    const TemporaryItem *item = itemOf(c);
    if (!item || item->removed || !isLockout(item->sort) || item->owner == c.draft.author)
        return std::nullopt;
    const QString owner = c.reg.nameOf(item->owner);
    if (c.job.lead == c.draft.author && !c.text(u"reason").isEmpty())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is %2's. Nobody else takes it off before it was handed over; where %2 has left, the lead does, having made sure that nobody is behind it, and says why.")).arg(nameOf(*item), owner),
                   inWords(QT_TRANSLATE_NOOP("Rule", "%1, or the lead with a reason")).arg(owner));
}

std::optional<Refusal> lockoutGoesToTheCrew(const Case &c)
{
    const TemporaryItem *item = itemOf(c);
    if (!item || item->removed)
        return std::nullopt;
    const auto to = PersonId::parse(c.text(u"to"));
    if (item->owner != c.draft.author)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is %2's, who alone hands it over.")).arg(nameOf(*item), c.reg.nameOf(item->owner)), c.reg.nameOf(item->owner));
    if (to && *to != c.draft.author && (c.job.crew.contains(*to) || c.job.lead == *to))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 goes over to another person of this job's crew.")).arg(nameOf(*item)), c.reg.nameOf(item->owner));
}

std::optional<Refusal> struckLockoutIsOff(const Case &c)
{
    const Line *line = lineToStrike(c);
    const auto id = line ? TemporaryId::parse(line->subject.value_or(QString())) : std::nullopt;
    const TemporaryItem *item = id && (line->kind == u"temporary.applied" || line->kind == u"temporary.handed_over") ? c.job.temporary(*id) : nullptr;
    if (!item || item->removed || !isLockout(item->sort) || (saysNeverWas(c) && mayOverrule(c, nullptr)))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is %2's, who may be behind it. It is taken off, or handed over, as any other is; on paper alone it does not come off.")).arg(nameOf(*item), c.reg.nameOf(item->owner)), c.reg.nameOf(item->owner));
}

const Rule temporaryNew{"temporary.new"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What two things are called by one name, one of them is left on."), &temporaryIsNew};
const Rule temporaryApplied{"temporary.applied"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Only what is on comes off."), &temporaryIsApplied};
const Rule lockoutOwn{"lockout.own"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Somebody's life hangs on the tag that carries their name."), &lockoutIsOnesOwn};
const Rule strikeLockout{"strike.lockout"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A tag that is struck from the paper still hangs on the breaker."), &struckLockoutIsOff};
const Rule lockoutTo{"lockout.to"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A lockout always belongs to somebody who is there."), &lockoutGoesToTheCrew};

} // namespace core::rules
