// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

namespace core {

namespace {

using namespace Qt::StringLiterals;

bool confirmUndisturbed(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    if (!item || item->removal)
        return false;
    item->undisturbed = markOf(said);
    forgetTheUndoing(item->left);
    return true;
}

bool sayNotApplicable(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    if (!item || item->removal || item->notApplicable)
        return false;
    item->notApplicable = NotApplicable{markOf(said), said.body.text(u"reason"), std::nullopt};
    return true;
}

bool agree(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    if (!item || !item->notApplicable || item->notApplicable->agreed || item->notApplicable->mark.by == said.author)
        return false;
    item->notApplicable->agreed = markOf(said);
    return true;
}

} // namespace

/// What is on the list and was never touched, or is not there.
std::vector<Act> untouchedActs()
{
    const Field remarks = field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"));
    return {
        {"interface.undisturbed"_L1, LedgerSort::Job, "seen"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Confirm undisturbed"), QT_TRANSLATE_NOOP("Act", "Confirmed undisturbed"),
         {field("seen"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "What was looked at")), remarks}, &confirmUndisturbed, &noCautions, {}},
        {"interface.not_applicable"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Not applicable"), QT_TRANSLATE_NOOP("Act", "Not applicable"),
         {field("reason"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Reason"))}, &sayNotApplicable, &noCautions, {}},
        {"interface.not_applicable_agreed"_L1, LedgerSort::Job, "seen"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Agree: not applicable"), QT_TRANSLATE_NOOP("Act", "Agreed: not applicable"),
         {remarks}, &agree, &noCautions, {}},
    };
}

} // namespace core
