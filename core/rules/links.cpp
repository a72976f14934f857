// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/links.hpp"

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/acts/listing.hpp"
#include "core/acts/reopen.hpp"
#include "core/acts/taken_on.hpp"
#include "core/job/linked.hpp"
#include "core/job/loose_ends.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString lead() { return inWords(QT_TRANSLATE_NOOP("Rule", "the lead")); }
QString technician() { return inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")); }
QString otherLead(const Case &c, const JobState &other) { return other.lead ? c.reg.nameOf(*other.lead) : lead(); }

/// The entry that the draft strikes, or nullptr.
const Line *struckBy(const Case &c)
{
    const qint64 seq = c.draft.body.integer(u"entry").value_or(0);
    return seq >= 1 && seq <= static_cast<qint64>(c.job.lines.size()) ? &c.job.lines[static_cast<std::size_t>(seq - 1)] : nullptr;
}

const InterfaceState *itemOf(const Case &c, const Line &line)
{
    const auto id = InterfaceId::parse(line.subject.value_or(QString()));
    return id ? c.job.item(*id) : nullptr;
}

/// The job that the draft says the item comes from, and the item there; null where there is none.
struct Source {
    const JobState *job = nullptr;
    const InterfaceState *item = nullptr;
};

Source sourceOf(const Case &c)
{
    const auto ledger = LedgerId::parse(c.text(u"from"));
    const auto id = InterfaceId::parse(c.draft.subject.value_or(QString()));
    const JobState *job = ledger ? seenJob(c.job, *ledger) : nullptr;
    return {job, job && id ? job->item(*id) : nullptr};
}

bool isSentHere(const Case &c, const Source &source) { return source.item && source.item->sent && c.job.ledger && source.item->sent->to == *c.job.ledger; }

/// What differs between the item as it is said to come and as the other job has it; empty when it is the same.
QString differenceOf(const Case &c, const JobState &from, const InterfaceState &there)
{
    Listing told = listingIn(there.listed.id, c.draft.body);
    told.zone = there.listed.zone;
    if (told != there.listed)
        return inWords(QT_TRANSLATE_NOOP("Rule", "what restoring it has to show"));
    const json::Object &body = c.draft.body;
    const bool comesAsOff = body.text(u"comes") == comesOff;
    if (comesAsOff != core::isOff(there))
        return inWords(QT_TRANSLATE_NOOP("Rule", "whether it is off"));
    const Removal none{there.listedBy, {}, {}, 0};
    const Removal &removal = there.removal ? *there.removal : none;
    const auto fitted = [&](End end) { return there.removal ? blanksToComeOut(from, there, end) : 0; };
    if (body.text(u"tag") != removal.tag)
        return inWords(QT_TRANSLATE_NOOP("Rule", "its tag"));
    if (body.integer(u"blanks_fitted").value_or(0) != fitted(End::Aircraft) || body.integer(u"unit_blanks_fitted").value_or(0) != fitted(End::Unit))
        return inWords(QT_TRANSLATE_NOOP("Rule", "its blanks"));
    if (body.text(u"as_found") != removal.asFound)
        return inWords(QT_TRANSLATE_NOOP("Rule", "how it was found"));
    if (hardwareRemovedIn(body) != removal.hardware)
        return inWords(QT_TRANSLATE_NOOP("Rule", "the hardware that came off"));
    return {};
}

} // namespace

std::optional<Refusal> linkedJobsAreSeen(const Case &c)
{
    const auto unseen = std::find_if(c.job.links.begin(), c.job.links.end(), [&](const Link &link) { return !seenJob(c.job, link.ledger); });
    if (unseen == c.job.links.end())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The linked job %1 cannot be seen from here. Keep both in one store; nothing is recorded until then.")).arg(unseen->workOrder), inWords(QT_TRANSLATE_NOOP("Rule", "whoever keeps the stores")));
}

std::optional<Refusal> linkNamesAnOpenJob(const Case &c)
{
    const auto ledger = LedgerId::parse(c.text(u"ledger"));
    if (!ledger)
        return std::nullopt; // for the form
    if (ledger == c.job.ledger)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "A job is not linked with itself. Name the other one.")), lead());
    const JobState *other = seenJob(c.job, *ledger);
    if (!other || !other->opened)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "This store has no job with the ledger %1. Jobs that are linked are kept in one store.")).arg(ledger->text()), lead());
    if (other->closed)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was closed on %2. What goes on from a closed job is a follow-on job.")).arg(jobInWords(*other), other->closed->at.spoken()), lead());
    if (other->facts.workOrder != c.text(u"work_order"))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The job with this ledger is of the work order %1, not of %2. Make sure that it is the one you mean.")).arg(other->facts.workOrder, c.text(u"work_order")), lead());
    return std::nullopt;
}

std::optional<Refusal> isNotLinkedYet(const Case &c)
{
    const auto ledger = LedgerId::parse(c.text(u"ledger"));
    const auto link = std::find_if(c.job.links.begin(), c.job.links.end(), [&](const Link &one) { return one.ledger == ledger; });
    if (link == c.job.links.end())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was linked in entry %2.")).arg(jobInWords(c.job, link->ledger)).arg(link->mark.seq), {});
}

std::optional<Refusal> struckLinkIsUnanswered(const Case &c)
{
    const Line *line = struckBy(c);
    if (!line || line->kind != u"job.linked")
        return std::nullopt;
    const auto link = std::find_if(c.job.links.begin(), c.job.links.end(), [&](const Link &one) { return one.mark.seq == line->seq; });
    const JobState *other = link == c.job.links.end() ? nullptr : seenJob(c.job, link->ledger);
    if (!other || !c.job.ledger || !isLinkedWith(*other, *c.job.ledger))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 names this job as well. What both leads signed stays: the two close together.")).arg(jobInWords(*other)), {});
}

std::optional<Refusal> noLinkedJobIsClosed(const Case &c)
{
    if (c.draft.kind == u"job.closed")
        return std::nullopt;
    for (const JobState *other : linkedBothWays(c.job)) {
        if (other->closed && ownLooseEnds(c.job, c.reg).empty())
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was closed on %2, and this job was complete then: it takes nothing but its own closure. What is found now goes into a follow-on job.")).arg(jobInWords(*other), other->closed->at.spoken()),
                           inWords(QT_TRANSLATE_NOOP("Rule", "a person with release authority, by closing this job; and whoever opens a follow-on job")));
    }
    return std::nullopt;
}

std::optional<Refusal> itemIsHere(const Case &c)
{
    const Act *act = findAct(c.draft.kind);
    if (c.item && isElsewhere(*c.item) && act->subject == SubjectSort::Interface)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is not in this job any more. %2")).arg(c.itemName(), whereInWords(c.job, *c.item)), inWords(QT_TRANSLATE_NOOP("Rule", "a technician of that job")));
    std::vector<InterfaceId> others = interfacesIn(c.draft.body, u"reopens");
    if (c.draft.kind == u"job.revised")
        others = interfacesIn(c.draft.body, u"interfaces");
    if (const auto other = c.draft.kind == u"tag.exchanged" ? InterfaceId::parse(c.text(u"other")) : std::nullopt)
        others.push_back(*other);
    for (const InterfaceId &id : others) {
        const InterfaceState *item = c.job.item(id);
        if (item && isElsewhere(*item))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is not in this job any more. %2")).arg(id.text() + u" ("_s + item->listed.name + u')', whereInWords(c.job, *item)), inWords(QT_TRANSLATE_NOOP("Rule", "a technician of that job")));
    }
    return std::nullopt;
}

std::optional<Refusal> itemCanGo(const Case &c)
{
    if (!c.item || isElsewhere(*c.item))
        return std::nullopt; // a rule of its own
    const InterfaceState &item = *c.item;
    if (item.restoration)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is joined. What is given over is off, or was never touched.")).arg(c.itemName()), technician());
    if (item.notApplicable || item.undisturbed)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is said to be as it should be in this job, so there is nothing to give over.")).arg(c.itemName()), {});
    if (item.left.undoing)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was said to be undone (entry %2), and that was struck. An inspector who had no hand in it looks first.")).arg(c.itemName()).arg(item.left.undoing->seq), inWords(QT_TRANSLATE_NOOP("Rule", "an authorised inspector who had no hand in it")));
    if (isWithoutDetails(item))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was on no list, and nobody has said yet what restoring it has to show. Give its details before it goes.")).arg(c.itemName()), technician());
    if (item.stillAttached)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was found still attached: %2 Free it before it goes.")).arg(c.itemName(), item.stillAttached->what), technician());
    if (item.stopped)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Somebody stopped in the middle of %1: %2 Finish that before it goes.")).arg(c.itemName(), item.stopped->word), technician());
    if (item.toLookUp)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The maintenance data of %1 was revised (entry %2), and nobody has looked up yet what it asks for now. Do that before it goes.")).arg(c.itemName()).arg(item.toLookUp->seq), lead());
    if (item.removal && !item.removal->blanksMissing.empty())
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "A blank of %1 is missing and may be inside. It stays with those who look for it.")).arg(c.itemName()), technician());
    if (!item.conditions.empty())
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1: %2. The other job would not see that; settle it before it goes.")).arg(c.itemName(), inWordsOf(item.conditions.front())), technician());
    return std::nullopt;
}

std::optional<Refusal> nothingIsTiedToIt(const Case &c)
{
    if (!c.item)
        return std::nullopt;
    if (!c.item->listed.twinGroup.isEmpty())
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 has look-alikes (%2), which are verified as a pair. They stay in one job.")).arg(c.itemName(), c.item->listed.twinGroup), technician());
    const std::vector<InterfaceId> dependents = dependentsOf(c.job, c.item->listed.id);
    const auto &on = c.item->listed.dependsOn;
    if (on.empty() && dependents.empty())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "When one of %1 and %2 is disturbed, the other is torqued and inspected anew. They stay in one job.")).arg(c.itemName(), (on.empty() ? dependents : on).front().text()), technician());
}

std::optional<Refusal> goesToALinkedJob(const Case &c)
{
    const auto to = LedgerId::parse(c.text(u"to"));
    if (!to)
        return std::nullopt; // for the form
    const std::vector<const JobState *> linked = linkedBothWays(c.job);
    const auto other = std::find_if(linked.begin(), linked.end(), [&](const JobState *one) { return one->ledger == to; });
    if (other == linked.end())
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is not linked with this job, both ways. An item goes to a job that names this one.")).arg(jobInWords(c.job, *to)), lead());
    const InterfaceState *its = c.item ? (*other)->item(c.item->listed.id) : nullptr;
    if (!its)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 lists an interface \"%2\" of its own (%3), so this one cannot be taken on there.")).arg(jobInWords(**other), its->listed.id.text(), its->listed.name), lead());
}

std::optional<Refusal> itemWasSentHere(const Case &c)
{
    const auto ledger = LedgerId::parse(c.text(u"from"));
    if (!ledger)
        return std::nullopt; // for the form
    if (!isLinkedWith(c.job, *ledger))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "This job is not linked with %1.")).arg(jobInWords(c.job, *ledger)), lead());
    const Source source = sourceOf(c);
    if (isSentHere(c, source))
        return std::nullopt;
    const QString other = source.job ? jobInWords(*source.job) : ledger->text();
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 did not send \"%2\" to this job.")).arg(other, c.draft.subject.value_or(QString())), inWords(QT_TRANSLATE_NOOP("Rule", "a technician of that job, by sending it")));
}

std::optional<Refusal> isTakenOnAsItIs(const Case &c)
{
    const Source source = sourceOf(c);
    const QString difference = isSentHere(c, source) ? differenceOf(c, *source.job, *source.item) : QString();
    if (difference.isEmpty())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" is not as %2 has it: %3. If the record there is wrong, they take it back and put that right.")).arg(c.draft.subject.value_or(QString()), jobInWords(*source.job), difference), otherLead(c, *source.job));
}

std::optional<Refusal> tagIsNobodyElses(const Case &c)
{
    const QString instead = c.text(u"tag_instead");
    const QString tag = tagOnIt(c.draft.body);
    if (!instead.isEmpty() && c.text(u"comes") != comesOff)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "A tag hangs on what is off. Leave it out.")), technician());
    if (tag.isEmpty())
        return std::nullopt;
    if (const auto at = c.job.tagAt.constFind(tag); at != c.job.tagAt.constEnd())
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Tag %1 was hung on %2 in this job. Hang a tag of this job instead, and give that one back.")).arg(tag, at->text()), technician());
    const TagBlock *block = blockOf(c.job.tags, tag);
    if (instead.isEmpty() && block)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "This job has a tag %1 of its own, of the block %2. Hang a tag of this job instead, and give that one back.")).arg(tag, blockText(*block)), technician());
    if (instead.isEmpty() || c.job.tags.blocks.empty() || (block && !block->returned))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Tag %1 is of no block of this job that is out.")).arg(tag), technician());
}

std::optional<Refusal> struckLeavesItWhereItIs(const Case &c)
{
    const Line *line = struckBy(c);
    const InterfaceState *item = line ? itemOf(c, *line) : nullptr;
    const Act *act = line ? findAct(line->kind) : nullptr;
    const bool isAboutItem = act && (act->subject == SubjectSort::Interface || act->subject == SubjectSort::NewInterface);
    if (!item || !isAboutItem || !isElsewhere(*item))
        return std::nullopt;
    const auto there = whereTakenOn(c.job, *item);
    if (there)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was taken on by %2 as this record has it. They strike that first; then it is back.")).arg(item->listed.id.text() + u" ("_s + item->listed.name + u')', jobInWords(c.job, item->sent->to)), otherLead(c, *there->job));
    if (line->kind == u"interface.sent")
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was sent in entry %2 as this record has it. Strike that first; then put this right.")).arg(item->listed.id.text() + u" ("_s + item->listed.name + u')').arg(item->sent->mark.seq), technician());
}

const Rule linkSeen{"link.seen"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Who had a hand in it cannot be asked of a record that is not there."), &linkedJobsAreSeen};
const Rule linkNamed{"link.named"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A link to the wrong job ties two pieces of work that have nothing to do with each other."), &linkNamesAnOpenJob};
const Rule linkOnce{"link.once"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A second signature would hide which one counts."), &isNotLinkedYet};
const Rule strikeLink{"strike.link"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Whoever could cut a link could inspect their own work behind it."), &struckLinkIsUnanswered};
const Rule closedTogether{"link.closed-together"_L1, QT_TRANSLATE_NOOP("RuleWhy", "When the first part was released, the other parts were complete; they stay what they were then."), &noLinkedJobIsClosed};
const Rule notElsewhere{"link.elsewhere"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An item that two crews work on belongs to neither."), &itemIsHere};
const Rule sendable{"send.state"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What is half done is finished by those who know how far it came."), &itemCanGo};
const Rule sendTied{"send.tied"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What voids one item has to reach the other, and a job voids nothing in another one."), &nothingIsTiedToIt};
const Rule sendTo{"send.to"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What is sent to somebody who knows nothing of it is lost."), &goesToALinkedJob};
const Rule takenOnSent{"taken-on.sent"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A handing on has two ends, and both sign."), &itemWasSentHere};
const Rule takenOnSame{"taken-on.same"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What changes on the way was changed by nobody."), &isTakenOnAsItIs};
const Rule takenOnTag{"taken-on.tag"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Two tags of one number point at two places."), &tagIsNobodyElses};
const Rule strikeSent{"strike.sent"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Others rely on what was handed on as it was handed on."), &struckLeavesItWhereItIs};

} // namespace core::rules
