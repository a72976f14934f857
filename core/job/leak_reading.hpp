// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/job/state.hpp"
#include "core/measure/leak.hpp"

namespace core {

/// The word in an entry for a place where nothing shows.
QString dryLeak();

/// The job's leak classes as a scheme: names in their order, without sizes.
measure::LeakScheme leakSchemeOf(const JobFacts &facts);

/// Whether a class, or `dry`, is no worse than another; an empty limit asks for dry. Refuses a class that is not of the job.
measure::Measured<bool> isLeakClassWithin(const QString &seen, const QString &worst, const JobFacts &facts);

/// The rate that a leak check tells: as measured, or as drops counted.
std::optional<Quantity> leakRateIn(const json::Object &body);

} // namespace core
