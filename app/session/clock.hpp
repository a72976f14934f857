// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>

#include "core/value/instant.hpp"

namespace session {

/// What time it is. Handed in from outside, so that a test or a replayed day brings its own.
using Clock = std::function<core::Instant()>;

/// The computer's clock.
Clock systemClock();

} // namespace session
