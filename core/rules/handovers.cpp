// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/handovers.hpp"

#include "core/job/loose_ends.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

std::optional<Refusal> noHandoverPends(const Case &c)
{
    const Handover *pending = c.job.pendingHandover();
    if (!pending)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "A handover to %1 waits for acceptance already.")).arg(c.reg.nameOf(pending->to)), c.reg.nameOf(pending->to));
}

std::optional<Refusal> listIsCurrent(const Case &c)
{
    const json::Value *open = c.draft.body.find(u"open");
    if (open && open->array() && *open->array() == openAtHandover(c.job))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The list of what is open has moved on. Look at it again, then sign.")), inWords(QT_TRANSLATE_NOOP("Rule", "the outgoing lead")));
}

std::optional<Refusal> incomingMayLead(const Case &c)
{
    const auto to = PersonId::parse(c.text(u"to"));
    const Need need{.authority = Authority::Lead, .aircraftType = c.job.facts.aircraftType, .at = c.draft.at};
    if (to && *to != c.draft.author && authorisationFor(c.reg, *to, need))
        return std::nullopt;
    if (to && *to == c.draft.author)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "A handover goes to another person.")), inWords(QT_TRANSLATE_NOOP("Rule", "the outgoing lead")));
    return refusal(c, to ? whyNotAuthorised(c.reg, *to, need) : QString(), inWords(QT_TRANSLATE_NOOP("Rule", "an administrator of the register")));
}

std::optional<Refusal> handoverPends(const Case &c)
{
    const Handover *pending = c.job.pendingHandover();
    if (pending && c.draft.body.integer(u"given") == pending->given.seq)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "No such handover waits for acceptance.")), inWords(QT_TRANSLATE_NOOP("Rule", "the outgoing lead, by handing over")));
}

std::optional<Refusal> acceptedByIncoming(const Case &c)
{
    const Handover *pending = c.job.pendingHandover();
    if (!pending || pending->to == c.draft.author)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The handover is to %1, who accepts it in person.")).arg(c.reg.nameOf(pending->to)), c.reg.nameOf(pending->to));
}

const Rule handoverOnce{"handover.once"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Two pending handovers leave nobody in charge."), &noHandoverPends};
const Rule handoverList{"handover.list"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What is open is counted, not remembered."), &listIsCurrent};
const Rule handoverTo{"handover.to"_L1, QT_TRANSLATE_NOOP("RuleWhy", "The incoming shift needs a lead who may lead."), &incomingMayLead};
const Rule handoverPending{"handover.pending"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An acceptance names what it accepts."), &handoverPends};
const Rule handoverBy{"handover.accepted-by"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Until the incoming lead signs, the outgoing one answers."), &acceptedByIncoming};

} // namespace core::rules
