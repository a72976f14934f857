// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/holds/hold_set.hpp"
#include "core/kinds/kinds.hpp"
#include "core/tables/look_up_tables.hpp"
#include "core/value/result.hpp"

/// What the program carries inside itself: kinds of interface under `:/kinds`, look-up tables under `:/tables`, icons under
/// `:/icons`, the manual under `:/manual`.
namespace resources {

/// Makes the resources known to Qt. A library that nothing but data draws on would be left out by the linker, so call this
/// once in main, or before the first path that begins with `:/icons`. Safe to call again.
void readyResources();

/// Every kind of interface that came with the program. A file that cannot be read or is not as it must be fails the whole,
/// naming the file: half a collection would refuse lists that are sound.
core::Result<core::Kinds> loadKinds();

/// Every look-up table of the catalogue. A file that is missing or not as it must be fails the whole, naming the file: a figure
/// that nobody can trace is worse than none.
core::Result<core::LookUpTables> loadTables();

/// The standard set of hold points, for a job that is opened. The lead may set others, or strike what does not fit, before it matters.
core::Result<std::vector<core::NamedHold>> loadHoldPoints();

} // namespace resources
