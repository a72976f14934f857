// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/people.hpp"

#include "core/acts/act.hpp"
#include "core/job/linked.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString administrator() { return inWords(QT_TRANSLATE_NOOP("Rule", "an administrator of the register")); }

std::optional<Refusal> needs(const Case &c, const Need &need)
{
    if (authorisationFor(c.reg, c.draft.author, need))
        return std::nullopt;
    return refusal(c, whyNotAuthorised(c.reg, c.draft.author, need), administrator());
}

} // namespace

bool mayInspectSomething(const Case &c)
{
    return authorisationFor(c.reg, c.draft.author, {.authority = Authority::Inspect, .aircraftType = c.job.facts.aircraftType, .at = c.draft.at});
}

bool mayInspect(const Case &c, const InterfaceState &item)
{
    const Need need{.authority = Authority::Inspect, .kind = item.listed.kind, .aircraftType = c.job.facts.aircraftType, .at = c.draft.at};
    return authorisationFor(c.reg, c.draft.author, need) && !hadAHand(c.job, item, c.draft.author);
}

bool mayOverrule(const Case &c, const InterfaceState *item)
{
    const Need need{.authority = Authority::Overrule, .aircraftType = c.job.facts.aircraftType, .at = c.draft.at};
    return authorisationFor(c.reg, c.draft.author, need) && !(item && hadAHand(c.job, *item, c.draft.author));
}

std::optional<Refusal> authorIsEnrolled(const Case &c)
{
    if (c.reg.person(c.draft.author))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Nobody is enrolled as \"%1\".")).arg(c.draft.author.text()), administrator());
}

std::optional<Refusal> authorsKeyIsNotStopped(const Case &c)
{
    const Person *author = c.reg.person(c.draft.author);
    if (!author || !author->keyStopped)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The key of %1 was stopped on %2. They sign again once they have a new one.")).arg(author->name, author->keyStopped->spoken()), administrator());
}

std::optional<Refusal> peopleAreEnrolled(const Case &c)
{
    const Act *act = findAct(c.draft.kind);
    for (const Field &field : act->fields) {
        std::vector<PersonId> named;
        if (field.type == FieldType::People)
            named = peopleIn(c.draft.body, QString(field.name));
        else if (const auto one = field.type == FieldType::Person ? PersonId::parse(c.text(QString(field.name))) : std::nullopt)
            named.push_back(*one);
        for (const PersonId &person : named) {
            if (!c.reg.person(person))
                return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Nobody is enrolled as \"%1\".")).arg(person.text()), administrator());
        }
    }
    return std::nullopt;
}

std::optional<Refusal> authorIsOfTheCrew(const Case &c)
{
    if (c.job.crew.contains(c.draft.author) || c.job.lead == c.draft.author)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is not of this job's crew.")).arg(c.authorName()),
                   inWords(QT_TRANSLATE_NOOP("Rule", "a member of the crew; or the lead, by a handover that names the new crew")));
}

std::optional<Refusal> authorMayWork(const Case &c)
{
    return needs(c, {.authority = Authority::Work,
                     .kind = c.item ? std::optional(c.item->listed.kind) : std::nullopt,
                     .aircraftType = c.job.facts.aircraftType,
                     .at = c.draft.at});
}

std::optional<Refusal> authorTakesPart(const Case &c)
{
    if (c.job.crew.contains(c.draft.author) || c.job.lead == c.draft.author || mayInspectSomething(c))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is neither of this job's crew nor one of its inspectors.")).arg(c.authorName()),
                   inWords(QT_TRANSLATE_NOOP("Rule", "a member of the crew or an inspector")));
}

std::optional<Refusal> authorLeads(const Case &c)
{
    if (c.job.lead == c.draft.author)
        return std::nullopt;
    const QString lead = c.job.lead ? c.reg.nameOf(*c.job.lead) : QString();
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Only the lead of this job may do this; that is %1.")).arg(lead), lead);
}

std::optional<Refusal> openerMayLead(const Case &c)
{
    const auto named = PersonId::parse(c.text(u"lead"));
    if (named != c.draft.author)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "A job is opened by its lead. Name yourself as lead, or let the lead open it.")), inWords(QT_TRANSLATE_NOOP("Rule", "the lead")));
    return needs(c, {.authority = Authority::Lead, .aircraftType = c.text(u"aircraft_type"), .at = c.draft.at});
}

std::optional<Refusal> authorMayRelease(const Case &c)
{
    return needs(c, {.authority = Authority::Release, .aircraftType = c.job.facts.aircraftType, .at = c.draft.at});
}

const Rule enrolled{"person.enrolled"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A signature is worth what is known of the signer."), &authorIsEnrolled};
const Rule signsWithKey{"key.stands"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A key that somebody else may have signs nothing."), &authorsKeyIsNotStopped};
const Rule peopleKnown{"person.known"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Who helped counts for independence, so helpers must be people, not free text."), &peopleAreEnrolled};
const Rule ofTheCrew{"crew.member"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A job's work is done by the people it names."), &authorIsOfTheCrew};
const Rule mayWork{"crew.authorised"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Work is done by people authorised for it on that day."), &authorMayWork};
const Rule takesPart{"crew.takes-part"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What anybody on the job sees must be easy to say."), &authorTakesPart};
const Rule leads{"crew.lead"_L1, QT_TRANSLATE_NOOP("RuleWhy", "One person answers for a shift."), &authorLeads};
const Rule mayOpen{"job.opened-by-lead"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Whoever opens a job answers for it until it is handed over."), &openerMayLead};
const Rule mayRelease{"closure.release-authority"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Only a person with release authority may say that the aircraft part of the job is complete."), &authorMayRelease};

} // namespace core::rules
