// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLatin1String>

#include "core/value/json.hpp"

namespace core {

/// How an item comes that is taken on from a linked job.
inline constexpr QLatin1String comesOff{"disconnected"};
inline constexpr QLatin1String comesUntouched{"untouched"};

/// The tag that hangs on it from then on: the one that it came with, unless one of this job was hung instead.
QString tagOnIt(const json::Object &body);

} // namespace core
