// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

#include "core/acts/listing.hpp"
#include "core/job/leak_reading.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

/// What the rule job.leak-classes would have refused leaves the scheme's name alone.
measure::LeakScheme schemeIn(const json::Object &body) { return leakSchemeIn(body).value_or(measure::LeakScheme{body.text(u"leak_scheme"), {}, std::nullopt, {}}); }

bool open(JobState &job, const Statement &said)
{
    const json::Object &body = said.body;
    job.ledger = said.ledger;
    job.opened = markOf(said);
    job.facts = {.title = body.text(u"title"),
                 .workOrder = body.text(u"work_order"),
                 .aircraft = body.text(u"aircraft"),
                 .aircraftType = body.text(u"aircraft_type"),
                 .maintenanceData = body.text(u"maintenance_data"),
                 .revision = body.text(u"revision"),
                 .unit = body.text(u"unit"),
                 .outgoingSerial = body.text(u"outgoing_serial"),
                 .incomingSerial = body.text(u"incoming_serial"),
                 .follows = body.text(u"follows"),
                 .zones = zonesIn(body),
                 .acceptsGuarded = body.text(u"acceptance") == u"guarded",
                 .maySkipFasteners = body.text(u"torque_skips") == u"asked",
                 .mayReinspect = body.text(u"reinspection") == u"allowed",
                 .reinspectionPause = body.integer(u"reinspection_pause").value_or(0),
                 .leakScheme = schemeIn(body)};
    job.lead = PersonId::parse(body.text(u"lead"));
    for (const PersonId &member : peopleIn(body, u"crew"))
        job.crew.insert(member);
    return true;
}

bool close(JobState &job, const Statement &said)
{
    job.closed = markOf(said);
    return true;
}

/// Striking is taken by the fold itself, since it changes which entries count.
bool strike(JobState &, const Statement &) { return true; }

/// Common practice: what was done is not undone on paper.
QStringList strikeCautions()
{
    return {QCoreApplication::translate("Act", "Whose hands were there, and what was counted, stays. A name or a number that was mistyped goes first to somebody with authority to overrule, who strikes it as never so (More details).")};
}

/// The same unit is refitted: what was undone still has to be restored and inspected, item by item.
bool reverse(JobState &job, const Statement &said)
{
    if (job.reversed)
        return false;
    job.reversed = markOf(said);
    return true;
}

} // namespace

std::vector<Act> jobActs()
{
    return {
        {"job.opened"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Nothing, QT_TRANSLATE_NOOP("Act", "Open the job"),
         QT_TRANSLATE_NOOP("Act", "Job opened"),
         {field("title"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Title")),
          field("work_order"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Work order")),
          field("aircraft"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Aircraft")),
          field("aircraft_type"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Aircraft type")),
          field("maintenance_data"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Maintenance data")),
          field("revision"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Revision")),
          field("unit"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Unit")),
          field("outgoing_serial"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Outgoing serial number"), "serial"_L1),
          field("incoming_serial"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Incoming serial number"), "serial"_L1),
          field("lead"_L1, FieldType::Person, Needed::Always, QT_TRANSLATE_NOOP("Field", "Lead"), "person"_L1),
          field("crew"_L1, FieldType::People, Needed::Always, QT_TRANSLATE_NOOP("Field", "Crew"), "person"_L1),
          field("zones"_L1, FieldType::Records, Needed::Always, QT_TRANSLATE_NOOP("Field", "Zones")),
          field("follows"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Follows the closed job")),
          choice("acceptance"_L1, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Readings near an edge"), {"simple"_L1, "guarded"_L1}),
          choice("torque_skips"_L1, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Fasteners out of their order"), {"refused"_L1, "asked"_L1}),
          choice("reinspection"_L1, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Inspecting one's own work again, where nobody else is there"), {"refused"_L1, "allowed"_L1}),
          field("reinspection_pause"_L1, FieldType::Integer, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Minutes between the work and that")),
          field("leak_scheme"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Scheme of leak classes")),
          field("leak_classes"_L1, FieldType::Texts, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Its classes, the least leak first")),
          field("leak_up_to"_L1, FieldType::Texts, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Greatest size of each class but the last")),
          field("leak_minutes"_L1, FieldType::Integer, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Looked at, minutes after wiping dry"))},
         &open, &noCautions, {}},
        {"entry.struck"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Nothing, QT_TRANSLATE_NOOP("Act", "Strike"),
         QT_TRANSLATE_NOOP("Act", "Struck an entry"),
         {field("entry"_L1, FieldType::Integer, Needed::Always, QT_TRANSLATE_NOOP("Field", "Entry number")),
          field("reason"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Reason")),
          field("never_was"_L1, FieldType::Flag, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Nothing of it was so"))},
         &strike, &strikeCautions, {}},
        {"job.reversed"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Nothing, QT_TRANSLATE_NOOP("Act", "Give the change up"),
         QT_TRANSLATE_NOOP("Act", "Change given up, the outgoing unit goes back on"),
         {field("reason"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Why the change is given up"))},
         &reverse, &noCautions, {}},
        {"job.closed"_L1, LedgerSort::Job, "released"_L1, SubjectSort::Nothing, QT_TRANSLATE_NOOP("Act", "Close the job"),
         QT_TRANSLATE_NOOP("Act", "Job closed"),
         {field("statement"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Release statement")),
          field("limitation"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Limitation, where findings are deferred")),
          field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"))},
         &close, &noCautions, {}},
    };
}

} // namespace core
