// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/state.hpp"

#include <algorithm>

namespace core {

namespace {

/// The one of that id, or nullptr.
template <class Things, class AnyId>
auto withId(Things &things, const AnyId &id) -> decltype(things.data())
{
    const auto at = std::find_if(things.begin(), things.end(), [&](const auto &one) { return one.id == id; });
    return at == things.end() ? nullptr : &*at;
}

} // namespace

const InterfaceState *JobState::item(const InterfaceId &id) const
{
    const auto at = itemAt.constFind(id);
    return at == itemAt.constEnd() ? nullptr : &items[static_cast<std::size_t>(*at)];
}

InterfaceState *JobState::item(const InterfaceId &id)
{
    const auto at = itemAt.constFind(id);
    return at == itemAt.constEnd() ? nullptr : &items.edit(static_cast<std::size_t>(*at));
}

const Finding *JobState::finding(const FindingId &id) const { return withId(findings, id); }
const TemporaryItem *JobState::temporary(const TemporaryId &id) const { return withId(temporaries, id); }
TemporaryItem *JobState::temporary(const TemporaryId &id) { return withId(temporaries, id); }
const Accessory *JobState::accessory(const AccessoryId &id) const { return withId(accessories, id); }
Accessory *JobState::accessory(const AccessoryId &id) { return withId(accessories, id); }
const HoldPoint *JobState::hold(const HoldId &id) const { return withId(holds, id); }
HoldPoint *JobState::hold(const HoldId &id) { return withId(holds, id); }

const Handover *JobState::pendingHandover() const
{
    return !handovers.empty() && !handovers.back().accepted && !handovers.back().refused ? &handovers.back() : nullptr;
}

} // namespace core
