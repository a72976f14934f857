// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/revision.hpp"

#include "core/acts/act.hpp"
#include "core/acts/listing.hpp"
#include "core/job/asked_less.hpp"
#include "core/job/linked.hpp"
#include "core/rules/people.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString lead() { return inWords(QT_TRANSLATE_NOOP("Rule", "the lead")); }
QString inspector() { return inWords(QT_TRANSLATE_NOOP("Rule", "an authorised inspector who had no hand in it")); }

/// What the draft's row is held against: the row that it corrects, or those under that id that were struck.
std::vector<Listing> rowsBefore(const Case &c)
{
    if (c.item && c.draft.kind == u"interface.relisted")
        return {c.item->listed};
    const auto id = InterfaceId::parse(c.draft.subject.value_or(QString()));
    const LeftByStrikes *left = id ? leftOf(c.job, *id) : nullptr;
    return left ? left->listed : std::vector<Listing>();
}

/// Authorised to inspect it as it was listed, and without a hand in it or in its group.
bool mayAskLess(const Case &c, const Listing &before)
{
    const Need need{.authority = Authority::Inspect, .kind = before.kind, .aircraftType = c.job.facts.aircraftType, .at = c.draft.at};
    const LeftByStrikes *left = leftOf(c.job, before.id);
    return authorisationFor(c.reg, c.draft.author, need) && !(left && left->hands.contains(c.draft.author)) && !(c.item && (hadAHand(c.job, *c.item, c.draft.author) || handInGroupOf(c.job, *c.item, c.draft.author)));
}

} // namespace

std::optional<Refusal> revisionIsAnother(const Case &c)
{
    if (c.text(u"revision") != c.job.facts.revision)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The job works to revision %1 already.")).arg(c.job.facts.revision), {});
}

std::optional<Refusal> revisedInterfacesAreListed(const Case &c)
{
    for (const InterfaceId &id : interfacesIn(c.draft.body, u"interfaces")) {
        if (!c.job.item(id))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The list has no interface \"%1\".")).arg(id.text()), lead());
    }
    return std::nullopt;
}

std::optional<Refusal> revisionOfNothingSaysSo(const Case &c)
{
    if (!interfacesIn(c.draft.body, u"interfaces").empty() || c.draft.body.isTrue(u"none"))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Name the interfaces that the new revision may ask something else of; or say that it was read and changes none of them.")), lead());
}

std::optional<Refusal> revisionWasLookedUp(const Case &c)
{
    if (!c.item || !c.item->toLookUp)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The maintenance data of %1 was revised (entry %2), and nobody has looked up yet what it asks for now. Correct its row of the list, or sign it as it is.")).arg(c.itemName()).arg(c.item->toLookUp->seq), lead());
}

std::optional<Refusal> relistedByLeadOrInspector(const Case &c)
{
    if (!c.item || c.job.lead == c.draft.author || mayInspect(c, *c.item))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The list is corrected by the lead, or by an inspector who had no hand in the interface; %1 is neither.")).arg(c.authorName()), lead());
}

std::optional<Refusal> relistedKindStays(const Case &c)
{
    if (!c.item || !c.item->removal || isWithoutDetails(*c.item) || c.text(u"kind") == c.item->listed.kind)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was undone as what it is listed to be, and what it waited for hung on that. Its kind stays.")).arg(c.itemName()), {});
}

std::optional<Refusal> relistedJointIsOpen(const Case &c)
{
    if (!c.item || !c.item->restoration)
        return std::nullopt;
    const QString built = whatIsBuiltIn(c.item->listed, listingIn(c.item->listed.id, c.draft.body));
    if (built.isEmpty())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was joined with what the list asked for then: %2. Undo it first; then correct the list.")).arg(c.itemName(), built), inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")));
}

std::optional<Refusal> lessIsAskedByAnInspector(const Case &c)
{
    for (const Listing &before : rowsBefore(c)) {
        const QString less = mayAskLess(c, before) ? QString() : whatIsAskedLess(before, listingIn(before.id, c.draft.body));
        if (!less.isEmpty())
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "This asks less of %1 than before: %2. An inspector who had no hand in it or in its group signs that.")).arg(c.itemName(), less), inspector());
    }
    return std::nullopt;
}

std::optional<Refusal> acceptedByWhoAskedNoLess(const Case &c)
{
    if (!c.item || !c.item->left.askedLessBy.contains(c.draft.author))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 made the list ask less of %2; another inspector accepts it.")).arg(c.authorName(), c.itemName()), inWords(QT_TRANSLATE_NOOP("Rule", "another authorised inspector")));
}

std::optional<Refusal> timesInDoubtAreThere(const Case &c)
{
    const qint64 first = c.draft.body.integer(u"first").value_or(0);
    const qint64 last = c.draft.body.integer(u"last").value_or(0);
    const auto entries = static_cast<qint64>(c.job.lines.size());
    if (first >= 1 && first <= last && last <= entries)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The job has entries 1 to %1; there are none from %2 to %3.")).arg(entries).arg(first).arg(last), inWords(QT_TRANSLATE_NOOP("Rule", "anybody of the job")));
}

const Rule revisionAnother{"revision.another"_L1, QT_TRANSLATE_NOOP("RuleWhy", "The data that a job works to changes by a signature, never by itself."), &revisionIsAnother};
const Rule revisionItems{"revision.interfaces"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A name that nothing answers to would be looked up by nobody."), &revisedInterfacesAreListed};
const Rule revisionSaid{"revision.none"_L1, QT_TRANSLATE_NOOP("RuleWhy", "That nothing changed is a result, and somebody answers for it."), &revisionOfNothingSaysSo};
const Rule revisionLookedUp{"revision.looked-up"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An inspection against the limits of yesterday proves nothing today."), &revisionWasLookedUp};
const Rule relistBy{"relist.by"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Who does the work does not choose what it has to show."), &relistedByLeadOrInspector};
const Rule relistKind{"relist.kind"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What waited at a gate does not become something that need not have waited."), &relistedKindStays};
const Rule relistJoined{"relist.joined"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A correction on paper does not change what is in the joint."), &relistedJointIsOpen};
const Rule relistLess{"relist.less"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A requirement that is in the way must not be talked away."), &lessIsAskedByAnInspector};
const Rule relistAccept{"relist.accept"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Who takes a requirement away does not judge alone what is left of it."), &acceptedByWhoAskedNoLess};
const Rule timesThere{"time.entries"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A doubt points at what it doubts."), &timesInDoubtAreThere};

} // namespace core::rules
