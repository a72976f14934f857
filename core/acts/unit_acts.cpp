// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

namespace core {

namespace {

using namespace Qt::StringLiterals;

bool takeOff(JobState &job, const Statement &said)
{
    if (job.unit.off)
        return false;
    const json::Object &body = said.body;
    job.unitOffStruck.reset();
    job.unit.off = UnitOff{markOf(said), body.text(u"serial"), body.text(u"stand"), body.integer(u"openings_blanked").value_or(0), body.text(u"tag"), body.texts(u"stays_on")};
    return true;
}

bool receive(JobState &job, const Statement &said)
{
    if (job.unit.in)
        return false;
    const json::Object &body = said.body;
    job.unit.in = UnitIn{markOf(said), body.text(u"serial"), body.text(u"certificate"), body.integer(u"shipping_blanks").value_or(0), body.text(u"configuration")};
    return true;
}

bool position(JobState &job, const Statement &said)
{
    const QString serial = said.body.text(u"serial");
    if (job.unit.up || !job.unit.off || (!job.unit.in && !job.reversed) || serial != serialToPutUp(job))
        return false;
    job.unit.up = UnitUp{markOf(said), serial, said.body.integer(u"shipping_blanks_removed").value_or(0)};
    return true;
}

/// Common practice.
QStringList movingCautions()
{
    return {
        QCoreApplication::translate("Act", "Nobody stands, walks or reaches under the unit, and one person alone gives the signals."),
        QCoreApplication::translate("Act", "Stop after the first inches, and look all round: level, free, and nothing that catches."),
        QCoreApplication::translate("Act", "The approved maintenance data, the hoist's own instructions and the local rules decide, and people who are trained for it lift."),
    };
}

} // namespace

/// The unit itself: off, received, in its place.
std::vector<Act> unitActs()
{
    const Field serial = field("serial"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Serial number, as on its plate"), "serial"_L1);
    const Field helpers = field("helpers"_L1, FieldType::People, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Helped, supervised or taught by"), "person"_L1);
    const Field remarks = field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"));
    return {
        {"unit.removed"_L1, LedgerSort::Job, "performed"_L1, SubjectSort::Nothing, QT_TRANSLATE_NOOP("Act", "Unit is off"), QT_TRANSLATE_NOOP("Act", "Outgoing unit taken off"),
         {serial, field("openings_blanked"_L1, FieldType::Integer, Needed::Always, QT_TRANSLATE_NOOP("Field", "Openings blanked on it")),
          field("tag"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Tag that says unserviceable")),
          field("stand"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Put on stand")),
          field("stays_on"_L1, FieldType::Texts, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "What leaves with it")), helpers, remarks},
         &takeOff, &movingCautions, {}},
        {"unit.received"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Nothing, QT_TRANSLATE_NOOP("Act", "Receive the unit"), QT_TRANSLATE_NOOP("Act", "Incoming unit received"),
         {serial, field("certificate"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Release certificate"), "certificate"_L1),
          field("shipping_blanks"_L1, FieldType::Integer, Needed::Always, QT_TRANSLATE_NOOP("Field", "Shipping blanks counted on it")),
          field("configuration"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Modification state, against the outgoing unit")), remarks},
         &receive, &noCautions, {}},
        {"unit.positioned"_L1, LedgerSort::Job, "performed"_L1, SubjectSort::Nothing, QT_TRANSLATE_NOOP("Act", "Unit is in place"), QT_TRANSLATE_NOOP("Act", "Incoming unit in its place"),
         {serial, field("shipping_blanks_removed"_L1, FieldType::Integer, Needed::Always, QT_TRANSLATE_NOOP("Field", "Shipping blanks removed")), helpers, remarks},
         &position, &movingCautions, {}},
    };
}

} // namespace core
