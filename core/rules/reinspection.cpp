// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/reinspection.hpp"

#include "core/job/linked.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

constexpr qint64 aDay = 24LL * 60 * 60 * 1000;
constexpr qint64 aMinute = 60LL * 1000;

bool mayInspect(const Case &c, const PersonId &person)
{
    const Need need{.authority = Authority::Inspect, .kind = c.item->listed.kind, .aircraftType = c.job.facts.aircraftType, .at = c.draft.at};
    return authorisationFor(c.reg, person, need) != nullptr;
}

QString another() { return inWords(QT_TRANSLATE_NOOP("Rule", "another authorised inspector")); }

} // namespace

std::optional<Refusal> jobAllowsReinspection(const Case &c)
{
    if (c.job.facts.mayReinspect)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "This job was opened without the single-person re-inspection. Somebody else inspects.")), another());
}

std::optional<Refusal> isOwnWork(const Case &c)
{
    if (!c.item || hadAHand(c.job, *c.item, c.draft.author))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 had no hand in %2: inspect it in the ordinary way.")).arg(c.authorName(), c.itemName()), c.authorName());
}

std::optional<Refusal> nobodyElseIsThere(const Case &c)
{
    if (!c.item)
        return std::nullopt;
    for (const PersonId &member : c.job.crew) {
        if (member != c.draft.author && mayInspect(c, member))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is of this job's crew and may inspect %2. A re-inspection is for when nobody else is there.")).arg(c.reg.nameOf(member), c.itemName()), c.reg.nameOf(member));
    }
    for (const Line &line : c.job.lines) {
        if (line.author != c.draft.author && c.draft.at.milliseconds() - line.at.milliseconds() <= aDay && mayInspect(c, line.author))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 signed in this job within 24 hours (entry %2) and may inspect %3. A re-inspection is for when nobody else is there.")).arg(c.reg.nameOf(line.author)).arg(line.seq).arg(c.itemName()),
                           c.reg.nameOf(line.author));
    }
    return std::nullopt;
}

std::optional<Refusal> approverMayAllow(const Case &c)
{
    const auto approver = PersonId::parse(c.text(u"approver"));
    if (!approver)
        return std::nullopt;
    const Need need{.authority = Authority::Overrule, .aircraftType = c.job.facts.aircraftType, .at = c.draft.at};
    if (*approver == c.draft.author)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Somebody else allows a re-inspection; nobody allows it to themselves.")), inWords(QT_TRANSLATE_NOOP("Rule", "a person with authority to overrule")));
    if (authorisationFor(c.reg, *approver, need))
        return std::nullopt;
    return refusal(c, whyNotAuthorised(c.reg, *approver, need), inWords(QT_TRANSLATE_NOOP("Rule", "a person with authority to overrule")));
}

std::optional<Refusal> pauseIsOver(const Case &c)
{
    const auto last = c.item ? lastWorkOn(*c.item) : std::nullopt;
    const qint64 pause = c.job.facts.reinspectionPause;
    if (!last || c.draft.at.milliseconds() - last->at.milliseconds() >= pause * aMinute)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was last worked on at %2 (entry %3); this job asks for a pause of %4 minutes before the same eyes look again.")).arg(c.itemName(), last->at.spoken()).arg(last->seq).arg(pause), another());
}

const Rule reinspectionAllowed{"reinspection.allowed"_L1, QT_TRANSLATE_NOOP("RuleWhy", "It is an exception, and somebody decides for it before it is needed."), &jobAllowsReinspection};
const Rule reinspectionOwn{"reinspection.own-work"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An independent inspection must not be marked as less than it is."), &isOwnWork};
const Rule reinspectionAlone{"reinspection.nobody-else"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Where another inspector is there, it is not unforeseen."), &nobodyElseIsThere};
const Rule reinspectionApprover{"reinspection.approver"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An exception that one person makes alone is a habit."), &approverMayAllow};
const Rule reinspectionPause{"reinspection.pause"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Tired eyes see what they expect."), &pauseIsOver};

} // namespace core::rules
