// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

#include "core/value/id.hpp"
#include "core/value/json.hpp"

namespace core {

struct Listing;

/// Which interfaces something is about: those that all of its lists let through. An empty list lets everything through, and
/// an interface whose kind nobody has told yet passes as any.
struct ItemFilter {
    std::vector<QString> kinds;
    std::vector<QString> exceptKinds;
    std::vector<QString> zones;
    std::vector<InterfaceId> ids;

    bool letsThrough(const Listing &listed) const;
    bool isEmpty() const { return kinds.empty() && exceptKinds.empty() && zones.empty() && ids.empty(); }
    bool operator==(const ItemFilter &) const = default;
};

/// From the members `kinds`, `except_kinds`, `zones` and `interfaces` of an object.
ItemFilter itemFilterIn(const json::Object &object);

/// For a sentence: "every interface", "every mount of zone Left", "every interface (except access panel)".
QString inWordsOf(const ItemFilter &filter);

} // namespace core
