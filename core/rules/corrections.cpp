// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/corrections.hpp"

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/acts/voids.hpp"
#include "core/holds/standing.hpp"
#include "core/job/asked_less.hpp"
#include "core/job/fold.hpp"
#include "core/job/linked.hpp"
#include "core/job/loose_ends.hpp"
#include "core/rules/people.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString overruler() { return inWords(QT_TRANSLATE_NOOP("Rule", "a person with authority to overrule")); }
QString inspectorWithoutHand() { return inWords(QT_TRANSLATE_NOOP("Rule", "an authorised inspector who had no hand in it")); }

const Line *named(const Case &c)
{
    const qint64 seq = c.draft.body.integer(u"entry").value_or(0);
    return seq >= 1 && seq <= static_cast<qint64>(c.job.lines.size()) ? &c.job.lines[static_cast<std::size_t>(seq - 1)] : nullptr;
}

/// The entry that the draft strikes, where it counts and may be struck at all; else nullptr, and other rules say why.
const Line *struckIn(const Case &c)
{
    const Line *line = named(c);
    return line && line->standing == Standing::Stands && !struckEntryExists(c) && !entryMayBeStruck(c) ? line : nullptr;
}

const InterfaceState *itemOf(const Case &c, const Line &line)
{
    const auto id = InterfaceId::parse(line.subject.value_or(QString()));
    return id ? c.job.item(*id) : nullptr;
}

/// Of an inspection, or of somebody who was there as an inspector.
bool isInspectorsWord(const Line &line)
{
    const Act *act = findAct(line.kind);
    return act && (act->meaning == "inspected"_L1 || act->meaning == "reinspected"_L1 || !line.ofTheCrew);
}

/// What the entry raised against the job, in words, or nothing: it is answered, not taken back.
QString warningIn(const Case &c, const Line &line)
{
    for (const Finding &finding : c.job.findings) {
        if (finding.raised.seq == line.seq)
            return inWords(QT_TRANSLATE_NOOP("Rule", "raised finding %1")).arg(finding.id.text());
    }
    for (const JobTest &test : c.job.tests) {
        if (test.mark.seq == line.seq && !test.hasPassed)
            return inWords(QT_TRANSLATE_NOOP("Rule", "says that the %1 of %2 has failed")).arg(test.what, test.name);
    }
    return line.kind == u"job.revised" ? inWords(QT_TRANSLATE_NOOP("Rule", "says that the maintenance data was revised")) : QString();
}

/// Whether the author may inspect what the entry is about, and had no hand in it.
bool mayInspectItsSubject(const Case &c, const Line &line)
{
    if (const InterfaceState *item = itemOf(c, line))
        return mayInspect(c, *item);
    for (const Finding &finding : c.job.findings) {
        const InterfaceState *item = finding.raised.seq == line.seq && finding.item ? c.job.item(*finding.item) : nullptr;
        if (item)
            return mayInspect(c, *item);
    }
    return mayInspectSomething(c);
}

/// A loose end that would be gone with the entry, and nothing else about the same thing would be left to see to.
const LooseEnd *talkedAway(const LooseEnds &now, const LooseEnds &then)
{
    const auto at = std::find_if(now.begin(), now.end(), [&](const LooseEnd &end) {
        return std::none_of(then.begin(), then.end(), [&](const LooseEnd &one) { return one.subject == end.subject; });
    });
    return at == now.end() ? nullptr : &*at;
}

std::optional<Refusal> refusedToAll(const Case &c, const Line &line)
{
    const QString name = c.reg.nameOf(line.author);
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 is struck by %2, who made it, or by the lead.")).arg(QString::number(line.seq), name), name + inWords(QT_TRANSLATE_NOOP("Rule", " or the lead")));
}

std::optional<Refusal> inspectorsWordStays(const Case &c, const Line &line)
{
    const InterfaceState *item = itemOf(c, line);
    if (mayOverrule(c, item))
        return std::nullopt;
    const bool isOwn = item && hadAHand(c.job, *item, c.draft.author);
    const QString sentence = isOwn ? inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 is an inspector's word on work that %2 had a hand in. Only %3, or somebody else with authority to overrule, may strike it."))
                                   : inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 is an inspector's word; %2 may not set it aside. Only %3, or somebody with authority to overrule, may strike it."));
    return refusal(c, sentence.arg(QString::number(line.seq), c.authorName(), c.reg.nameOf(line.author)), c.reg.nameOf(line.author) + inWords(QT_TRANSLATE_NOOP("Rule", " or a person with authority to overrule")));
}

/// The lead sets right what others logged; what others said to be in the way stays theirs.
std::optional<Refusal> leadTalksNothingAway(const Case &c, const Line &line)
{
    const LooseEnds now = looseEnds(c.job, c.reg);
    const LooseEnd *gone = talkedAway(now, looseEnds(afterTaking(c.job, c.draft), c.reg));
    if (!gone)
        return std::nullopt;
    const QString name = c.reg.nameOf(line.author);
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Striking entry %1 would make a loose end of %2 disappear: %3 %4, who made it, may strike it; else it is cleared.")).arg(QString::number(line.seq), gone->subject, gone->sentence, name),
                   inWords(QT_TRANSLATE_NOOP("Rule", "%1; or by clearing it: %2")).arg(name, gone->clearedBy));
}

/// The interface that would ask for less without the entry, and what of it; nothing where none would.
std::optional<std::pair<const InterfaceState *, QString>> askedLessWithout(const Case &c)
{
    const JobState then = afterTaking(c.job, c.draft);
    for (const InterfaceState &item : c.job.items) {
        const InterfaceState *after = then.item(item.listed.id);
        const QString less = after && !isWithoutDetails(*after) ? whatIsAskedLess(item.listed, after->listed) : QString();
        if (!less.isEmpty())
            return std::pair(&item, less);
    }
    return std::nullopt;
}

/// Entries that change what is asked for of an interface.
bool changesTheList(const Line &line) { return line.kind == u"interface.relisted" || line.kind == u"interface.detailed"; }

std::vector<Voided> comesBackWithout(const Case &c) { return whatWasVoided(afterTaking(c.job, c.draft), c.job); }

/// Why the row of an interface that was never undone is more than the lead's own paper, or nothing.
QString whyListingIsBound(const Case &c, const InterfaceState &item)
{
    if (item.listed.critical || item.listed.inspections > 1)
        return inWords(QT_TRANSLATE_NOOP("Rule", "%1 is critical or inspected twice.")).arg(item.listed.id.text());
    if (!item.actors.empty())
        return inWords(QT_TRANSLATE_NOOP("Rule", "%1 was worked on.")).arg(item.listed.id.text());
    for (const InterfaceState &other : c.job.items) {
        for (const auto *names : {&other.listed.access, &other.listed.dependsOn}) {
            if (std::find(names->begin(), names->end(), item.listed.id) != names->end())
                return inWords(QT_TRANSLATE_NOOP("Rule", "%1 waits for %2 or depends on it.")).arg(other.listed.id.text(), item.listed.id.text());
        }
    }
    const bool hasBegun = std::any_of(c.job.items.begin(), c.job.items.end(), [](const InterfaceState &one) { return one.removal || !one.actors.empty(); });
    return hasBegun ? inWords(QT_TRANSLATE_NOOP("Rule", "Work by this list has begun.")) : QString();
}

bool isListing(const Line &line) { return line.kind == u"interface.listed" || line.kind == u"interface.unlisted" || line.kind == u"interface.taken_on"; }

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
    const Line *line = struckIn(c);
    const bool isOwn = line && line->author == c.draft.author;
    if (!line || (isOwn && warningIn(c, *line).isEmpty()))
        return std::nullopt;
    if (!isOwn && isInspectorsWord(*line))
        return inspectorsWordStays(c, *line);
    // What is asked of whom strikes these, rules of their own say.
    if (!warningIn(c, *line).isEmpty() || isListing(*line) || changesTheList(*line) || line->kind == u"hold.set")
        return isOwn || c.job.lead == c.draft.author || mayInspectItsSubject(c, *line) || mayOverrule(c, itemOf(c, *line)) ? std::nullopt : refusedToAll(c, *line);
    if (mayOverrule(c, itemOf(c, *line)) && !comesBackWithout(c).empty())
        return std::nullopt;
    return c.job.lead == c.draft.author ? leadTalksNothingAway(c, *line) : refusedToAll(c, *line);
}

std::optional<Refusal> warningIsAnswered(const Case &c)
{
    const Line *line = struckIn(c);
    const QString warning = line ? warningIn(c, *line) : QString();
    if (warning.isEmpty() || mayInspectItsSubject(c, *line) || mayOverrule(c, itemOf(c, *line)))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 %2. That is answered, and stays; an inspector who had no hand in it strikes it where it was a mistake.")).arg(QString::number(line->seq), warning), inspectorWithoutHand());
}

std::optional<Refusal> listingIsUntouched(const Case &c)
{
    const Line *line = struckIn(c);
    // What was said since was judged by the row as it was corrected.
    if (line && line->kind == u"interface.relisted" && std::any_of(c.job.lines.begin(), c.job.lines.end(), [&](const Line &one) { return one.seq > line->seq && one.standing == Standing::Stands && one.subject == line->subject; }))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "More was said of %1 since its row was corrected. Correct it again instead.")).arg(line->subject.value_or(QString())), inWords(QT_TRANSLATE_NOOP("Rule", "the lead, or an inspector, by correcting the row again")));
    const InterfaceState *item = line && isListing(*line) ? itemOf(c, *line) : nullptr;
    if (!item)
        return std::nullopt;
    // What was logged in a hurry may turn out to be on the list under another id; what was taken on may go back. As long as nothing else was
    // said of it, that is put right.
    const bool isAlone = std::none_of(c.job.lines.begin(), c.job.lines.end(), [&](const Line &one) { return one.seq != line->seq && one.standing == Standing::Stands && one.subject == line->subject; });
    if (item->removal && (line->kind == u"interface.listed" || !isAlone))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was undone in this job, so it stays on the list until it is restored and inspected.")).arg(item->listed.id.text()), inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")));
    if (line->kind == u"interface.taken_on" || mayInspect(c, *item))
        return std::nullopt;
    if (item->removal)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was logged as undone. An inspector who had no hand in it looks what it is, and strikes it.")).arg(item->listed.id.text()), inspectorWithoutHand());
    const QString bound = whyListingIsBound(c, *item);
    if (bound.isEmpty())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 Its row is struck by an inspector who had no hand in it; or say of it that it is not applicable.")).arg(bound), inspectorWithoutHand());
}

std::optional<Refusal> strikeAsksNoLess(const Case &c)
{
    const Line *line = struckIn(c);
    if (!line || !changesTheList(*line))
        return std::nullopt;
    const auto less = askedLessWithout(c);
    if (!less || mayInspect(c, *less->first) || mayOverrule(c, less->first))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Without entry %1 the list asks less of %2: %3. An inspector who had no hand in it strikes it.")).arg(QString::number(line->seq), less->first->listed.id.text(), less->second), inspectorWithoutHand());
}

std::optional<Refusal> struckHoldMatters(const Case &c)
{
    const Line *line = struckIn(c);
    if (!line || (line->kind != u"hold.set" && line->kind != u"hold.passed"))
        return std::nullopt;
    const auto id = HoldId::parse(line->subject.value_or(QString()));
    const HoldPoint *hold = id ? c.job.hold(*id) : nullptr;
    if (!hold)
        return std::nullopt;
    if (line->kind == u"hold.set" && hold->passed)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The hold point %1 was passed in entry %2, so what it asks for stays.")).arg(hold->id.text()).arg(hold->passed->seq), {});
    const auto authority = parseAuthority(hold->authority);
    if (line->kind == u"hold.set" && authority && !authorisationFor(c.reg, c.draft.author, {.authority = *authority, .aircraftType = c.job.facts.aircraftType, .at = c.draft.at}))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The hold point %1 is taken back by somebody who may pass it.")).arg(hold->id.text()), inWords(QT_TRANSLATE_NOOP("Rule", "somebody with authority to %1")).arg(hold->authority));
    const auto behind = std::find_if(c.job.lines.begin(), c.job.lines.end(), [&](const Line &one) {
        return one.seq > line->seq && one.standing == Standing::Stands && isBehind(c.job, *hold, one.kind, one.subject);
    });
    if (behind == c.job.lines.end())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 was made behind the hold point %2. What was let through cannot be called back; strike that entry first, if it was a mistake.")).arg(behind->seq).arg(hold->id.text()), {});
}

std::optional<Refusal> strikeBringsNothingBack(const Case &c)
{
    const Line *line = struckIn(c);
    if (!line)
        return std::nullopt;
    const std::vector<Voided> back = comesBackWithout(c);
    const bool mayAll = std::all_of(back.begin(), back.end(), [&](const Voided &one) {
        const auto id = InterfaceId::parse(one.subject);
        return mayOverrule(c, id ? c.job.item(*id) : nullptr);
    });
    if (back.empty() || mayAll)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 set aside what striking it would bring back. %2 Leave it, and show it anew; or let somebody with authority to overrule, who had no hand in it, strike it.")).arg(QString::number(line->seq), back.front().sentence),
                   inWords(QT_TRANSLATE_NOOP("Rule", "whoever shows it anew; or a person with authority to overrule")));
}

std::optional<Refusal> nothingOfItWasSo(const Case &c)
{
    const Line *line = struckIn(c);
    if (!line || !c.draft.body.isTrue(u"never_was") || (mayOverrule(c, itemOf(c, *line)) && line->author != c.draft.author))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "That nothing of entry %1 ever was so is said by somebody with authority to overrule who neither made it nor had a hand in it.")).arg(line->seq), overruler());
}

std::optional<Refusal> givingUpStays(const Case &c)
{
    const Line *line = struckIn(c);
    if (!line || line->kind != u"job.reversed")
        return std::nullopt;
    const auto after = std::find_if(c.job.lines.begin(), c.job.lines.end(), [&](const Line &one) { return one.seq > line->seq && one.standing == Standing::Stands && (one.kind == u"unit.positioned" || one.kind == u"accessory.moved" || one.kind == u"hold.passed"); });
    if (after == c.job.lines.end())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 rests on the change being given up. Strike that one first, if it was a mistake.")).arg(after->seq), {});
}

const Rule strikeExists{"strike.stands"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Only what counts can be taken back."), &struckEntryExists};
const Rule strikeable{"strike.kind"_L1, QT_TRANSLATE_NOOP("RuleWhy", "The frame of the record is not up for correction."), &entryMayBeStruck};
const Rule strikeBy{"strike.by"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An inspector's word is not set aside by those who were inspected, nor one's warning by another."), &strikerMay};
const Rule strikeWarning{"strike.warning"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What was seen to be wrong is put right; it does not go away by a word."), &warningIsAnswered};
const Rule strikeHold{"strike.hold"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What a gate let through does not go back behind it."), &struckHoldMatters};
const Rule strikeBack{"strike.back"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Whoever wished an inspection back could say that nothing had happened."), &strikeBringsNothingBack};
const Rule strikeListing{"strike.listing"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Striking a listing must not make an open joint disappear."), &listingIsUntouched};
const Rule strikeLess{"strike.less"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A requirement is not struck by those who have to show it."), &strikeAsksNoLess};
const Rule strikeNeverWas{"strike.never-was"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Whose hands were there stays known, unless it never was so."), &nothingOfItWasSo};
const Rule strikeReversal{"strike.reversal"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Which unit goes up is not changed behind its back."), &givingUpStays};

} // namespace core::rules
