// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/reached.hpp"

#include <algorithm>

#include "core/requirements/catalogue.hpp"
#include "core/requirements/torque.hpp"

namespace core {

using namespace Qt::StringLiterals;

namespace {

/// The last entry on which it rests, beside the requirements, that a joined interface is done; nothing while it is not.
Reached settledWith(const InterfaceState &item)
{
    if (!item.restoration || !isSettled(item))
        return std::nullopt;
    qint64 last = std::max(item.restoration->mark.seq, item.settled ? item.settled->seq : 0);
    if (item.unlisted)
        last = std::max(last, item.unlisted->detailed->seq);
    return last;
}

} // namespace

Reached disconnectedWith(const InterfaceState &item)
{
    if (isNotApplicable(item))
        return letAloneWith(item);
    return isOff(item) && !item.stillAttached && !isHeldInPlace(item) ? Reached(item.removal->mark.seq) : std::nullopt;
}

Reached walkedRoundWith(const InterfaceState &item)
{
    if (isNotApplicable(item))
        return letAloneWith(item);
    return disconnectedWith(item) && item.walkedRound ? Reached(std::max(item.removal->mark.seq, item.walkedRound->seq)) : std::nullopt;
}

Reached reconnectedWith(const InterfaceState &item)
{
    if (const Reached letAlone = letAloneWith(item))
        return letAlone;
    return settledWith(item);
}

Reached torquedWith(const InterfaceState &item)
{
    Reached last = reconnectedWith(item);
    if (!last || !item.restoration || !asksFor(item.listed, "torque"_L1))
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
    if (!last || !item.restoration)
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
    if (!last || !item.restoration)
        return last;
    if (!isEverythingShown(item) || static_cast<qint64>(item.acceptances.size()) < item.listed.inspections)
        return std::nullopt;
    if (item.leak)
        last = std::max(*last, item.leak->mark.seq);
    for (const Mark &mark : item.acceptances)
        last = std::max(*last, mark.seq);
    return last;
}

} // namespace core
