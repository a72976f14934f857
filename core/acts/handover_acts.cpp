// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

namespace core {

namespace {

using namespace Qt::StringLiterals;

bool give(JobState &job, const Statement &said)
{
    const auto to = PersonId::parse(said.body.text(u"to"));
    if (!to || job.pendingHandover())
        return false;
    job.handovers.push_back({markOf(said), *to, peopleIn(said.body, u"crew"), std::nullopt, said.body.text(u"remarks")});
    return true;
}

bool accept(JobState &job, const Statement &said)
{
    if (!job.pendingHandover())
        return false;
    Handover &handover = job.handovers.back();
    handover.accepted = markOf(said);
    job.lead = handover.to;
    job.crew.insert(handover.to);
    job.crew.insert(handover.crew.begin(), handover.crew.end());
    return true;
}

bool refuse(JobState &job, const Statement &said)
{
    if (!job.pendingHandover())
        return false;
    Handover &handover = job.handovers.back();
    handover.refused = markOf(said);
    handover.refusedBecause = said.body.text(u"reason");
    return true;
}

} // namespace

std::vector<Act> handoverActs()
{
    return {
        {"handover.given"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Nothing, QT_TRANSLATE_NOOP("Act", "Hand over"),
         QT_TRANSLATE_NOOP("Act", "Handed over"),
         {field("to"_L1, FieldType::Person, Needed::Always, QT_TRANSLATE_NOOP("Field", "To the incoming lead"), "person"_L1),
          field("crew"_L1, FieldType::People, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Incoming crew"), "person"_L1),
          field("open"_L1, FieldType::Records, Needed::Always, QT_TRANSLATE_NOOP("Field", "Open and half done")),
          field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"))},
         &give, &noCautions, {}},
        {"handover.accepted"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Nothing, QT_TRANSLATE_NOOP("Act", "Accept the handover"),
         QT_TRANSLATE_NOOP("Act", "Handover accepted"),
         {field("given"_L1, FieldType::Integer, Needed::Always, QT_TRANSLATE_NOOP("Field", "Entry that handed over")),
          field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"))},
         &accept, &noCautions, {}},
        {"handover.refused"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Nothing, QT_TRANSLATE_NOOP("Act", "Refuse the handover"),
         QT_TRANSLATE_NOOP("Act", "Handover refused"),
         {field("given"_L1, FieldType::Integer, Needed::Always, QT_TRANSLATE_NOOP("Field", "Entry that handed over")),
          field("reason"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Why it is refused"))},
         &refuse, &noCautions, {}},
    };
}

} // namespace core
