// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

namespace core {

namespace {

using namespace Qt::StringLiterals;

Accessory *accessoryOf(JobState &job, const Statement &said)
{
    const auto id = AccessoryId::parse(said.subject.value_or(QString()));
    return id ? job.accessory(*id) : nullptr;
}

bool list(JobState &job, const Statement &said)
{
    const auto id = AccessoryId::parse(said.subject.value_or(QString()));
    if (!id || job.accessory(*id))
        return false;
    Accessory accessory{*id, markOf(said), said.body.text(u"name"), said.body.text(u"part"), said.body.text(u"serial"), {}, std::nullopt, std::nullopt, {}, {}};
    for (const QString &text : said.body.texts(u"interfaces")) {
        if (const auto item = InterfaceId::parse(text))
            accessory.interfaces.push_back(*item);
    }
    job.accessories.push_back(std::move(accessory));
    return true;
}

bool move(JobState &job, const Statement &said)
{
    Accessory *accessory = accessoryOf(job, said);
    if (!accessory || isPlaced(job, *accessory))
        return false;
    accessory->moved = markOf(said);
    return true;
}

bool leave(JobState &job, const Statement &said)
{
    Accessory *accessory = accessoryOf(job, said);
    if (!accessory || isPlaced(job, *accessory))
        return false;
    accessory->left = markOf(said);
    accessory->leftBecause = said.body.text(u"reason");
    accessory->replacement = said.body.text(u"replacement");
    return true;
}

} // namespace

/// Parts that move from the outgoing unit to the incoming one.
std::vector<Act> accessoryActs()
{
    const Field serial = field("serial"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Serial number, as on its plate"), "serial"_L1);
    const Field helpers = field("helpers"_L1, FieldType::People, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Helped, supervised or taught by"), "person"_L1);
    const Field remarks = field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"));
    return {
        {"accessory.listed"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::NewAccessory, QT_TRANSLATE_NOOP("Act", "List an accessory"), QT_TRANSLATE_NOOP("Act", "Accessory listed"),
         {field("name"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Name")), field("part"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Part number"), "part"_L1), serial,
          field("interfaces"_L1, FieldType::Interfaces, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Its interfaces")), remarks},
         &list, &noCautions, {}},
        {"accessory.moved"_L1, LedgerSort::Job, "performed"_L1, SubjectSort::Accessory, QT_TRANSLATE_NOOP("Act", "Moved to the incoming unit"), QT_TRANSLATE_NOOP("Act", "Accessory moved to the incoming unit"),
         {serial, helpers, remarks}, &move, &noCautions, {}},
        {"accessory.left"_L1, LedgerSort::Job, "performed"_L1, SubjectSort::Accessory, QT_TRANSLATE_NOOP("Act", "Leaves with the outgoing unit"), QT_TRANSLATE_NOOP("Act", "Accessory leaves with the outgoing unit"),
         {serial, field("reason"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "Why it does not move")),
          field("replacement"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Serial number of what is on the incoming unit instead"), "serial"_L1),
          field("certificate"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Its release certificate"), "certificate"_L1), helpers, remarks},
         &leave, &noCautions, {}},
    };
}

} // namespace core
