// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/corrections.hpp"

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/acts/reopen.hpp"
#include "core/holds/standing.hpp"
#include "core/job/linked.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

const Line *named(const Case &c)
{
    const qint64 seq = c.draft.body.integer(u"entry").value_or(0);
    return seq >= 1 && seq <= static_cast<qint64>(c.job.lines.size()) ? &c.job.lines[static_cast<std::size_t>(seq - 1)] : nullptr;
}

bool isInspectorsWord(const Line &line)
{
    const Act *act = findAct(line.kind);
    return act && (act->meaning == "inspected"_L1 || act->meaning == "reinspected"_L1);
}

/// An acceptance, and the item that it was of.
struct Acceptance {
    const InterfaceState *item;
    qint64 seq;
};

/// The interfaces that this entry opened, changed or called in doubt.
std::vector<InterfaceId> setAsideBy(const Case &c, const Line &line)
{
    constexpr QLatin1String voiding[] = {"interface.listed"_L1, "interface.disconnected"_L1, "interface.found_open"_L1, "interface.disturbed"_L1, "condition.stated"_L1, "condition.cleared"_L1, "interface.detailed"_L1, "interface.relisted"_L1};
    if (line.kind == u"test.recorded") {
        const auto &tests = c.job.tests;
        const auto test = std::find_if(tests.begin(), tests.end(), [&](const JobTest &one) { return one.mark.seq == line.seq; });
        return test == tests.end() ? std::vector<InterfaceId>() : test->reopens;
    }
    if (line.kind == u"job.revised")
        return revisedBy(c.job, line.seq);
    const auto id = InterfaceId::parse(line.subject.value_or(QString()));
    const bool isVoiding = std::any_of(std::begin(voiding), std::end(voiding), [&](QLatin1String kind) { return line.kind == kind; });
    return id && isVoiding ? std::vector{*id} : std::vector<InterfaceId>();
}

/// The acceptance of this item, its twin or what depends on it that was given before an entry, or nothing.
std::optional<Acceptance> acceptanceBefore(const Case &c, const Line &line, const InterfaceId &id)
{
    const InterfaceState *struck = c.job.item(id);
    if (!struck)
        return std::nullopt;
    const std::vector<InterfaceId> dependents = dependentsOf(c.job, id);
    for (const Line &one : c.job.lines) {
        if (one.seq >= line.seq || one.standing != Standing::Stands || (one.kind != u"inspection.accepted" && one.kind != u"inspection.repeated"))
            continue;
        const auto otherId = InterfaceId::parse(one.subject.value_or(QString()));
        const InterfaceState *other = otherId ? c.job.item(*otherId) : nullptr;
        const bool isTwin = other && !struck->listed.twinGroup.isEmpty() && other->listed.twinGroup == struck->listed.twinGroup;
        const bool depends = other && std::find(dependents.begin(), dependents.end(), other->listed.id) != dependents.end();
        if (other && (other == struck || isTwin || depends))
            return Acceptance{other, one.seq};
    }
    return std::nullopt;
}

/// The first acceptance that this entry set aside, or nothing.
std::optional<Acceptance> acceptanceVoidedBy(const Case &c, const Line &line)
{
    for (const InterfaceId &id : setAsideBy(c, line)) {
        if (const auto acceptance = acceptanceBefore(c, line, id))
            return acceptance;
    }
    return std::nullopt;
}

/// An inspector's word is set aside by a named level alone, and by nobody who had a hand in the item.
std::optional<Refusal> mayOverrule(const Case &c, const Line &line)
{
    const Need need{.authority = Authority::Overrule, .aircraftType = c.job.facts.aircraftType, .at = c.draft.at};
    const auto id = InterfaceId::parse(line.subject.value_or(QString()));
    const InterfaceState *item = id ? c.job.item(*id) : nullptr;
    const bool isOwn = item && hadAHand(c.job, *item, c.draft.author);
    if (authorisationFor(c.reg, c.draft.author, need) && !isOwn)
        return std::nullopt;
    const QString sentence = isOwn ? inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 is an inspector's word on work that %2 had a hand in. Only %3, or somebody else with authority to overrule, may strike it."))
                                      : inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 is an inspector's word; %2 may not set it aside. Only %3, or somebody with authority to overrule, may strike it."));
    return refusal(c, sentence.arg(line.seq).arg(c.authorName(), c.reg.nameOf(line.author)),
                   c.reg.nameOf(line.author) + inWords(QT_TRANSLATE_NOOP("Rule", " or a person with authority to overrule")));
}

} // namespace

std::optional<Refusal> struckEntryExists(const Case &c)
{
    const Line *line = named(c);
    if (line && line->standing == Standing::Stands)
        return std::nullopt;
    const QString sentence = line ? inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 does not stand any more.")) : inWords(QT_TRANSLATE_NOOP("Rule", "There is no entry %1."));
    return refusal(c, sentence.arg(c.draft.body.integer(u"entry").value_or(0)), {});
}

std::optional<Refusal> entryMayBeStruck(const Case &c)
{
    const Line *line = named(c);
    if (!line || (line->kind != u"job.opened" && line->kind != u"entry.struck" && line->kind != u"job.closed"))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 (%2) cannot be struck. If something was struck by mistake, do it again and sign it again.")).arg(line->seq).arg(line->kind), {});
}

std::optional<Refusal> strikerMay(const Case &c)
{
    const Line *line = named(c);
    if (!line || line->author == c.draft.author)
        return std::nullopt;
    if (isInspectorsWord(*line))
        return mayOverrule(c, *line);
    if (acceptanceVoidedBy(c, *line)) // a rule of its own
        return std::nullopt;
    if (c.job.lead == c.draft.author)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 is struck by %2, who made it, or by the lead.")).arg(line->seq).arg(c.reg.nameOf(line->author)),
                   c.reg.nameOf(line->author) + inWords(QT_TRANSLATE_NOOP("Rule", " or the lead")));
}

std::optional<Refusal> listingIsUntouched(const Case &c)
{
    const Line *line = named(c);
    // What was said since was judged by the row as it was corrected.
    if (line && line->kind == u"interface.relisted" && std::any_of(c.job.lines.begin(), c.job.lines.end(), [&](const Line &one) { return one.seq > line->seq && one.standing == Standing::Stands && one.subject == line->subject; }))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "More was said of %1 since its row was corrected. Correct it again instead.")).arg(line->subject.value_or(QString())), inWords(QT_TRANSLATE_NOOP("Rule", "the lead, or an inspector, by correcting the row again")));
    if (!line || (line->kind != u"interface.listed" && line->kind != u"interface.unlisted" && line->kind != u"interface.taken_on"))
        return std::nullopt;
    const auto id = InterfaceId::parse(line->subject.value_or(QString()));
    const InterfaceState *item = id ? c.job.item(*id) : nullptr;
    if (!item || !item->removal)
        return std::nullopt;
    // What was logged in a hurry may turn out to be on the list under another id; what was taken on may go back. As long as nothing else was
    // said of it, that is put right.
    const bool isAlone = std::none_of(c.job.lines.begin(), c.job.lines.end(), [&](const Line &one) { return one.seq != line->seq && one.standing == Standing::Stands && one.subject == line->subject; });
    if (line->kind != u"interface.listed" && isAlone)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was undone in this job, so it stays on the list until it is restored and inspected.")).arg(id->text()), inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")));
}

std::optional<Refusal> struckHoldMatters(const Case &c)
{
    const Line *line = named(c);
    if (!line || (line->kind != u"hold.set" && line->kind != u"hold.passed"))
        return std::nullopt;
    const auto id = HoldId::parse(line->subject.value_or(QString()));
    const HoldPoint *hold = id ? c.job.hold(*id) : nullptr;
    if (!hold)
        return std::nullopt;
    if (line->kind == u"hold.set" && hold->passed)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The hold point %1 was passed in entry %2, so what it asks for stays.")).arg(hold->id.text()).arg(hold->passed->seq), {});
    const auto behind = std::find_if(c.job.lines.begin(), c.job.lines.end(), [&](const Line &one) {
        return one.seq > line->seq && one.standing == Standing::Stands && isBehind(c.job, *hold, one.kind, one.subject);
    });
    if (behind == c.job.lines.end())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 was made behind the hold point %2. What was let through cannot be called back; strike that entry first, if it was a mistake.")).arg(behind->seq).arg(hold->id.text()), {});
}

std::optional<Refusal> strikeBringsNoAcceptanceBack(const Case &c)
{
    const Line *line = named(c);
    const auto voided = line ? acceptanceVoidedBy(c, *line) : std::nullopt;
    if (!voided)
        return std::nullopt;
    const Need need{.authority = Authority::Overrule, .aircraftType = c.job.facts.aircraftType, .at = c.draft.at};
    if (authorisationFor(c.reg, c.draft.author, need) && !hadAHand(c.job, *voided->item, c.draft.author))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 set aside the inspection of %2 (entry %3); striking it would bring that back. Leave it, restore what it says, and have the item inspected again; or let somebody with authority to overrule, who had no hand in it, strike it."))
                          .arg(line->seq).arg(voided->item->listed.id.text()).arg(voided->seq),
                   inWords(QT_TRANSLATE_NOOP("Rule", "an inspector, by inspecting it again; or a person with authority to overrule")));
}

const Rule strikeExists{"strike.stands"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Only what counts can be taken back."), &struckEntryExists};
const Rule strikeable{"strike.kind"_L1, QT_TRANSLATE_NOOP("RuleWhy", "The frame of the record is not up for correction."), &entryMayBeStruck};
const Rule strikeBy{"strike.by"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An inspector's word is not set aside by those who were inspected."), &strikerMay};
const Rule strikeHold{"strike.hold"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What a gate let through does not go back behind it."), &struckHoldMatters};
const Rule strikeAcceptance{"strike.acceptance"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Whoever wished an inspection back could say that nothing had happened."), &strikeBringsNoAcceptanceBack};
const Rule strikeListing{"strike.listing"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Striking a listing must not make an open joint disappear."), &listingIsUntouched};

} // namespace core::rules
