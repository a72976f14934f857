// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/balance.hpp"

#include "core/requirements/catalogue.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString technician() { return inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")); }

bool isAboutOneThatIsOff(const Case &c) { return c.item && core::isOff(*c.item); }

} // namespace

std::optional<Refusal> tagIsNew(const Case &c)
{
    const QString tag = c.text(u"tag");
    if (!tag.isEmpty() && !isIdText(tag))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" cannot be what is on a tag: plain characters that everybody sees, no blanks at either end. Two tags that look alike are one.")).arg(tag), technician());
    const auto at = c.job.tagAt.constFind(tag);
    if (at == c.job.tagAt.constEnd())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Tag %1 was hung on %2 already. Use another tag.")).arg(tag, at->text()), technician());
}

std::optional<Refusal> tagIsRecovered(const Case &c)
{
    if (!isAboutOneThatIsOff(c) || c.text(u"tag_recovered") == c.item->removal->tag)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 carries tag \"%2\", and \"%3\" is said to be recovered. Make sure that you are at the right interface."))
                          .arg(c.itemName(), c.item->removal->tag, c.text(u"tag_recovered")), technician());
}

std::optional<Refusal> halvesBelongTogether(const Case &c)
{
    if (!isAboutOneThatIsOff(c) || !asksFor(c.item->listed, "mate"_L1))
        return std::nullopt;
    const Listing &listed = c.item->listed;
    if (c.text(u"aircraft_half") == listed.aircraftHalf && c.text(u"unit_half") == listed.unitHalf)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 joins %2 to %3; read were \"%4\" and \"%5\". Do not join them."))
                          .arg(c.itemName(), listed.aircraftHalf, listed.unitHalf, c.text(u"aircraft_half"), c.text(u"unit_half")), technician());
}

std::optional<Refusal> sealIsNew(const Case &c)
{
    if (!isAboutOneThatIsOff(c) || !asksFor(c.item->listed, "seal"_L1))
        return std::nullopt;
    if (c.text(u"seal_part") == c.item->listed.sealPart && !c.text(u"seal_batch").isEmpty())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 needs a new seal %2; give its part number and batch.")).arg(c.itemName(), c.item->listed.sealPart), technician());
}

const Rule tagUnique{"balance.tag-unique"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A tag points at one open interface, for the whole job."), &tagIsNew};
const Rule tagRecovered{"balance.tag-recovered"_L1, QT_TRANSLATE_NOOP("RuleWhy", "The tag in the hand proves which interface was closed."), &tagIsRecovered};
const Rule mate{"balance.mate"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Look-alike halves join as easily as the right ones."), &halvesBelongTogether};
const Rule sealNew{"balance.seal"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A disturbed seal is renewed, by part number and batch, so that a bad batch can be found again."), &sealIsNew};

} // namespace core::rules
