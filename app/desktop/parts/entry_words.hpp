// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/job/state.hpp"

namespace desktop {

/// `W05 Fuel flow transmitter: Reconnected, 2 Mar 2026, 14:05 UTC (entry 312)`.
QString entryInWords(const core::JobState &job, const core::Line &line);

} // namespace desktop
