// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/accessories.hpp"

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/job/linked.hpp"
#include "core/job/stage.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString technician() { return inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")); }

const Accessory *accessoryOf(const Case &c)
{
    const auto id = AccessoryId::parse(c.draft.subject.value_or(QString()));
    return id ? c.job.accessory(*id) : nullptr;
}

/// Whose serial number that is already, or an empty text.
QString ownerOf(const Case &c, const QString &serial)
{
    if (serial == c.job.facts.outgoingSerial)
        return inWords(QT_TRANSLATE_NOOP("Rule", "the outgoing unit"));
    if (serial == c.job.facts.incomingSerial)
        return inWords(QT_TRANSLATE_NOOP("Rule", "the incoming unit"));
    for (const Accessory &one : c.job.accessories) {
        if (one.serial == serial || (!one.replacement.isEmpty() && one.replacement == serial))
            return one.name;
    }
    return {};
}

} // namespace

std::optional<Refusal> accessoryIsNew(const Case &c)
{
    if (const Accessory *known = accessoryOf(c))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The job has an accessory \"%1\" already: %2.")).arg(known->id.text(), known->name), technician());
    if (const QString owner = ownerOf(c, c.text(u"serial")); !owner.isEmpty())
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The serial number %1 is that of %2. Read the plate again.")).arg(c.text(u"serial"), owner), technician());
    for (const QString &text : c.draft.body.texts(u"interfaces")) {
        const auto id = InterfaceId::parse(text);
        if (!id || !c.job.item(*id))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The list has no interface \"%1\".")).arg(text), technician());
    }
    return std::nullopt;
}

std::optional<Refusal> accessoryIsToBePlaced(const Case &c)
{
    const Accessory *accessory = accessoryOf(c);
    if (!accessory)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The job lists no accessory \"%1\".")).arg(c.draft.subject.value_or(QString())), technician());
    if (!isPlaced(c.job, *accessory) || (!accessory->moved && !accessory->left))
        return std::nullopt;
    const Mark &mark = accessory->left ? *accessory->left : *accessory->moved;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Where %1 went was said by %2 in entry %3. If it was wrong, strike that.")).arg(accessory->name, c.reg.nameOf(mark.by)).arg(mark.seq), technician());
}

std::optional<Refusal> accessorySerialIsRead(const Case &c)
{
    const Accessory *accessory = accessoryOf(c);
    if (!accessory || c.text(u"serial") == accessory->serial)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was listed with the serial number %2; the plate is said to read %3. Read it again: it may be another one.")).arg(accessory->name, accessory->serial, c.text(u"serial")), technician());
}

std::optional<Refusal> accessoryCanMove(const Case &c)
{
    const Accessory *accessory = accessoryOf(c);
    if (!accessory)
        return std::nullopt;
    if (!c.job.unit.in && !c.job.reversed)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 moves to the incoming unit, which has not been received yet.")).arg(accessory->name), technician());
    for (const InterfaceId &id : accessory->interfaces) {
        const InterfaceState *item = c.job.item(id);
        if (item && stageOf(asItIsNow(c.job, *item)) == Stage::Connected)
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 cannot have moved: %2 (%3), by which it is joined, was never undone.")).arg(accessory->name, id.text(), item->listed.name), technician());
    }
    return std::nullopt;
}

std::optional<Refusal> replacementIsSound(const Case &c)
{
    const QString replacement = c.text(u"replacement");
    if (replacement.isEmpty())
        return std::nullopt;
    if (const QString owner = ownerOf(c, replacement); !owner.isEmpty())
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The serial number %1 is that of %2: each is in one place. Read the plate again.")).arg(replacement, owner), technician());
    if (!c.text(u"certificate").isEmpty())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "What is fitted instead comes with a release certificate: name it.")), technician());
}

const Rule accessoryNew{"accessory.new"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A number that two parts have is the number of neither."), &accessoryIsNew};
const Rule accessoryOpen{"accessory.open"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A part is in one place."), &accessoryIsToBePlaced};
const Rule accessorySerial{"accessory.serial"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Old and new lie on one table, and look alike."), &accessorySerialIsRead};
const Rule accessoryFree{"accessory.free"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A part that moves was taken off first."), &accessoryCanMove};
const Rule accessoryReplacement{"accessory.replacement"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What nobody released does not fly."), &replacementIsSound};

} // namespace core::rules
