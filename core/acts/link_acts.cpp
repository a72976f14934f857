// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

#include "core/acts/listing.hpp"
#include "core/acts/reopen.hpp"
#include "core/acts/taken_on.hpp"
#include "core/job/linked.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

bool link(JobState &job, const Statement &said)
{
    const auto ledger = LedgerId::parse(said.body.text(u"ledger"));
    if (!ledger || isLinkedWith(job, *ledger))
        return false;
    job.links.push_back({*ledger, said.body.text(u"work_order"), markOf(said)});
    return true;
}

bool send(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    const auto to = LedgerId::parse(said.body.text(u"to"));
    if (!item || item->sent || item->restoration || !to || !isLinkedWith(job, *to))
        return false;
    item->sent = Sent{*to, markOf(said)};
    job.index.noteSent(static_cast<std::size_t>(job.itemAt.value(item->listed.id)));
    return true;
}

/// Whoever takes it on had no hand in it by that: who undid it is asked of the job that it came from.
bool takeOn(JobState &job, const Statement &said)
{
    const auto id = InterfaceId::parse(said.subject.value_or(QString()));
    const auto from = LedgerId::parse(said.body.text(u"from"));
    if (!id || job.item(*id) || !from || !isLinkedWith(job, *from))
        return false;
    InterfaceState item{.listed = listingIn(*id, said.body), .listedBy = markOf(said), .removal = {}, .restoration = {}, .torque = {}, .bonding = {}, .safetying = {}, .leak = {},
                        .acceptances = {}, .rejection = {}, .disturbed = {}, .actors = {}, .torqueTakenOverBy = {}, .photos = {}, .walkedRound = {}, .stillAttached = {}};
    item.takenOn = TakenOn{*from, markOf(said)};
    const bool isOff = said.body.text(u"comes") == comesOff;
    if (isOff)
        item.removal = Removal{markOf(said), said.body.text(u"as_found"), tagOnIt(said.body), said.body.integer(u"blanks_fitted").value_or(0), false, hardwareRemovedIn(said.body), said.body.integer(u"unit_blanks_fitted").value_or(0), {}};
    job.itemAt.insert(*id, static_cast<qsizetype>(job.items.size()));
    job.items.push_back(std::move(item));
    noteRow(job, nullptr, job.item(*id)->listed);
    takeUpWhatWasLeft(job, *id);
    if (isOff && !tagOnIt(said.body).isEmpty())
        job.tagAt.insert(tagOnIt(said.body), *id);
    return true;
}

std::vector<Field> takenOnFields()
{
    const auto known = Needed::IfKnown;
    std::vector<Field> fields = {
        field("from"_L1, FieldType::Job, Needed::Always, QT_TRANSLATE_NOOP("Field", "From the job")),
        choice("comes"_L1, Needed::Always, QT_TRANSLATE_NOOP("Field", "How it comes"), {comesOff, comesUntouched}),
    };
    for (Field &one : listingFields())
        fields.push_back(std::move(one));
    fields.push_back(field("tag"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Tag that it comes with")));
    fields.push_back(field("tag_instead"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Tag of this job, hung instead")));
    fields.push_back(blanksFittedField(known));
    fields.push_back(unitBlanksFittedField());
    fields.push_back(asFoundField(known));
    fields.push_back(hardwareRemovedField());
    fields.push_back(field("remarks"_L1, FieldType::Text, known, QT_TRANSLATE_NOOP("Field", "Remarks")));
    return fields;
}

/// Common practice.
QStringList takeOnCautions()
{
    return {
        QCoreApplication::translate("Act", "Look at the item itself, at its tag, its blanks and its hardware, before you take it on: what the other job's record says is what you answer for from now on."),
    };
}

} // namespace

QString tagOnIt(const json::Object &body)
{
    const QString instead = body.text(u"tag_instead");
    return instead.isEmpty() ? body.text(u"tag") : instead;
}

std::vector<Act> linkActs()
{
    return {
        {"job.linked"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Nothing, QT_TRANSLATE_NOOP("Act", "Link with another job"), QT_TRANSLATE_NOOP("Act", "Linked with another job"),
         {field("ledger"_L1, FieldType::Job, Needed::Always, QT_TRANSLATE_NOOP("Field", "Job")),
          field("work_order"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Its work order")),
          field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"))},
         &link, &noCautions, {}},
        {"interface.sent"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Send to a linked job"), QT_TRANSLATE_NOOP("Act", "Sent to a linked job"),
         {field("to"_L1, FieldType::Job, Needed::Always, QT_TRANSLATE_NOOP("Field", "To the job")),
          field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"))},
         &send, &noCautions, {}},
        {"interface.taken_on"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::NewInterface, QT_TRANSLATE_NOOP("Act", "Take on from a linked job"), QT_TRANSLATE_NOOP("Act", "Taken on from a linked job"),
         takenOnFields(), &takeOn, &takeOnCautions, {}},
    };
}

} // namespace core
