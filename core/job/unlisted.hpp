// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>

#include "core/job/mark.hpp"

namespace core {

struct InterfaceState;

/// An interface that was on no list when it was undone.
struct Unlisted {
    Mark mark;
    std::optional<Mark> detailed; ///< when its listing followed
    bool operator==(const Unlisted &) const = default;
};

/// True until the details follow: until then nobody knows what restoring it has to show.
bool isWithoutDetails(const InterfaceState &item);

/// True when nothing but a requirement can keep it from being secured: its details are known and of the present revision, and no condition is unsettled.
bool isSettled(const InterfaceState &item);

} // namespace core
