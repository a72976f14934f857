// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "core/job/state.hpp"

namespace core {

/// What a figure of the job is about, in words: `outgoing unit`, `Engine oil, no. 2, turbine oil`, `incoming for outgoing unit`.
QString figureAbout(const JobFigure &figure);

/// What it came to, in one line: `margin of the hoist 47.6 %, of a leg 61.4 %`. What makes no sense, or is over a limit, says so.
QString figureResult(const JobFigure &figure);

} // namespace core
