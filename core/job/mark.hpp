// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/value/id.hpp"
#include "core/value/instant.hpp"

namespace core {

/// Who did something, when, and the entry that says so.
struct Mark {
    qint64 seq;
    PersonId by;
    Instant at;
    bool operator==(const Mark &) const = default;
};

} // namespace core
