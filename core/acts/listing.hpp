// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/job/state.hpp"

namespace core {

/// More fasteners than this belong to several interfaces: a person loses count, and a bad file could ask for a billion.
constexpr qint64 mostFasteners = 200;

/// The row of the list that the body of `interface.listed` holds.
Listing listingIn(const InterfaceId &id, const json::Object &body);

/// The order in which fasteners are tightened, as the list says it: `cross`, or each number once.
std::vector<qint64> torqueOrderIn(const std::vector<QString> &texts, qint64 fasteners);

/// The zones that the body of `job.opened` holds.
std::vector<Zone> zonesIn(const json::Object &body);

} // namespace core
