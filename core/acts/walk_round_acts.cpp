// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

namespace core {

namespace {

using namespace Qt::StringLiterals;

bool confirmFree(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    if (!item || !isOff(*item) || item->stillAttached || isHeldInPlace(*item) || item->actors.contains(said.author))
        return false;
    item->walkedRound = markOf(said);
    return true;
}

bool findAttached(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    if (!item || !isOff(*item))
        return false;
    item->stillAttached = StillAttached{markOf(said), said.body.text(u"what")};
    item->walkedRound.reset();
    return true;
}

bool free(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    if (!item || !isOff(*item) || !item->stillAttached)
        return false;
    item->stillAttached.reset();
    item->walkedRound.reset();
    addActors(*item, said);
    return true;
}

/// Common practice.
QStringList walkRoundCautions()
{
    return {
        QCoreApplication::translate("Act", "Look and feel behind what hides: the last bolt, the lead under the duct, the clamp that nobody listed."),
        QCoreApplication::translate("Act", "Keep hands and head out from under the unit; it may move as soon as the last joint lets go."),
    };
}

} // namespace

/// A second person goes round before the mounts are let go.
std::vector<Act> walkRoundActs()
{
    const Field remarks = field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"));
    return {
        {"walkround.free"_L1, LedgerSort::Job, "confirmed"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Confirm free"), QT_TRANSLATE_NOOP("Act", "Confirmed free"), {remarks}, &confirmFree, &walkRoundCautions, {}},
        {"walkround.attached"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Still attached"), QT_TRANSLATE_NOOP("Act", "Found still attached"),
         {field("what"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "What still holds it"))}, &findAttached, &noCautions, {}},
        {"interface.freed"_L1, LedgerSort::Job, "performed"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Free it"), QT_TRANSLATE_NOOP("Act", "Freed"),
         {field("what"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "What was undone")),
          field("helpers"_L1, FieldType::People, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Helped, supervised or taught by"), "person"_L1), remarks},
         &free, &noCautions, {}},
    };
}

} // namespace core
