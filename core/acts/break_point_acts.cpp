// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

namespace core {

namespace {

using namespace Qt::StringLiterals;

bool stop(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    if (!item)
        return false;
    item->stopped = BreakPoint{markOf(said), said.body.text(u"word"), said.body.integer(u"fastener"), said.body.integer(u"pass")};
    return true;
}

bool resume(JobState &job, const Statement &said)
{
    InterfaceState *item = itemOf(job, said);
    if (!item || !item->stopped)
        return false;
    item->stopped->seenBy.insert(said.author);
    return true;
}

} // namespace

/// Where somebody stopped in the middle of an interface, and who took it up.
/// Source: work that was interrupted is carried on from a known point: common practice.
std::vector<Act> breakPointActs()
{
    return {
        {"work.stopped"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Stop here"), QT_TRANSLATE_NOOP("Act", "Stopped"),
         {field("word"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Where the work stands")),
          field("fastener"_L1, FieldType::Integer, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Next fastener")),
          field("pass"_L1, FieldType::Integer, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Pass"))},
         &stop, &noCautions, {}},
        {"work.resumed"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Take it up"), QT_TRANSLATE_NOOP("Act", "Taken up"),
         {field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"))}, &resume, &noCautions, {}},
    };
}

} // namespace core
