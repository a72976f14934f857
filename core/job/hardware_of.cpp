// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/hardware_of.hpp"

#include <algorithm>

namespace core {

std::vector<HardwareBalance> hardwareOf(const InterfaceState &item)
{
    return hardwareBalance(item.listed.hardware, item.removal ? item.removal->hardware : std::vector<HardwareRemoved>(), item.restoration ? item.restoration->hardware : std::vector<HardwareUse>());
}

HardwareStanding hardwareStanding(const InterfaceState &item, const HardwareBalance &part)
{
    if (!item.removal)
        return HardwareStanding::NotUndone;
    if (!item.restoration)
        return HardwareStanding::Open;
    const bool isComplete = item.listed.hardware.empty() || part.isComplete();
    return part.isAccountedFor() && isComplete ? HardwareStanding::Even : HardwareStanding::NotEven;
}

std::vector<HardwareRemoved> likelyRemoved(const Listing &listed)
{
    std::vector<HardwareRemoved> off;
    for (const HardwareLine &line : listed.hardware)
        off.push_back({line.part, line.quantity});
    return off;
}

std::vector<HardwareUse> likelyUse(const InterfaceState &item)
{
    std::vector<HardwareUse> used;
    for (const HardwareBalance &one : hardwareBalance(item.listed.hardware, item.removal ? item.removal->hardware : std::vector<HardwareRemoved>(), {})) {
        const qint64 reused = one.mustBeNew ? 0 : item.listed.hardware.empty() ? one.removed : std::min(one.removed, one.required);
        used.push_back({one.part, reused, std::max<qint64>(one.required - reused, 0), one.removed - reused, {}});
    }
    return used;
}

} // namespace core
