// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/holds.hpp"

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/acts/hold_form.hpp"
#include "core/holds/standing.hpp"
#include "core/job/linked.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString lead() { return inWords(QT_TRANSLATE_NOOP("Rule", "the lead")); }

const HoldPoint *holdOf(const Case &c)
{
    const auto id = HoldId::parse(c.draft.subject.value_or(QString()));
    return id ? c.job.hold(*id) : nullptr;
}

QString nameOf(const HoldPoint &hold) { return hold.id.text() + u" ("_s + hold.title + u')'; }

/// What has to be sayable at any moment: what went wrong, what was seen, who takes over, and the hold points themselves.
bool isAlwaysSayable(QStringView kind)
{
    constexpr QLatin1String kinds[] = {"job.opened"_L1,   "interface.listed"_L1, "interface.disturbed"_L1, "interface.found_open"_L1, "photo.attached"_L1,  "photo.marked"_L1, "finding.raised"_L1, "inspection.rejected"_L1,
                                       "walkround.attached"_L1, "condition.stated"_L1, "work.stopped"_L1, "interface.unlisted"_L1, "interface.detailed"_L1, "handover.given"_L1, "handover.accepted"_L1, "handover.refused"_L1,
                                       "entry.struck"_L1, "hold.set"_L1, "hold.passed"_L1, "tag.lost"_L1, "tag.exchanged"_L1, "tool.counted"_L1, "tool.missing"_L1, "blank.missing"_L1, "job.revised"_L1, "interface.relisted"_L1, "time.doubted"_L1};
    return std::any_of(std::begin(kinds), std::end(kinds), [&](QLatin1String one) { return kind == one; });
}

std::optional<QString> faultOf(const HoldGate &gate)
{
    const Act *act = findAct(gate.act);
    if (!act || act->ledger != LedgerSort::Job)
        return inWords(QT_TRANSLATE_NOOP("Rule", "A hold point cannot hold back \"%1\": there is no such entry of a job.")).arg(gate.act);
    if (isAlwaysSayable(gate.act))
        return inWords(QT_TRANSLATE_NOOP("Rule", "A hold point cannot hold back \"%1\": that has to be said whenever it is so.")).arg(gate.act);
    if (!gate.which.isEmpty() && act->subject != SubjectSort::Interface)
        return inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" is not about an interface, so a gate for it names none.")).arg(gate.act);
    if (gate.names.empty())
        return std::nullopt;
    const bool areSorts = act->subject == SubjectSort::Temporary && std::all_of(gate.names.begin(), gate.names.end(), [](const QString &name) { return parseTemporarySort(name).has_value(); });
    return areSorts ? std::nullopt : std::optional(inWords(QT_TRANSLATE_NOOP("Rule", "A gate names sorts of temporary items, for their removal; not %1.")).arg(gate.names.front()));
}

/// The first entry that stands and was made behind the hold point, or 0.
qint64 firstBehind(const Case &c, const HoldPoint &hold)
{
    const auto at = std::find_if(c.job.lines.begin(), c.job.lines.end(), [&](const Line &line) { return line.standing == Standing::Stands && isBehind(c.job, hold, line.kind, line.subject); });
    return at == c.job.lines.end() ? 0 : at->seq;
}

const HoldPoint *holdNamed(const Case &c, const QString &hold)
{
    const auto id = HoldId::parse(hold);
    return id ? c.job.hold(*id) : nullptr;
}

/// The first name among its conditions that comes round to the hold point itself, through those that they ask to have been passed; or nothing.
std::optional<QString> circleOf(const Case &c, const HoldPoint &wanted)
{
    std::vector<HoldId> ahead;
    ahead.push_back(wanted.id);
    for (std::size_t at = 0; at < ahead.size(); ++at) {
        const HoldPoint *hold = at == 0 ? &wanted : c.job.hold(ahead[at]);
        for (const HoldCondition &condition : hold ? hold->conditions : std::vector<HoldCondition>()) {
            for (const QString &name : condition.what == u"passed" ? condition.names : std::vector<QString>()) {
                const auto id = HoldId::parse(name);
                if (id == wanted.id)
                    return ahead[at].text();
                if (id && std::find(ahead.begin(), ahead.end(), *id) == ahead.end())
                    ahead.push_back(*id);
            }
        }
    }
    return std::nullopt;
}

/// A zone or an interface that the job does not have, by which a filter would let nothing through; or nothing.
std::optional<QString> unknownIn(const Case &c, const ItemFilter &which)
{
    for (const QString &zone : which.zones) {
        if (std::none_of(c.job.facts.zones.begin(), c.job.facts.zones.end(), [&](const Zone &one) { return one.name == zone; }))
            return inWords(QT_TRANSLATE_NOOP("Rule", "This job has no zone \"%1\".")).arg(zone);
    }
    for (const InterfaceId &id : which.ids) {
        if (!c.job.item(id))
            return inWords(QT_TRANSLATE_NOOP("Rule", "The list has no interface \"%1\".")).arg(id.text());
    }
    return std::nullopt;
}

template <class T>
bool hasAll(const std::vector<T> &all, const std::vector<T> &ones)
{
    return std::all_of(ones.begin(), ones.end(), [&](const T &one) { return std::find(all.begin(), all.end(), one) != all.end(); });
}

/// Whether a hold point still asks and holds back all that it did.
bool isAsStrict(const HoldPoint &known, const HoldPoint &wanted)
{
    return hasAll(wanted.conditions, known.conditions) && hasAll(wanted.statements, known.statements) && hasAll(wanted.gates, known.gates) && wanted.authority == known.authority && (wanted.isIndependent || !known.isIndependent);
}

/// The first hold point that this one asks to have been passed and that is void, or nullptr: passing this one could end the conditions that
/// tell so.
const HoldPoint *voidBefore(const Case &c, const HoldPoint &hold)
{
    for (const HoldCondition &condition : hold.conditions) {
        for (const QString &name : condition.what == u"passed" ? condition.names : std::vector<QString>()) {
            const HoldPoint *before = holdNamed(c, name);
            if (before && standingOf(c.job, *before).state == HoldState::Void)
                return before;
        }
    }
    return nullptr;
}

} // namespace

std::optional<Refusal> holdIsSound(const Case &c)
{
    const auto id = HoldId::parse(c.draft.subject.value_or(QString()));
    if (!id)
        return std::nullopt;
    if (const auto fault = faultOfHoldForm(c.draft.body))
        return refusal(c, *fault, lead());
    const HoldPoint hold = holdIn(*id, c.draft.body);
    if (hold.gates.empty() || (hold.conditions.empty() && hold.statements.empty()))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "A hold point asks for something, and holds something back. Give conditions or statements, and gates.")), lead());
    if (const auto circle = circleOf(c, hold))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 would wait for itself: it is asked to have been passed before %2.")).arg(id->text(), *circle), lead());
    for (const HoldCondition &condition : hold.conditions) {
        if (const auto fault = core::faultOf(condition))
            return refusal(c, *fault, lead());
        if (const auto unknown = unknownIn(c, condition.which))
            return refusal(c, *unknown, lead());
        if (condition.until == id->text())
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "A condition of %1 cannot end with %1 itself.")).arg(id->text()), lead());
    }
    for (const HoldGate &gate : hold.gates) {
        if (const auto fault = faultOf(gate))
            return refusal(c, *fault, lead());
        if (const auto unknown = unknownIn(c, gate.which))
            return refusal(c, *unknown, lead());
    }
    return std::nullopt;
}

std::optional<Refusal> holdIsSetInTime(const Case &c)
{
    const auto id = HoldId::parse(c.draft.subject.value_or(QString()));
    if (!id)
        return std::nullopt;
    const HoldPoint *known = c.job.hold(*id);
    if (known && known->passed)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was passed in entry %2; what was asked for then stays what was asked for.")).arg(nameOf(*known)).arg(known->passed->seq), {});
    // Neither what it held back so far nor what it would hold back may have been done already.
    const HoldPoint wanted = holdIn(*id, c.draft.body);
    const qint64 behindKnown = known ? firstBehind(c, *known) : 0;
    const qint64 behind = behindKnown != 0 ? behindKnown : firstBehind(c, wanted);
    if (behind == 0)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 was made behind %2 already: it comes too late to be set or changed.")).arg(behind).arg(nameOf(wanted)), {});
}

std::optional<Refusal> holdIsLessenedByWhoPasses(const Case &c)
{
    const HoldPoint *known = holdOf(c);
    const auto authority = known && !isAsStrict(*known, holdIn(known->id, c.draft.body)) ? parseAuthority(known->authority) : std::nullopt;
    if (!authority || authorisationFor(c.reg, c.draft.author, {.authority = *authority, .aircraftType = c.job.facts.aircraftType, .at = c.draft.at}))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 would ask less, or hold back less, than it does. That is signed by somebody who may pass it.")).arg(nameOf(*known)), inWords(QT_TRANSLATE_NOOP("Rule", "somebody with authority to %1")).arg(known->authority));
}

std::optional<Refusal> holdIsSet(const Case &c)
{
    if (holdOf(c))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "This job has no hold point \"%1\".")).arg(c.draft.subject.value_or(QString())), lead());
}

std::optional<Refusal> holdIsNotPassed(const Case &c)
{
    const HoldPoint *hold = holdOf(c);
    if (!hold || standingOf(c.job, *hold).state != HoldState::Passed)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was passed by %2 in entry %3, and that stands.")).arg(nameOf(*hold), c.reg.nameOf(hold->passed->by)).arg(hold->passed->seq), {});
}

std::optional<Refusal> holdConditionsAreMet(const Case &c)
{
    const HoldPoint *hold = holdOf(c);
    if (!hold)
        return std::nullopt;
    for (const HoldCondition &condition : hold->conditions) {
        if (!condition.until.isEmpty() && !holdNamed(c, condition.until))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "A condition of %1 ends with the hold point %2, which this job does not have. Set that one, or change this.")).arg(nameOf(*hold), condition.until), lead());
    }
    if (const HoldPoint *before = voidBefore(c, *hold))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 comes after %2, which has to be passed again first. %3")).arg(nameOf(*hold), nameOf(*before), standingOf(c.job, *before).undermined),
                       inWords(QT_TRANSLATE_NOOP("Rule", "somebody with authority to %1, by passing the hold point")).arg(before->authority));
    const QString missing = standingOf(c.job, *hold).firstMissing();
    if (missing.isEmpty())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 cannot be passed yet. %2")).arg(nameOf(*hold), missing), inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")));
}

std::optional<Refusal> holdStatementsAreConfirmed(const Case &c)
{
    const HoldPoint *hold = holdOf(c);
    const std::vector<QString> confirmed = c.draft.body.texts(u"confirmed");
    if (!hold || confirmed == hold->statements)
        return std::nullopt;
    for (const QString &statement : hold->statements) {
        if (std::find(confirmed.begin(), confirmed.end(), statement) == confirmed.end())
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Look at this, and confirm it: %1")).arg(statement), inWords(QT_TRANSLATE_NOOP("Rule", "whoever passes the hold point")));
    }
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "What is confirmed are the statements of %1, each once, in their order.")).arg(nameOf(*hold)), inWords(QT_TRANSLATE_NOOP("Rule", "whoever passes the hold point")));
}

std::optional<Refusal> signerMayPass(const Case &c)
{
    const HoldPoint *hold = holdOf(c);
    const auto authority = hold ? parseAuthority(hold->authority) : std::nullopt;
    if (!authority)
        return std::nullopt;
    const Need need{.authority = *authority, .aircraftType = c.job.facts.aircraftType, .at = c.draft.at};
    if (authorisationFor(c.reg, c.draft.author, need))
        return std::nullopt;
    return refusal(c, whyNotAuthorised(c.reg, c.draft.author, need), inWords(QT_TRANSLATE_NOOP("Rule", "somebody with authority to %1")).arg(hold->authority));
}

std::optional<Refusal> signerHadNoHand(const Case &c)
{
    const HoldPoint *hold = holdOf(c);
    if (!hold || !hold->isIndependent)
        return std::nullopt;
    for (const InterfaceState &item : c.job.items) {
        const bool isAsked = std::any_of(hold->conditions.begin(), hold->conditions.end(), [&](const HoldCondition &condition) { return condition.what == u"interfaces" && condition.which.letsThrough(item.listed); });
        if (const auto hand = isAsked ? handOf(c.job, item, c.draft.author) : std::nullopt)
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is passed by somebody who had no hand in it, and %2 had one in %3.")).arg(nameOf(*hold), c.authorName(), itemInWords(*hand)),
                           inWords(QT_TRANSLATE_NOOP("Rule", "somebody with authority to %1 who had no hand in it")).arg(hold->authority));
    }
    return std::nullopt;
}

std::optional<Refusal> noHoldIsBefore(const Case &c)
{
    const std::vector<const HoldPoint *> holds = holdsBefore(c.job, c.draft);
    if (holds.empty())
        return std::nullopt;
    const HoldPoint &first = *holds.front();
    const HoldStanding standing = standingOf(c.job, first);
    QString why = inWords(QT_TRANSLATE_NOOP("Rule", "This waits for the hold point %1, which nobody has passed yet.")).arg(nameOf(first));
    if (standing.state == HoldState::Void)
        why = inWords(QT_TRANSLATE_NOOP("Rule", "This waits for the hold point %1, which was passed and has to be passed again. %2")).arg(nameOf(first), standing.undermined);
    else if (const QString missing = standing.firstMissing(); !missing.isEmpty())
        why += u' ' + missing;
    return refusal(c, why, inWords(QT_TRANSLATE_NOOP("Rule", "somebody with authority to %1, by passing the hold point")).arg(first.authority));
}

const Rule holdSound{"hold.sound"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A gate that asks for nothing lets everything through."), &holdIsSound};
const Rule holdInTime{"hold.in-time"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A gate is not lowered once somebody stands in front of it."), &holdIsSetInTime};
const Rule holdLess{"hold.less"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Who has to stop at a gate does not lower it."), &holdIsLessenedByWhoPasses};
const Rule holdKnown{"hold.known"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What is passed has been set."), &holdIsSet};
const Rule holdOnce{"hold.once"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A second signature would hide which one counts."), &holdIsNotPassed};
const Rule holdConditions{"hold.conditions"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What is counted is not believed."), &holdConditionsAreMet};
const Rule holdStatements{"hold.statements"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What only eyes can tell, each pair of eyes looks at on its own."), &holdStatementsAreConfirmed};
const Rule holdAuthority{"hold.authority"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Who lets the next step begin answers for it."), &signerMayPass};
const Rule holdIndependent{"hold.independent"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Nobody sees what they themselves forgot."), &signerHadNoHand};
const Rule holdGate{"hold.gate"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What cannot be taken back waits until everything before it is true."), &noHoldIsBefore};

} // namespace core::rules
