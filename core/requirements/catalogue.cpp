// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/requirements/catalogue.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/requirements/torque.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Requirement", text); }

std::optional<QString> unless(bool good, const char *sentence)
{
    return good ? std::nullopt : std::optional(tr(sentence));
}

std::optional<QString> torqueNotSpecified(const Listing &listed)
{
    return unless(listed.torque && listed.torque->fasteners >= 1, QT_TRANSLATE_NOOP("Requirement", "Torque needs the number of fasteners, the least and the most torque and a unit."));
}

std::optional<QString> bondingNotSpecified(const Listing &listed)
{
    return unless(listed.bondingMax.has_value(), QT_TRANSLATE_NOOP("Requirement", "Bonding needs its greatest resistance and a unit."));
}

std::optional<QString> bondingMissing(const InterfaceState &item)
{
    return unless(item.bonding.has_value(), QT_TRANSLATE_NOOP("Requirement", "The bonding resistance has not been measured."));
}

std::optional<QString> sealNotSpecified(const Listing &listed)
{
    return unless(!listed.sealPart.isEmpty(), QT_TRANSLATE_NOOP("Requirement", "A new seal needs its part number."));
}

std::optional<QString> sealMissing(const InterfaceState &item)
{
    return unless(item.restoration && !item.restoration->sealBatch.isEmpty(), QT_TRANSLATE_NOOP("Requirement", "No new seal was recorded."));
}

std::optional<QString> safetyingNotSpecified(const Listing &listed)
{
    return unless(!listed.safetying.isEmpty(), QT_TRANSLATE_NOOP("Requirement", "Safetying needs its method: lockwire, cotter pin, lock."));
}

std::optional<QString> safetyingMissing(const InterfaceState &item)
{
    return unless(item.safetying.has_value(), QT_TRANSLATE_NOOP("Requirement", "It has not been safetied."));
}

std::optional<QString> leakNotSpecified(const Listing &listed)
{
    return unless(listed.leak.has_value(), QT_TRANSLATE_NOOP("Requirement", "A leak check needs the worst class that is allowed, or a rate."));
}

std::optional<QString> leakMissing(const InterfaceState &item)
{
    return unless(item.leak.has_value(), QT_TRANSLATE_NOOP("Requirement", "It has not been checked for leaks."));
}

std::optional<QString> blanksNeedNothing(const Listing &) { return std::nullopt; }

std::optional<QString> blanksMissing(const InterfaceState &item)
{
    return unless(item.restoration && item.removal && item.restoration->blanksRemoved == blanksThere(*item.removal, End::Aircraft),
                  QT_TRANSLATE_NOOP("Requirement", "Not every blank that was fitted has been removed."));
}

std::optional<QString> matesNotNamed(const Listing &listed)
{
    return unless(!listed.aircraftHalf.isEmpty() && !listed.unitHalf.isEmpty(),
                  QT_TRANSLATE_NOOP("Requirement", "A mate check needs the designations of both halves."));
}

std::optional<QString> matesMissing(const InterfaceState &item)
{
    return unless(item.restoration && item.restoration->aircraftHalf == item.listed.aircraftHalf &&
                      item.restoration->unitHalf == item.listed.unitHalf,
                  QT_TRANSLATE_NOOP("Requirement", "The designations of both halves were not read."));
}

std::optional<QString> hardwareNotListed(const Listing &listed)
{
    return unless(!listed.hardware.empty(), QT_TRANSLATE_NOOP("Requirement", "Hardware needs its parts, and how many of each."));
}

std::optional<QString> hardwareMissing(const InterfaceState &item)
{
    if (!item.removal || !item.restoration || item.restoration->hardware.empty())
        return tr(QT_TRANSLATE_NOOP("Requirement", "Nothing was said of its hardware."));
    for (const HardwareBalance &one : hardwareBalance(item.listed.hardware, item.removal->hardware, item.restoration->hardware)) {
        if (!one.isComplete() || !one.isAccountedFor())
            return tr(QT_TRANSLATE_NOOP("Requirement", "Its hardware does not balance: %1.")).arg(one.part);
    }
    return std::nullopt;
}

} // namespace

const std::vector<Requirement> &requirements()
{
    static const std::vector<Requirement> all = {
        {"blanks"_L1, QT_TRANSLATE_NOOP("Requirement", "Blanks removed"), "interface.reconnected"_L1, &blanksNeedNothing, &blanksMissing},
        {"seal"_L1, QT_TRANSLATE_NOOP("Requirement", "New seal"), "interface.reconnected"_L1, &sealNotSpecified, &sealMissing},
        {"mate"_L1, QT_TRANSLATE_NOOP("Requirement", "Both halves identified"), "interface.reconnected"_L1, &matesNotNamed, &matesMissing},
        {"hardware"_L1, QT_TRANSLATE_NOOP("Requirement", "Hardware"), "interface.reconnected"_L1, &hardwareNotListed, &hardwareMissing},
        {"torque"_L1, QT_TRANSLATE_NOOP("Requirement", "Torque"), "torque.applied"_L1, &torqueNotSpecified, &missingTorque},
        {"bonding"_L1, QT_TRANSLATE_NOOP("Requirement", "Bonding resistance"), "bonding.measured"_L1, &bondingNotSpecified, &bondingMissing},
        {"safetying"_L1, QT_TRANSLATE_NOOP("Requirement", "Safetying"), "safetying.applied"_L1, &safetyingNotSpecified, &safetyingMissing},
        {"leak"_L1, QT_TRANSLATE_NOOP("Requirement", "Leak check"), "leak.checked"_L1, &leakNotSpecified, &leakMissing},
    };
    return all;
}

const Requirement *findRequirement(QStringView name)
{
    const auto &all = requirements();
    const auto at = std::find_if(all.begin(), all.end(), [&](const Requirement &r) { return r.name == name; });
    return at == all.end() ? nullptr : &*at;
}

bool asksFor(const Listing &listed, QAnyStringView requirement)
{
    return std::any_of(listed.requirements.begin(), listed.requirements.end(), [&](const QString &name) { return name == requirement; });
}

std::vector<std::pair<const Requirement *, QString>> stillToShow(const InterfaceState &item)
{
    std::vector<std::pair<const Requirement *, QString>> open;
    for (const Requirement &requirement : requirements()) {
        if (!asksFor(item.listed, requirement.name))
            continue;
        if (const auto sentence = requirement.missing(item))
            open.emplace_back(&requirement, *sentence);
    }
    return open;
}

bool isEverythingShown(const InterfaceState &item)
{
    const auto &all = requirements();
    return std::none_of(all.begin(), all.end(), [&](const Requirement &requirement) {
        return asksFor(item.listed, requirement.name) && requirement.missing(item);
    });
}

} // namespace core
