// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/acts/listing.hpp"
#include "core/acts/reopen.hpp"
#include "core/job/asked_less.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

bool revise(JobState &job, const Statement &said)
{
    const QString revision = said.body.text(u"revision");
    const std::vector<InterfaceId> items = interfacesIn(said.body, u"interfaces");
    job.revisions.push_back({markOf(said), job.facts.revision, revision, said.body.text(u"changed"), items});
    job.facts.revision = revision;
    for (const InterfaceId &id : items) {
        InterfaceState *item = job.item(id);
        if (!item)
            continue;
        item->toLookUp = markOf(said);
        takeBackAcceptances(*item);
    }
    return true;
}

/// In whatever order they are named.
bool areSameRequirements(std::vector<QString> before, std::vector<QString> after)
{
    std::sort(before.begin(), before.end());
    std::sort(after.begin(), after.end());
    return before == after;
}

/// What was shown against a limit that is another now was shown of something else. True when anything was.
bool dropWhatWasShownOtherwise(InterfaceState &item, const Listing &before)
{
    const InterfaceState shown = item;
    takeBackAcceptances(item);
    if (before.torque != item.listed.torque || !areSameRequirements(before.requirements, item.listed.requirements))
        voidWhatWasShown(item);
    if (before.bondingMax != item.listed.bondingMax || before.bondingComparison != item.listed.bondingComparison || before.bondingReadings != item.listed.bondingReadings)
        item.bonding.reset();
    if (before.safetying != item.listed.safetying)
        item.safetying.reset();
    if (before.leak != item.listed.leak)
        item.leak.reset();
    return shown.torque != item.torque || shown.bonding != item.bonding || shown.safetying != item.safetying || shown.leak != item.leak;
}

/// What somebody looked at was looked at for what it was then.
void dropWhatWasSeenOtherwise(InterfaceState &item, const Listing &before)
{
    if (before.kind == item.listed.kind && before.zone == item.listed.zone && before.critical == item.listed.critical)
        return;
    item.undisturbed.reset();
    item.notApplicable.reset();
    item.walkedRound.reset();
}

bool relist(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    if (!item || isWithoutDetails(*item))
        return false;
    const Listing before = item->listed;
    const Listing after = listingIn(before.id, said.body);
    if (item->removal && (before.kind != after.kind || (item->restoration && !whatIsBuiltIn(before, after).isEmpty())))
        return false;
    reopenTwins(job, *item); // of the group that it was in
    item->listed = after;
    noteRow(job, &before, after);
    item->toLookUp.reset();
    item->settled = markOf(said);
    if (!whatIsAskedLess(before, after).isEmpty())
        item->left.askedLessBy.insert(said.author);
    dropWhatWasSeenOtherwise(*item, before);
    if (dropWhatWasShownOtherwise(*item, before))
        reopenWhatRestsOn(job, *item);
    reopenTwins(job, *item);
    return true;
}

bool doubtTimes(JobState &job, const Statement &said)
{
    const auto first = said.body.integer(u"first");
    const auto last = said.body.integer(u"last");
    if (!first || !last || *first < 1 || *last < *first)
        return false;
    job.timesInDoubt.push_back({markOf(said), *first, *last, said.body.text(u"reason"), said.body.text(u"difference")});
    return true;
}

/// All that a list says, as it is now, and why.
std::vector<Field> relistFields()
{
    std::vector<Field> fields = listingFields();
    fields.push_back(field("why"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Why the list is corrected, and by which data")));
    return fields;
}

} // namespace

/// What changes under a job that is under way: the maintenance data, a row of the list, the trust in a clock.
std::vector<Act> revisionActs()
{
    return {
        {"job.revised"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Nothing, QT_TRANSLATE_NOOP("Act", "Take another revision"), QT_TRANSLATE_NOOP("Act", "Maintenance data revised"),
         {field("revision"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Revision")),
          field("changed"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "What is new in it")),
          field("interfaces"_L1, FieldType::Interfaces, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Interfaces to be looked up again")),
          field("none"_L1, FieldType::Flag, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Changes none of them"))},
         &revise, &noCautions, {}},
        {"interface.relisted"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Correct the list"), QT_TRANSLATE_NOOP("Act", "List corrected for"), relistFields(), &relist,
         &noCautions, {}},
        {"time.doubted"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Nothing, QT_TRANSLATE_NOOP("Act", "Times in doubt"), QT_TRANSLATE_NOOP("Act", "Times called in doubt"),
         {field("first"_L1, FieldType::Integer, Needed::Always, QT_TRANSLATE_NOOP("Field", "First entry in doubt")),
          field("last"_L1, FieldType::Integer, Needed::Always, QT_TRANSLATE_NOOP("Field", "Last entry in doubt")),
          field("reason"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Why the clock is not trusted")),
          field("difference"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Difference, as it was found"))},
         &doubtTimes, &noCautions, {}},
    };
}

} // namespace core
