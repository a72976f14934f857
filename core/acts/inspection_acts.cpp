// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

#include "core/acts/reopen.hpp"
#include "core/job/stage.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

bool accept(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    if (!item || !item->restoration || !isReadyToAccept(job, *item) || item->actors.contains(said.author))
        return false;
    item->acceptances.push_back(markOf(said));
    item->rejection.reset();
    return true;
}

bool reject(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    if (!item || !item->restoration)
        return false;
    item->rejection = Rejection{markOf(said), said.body.text(u"reason")};
    voidWhatWasShown(*item);
    if (said.body.text(u"back_to") == u"disconnected") {
        // As it was found stays true; no tag hangs on it and no blank is in it until somebody undoes it and says so. What was on comes off again.
        item->removal = Removal{markOf(said), item->removal->asFound, {}, 0, item->removal->foundOpen, hardwareOn(item->restoration->hardware)};
        item->restoration.reset();
        dropWhatGoesWithUndoing(*item);
    }
    reopenWhatRestsOn(job, *item);
    return true;
}

} // namespace

std::vector<Act> inspectionActs()
{
    return {
        {"inspection.accepted"_L1, LedgerSort::Job, "inspected"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Accept"),
         QT_TRANSLATE_NOOP("Act", "Inspected and accepted"),
         {field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"))}, &accept, &noCautions, {}},
        {"inspection.rejected"_L1, LedgerSort::Job, "inspected"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Reject"),
         QT_TRANSLATE_NOOP("Act", "Inspected and rejected"),
         {field("reason"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Reason")),
          choice("back_to"_L1, Needed::Always, QT_TRANSLATE_NOOP("Field", "Back to"), {"reconnected"_L1, "disconnected"_L1})},
         &reject, &noCautions, {}},
    };
}

} // namespace core
