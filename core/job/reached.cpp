// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/reached.hpp"

#include <algorithm>

#include "core/requirements/catalogue.hpp"
#include "core/requirements/torque.hpp"

namespace core {

using namespace Qt::StringLiterals;

Reached disconnectedWith(const InterfaceState &item) { return item.removal && !item.restoration && !item.stillAttached ? Reached(item.removal->mark.seq) : std::nullopt; }

Reached walkedRoundWith(const InterfaceState &item)
{
    return disconnectedWith(item) && item.walkedRound ? Reached(std::max(item.removal->mark.seq, item.walkedRound->seq)) : std::nullopt;
}

Reached reconnectedWith(const InterfaceState &item) { return item.restoration ? Reached(item.restoration->mark.seq) : std::nullopt; }

Reached torquedWith(const InterfaceState &item)
{
    Reached last = reconnectedWith(item);
    if (!last || !asksFor(item.listed, "torque"_L1))
        return last;
    if (missingTorque(item))
        return std::nullopt;
    for (const TorqueReading &reading : item.torque)
        last = std::max(*last, reading.mark.seq);
    return last;
}

Reached restoredWith(const InterfaceState &item)
{
    Reached last = torquedWith(item);
    if (!last)
        return last;
    for (const auto &[requirement, sentence] : stillToShow(item)) {
        if (requirement->name != "leak"_L1)
            return std::nullopt;
    }
    if (item.bonding)
        last = std::max(*last, item.bonding->mark.seq);
    if (item.safetying)
        last = std::max(*last, item.safetying->mark.seq);
    // Of an item that has nothing to show a disturbance is all that tells.
    if (item.disturbed)
        last = std::max(*last, item.disturbed->seq);
    return last;
}

Reached inspectedWith(const InterfaceState &item)
{
    Reached last = restoredWith(item);
    if (!last || !isEverythingShown(item) || static_cast<qint64>(item.acceptances.size()) < item.listed.inspections)
        return std::nullopt;
    if (item.leak)
        last = std::max(*last, item.leak->mark.seq);
    for (const Mark &mark : item.acceptances)
        last = std::max(*last, mark.seq);
    return last;
}

} // namespace core
