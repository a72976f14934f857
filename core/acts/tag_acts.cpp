// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace core {

namespace {

using namespace Qt::StringLiterals;

bool issue(JobState &job, const Statement &said)
{
    const auto first = said.body.integer(u"first");
    const auto last = said.body.integer(u"last");
    if (!first || !last || *first < 1 || *last < *first)
        return false;
    job.tags.blocks.push_back({*first, *last, markOf(said), std::nullopt});
    return true;
}

bool takeBack(JobState &job, const Statement &said)
{
    const auto first = said.body.integer(u"first");
    const auto last = said.body.integer(u"last");
    auto &blocks = job.tags.blocks;
    const auto at = std::find_if(blocks.begin(), blocks.end(), [&](const TagBlock &one) { return one.first == first && one.last == last; });
    if (at == blocks.end() || at->returned)
        return false;
    at->returned = markOf(said);
    return true;
}

/// The interface goes on under the new number; the old one is never hung again.
bool replace(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    const QString tag = said.body.text(u"tag");
    if (!item || !carriesTag(*item) || tag.isEmpty())
        return false;
    job.tags.lost.push_back({item->removal->tag, item->listed.id, said.body.text(u"why"), tag, markOf(said)});
    item->removal->tag = tag;
    job.tagAt.insert(tag, item->listed.id);
    return true;
}

/// Each of the two hung on the other's interface. Whoever went round read the wrong one.
bool exchange(JobState &job, const Statement &said)
{
    const auto otherId = InterfaceId::parse(said.body.text(u"other"));
    if (!otherId)
        return false;
    InterfaceState *other = job.item(*otherId);
    InterfaceState *item = itemOf(job, said);
    if (!item || !other || item == other || !carriesTag(*item) || !carriesTag(*other))
        return false;
    std::swap(item->removal->tag, other->removal->tag);
    for (InterfaceState *one : {item, other}) {
        job.tagAt.insert(one->removal->tag, one->listed.id);
        one->walkedRound.reset();
    }
    return true;
}

/// Common practice.
QStringList exchangeCautions()
{
    return {QCoreApplication::translate("Act", "Make sure of each interface by what it joins, not by its tag, and that each is as the log says, before the tags change places.")};
}

/// Common practice.
QStringList lostCautions()
{
    return {
        QCoreApplication::translate("Act", "Look for the lost tag first: in the bay, the intake, the outlet and the lines that stood open it is a foreign object."),
        QCoreApplication::translate("Act", "Make sure that the interface is the one that the log says, and as the log says, before the new tag is hung."),
    };
}

} // namespace

/// Tags that are issued to the job in numbered blocks.
std::vector<Act> tagActs()
{
    const Field first = field("first"_L1, FieldType::Integer, Needed::Always, QT_TRANSLATE_NOOP("Field", "First number"));
    const Field last = field("last"_L1, FieldType::Integer, Needed::Always, QT_TRANSLATE_NOOP("Field", "Last number"));
    const Field remarks = field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"));
    return {
        {"tags.issued"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Nothing, QT_TRANSLATE_NOOP("Act", "Issue tags"), QT_TRANSLATE_NOOP("Act", "Tags issued"),
         {first, last, remarks}, &issue, &noCautions, {}},
        {"tags.returned"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Nothing, QT_TRANSLATE_NOOP("Act", "Return tags"), QT_TRANSLATE_NOOP("Act", "Tags returned"),
         {first, last, field("counted"_L1, FieldType::Integer, Needed::Always, QT_TRANSLATE_NOOP("Field", "Tags counted in the hand")), remarks}, &takeBack, &noCautions, {}},
        {"tag.lost"_L1, LedgerSort::Job, "inspected"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Replace a lost tag"), QT_TRANSLATE_NOOP("Act", "Lost tag replaced on"),
         {field("why"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "How it was lost, and where it was looked for")),
          field("tag"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "New tag"))},
         &replace, &lostCautions, {}},
        {"tag.exchanged"_L1, LedgerSort::Job, "inspected"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Exchange two tags"), QT_TRANSLATE_NOOP("Act", "Tags exchanged on"),
         {field("other"_L1, FieldType::Interface, Needed::Always, QT_TRANSLATE_NOOP("Field", "With the tag on")),
          field("reason"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "How it was found, and how each was made sure of"))},
         &exchange, &exchangeCautions, {}},
    };
}

} // namespace core
