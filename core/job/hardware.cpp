// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/hardware.hpp"

#include <algorithm>

namespace core {

namespace {

/// Calls with each object of the list in that member.
template <class Take>
void forEachLine(const json::Object &body, QStringView member, Take take)
{
    const json::Value *value = body.find(member);
    const json::Array *lines = value ? value->array() : nullptr;
    if (!lines)
        return;
    for (const json::Value &line : *lines) {
        if (const json::Object *object = line.object())
            take(*object);
    }
}

/// Numbers that no rule admits are cut off, so that sums of them stay numbers.
qint64 numberIn(const json::Object &line, QStringView member) { return std::clamp<qint64>(line.integer(member).value_or(0), 0, mostOfOnePart + 1); }

HardwareBalance &balanceOf(std::vector<HardwareBalance> &all, const QString &part)
{
    const auto at = std::find_if(all.begin(), all.end(), [&](const HardwareBalance &one) { return one.part == part; });
    if (at != all.end())
        return *at;
    all.push_back({part, 0, false, 0, 0, 0, 0});
    return all.back();
}

} // namespace

std::vector<HardwareLine> hardwareLinesIn(const json::Object &body)
{
    std::vector<HardwareLine> lines;
    forEachLine(body, u"hardware", [&](const json::Object &line) { lines.push_back({line.text(u"part"), numberIn(line, u"quantity"), line.isTrue(u"new")}); });
    return lines;
}

std::vector<HardwareRemoved> hardwareRemovedIn(const json::Object &body)
{
    std::vector<HardwareRemoved> lines;
    forEachLine(body, u"hardware_removed", [&](const json::Object &line) { lines.push_back({line.text(u"part"), numberIn(line, u"quantity")}); });
    return lines;
}

std::vector<HardwareUse> hardwareUsesIn(const json::Object &body)
{
    std::vector<HardwareUse> lines;
    forEachLine(body, u"hardware", [&](const json::Object &line) {
        lines.push_back({line.text(u"part"), numberIn(line, u"reused"), numberIn(line, u"renewed"), numberIn(line, u"scrapped"), line.text(u"batch")});
    });
    return lines;
}

std::vector<HardwareRemoved> hardwareOn(const std::vector<HardwareUse> &used)
{
    std::vector<HardwareRemoved> on;
    for (const HardwareBalance &one : hardwareBalance({}, {}, used)) {
        if (one.reused + one.renewed > 0)
            on.push_back({one.part, one.reused + one.renewed});
    }
    return on;
}

std::vector<HardwareBalance> hardwareBalance(const std::vector<HardwareLine> &listed, const std::vector<HardwareRemoved> &removed, const std::vector<HardwareUse> &used)
{
    std::vector<HardwareBalance> all;
    for (const HardwareLine &line : listed) {
        HardwareBalance &balance = balanceOf(all, line.part);
        balance.required += line.quantity;
        balance.mustBeNew = balance.mustBeNew || line.mustBeNew;
    }
    for (const HardwareRemoved &line : removed)
        balanceOf(all, line.part).removed += line.quantity;
    for (const HardwareUse &line : used) {
        HardwareBalance &balance = balanceOf(all, line.part);
        balance.reused += line.reused;
        balance.renewed += line.renewed;
        balance.scrapped += line.scrapped;
    }
    return all;
}

} // namespace core
