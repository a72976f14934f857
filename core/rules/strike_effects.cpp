// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/strike_effects.hpp"

#include <algorithm>

#include "core/acts/voids.hpp"
#include "core/holds/standing.hpp"
#include "core/job/asked_less.hpp"
#include "core/rules/people.hpp"
#include "core/rules/struck_line.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

/// The first entry that stands and came later, of these kinds, or of any but strikes.
const Line *laterThan(const Case &c, qint64 seq, std::initializer_list<QLatin1String> kinds)
{
    for (auto at = static_cast<std::size_t>(seq); at < c.job.lines.size(); ++at) {
        const Line &one = c.job.lines[at];
        const bool isOfThese = kinds.size() == 0 ? one.kind != u"entry.struck" : std::any_of(kinds.begin(), kinds.end(), [&](QLatin1String kind) { return one.kind == kind; });
        if (one.standing == Standing::Stands && isOfThese)
            return &one;
    }
    return nullptr;
}

/// The interface that would ask for less without the entry, and what of it; nothing where none would.
std::optional<std::pair<const InterfaceState *, QString>> askedLessWithout(const Case &c)
{
    for (const InterfaceState &item : c.job.items) {
        const InterfaceState *after = c.after().item(item.listed.id);
        const QString less = after && !isWithoutDetails(*after) ? whatIsAskedLess(item.listed, after->listed) : QString();
        if (!less.isEmpty())
            return std::pair(&item, less);
    }
    return std::nullopt;
}

} // namespace

std::optional<Refusal> struckHoldMatters(const Case &c)
{
    const Line *line = lineToStrike(c);
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
    const Line *line = lineToStrike(c);
    const std::vector<Voided> back = line ? whatWasVoided(c.after(), c.job) : std::vector<Voided>();
    const bool mayAll = std::all_of(back.begin(), back.end(), [&](const Voided &one) {
        const auto id = InterfaceId::parse(one.subject);
        return mayOverrule(c, id ? c.job.item(*id) : nullptr);
    });
    if (mayAll)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 set aside what striking it would bring back. %2 Leave it and show it anew, after marking it disturbed where that is how to begin; or let somebody with authority to overrule, who had no hand in it, strike it.")).arg(QString::number(line->seq), back.front().sentence),
                   inWords(QT_TRANSLATE_NOOP("Rule", "whoever shows it anew; or a person with authority to overrule")));
}

std::optional<Refusal> strikeAsksNoLess(const Case &c)
{
    const Line *line = lineToStrike(c);
    if (!line || (line->kind != u"interface.relisted" && line->kind != u"interface.detailed"))
        return std::nullopt;
    const auto less = askedLessWithout(c);
    if (!less || mayInspect(c, *less->first) || mayOverrule(c, less->first))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Without entry %1 the list asks less of %2: %3. An inspector who had no hand in it strikes it.")).arg(QString::number(line->seq), less->first->listed.id.text(), less->second),
                   inWords(QT_TRANSLATE_NOOP("Rule", "an authorised inspector who had no hand in it")));
}

std::optional<Refusal> nothingWasUndoneSince(const Case &c)
{
    const Line *line = lineToStrike(c);
    const Line *since = line && line->kind == u"interface.reconnected" ? laterOfTheSame(c, *line, {"interface.disconnected"_L1, "interface.found_open"_L1}) : nullptr;
    if (!since)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was undone again in entry %2, which rests on its having been joined. Strike that one first, if it was a mistake.")).arg(line->subject.value_or(QString())).arg(since->seq), {});
}

std::optional<Refusal> handoverWasWorkedUnder(const Case &c)
{
    const Line *line = lineToStrike(c);
    if (!line || (line->kind != u"handover.given" && line->kind != u"handover.accepted"))
        return std::nullopt;
    for (const Handover &handover : c.job.handovers) {
        const bool isThis = handover.given.seq == line->seq || (handover.accepted && handover.accepted->seq == line->seq);
        const Line *since = isThis && handover.accepted ? laterThan(c, handover.accepted->seq, {}) : nullptr;
        if (since)
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The handover was accepted, and entry %1 was made under it. It stays; hand over again.")).arg(since->seq), inWords(QT_TRANSLATE_NOOP("Rule", "the lead")));
    }
    return std::nullopt;
}

std::optional<Refusal> givingUpStays(const Case &c)
{
    const Line *line = lineToStrike(c);
    const Line *since = line && line->kind == u"job.reversed" ? laterThan(c, line->seq, {"unit.positioned"_L1, "accessory.moved"_L1, "hold.passed"_L1}) : nullptr;
    if (!since)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Entry %1 rests on the change being given up. Strike that one first, if it was a mistake.")).arg(since->seq), {});
}

const Rule strikeHold{"strike.hold"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What a gate let through does not go back behind it."), &struckHoldMatters};
const Rule strikeBack{"strike.back"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Whoever wished an inspection back could say that nothing had happened."), &strikeBringsNothingBack};
const Rule strikeLess{"strike.less"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A requirement is not struck by those who have to show it."), &strikeAsksNoLess};
const Rule strikeUndone{"strike.undone"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What came off is counted from what was on."), &nothingWasUndoneSince};
const Rule strikeHandover{"strike.handover"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Who led and who worked on a shift is not changed afterwards."), &handoverWasWorkedUnder};
const Rule strikeReversal{"strike.reversal"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Which unit goes up is not changed behind its back."), &givingUpStays};

} // namespace core::rules
