// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/restoration.hpp"

#include <algorithm>

#include "core/job/state.hpp"
#include "core/requirements/catalogue.hpp"

namespace core {

namespace {

bool isHardwareEven(const InterfaceState &open, const Restoration &joined)
{
    const auto balance = hardwareBalance(open.listed.hardware, open.removal->hardware, joined.hardware);
    const bool isAsked = !open.listed.hardware.empty();
    return std::all_of(balance.begin(), balance.end(), [&](const HardwareBalance &one) { return one.isAccountedFor() && (one.isComplete() || !isAsked); });
}

} // namespace

bool belongsTo(const JobState &job, const InterfaceState &open, const Restoration &joined)
{
    const Listing &listed = open.listed;
    const bool isItsMate = !asksFor(listed, "mate") || (joined.aircraftHalf == listed.aircraftHalf && joined.unitHalf == listed.unitHalf);
    const bool isItsSeal = !asksFor(listed, "seal") || joined.sealPart == listed.sealPart;
    return joined.tagRecovered == open.removal->tag && joined.blanksRemoved == blanksToComeOut(job, open, End::Aircraft) &&
           joined.unitBlanksRemoved == blanksToComeOut(job, open, End::Unit) && isItsMate && isItsSeal && isHardwareEven(open, joined);
}

} // namespace core
