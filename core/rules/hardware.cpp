// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/hardware.hpp"

#include <algorithm>

#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString technician() { return inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")); }
QString lister() { return inWords(QT_TRANSLATE_NOOP("Rule", "whoever makes the list")); }

bool isAboutOneThatIsOff(const Case &c) { return c.item && core::isOff(*c.item); }

std::vector<HardwareBalance> balanceOf(const Case &c)
{
    return hardwareBalance(c.item->listed.hardware, c.item->removal->hardware, hardwareUsesIn(c.draft.body));
}

/// The first part of an open interface of which this is so, or nothing. Without lines at all, another rule speaks.
template <class Predicate>
std::optional<HardwareBalance> firstOf(const Case &c, Predicate isSo)
{
    if (!isAboutOneThatIsOff(c) || hardwareUsesIn(c.draft.body).empty())
        return std::nullopt;
    const std::vector<HardwareBalance> all = balanceOf(c);
    const auto at = std::find_if(all.begin(), all.end(), isSo);
    return at == all.end() ? std::nullopt : std::optional(*at);
}

bool isTooMany(qint64 number) { return number > mostOfOnePart; }

bool isReusedBeyondRemoved(const HardwareBalance &one) { return one.reused > one.removed; }

} // namespace

std::optional<Refusal> listedHardwareIsSound(const Case &c)
{
    const std::vector<HardwareLine> lines = hardwareLinesIn(c.draft.body);
    for (auto line = lines.begin(); line != lines.end(); ++line) {
        if (std::any_of(lines.begin(), line, [&](const HardwareLine &other) { return other.part == line->part; }))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The part %1 stands twice among the hardware. List it once, with its whole number.")).arg(line->part), lister());
        if (line->quantity < 1 || isTooMany(line->quantity))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Of %1 the list asks for %2. It asks for 1 to %3 of a part.")).arg(line->part).arg(line->quantity).arg(mostOfOnePart), lister());
    }
    return std::nullopt;
}

std::optional<Refusal> removedHardwareIsCounted(const Case &c)
{
    const std::vector<core::HardwareRemoved> lines = hardwareRemovedIn(c.draft.body);
    for (auto line = lines.begin(); line != lines.end(); ++line) {
        if (std::any_of(lines.begin(), line, [&](const core::HardwareRemoved &other) { return other.part == line->part; }))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The part %1 stands twice among what came off. Count it once.")).arg(line->part), technician());
        if (isTooMany(line->quantity))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "More than %1 of %2 did not come off one interface. Count again.")).arg(mostOfOnePart).arg(line->part), technician());
    }
    // Who finds an interface open did not take it apart, and says what is there if anything is.
    if (!c.item || c.draft.kind == u"interface.found_open")
        return std::nullopt;
    for (const HardwareLine &listed : c.item->listed.hardware) {
        const bool isCounted = std::any_of(lines.begin(), lines.end(), [&](const core::HardwareRemoved &line) { return line.part == listed.part; });
        if (!isCounted)
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 has %2 × %3. Count how many came off, and write 0 where there was none.")).arg(c.itemName()).arg(listed.quantity).arg(listed.part), technician());
    }
    return std::nullopt;
}

std::optional<Refusal> hardwareHasLines(const Case &c)
{
    if (!isAboutOneThatIsOff(c))
        return std::nullopt;
    const std::vector<HardwareUse> lines = hardwareUsesIn(c.draft.body);
    const auto tooMany = std::find_if(lines.begin(), lines.end(), [](const HardwareUse &line) { return isTooMany(line.reused) || isTooMany(line.renewed) || isTooMany(line.scrapped); });
    if (tooMany != lines.end())
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "More than %1 of %2 does not belong to one interface. Count again.")).arg(mostOfOnePart).arg(tooMany->part), technician());
    if (!lines.empty())
        return std::nullopt;
    const auto balance = balanceOf(c);
    const auto any = std::find_if(balance.begin(), balance.end(), [](const HardwareBalance &one) { return one.required > 0 || one.removed > 0; });
    if (any == balance.end())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1: say for each part how many were reused, renewed and scrapped. Of %2, %3 are required and %4 came off.")).arg(c.itemName(), any->part).arg(any->required).arg(any->removed), technician());
}

std::optional<Refusal> reusedHardwareCameOff(const Case &c)
{
    const auto fault = firstOf(c, isReusedBeyondRemoved);
    if (!fault)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1: %2 × %3 came off, and %4 are said to be reused. What is from elsewhere is renewed, with its batch.")).arg(c.itemName()).arg(fault->removed).arg(fault->part).arg(fault->reused), technician());
}

std::optional<Refusal> removedHardwareIsAccountedFor(const Case &c)
{
    const auto fault = firstOf(c, [](const HardwareBalance &one) { return !one.isAccountedFor() && !isReusedBeyondRemoved(one); });
    if (!fault)
        return std::nullopt;
    const qint64 left = fault->removed - fault->reused - fault->scrapped;
    const QString numbers = inWords(QT_TRANSLATE_NOOP("Rule", "%1: %2 × %3 came off; %4 reused and %5 scrapped make %6.")).arg(c.itemName()).arg(fault->removed).arg(fault->part).arg(fault->reused).arg(fault->scrapped).arg(fault->reused + fault->scrapped);
    return refusal(c, numbers + u' ' + (left > 0 ? inWords(QT_TRANSLATE_NOOP("Rule", "%1 too few: find what is left before you go on, it may lie in the bay.")).arg(left)
                                                 : inWords(QT_TRANSLATE_NOOP("Rule", "%1 too many: find out where they belong.")).arg(-left)),
                   technician());
}

std::optional<Refusal> requiredHardwareIsOn(const Case &c)
{
    if (!c.item || c.item->listed.hardware.empty())
        return std::nullopt;
    const auto fault = firstOf(c, [](const HardwareBalance &one) { return !one.isComplete(); });
    if (!fault)
        return std::nullopt;
    const qint64 lacking = fault->required - fault->reused - fault->renewed;
    const QString numbers = inWords(QT_TRANSLATE_NOOP("Rule", "%1: %2 × %3 are required; %4 reused and %5 renewed make %6.")).arg(c.itemName()).arg(fault->required).arg(fault->part).arg(fault->reused).arg(fault->renewed).arg(fault->reused + fault->renewed);
    return refusal(c, numbers + u' ' + (lacking > 0 ? inWords(QT_TRANSLATE_NOOP("Rule", "%1 too few.")).arg(lacking) : inWords(QT_TRANSLATE_NOOP("Rule", "%1 too many.")).arg(-lacking)), technician());
}

std::optional<Refusal> newHardwareIsNotReused(const Case &c)
{
    const auto fault = firstOf(c, [](const HardwareBalance &one) { return one.mustBeNew && one.reused > 0; });
    if (!fault)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1: %2 is never used again, and %3 are said to be reused. Scrap what came off and fit new ones.")).arg(c.itemName(), fault->part).arg(fault->reused), technician());
}

std::optional<Refusal> renewedHardwareHasItsBatch(const Case &c)
{
    if (!isAboutOneThatIsOff(c))
        return std::nullopt;
    for (const HardwareUse &line : hardwareUsesIn(c.draft.body)) {
        if (line.renewed > 0 && line.batch.isEmpty())
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1: %2 × %3 are renewed; give their batch.")).arg(c.itemName()).arg(line.renewed).arg(line.part), technician());
    }
    return std::nullopt;
}

const Rule hardwareListed{"listing.hardware"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A part that stands twice is counted twice, or not at all."), &listedHardwareIsSound};
const Rule hardwareCounted{"hardware.counted"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What was not counted as it came off cannot be missed when it goes on."), &removedHardwareIsCounted};
const Rule hardwareLines{"hardware.lines"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Nobody knows later what became of a bolt of which nothing was said."), &hardwareHasLines};
const Rule hardwareReused{"hardware.reused"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A part that did not come off here has another history."), &reusedHardwareCameOff};
const Rule hardwareRemoved{"hardware.removed"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A bolt that is left over was left out, or lies where it does harm."), &removedHardwareIsAccountedFor};
const Rule hardwareRequired{"hardware.required"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A joint with a bolt too few looks like any other from outside."), &requiredHardwareIsOn};
const Rule hardwareNew{"hardware.new"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Seals, gaskets, cotter pins and lockwire do their work once."), &newHardwareIsNotReused};
const Rule hardwareBatch{"hardware.batch"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A bad batch is found again by its number alone."), &renewedHardwareHasItsBatch};

} // namespace core::rules
