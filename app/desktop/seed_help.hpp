// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "app/desktop/deeds.hpp"

namespace desktop::seeds {

/// One seed for each chosen interface that the job knows, filled in by make(item, seed).
template <class Make>
std::vector<Seed> forEachItem(const Situation &s, Make make)
{
    std::vector<Seed> all;
    for (const core::InterfaceId &id : s.items) {
        if (const core::InterfaceState *item = s.job.item(id)) {
            Seed seed{id.text(), {}, {}};
            make(*item, seed);
            all.push_back(std::move(seed));
        }
    }
    return all;
}

/// The first chosen interface, or nullptr.
inline const core::InterfaceState *chosen(const Situation &s) { return s.items.empty() ? nullptr : s.job.item(s.items.front()); }

/// A seed for that interface; none for nullptr.
inline std::vector<Seed> ofChosen(const core::InterfaceState *item, core::json::Object body, core::json::Object probe)
{
    return item ? std::vector<Seed>{{item->listed.id.text(), std::move(body), std::move(probe)}} : std::vector<Seed>();
}

/// Stands in a probe for what a person will type.
inline core::json::Value text(const char *placeholder) { return QString::fromLatin1(placeholder); }

} // namespace desktop::seeds
