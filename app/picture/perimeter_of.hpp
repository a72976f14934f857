// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/picture/perimeter_layout.hpp"
#include "core/job/state.hpp"
#include "core/rules/refusal.hpp"

namespace picture {

/// The interfaces of a job by zone, and what is applied for the job and not removed yet after them. Zones stand in the order of the job, then those
/// that only an item names; what names none comes last. Loose is what a loose end is about.
Perimeter perimeterOf(const core::JobState &job, const core::LooseEnds &looseEnds);

/// What carries the unit, as the job knows it: `Hoist on: HO-1 Chain hoist, at the rear beam. Sling on: …`, `The unit is off.` Empty where the job says nothing of it.
QString hoistInWords(const core::JobState &job);

} // namespace picture
