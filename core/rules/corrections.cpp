// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/corrections.hpp"

#include "core/acts/act.hpp"
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
    return act && act->meaning == "inspected"_L1;
}

/// An inspector's word is set aside by a named level alone, and by nobody who had a hand in the item.
std::optional<Refusal> mayOverrule(const Case &c, const Line &line)
{
    const Need need{.authority = Authority::Overrule, .aircraftType = c.job.facts.aircraftType, .at = c.draft.at};
    const auto id = InterfaceId::parse(line.subject.value_or(QString()));
    const InterfaceState *item = id ? c.job.item(*id) : nullptr;
    const bool hadAHand = item && item->actors.contains(c.draft.author);
    if (authorisationFor(c.reg, c.draft.author, need) && !hadAHand)
        return std::nullopt;
    const QString sentence = hadAHand ? inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 is an inspector's word on work that %2 had a hand in. Only %3, or somebody else with authority to overrule, may strike it."))
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
    if (c.job.lead == c.draft.author)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 is struck by %2, who made it, or by the lead.")).arg(line->seq).arg(c.reg.nameOf(line->author)),
                   c.reg.nameOf(line->author) + inWords(QT_TRANSLATE_NOOP("Rule", " or the lead")));
}

std::optional<Refusal> listingIsUntouched(const Case &c)
{
    const Line *line = named(c);
    if (!line || line->kind != u"interface.listed")
        return std::nullopt;
    const auto id = InterfaceId::parse(line->subject.value_or(QString()));
    const InterfaceState *item = id ? c.job.item(*id) : nullptr;
    if (!item || !item->removal)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was undone in this job, so it stays on the list until it is restored and inspected.")).arg(id->text()), inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")));
}

const Rule strikeExists{"strike.stands"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Only what counts can be taken back."), &struckEntryExists};
const Rule strikeable{"strike.kind"_L1, QT_TRANSLATE_NOOP("RuleWhy", "The frame of the record is not up for correction."), &entryMayBeStruck};
const Rule strikeBy{"strike.by"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An inspector's word is not set aside by those who were inspected."), &strikerMay};
const Rule strikeListing{"strike.listing"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Striking a listing must not make an open joint disappear."), &listingIsUntouched};

} // namespace core::rules
