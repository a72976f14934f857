// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

#include "core/acts/hold_form.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

/// Set anew, a hold point is one that nobody has passed.
bool set(JobState &job, const Statement &said)
{
    const auto id = HoldId::parse(said.subject.value_or(QString()));
    if (!id)
        return false;
    HoldPoint hold = holdIn(*id, said.body);
    if (HoldPoint *known = job.hold(*id))
        *known = std::move(hold);
    else
        job.holds.push_back(std::move(hold));
    return true;
}

/// That somebody passed it stays a fact; whether it still holds, holds/standing.hpp works out.
bool pass(JobState &job, const Statement &said)
{
    const auto id = HoldId::parse(said.subject.value_or(QString()));
    HoldPoint *hold = id ? job.hold(*id) : nullptr;
    if (!hold)
        return false;
    hold->passed = markOf(said);
    return true;
}

/// Common practice.
QStringList passCautions()
{
    return {
        QCoreApplication::translate("Act", "Go and look at each condition; a hold point is passed at the aircraft, not at the screen."),
        QCoreApplication::translate("Act", "Everybody is told, and clear, before what it was holding back begins."),
        QCoreApplication::translate("Act", "The approved maintenance data and the local rules decide what has to be so, and who may sign for it."),
    };
}

} // namespace

/// Signed gates in the middle of the job.
std::vector<Act> holdActs()
{
    return {
        {"hold.set"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::HoldPoint, QT_TRANSLATE_NOOP("Act", "Set a hold point"), QT_TRANSLATE_NOOP("Act", "Hold point set"),
         {field("title"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Hold point")),
          field("conditions"_L1, FieldType::Records, Needed::Always, QT_TRANSLATE_NOOP("Field", "What has to be so")),
          field("gates"_L1, FieldType::Records, Needed::Always, QT_TRANSLATE_NOOP("Field", "What waits for it")),
          field("statements"_L1, FieldType::Texts, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "What the signer looks at and confirms")),
          choice("authority"_L1, Needed::Always, QT_TRANSLATE_NOOP("Field", "Signed with authority to"), {"work"_L1, "lead"_L1, "inspect"_L1, "release"_L1}),
          field("independent"_L1, FieldType::Flag, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "By somebody who had no hand in it")),
          field("reason"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Why it is set or changed"))},
         &set, &noCautions, {}},
        {"hold.passed"_L1, LedgerSort::Job, "passed"_L1, SubjectSort::HoldPoint, QT_TRANSLATE_NOOP("Act", "Pass the hold point"), QT_TRANSLATE_NOOP("Act", "Hold point passed"),
         {field("confirmed"_L1, FieldType::Statements, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Looked at and confirmed")),
          field("helpers"_L1, FieldType::People, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Also looked at by"), "person"_L1),
          field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"))},
         &pass, &passCautions, {}},
    };
}

} // namespace core
