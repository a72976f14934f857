// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/corrections.hpp"

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/acts/voids.hpp"
#include "core/job/linked.hpp"
#include "core/job/loose_ends.hpp"
#include "core/rules/people.hpp"
#include "core/rules/struck_line.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString overruler() { return inWords(QT_TRANSLATE_NOOP("Rule", "a person with authority to overrule")); }
QString inspectorWithoutHand() { return inWords(QT_TRANSLATE_NOOP("Rule", "an authorised inspector who had no hand in it")); }

bool isAnyOf(const QString &kind, std::initializer_list<QLatin1String> kinds)
{
    return std::any_of(kinds.begin(), kinds.end(), [&](QLatin1String one) { return kind == one; });
}

/// Of an inspection, or of somebody who was there as an inspector.
bool isInspectorsWord(const Line &line)
{
    const Act *act = findAct(line.kind);
    return act && (act->meaning == "inspected"_L1 || act->meaning == "reinspected"_L1 || !line.ofTheCrew);
}

/// What the entry raised against the job: in words, and the interfaces that it is about.
struct Warning {
    QString words;
    std::vector<InterfaceId> about;
};

std::optional<Warning> warningIn(const Case &c, const Line &line)
{
    for (const Finding &finding : c.job.findings) {
        if (finding.raised.seq == line.seq)
            return Warning{inWords(QT_TRANSLATE_NOOP("Rule", "raised finding %1")).arg(finding.id.text()), finding.item ? std::vector{*finding.item} : std::vector<InterfaceId>()};
    }
    for (const JobTest &test : c.job.tests) {
        if (test.mark.seq != line.seq || test.hasPassed)
            continue;
        std::vector<InterfaceId> about = test.covers;
        about.insert(about.end(), test.reopens.begin(), test.reopens.end());
        return Warning{inWords(QT_TRANSLATE_NOOP("Rule", "says that the %1 of %2 has failed")).arg(test.what, test.name), about};
    }
    if (line.kind == u"job.revised")
        return Warning{inWords(QT_TRANSLATE_NOOP("Rule", "says that the maintenance data was revised")), revisedBy(c.job, line.seq)};
    return std::nullopt;
}

/// Whether the author may take a warning back that was a mistake: from outside the crew, and without a hand in what it is about.
bool mayAnswer(const Case &c, const Line &line, const Warning &warning)
{
    if (isAnyOf(line.kind, {"tool.missing"_L1, "blank.missing"_L1})) // only its being found answers that
        return mayOverrule(c, itemOf(c, line)) && line.author != c.draft.author;
    const bool isClean = std::all_of(warning.about.begin(), warning.about.end(), [&](const InterfaceId &id) {
        const InterfaceState *item = c.job.item(id);
        return !item || (mayInspect(c, *item) && !handInGroupOf(c.job, *item, c.draft.author));
    });
    return isClean && !isOfTheCrew(c.job, c.draft.author) && (mayInspectSomething(c) || mayOverrule(c, nullptr));
}

/// What somebody says because it is in the way, or will be: theirs to take back.
bool saysWhatIsInTheWay(const Line &line)
{
    return isAnyOf(line.kind, {"walkround.attached"_L1, "work.stopped"_L1, "condition.stated"_L1, "followup.set"_L1, "time.doubted"_L1, "temporary.applied"_L1});
}

bool isListing(const Line &line) { return isAnyOf(line.kind, {"interface.listed"_L1, "interface.unlisted"_L1, "interface.taken_on"_L1}); }

/// A loose end that would be gone with the entry, and nothing else about the same thing would be left to see to.
const LooseEnd *talkedAway(const LooseEnds &now, const LooseEnds &then)
{
    const auto at = std::find_if(now.begin(), now.end(), [&](const LooseEnd &end) {
        return std::none_of(then.begin(), then.end(), [&](const LooseEnd &one) { return one.subject == end.subject; });
    });
    return at == now.end() ? nullptr : &*at;
}

std::optional<Refusal> onlyItsAuthor(const Case &c, const Line &line, bool orLead)
{
    const QString name = c.reg.nameOf(line.author);
    if (!orLead)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 says what %2 found to be in the way. Only %2 strikes it; else it is cleared.")).arg(QString::number(line.seq), name), name);
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 is struck by %2, who made it, or by the lead.")).arg(QString::number(line.seq), name), name + inWords(QT_TRANSLATE_NOOP("Rule", " or the lead")));
}

std::optional<Refusal> inspectorsWordStays(const Case &c, const Line &line)
{
    const InterfaceState *item = itemOf(c, line);
    if (mayOverrule(c, item))
        return std::nullopt;
    const bool isOwn = item && hadAHand(c.job, *item, c.draft.author);
    const QString sentence = isOwn ? inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 is an inspector's word on work that %2 had a hand in. Only %3, or somebody else with authority to overrule, may strike it."))
                                   : inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 is the word of an inspector, or of somebody who was not of the crew; %2 may not set it aside. Only %3, or somebody with authority to overrule, may strike it."));
    return refusal(c, sentence.arg(QString::number(line.seq), c.authorName(), c.reg.nameOf(line.author)), c.reg.nameOf(line.author) + inWords(QT_TRANSLATE_NOOP("Rule", " or a person with authority to overrule")));
}

/// The lead sets right what others logged; what others said to be in the way stays theirs.
std::optional<Refusal> leadTalksNothingAway(const Case &c, const Line &line)
{
    if (saysWhatIsInTheWay(line))
        return onlyItsAuthor(c, line, false);
    const LooseEnds now = looseEnds(c.job, c.reg);
    const LooseEnd *gone = talkedAway(now, looseEnds(c.after(), c.reg));
    if (!gone)
        return std::nullopt;
    const QString name = c.reg.nameOf(line.author);
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Striking entry %1 would make a loose end of %2 disappear: %3 %4, who made it, may strike it; else it is cleared.")).arg(QString::number(line.seq), gone->subject, gone->sentence, name),
                   inWords(QT_TRANSLATE_NOOP("Rule", "%1; or by clearing it: %2")).arg(name, gone->clearedBy));
}

/// Why the row of an interface that was never undone is more than the lead's own paper, or nothing.
QString whyListingIsBound(const Case &c, const InterfaceState &item)
{
    if (item.listed.critical || item.listed.inspections > 1)
        return inWords(QT_TRANSLATE_NOOP("Rule", "%1 is critical or inspected twice.")).arg(item.listed.id.text());
    if (!item.actors.empty())
        return inWords(QT_TRANSLATE_NOOP("Rule", "%1 was worked on.")).arg(item.listed.id.text());
    if (item.settled)
        return inWords(QT_TRANSLATE_NOOP("Rule", "More was said of %1 (entry %2).")).arg(item.listed.id.text()).arg(item.settled->seq);
    for (const InterfaceState &other : c.job.items) {
        for (const auto *names : {&other.listed.access, &other.listed.dependsOn}) {
            if (std::find(names->begin(), names->end(), item.listed.id) != names->end())
                return inWords(QT_TRANSLATE_NOOP("Rule", "%1 waits for %2 or depends on it.")).arg(other.listed.id.text(), item.listed.id.text());
        }
    }
    const bool hasBegun = std::any_of(c.job.items.begin(), c.job.items.end(), [](const InterfaceState &one) { return one.removal || !one.actors.empty(); });
    return hasBegun ? inWords(QT_TRANSLATE_NOOP("Rule", "Work by this list has begun.")) : QString();
}

} // namespace

std::optional<Refusal> struckEntryExists(const Case &c)
{
    const Line *line = lineNamed(c);
    if (line && (line->standing == Standing::Stands || (line->standing == Standing::Struck && saysNeverWas(c))))
        return std::nullopt;
    const QString sentence = line ? inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 does not stand any more.")) : inWords(QT_TRANSLATE_NOOP("Rule", "There is no entry %1."));
    return refusal(c, sentence.arg(c.draft.body.integer(u"entry").value_or(0)), {});
}

std::optional<Refusal> entryMayBeStruck(const Case &c)
{
    const Line *line = lineNamed(c);
    if (!line || (line->kind != u"job.opened" && line->kind != u"entry.struck" && line->kind != u"job.closed"))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 (%2) cannot be struck. If something was struck by mistake, do it again and sign it again.")).arg(line->seq).arg(line->kind), {});
}

std::optional<Refusal> strikerMay(const Case &c)
{
    const Line *line = lineToStrike(c);
    if (!line || line->author == c.draft.author || warningIn(c, *line))
        return std::nullopt; // of a warning a rule of its own says who
    const InterfaceState *item = itemOf(c, *line);
    if (mayOverrule(c, item) && saysNeverWas(c))
        return std::nullopt;
    if (isInspectorsWord(*line))
        return inspectorsWordStays(c, *line);
    // What is asked of whom strikes these, rules of their own say.
    if (isListing(*line) || isAnyOf(line->kind, {"interface.relisted"_L1, "interface.detailed"_L1, "hold.set"_L1}))
        return c.job.lead == c.draft.author || (item && mayInspect(c, *item)) || mayOverrule(c, item) ? std::nullopt : onlyItsAuthor(c, *line, true);
    if (mayOverrule(c, item) && !whatWasVoided(c.after(), c.job).empty())
        return std::nullopt;
    return c.job.lead == c.draft.author ? leadTalksNothingAway(c, *line) : onlyItsAuthor(c, *line, true);
}

std::optional<Refusal> warningIsAnswered(const Case &c)
{
    const Line *line = lineToStrike(c);
    const auto warning = line ? warningIn(c, *line) : std::nullopt;
    if (!warning)
        return std::nullopt;
    const bool isTheirs = line->author == c.draft.author || line->ofTheCrew; // an inspector's warning is that inspector's
    if ((isTheirs && mayAnswer(c, *line, *warning)) || (mayOverrule(c, itemOf(c, *line)) && line->author != c.draft.author))
        return std::nullopt;
    if (isAnyOf(line->kind, {"tool.missing"_L1, "blank.missing"_L1}))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 %2. When it is found, that answers the finding; struck it is by somebody with authority to overrule alone.")).arg(QString::number(line->seq), warning->words), overruler());
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 %2. That is answered, and stays; where it was a mistake, an inspector strikes it who is not of the crew and had no hand in it or in its group.")).arg(QString::number(line->seq), warning->words), inspectorWithoutHand());
}

std::optional<Refusal> listingIsUntouched(const Case &c)
{
    const Line *line = lineToStrike(c);
    // What was said since was judged by the row as it was corrected.
    if (line && line->kind == u"interface.relisted" && laterOfTheSame(c, *line))
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

std::optional<Refusal> nothingOfItWasSo(const Case &c)
{
    const Line *line = lineToStrike(c);
    if (!line || !saysNeverWas(c) || (mayOverrule(c, nullptr) && line->author != c.draft.author))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "That nothing of entry %1 ever was so is said by somebody with authority to overrule, of an entry that another one made.")).arg(line->seq), overruler());
}

const Rule strikeExists{"strike.stands"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Only what counts can be taken back."), &struckEntryExists};
const Rule strikeable{"strike.kind"_L1, QT_TRANSLATE_NOOP("RuleWhy", "The frame of the record is not up for correction."), &entryMayBeStruck};
const Rule strikeBy{"strike.by"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An inspector's word is not set aside by those who were inspected, nor one's warning by another."), &strikerMay};
const Rule strikeWarning{"strike.warning"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What was seen to be wrong is put right; it does not go away by a word."), &warningIsAnswered};
const Rule strikeListing{"strike.listing"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Striking a listing must not make an open joint disappear."), &listingIsUntouched};
const Rule strikeNeverWas{"strike.never-was"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Whose hands were there stays known, unless it never was so."), &nothingOfItWasSo};

} // namespace core::rules
