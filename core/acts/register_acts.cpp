// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

#include "core/register/register.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

std::vector<QLatin1String> authorityChoices()
{
    return {"administer"_L1, "work"_L1, "lead"_L1, "inspect"_L1, "overrule"_L1, "release"_L1};
}

Act registerAct(QLatin1String kind, SubjectSort subject, const char *verb, const char *done, std::vector<Field> fields,
                const std::vector<FromTable> &tables = {})
{
    return {kind, LedgerSort::Register, "recorded"_L1, subject, verb, done, std::move(fields), nullptr, &noCautions, tables};
}

} // namespace

std::vector<Act> registerActs()
{
    const Field name = field("name"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Name"));
    const Field key = field("public_key"_L1, FieldType::PublicKey, Needed::Always, QT_TRANSLATE_NOOP("Field", "Public key"));
    const Field reason = field("reason"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Reason"));
    return {
        registerAct("register.founded"_L1, SubjectSort::NewPerson, QT_TRANSLATE_NOOP("Act", "Found the register"),
                    QT_TRANSLATE_NOOP("Act", "Register founded"),
                    {name, key, field("organisation"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Organisation"))}),
        registerAct("person.enrolled"_L1, SubjectSort::NewPerson, QT_TRANSLATE_NOOP("Act", "Enrol a person"),
                    QT_TRANSLATE_NOOP("Act", "Person enrolled"),
                    {name, key,
                     field("identity"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "How the identity was proved"))}),
        registerAct("key.replaced"_L1, SubjectSort::Person, QT_TRANSLATE_NOOP("Act", "Replace the key"),
                    QT_TRANSLATE_NOOP("Act", "Key replaced"),
                    {key, reason, field("since"_L1, FieldType::Moment, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Signatures in doubt since"))}),
        registerAct("key.stopped"_L1, SubjectSort::Person, QT_TRANSLATE_NOOP("Act", "Stop the key"), QT_TRANSLATE_NOOP("Act", "Key stopped"),
                    {field("since"_L1, FieldType::Moment, Needed::Always, QT_TRANSLATE_NOOP("Field", "Signatures in doubt since")), reason}),
        registerAct("authorisation.granted"_L1, SubjectSort::NewAuthorisation, QT_TRANSLATE_NOOP("Act", "Grant an authorisation"),
                    QT_TRANSLATE_NOOP("Act", "Authorisation granted"),
                    {field("person"_L1, FieldType::Person, Needed::Always, QT_TRANSLATE_NOOP("Field", "Person"), "person"_L1),
                     choice("authority"_L1, Needed::Always, QT_TRANSLATE_NOOP("Field", "Authority"), authorityChoices()),
                     field("kinds"_L1, FieldType::Texts, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Kinds of interface")),
                     field("aircraft_types"_L1, FieldType::Texts, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Aircraft types")),
                     field("from"_L1, FieldType::Date, Needed::Always, QT_TRANSLATE_NOOP("Field", "First day")),
                     field("until"_L1, FieldType::Date, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Last day")),
                     field("reference"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Approval reference"))}),
        registerAct("authorisation.withdrawn"_L1, SubjectSort::Authorisation, QT_TRANSLATE_NOOP("Act", "Withdraw the authorisation"),
                    QT_TRANSLATE_NOOP("Act", "Authorisation withdrawn"), {reason}),
        registerAct("tool.registered"_L1, SubjectSort::NewTool, QT_TRANSLATE_NOOP("Act", "Register a tool"),
                    QT_TRANSLATE_NOOP("Act", "Tool registered"),
                    {name, field("range_min"_L1, FieldType::Decimal, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Usable from")),
                     field("range_max"_L1, FieldType::Decimal, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Usable to")),
                     field("graduation"_L1, FieldType::Decimal, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Graduation")),
                     field("unit"_L1, FieldType::Unit, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Unit")),
                     field("deviation"_L1, FieldType::Decimal, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Permissible deviation, % of the reading")),
                     field("deviation_source"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Standard and class of the deviation")),
                     quantity("length"_L1, Dimension::Length, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Wrench length, grip to drive")),
                     choice("torque_type"_L1, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Torque tool"), {"indicating"_L1, "setting"_L1})},
                    {{"deviation"_L1, "torque_tool_deviation"_L1}}),
        registerAct("tool.calibrated"_L1, SubjectSort::Tool, QT_TRANSLATE_NOOP("Act", "Record a calibration"),
                    QT_TRANSLATE_NOOP("Act", "Tool calibrated"),
                    {field("on"_L1, FieldType::Date, Needed::Always, QT_TRANSLATE_NOOP("Field", "Calibrated on")),
                     field("due"_L1, FieldType::Date, Needed::Always, QT_TRANSLATE_NOOP("Field", "Calibration due")),
                     field("certificate"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Certificate"), "certificate"_L1),
                     field("deviation"_L1, FieldType::Decimal, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Deviation on the certificate, % of the reading"))}),
        registerAct("tool.doubted"_L1, SubjectSort::Tool, QT_TRANSLATE_NOOP("Act", "Found out of tolerance"), QT_TRANSLATE_NOOP("Act", "Tool found out of tolerance"),
                    {field("after"_L1, FieldType::Date, Needed::Always, QT_TRANSLATE_NOOP("Field", "Last day on which it was known to be right")),
                     field("found"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "What was found")),
                     field("certificate"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Certificate"), "certificate"_L1)}),
        registerAct("tool.withdrawn"_L1, SubjectSort::Tool, QT_TRANSLATE_NOOP("Act", "Withdraw the tool"),
                    QT_TRANSLATE_NOOP("Act", "Tool withdrawn"), {reason}),
    };
}

} // namespace core
