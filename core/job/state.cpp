// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/state.hpp"

#include <algorithm>

namespace core {

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

const Finding *JobState::finding(const FindingId &id) const
{
    const auto at = std::find_if(findings.begin(), findings.end(), [&](const Finding &f) { return f.id == id; });
    return at == findings.end() ? nullptr : &*at;
}

const Handover *JobState::pendingHandover() const
{
    return !handovers.empty() && !handovers.back().accepted ? &handovers.back() : nullptr;
}

} // namespace core
