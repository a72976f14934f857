// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace core {

namespace {

using namespace Qt::StringLiterals;

bool set(JobState &job, const Statement &said)
{
    job.followUps.push_back({markOf(said), said.body.text(u"what"), QDate::fromString(said.body.text(u"due"), Qt::ISODate), InterfaceId::parse(said.body.text(u"interface")), std::nullopt});
    return true;
}

bool finish(JobState &job, const Statement &said)
{
    const qint64 seq = said.body.integer(u"entry").value_or(0);
    const auto at = std::find_if(job.followUps.begin(), job.followUps.end(), [&](const FollowUp &one) { return one.mark.seq == seq && !one.done; });
    if (at == job.followUps.end())
        return false;
    at->done = markOf(said);
    return true;
}

} // namespace

/// What is due after closure, and stands on the record until then.
std::vector<Act> followUpActs()
{
    return {
        {"followup.set"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Nothing, QT_TRANSLATE_NOOP("Act", "Set a follow-up"), QT_TRANSLATE_NOOP("Act", "Follow-up set"),
         {field("what"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "What is due")), field("due"_L1, FieldType::Date, Needed::Always, QT_TRANSLATE_NOOP("Field", "Due on, at most")),
          field("interface"_L1, FieldType::Interface, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "On the interface")),
          field("reference"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Maintenance data reference"))},
         &set, &noCautions, {}},
        {"followup.done"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Nothing, QT_TRANSLATE_NOOP("Act", "Follow-up done"), QT_TRANSLATE_NOOP("Act", "Follow-up done"),
         {field("entry"_L1, FieldType::Integer, Needed::Always, QT_TRANSLATE_NOOP("Field", "Entry that set it")), field("how"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "What was done"))},
         &finish, &noCautions, {}},
    };
}

} // namespace core
