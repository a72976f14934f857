// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/reinspection.hpp"

#include <algorithm>

#include "core/job/state.hpp"

namespace core {

const Reinspection *reinspectionBehind(const InterfaceState &item, const Mark &acceptance)
{
    const auto &all = item.reinspections;
    const auto at = std::find_if(all.begin(), all.end(), [&](const Reinspection &one) { return one.mark.seq == acceptance.seq; });
    return at == all.end() ? nullptr : &*at;
}

std::optional<Mark> lastWorkOn(const InterfaceState &item)
{
    std::optional<Mark> last;
    const auto consider = [&](const Mark &mark) {
        if (!last || mark.seq > last->seq)
            last = mark;
    };
    if (item.removal)
        consider(item.removal->mark);
    if (item.restoration)
        consider(item.restoration->mark);
    for (const TorqueReading &reading : item.torque)
        consider(reading.mark);
    if (item.bonding)
        consider(item.bonding->mark);
    if (item.safetying)
        consider(item.safetying->mark);
    if (item.leak)
        consider(item.leak->mark);
    if (item.disturbed)
        consider(*item.disturbed);
    return last;
}

} // namespace core
