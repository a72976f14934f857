// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

#include "core/job/twins.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

bool verify(JobState &job, const Statement &said)
{
    const InterfaceState *item = itemOf(job, said);
    if (!item || !asksForTwinCheck(job, *item) || twinThatIsOff(job, *item))
        return false;
    const std::vector<const InterfaceState *> twins = twinsOf(job, *item);
    std::vector<InterfaceId> ids;
    for (const InterfaceState *twin : twins) {
        if (hadAHandInJoining(*twin, said.author))
            return false;
        ids.push_back(twin->listed.id);
    }
    for (const InterfaceId &id : ids)
        job.item(id)->twinsVerified = markOf(said);
    return true;
}

} // namespace

/// Look-alikes that could be crossed, read against each other.
std::vector<Act> twinActs()
{
    return {{"twins.verified"_L1, LedgerSort::Job, "seen"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Verify the twins"), QT_TRANSLATE_NOOP("Act", "Twins verified"),
             {field("aircraft_halves"_L1, FieldType::Texts, Needed::Always, QT_TRANSLATE_NOOP("Field", "Halves on the aircraft, of the whole group")),
              field("unit_halves"_L1, FieldType::Texts, Needed::Always, QT_TRANSLATE_NOOP("Field", "What each is joined to, in the same order")),
              field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"))},
             &verify, &noCautions, {}}};
}

} // namespace core
