// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/acts/listing.hpp"
#include "core/acts/reopen.hpp"
#include "core/job/asked_less.hpp"
#include "core/job/restoration.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

bool list(JobState &job, const Statement &said)
{
    const auto id = InterfaceId::parse(said.subject.value_or(QString()));
    if (!id || job.item(*id))
        return false;
    job.itemAt.insert(*id, static_cast<qsizetype>(job.items.size()));
    job.items.push_back({.listed = listingIn(*id, said.body), .listedBy = markOf(said), .removal = {}, .restoration = {},
                         .torque = {}, .bonding = {}, .safetying = {}, .leak = {}, .acceptances = {}, .rejection = {}, .disturbed = {},
                         .actors = {}, .torqueTakenOverBy = {}, .photos = {}, .walkedRound = {}, .stillAttached = {}});
    noteRow(job, nullptr, job.item(*id)->listed);
    takeUpWhatWasLeft(job, *id);
    noteAskedLess(*job.item(*id), said.author);
    reopenTwins(job, *job.item(*id)); // its look-alikes have one more to be told from
    return true;
}

bool undo(JobState &job, const Statement &said, bool foundOpen)
{
    InterfaceState *item = itemOf(job, said);
    if (!item || (item->removal && !item->restoration))
        return false;
    const QString tag = said.body.text(u"tag");
    item->removal = Removal{markOf(said), said.body.text(u"as_found"), tag, said.body.integer(u"blanks_fitted").value_or(0), foundOpen, hardwareRemovedIn(said.body), said.body.integer(u"unit_blanks_fitted").value_or(0), {}};
    item->restoration.reset();
    item->walkedRound.reset();
    item->stillAttached.reset();
    item->undisturbed.reset();
    item->notApplicable.reset();
    dropWhatGoesWithUndoing(*item);
    voidWhatWasShown(*item);
    forgetTheUndoing(item->left);
    // An inspector who found it open did not open it; of the crew somebody did, and nobody knows who.
    if (!foundOpen || isOfTheCrew(job, said.author))
        addActors(*item, said);
    if (!tag.isEmpty())
        job.tagAt.insert(tag, item->listed.id);
    reopenWhatRestsOn(job, *item);
    return true;
}

bool disconnect(JobState &job, const Statement &said) { return undo(job, said, false); }

bool findOpen(JobState &job, const Statement &said)
{
    if (!undo(job, said, true))
        return false;
    const auto id = FindingId::parse(said.body.text(u"finding"));
    if (id && !job.finding(*id)) {
        job.findings.push_back({*id, markOf(said), itemOf(job, said)->listed.id, said.body.text(u"evidence"), std::nullopt, {}, {}, {}});
    }
    return true;
}

bool reconnect(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    if (!item || !item->removal || item->restoration || standingCondition(*item, Condition::Temporary))
        return false;
    const json::Object &body = said.body;
    Restoration joined{markOf(said), body.text(u"tag_recovered"), body.integer(u"blanks_removed").value_or(0),
                       body.text(u"seal_part"), body.text(u"seal_batch"), body.text(u"aircraft_half"),
                       body.text(u"unit_half"), hardwareUsesIn(body), body.integer(u"unit_blanks_removed").value_or(0)};
    if (!belongsTo(job, *item, joined))
        return false;
    item->restoration = std::move(joined);
    item->stillAttached.reset(); // what held it is a part of the joint again
    item->walkedRound.reset();
    item->restoration->joinedBy.insert(said.author);
    for (const PersonId &helper : peopleIn(body, u"helpers"))
        item->restoration->joinedBy.insert(helper);
    dropPassingConditions(*item);
    addActors(*item, said);
    return true;
}

bool sayDisturbed(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    if (!item || !item->restoration)
        return false;
    const PersonId by = PersonId::parse(said.body.text(u"disturbed_by")).value_or(said.author);
    item->actors.insert(by);
    item->restoration->joinedBy.insert(by);
    disturb(job, item->listed.id, markOf(said));
    return true;
}

bool attachPhoto(JobState &job, const Statement &said)
{
    const auto digest = Digest::parse(said.body.text(u"sha256"));
    InterfaceState *item = itemOf(job, said);
    if (!digest || !item)
        return false;
    Photo photo{markOf(said), *digest, said.body.text(u"media_type"), said.body.text(u"caption"), said.body.text(u"moment"), Digest::parse(said.body.text(u"copy_of"))};
    // Marks are on the picture, so attached once more it has those that stand.
    if (const auto known = std::find_if(item->photos.begin(), item->photos.end(), [&](const Photo &one) { return one.digest == *digest; }); known != item->photos.end())
        photo.marks = known->marks;
    item->photos.push_back(photo);
    const auto id = FindingId::parse(said.body.text(u"finding"));
    const auto finding = std::find_if(job.findings.begin(), job.findings.end(), [&](const Finding &one) { return id && one.id == *id; });
    if (finding != job.findings.end())
        finding->photos.push_back(photo);
    return true;
}

const Field helpers = field("helpers"_L1, FieldType::People, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Helped, supervised or taught by"), "person"_L1);
const Field remarks = field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"));
const Field doneAt = field("done_at"_L1, FieldType::Moment, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Done at, if earlier"));

const Field partColumn = field("part"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Part number"), "part"_L1);
const Field quantityColumn = field("quantity"_L1, FieldType::Integer, Needed::Always, QT_TRANSLATE_NOOP("Field", "Number"));

} // namespace

std::vector<Field> listingFields()
{
    const auto known = Needed::IfKnown;
    return {
        field("name"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Name")),
        field("kind"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Kind")),
        field("zone"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Zone")),
        field("requirements"_L1, FieldType::Texts, known, QT_TRANSLATE_NOOP("Field", "Requirements")),
        field("torque_fasteners"_L1, FieldType::Integer, known, QT_TRANSLATE_NOOP("Field", "Fasteners")),
        field("torque_min"_L1, FieldType::Decimal, known, QT_TRANSLATE_NOOP("Field", "Torque, least")),
        field("torque_max"_L1, FieldType::Decimal, known, QT_TRANSLATE_NOOP("Field", "Torque, most")),
        unitField("torque_unit"_L1, Dimension::Torque, known, QT_TRANSLATE_NOOP("Field", "Torque unit")),
        field("bonding_max"_L1, FieldType::Decimal, known, QT_TRANSLATE_NOOP("Field", "Bonding resistance, most")),
        unitField("bonding_unit"_L1, Dimension::Resistance, known, QT_TRANSLATE_NOOP("Field", "Bonding unit")),
        field("seal_part"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Seal part number"), "part"_L1),
        field("safetying"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Safetying")),
        field("aircraft_half"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Aircraft half")),
        field("unit_half"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Unit half")),
        field("critical"_L1, FieldType::Flag, known, QT_TRANSLATE_NOOP("Field", "Critical")),
        field("inspections"_L1, FieldType::Integer, known, QT_TRANSLATE_NOOP("Field", "Inspections")),
        field("independence_group"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Independence group")),
        field("twin_group"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Twin group")),
        field("access"_L1, FieldType::Interfaces, known, QT_TRANSLATE_NOOP("Field", "Off before this one")),
        field("reference"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Maintenance data reference")),
        field("note"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Note")),
        choice("torque_prevailing"_L1, known, QT_TRANSLATE_NOOP("Field", "Drag of a self-locking nut"), {"added"_L1, "included"_L1}),
        quantity("torque_prevailing_min"_L1, Dimension::Torque, known, QT_TRANSLATE_NOOP("Field", "Least drag of a nut used again")),
        quantity("torque_prevailing_max"_L1, Dimension::Torque, known, QT_TRANSLATE_NOOP("Field", "Greatest drag of a nut")),
        choice("torque_condition"_L1, known, QT_TRANSLATE_NOOP("Field", "Threads"), {"dry"_L1, "lubricated"_L1}),
        field("torque_passes"_L1, FieldType::Texts, known, QT_TRANSLATE_NOOP("Field", "Passes, percent of the final torque")),
        field("torque_order"_L1, FieldType::Texts, known, QT_TRANSLATE_NOOP("Field", "Order of the fasteners")),
        quantity("torque_turn_min"_L1, Dimension::Angle, known, QT_TRANSLATE_NOOP("Field", "Turn after the torque, least")),
        quantity("torque_turn_max"_L1, Dimension::Angle, known, QT_TRANSLATE_NOOP("Field", "Turn after the torque, most")),
        field("thread"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Thread size")),
        choice("bonding_comparison"_L1, known, QT_TRANSLATE_NOOP("Field", "Bonding limit is met"), {"at most"_L1, "less than"_L1}),
        field("bonding_readings"_L1, FieldType::Integer, known, QT_TRANSLATE_NOOP("Field", "Bonding readings")),
        field("leak_class"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Leak, worst class allowed")),
        quantity("leak_rate"_L1, Dimension::VolumeRate, known, QT_TRANSLATE_NOOP("Field", "Leak, most")),
        field("leak_drops_per_ml"_L1, FieldType::Decimal, known, QT_TRANSLATE_NOOP("Field", "Drops in a millilitre")),
        records("hardware"_L1, known, QT_TRANSLATE_NOOP("Field", "Hardware"),
                {partColumn, quantityColumn, field("new"_L1, FieldType::Flag, known, QT_TRANSLATE_NOOP("Field", "Must be new"))}),
        field("depends_on"_L1, FieldType::Interfaces, known, QT_TRANSLATE_NOOP("Field", "Torqued and inspected anew when one of these is disturbed")),
    };
}

Field asFoundField(Needed needed) { return choice("as_found"_L1, needed, QT_TRANSLATE_NOOP("Field", "As found"), {"sound"_L1, "worn"_L1, "damaged"_L1, "loose"_L1}); }

Field blanksFittedField(Needed needed) { return field("blanks_fitted"_L1, FieldType::Integer, needed, QT_TRANSLATE_NOOP("Field", "Blanks fitted to the aircraft's end")); }

Field unitBlanksFittedField() { return field("unit_blanks_fitted"_L1, FieldType::Integer, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Blanks fitted to the unit's end")); }

Field hardwareRemovedField() { return records("hardware_removed"_L1, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Hardware that came off"), {partColumn, quantityColumn}); }

std::vector<Act> interfaceActs()
{
    const Field tag = field("tag"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Tag"));
    const Field blanks = blanksFittedField(Needed::Always);
    const Field unitBlanks = unitBlanksFittedField();
    const Field removed = hardwareRemovedField();
    const Field used = records("hardware"_L1, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "What became of the hardware"),
                               {partColumn,
                                field("reused"_L1, FieldType::Integer, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Reused")),
                                field("renewed"_L1, FieldType::Integer, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Renewed")),
                                field("scrapped"_L1, FieldType::Integer, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Scrapped")),
                                field("batch"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Batch of the new"), "batch"_L1)});
    return {
        {"interface.listed"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::NewInterface, QT_TRANSLATE_NOOP("Act", "List"),
         QT_TRANSLATE_NOOP("Act", "Listed"), listingFields(), &list, &noCautions, {}},
        {"interface.disconnected"_L1, LedgerSort::Job, "performed"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Disconnect"),
         QT_TRANSLATE_NOOP("Act", "Disconnected"),
         {tag, blanks, unitBlanks, asFoundField(Needed::Always), removed, helpers, remarks, doneAt},
         &disconnect, &noCautions, {}},
        {"interface.found_open"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Found open"),
         QT_TRANSLATE_NOOP("Act", "Found open"),
         {tag, blanks, unitBlanks, asFoundField(Needed::Always),
          field("finding"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Finding number")),
          field("evidence"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "What was seen")), removed},
         &findOpen, &noCautions, {}},
        {"interface.reconnected"_L1, LedgerSort::Job, "performed"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Reconnect"),
         QT_TRANSLATE_NOOP("Act", "Reconnected"),
         {field("tag_recovered"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Tag recovered")),
          field("blanks_removed"_L1, FieldType::Integer, Needed::Always, QT_TRANSLATE_NOOP("Field", "Blanks removed from the aircraft's end")),
          field("unit_blanks_removed"_L1, FieldType::Integer, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Blanks removed from the unit's end")),
          field("aircraft_half"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Aircraft half")),
          field("unit_half"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Unit half")),
          field("seal_part"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "New seal, part number"), "part"_L1),
          field("seal_batch"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "New seal, batch"), "batch"_L1),
          used, helpers, remarks, doneAt},
         &reconnect, &noCautions, {}},
        {"interface.disturbed"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Disturbed"),
         QT_TRANSLATE_NOOP("Act", "Disturbed"),
         {field("reason"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "What happened")),
          field("disturbed_by"_L1, FieldType::Person, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "By whom, if not you"), "person"_L1)},
         &sayDisturbed, &noCautions, {}},
        {"photo.attached"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Attach a photo"),
         QT_TRANSLATE_NOOP("Act", "Photo attached"),
         {field("sha256"_L1, FieldType::Digest, Needed::Always, QT_TRANSLATE_NOOP("Field", "Digest")),
          field("media_type"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "File type")),
          field("caption"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Caption")),
          choice("moment"_L1, Needed::Always, QT_TRANSLATE_NOOP("Field", "Taken"), {"before"_L1, "after"_L1, "other"_L1}),
          field("finding"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Of the finding")),
          field("copy_of"_L1, FieldType::DigestElsewhere, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Copy of, by digest"))},
         &attachPhoto, &noCautions, {}},
    };
}

} // namespace core
