// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

#include "core/acts/listing.hpp"
#include "core/acts/reopen.hpp"
#include "core/job/asked_less.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

/// Lists what nobody had listed, and logs it as disconnected.
bool logUnlisted(JobState &job, const Statement &said)
{
    const auto id = InterfaceId::parse(said.subject.value_or(QString()));
    if (!id || job.item(*id))
        return false;
    InterfaceState item{.listed = listingIn(*id, said.body), .listedBy = markOf(said), .removal = {}, .restoration = {}, .torque = {}, .bonding = {}, .safetying = {}, .leak = {},
                        .acceptances = {}, .rejection = {}, .disturbed = {}, .actors = {}, .torqueTakenOverBy = {}, .photos = {}, .walkedRound = {}, .stillAttached = {}};
    const QString tag = said.body.text(u"tag");
    item.removal = Removal{markOf(said), said.body.text(u"as_found"), tag, said.body.integer(u"blanks_fitted").value_or(0), false, {}, said.body.integer(u"unit_blanks_fitted").value_or(0), {}};
    item.unlisted = Unlisted{markOf(said), std::nullopt};
    addActors(item, said);
    job.itemAt.insert(*id, static_cast<qsizetype>(job.items.size()));
    job.items.push_back(std::move(item));
    noteRow(job, nullptr, job.item(*id)->listed);
    takeUpWhatWasLeft(job, *id);
    if (!tag.isEmpty())
        job.tagAt.insert(tag, *id);
    return true;
}

bool detail(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    if (!item || !isWithoutDetails(*item))
        return false;
    const Listing before = item->listed;
    item->listed = listingIn(before.id, said.body);
    noteRow(job, &before, item->listed);
    noteAskedLess(*item, said.author);
    item->unlisted->detailed = markOf(said);
    if (item->removal)
        item->removal->hardware = hardwareRemovedIn(said.body); // when it was undone nobody had time to count
    reopenTwins(job, *item); // its look-alikes have one more to be told from
    return true;
}

/// What a list says, and what was counted at the undoing.
std::vector<Field> detailFields()
{
    std::vector<Field> fields = listingFields();
    fields.push_back(hardwareRemovedField());
    return fields;
}

} // namespace

/// A disconnection that was on no list, logged in ten seconds; what a list would have said of it follows.
/// Source: what is loosened only to reach something else is on nobody's list: common practice.
std::vector<Act> unlistedActs()
{
    const auto known = Needed::IfKnown;
    return {
        {"interface.unlisted"_L1, LedgerSort::Job, "performed"_L1, SubjectSort::NewInterface, QT_TRANSLATE_NOOP("Act", "Undone, not listed"), QT_TRANSLATE_NOOP("Act", "Disconnected, not listed"),
         {field("name"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Name")),
          field("zone"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Zone")),
          field("tag"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Tag")),
          blanksFittedField(known),
          unitBlanksFittedField(),
          asFoundField(known),
          field("helpers"_L1, FieldType::People, known, QT_TRANSLATE_NOOP("Field", "Helped, supervised or taught by"), "person"_L1),
          field("remarks"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Remarks")),
          field("done_at"_L1, FieldType::Moment, known, QT_TRANSLATE_NOOP("Field", "Done at, if earlier"))},
         &logUnlisted, &noCautions, {}},
        {"interface.detailed"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Give its details"), QT_TRANSLATE_NOOP("Act", "Details given"), detailFields(), &detail,
         &noCautions, {}},
    };
}

} // namespace core
