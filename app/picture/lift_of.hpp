// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>

#include "app/picture/lift_layout.hpp"
#include "core/job/state.hpp"

namespace picture {

/// The lift that a figure of the job tells of; nothing for other figures, and where numbers are missing.
std::optional<Lift> liftOf(const core::JobFigure &figure);

} // namespace picture
