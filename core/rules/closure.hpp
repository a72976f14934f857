// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

/// Closure is admitted when there is no loose end.
std::optional<Refusal> nothingIsLoose(const Case &c);
/// A job without a list has nothing to release.
std::optional<Refusal> somethingWasListed(const Case &c);

/// A closure with something deferred says that it is limited, and how.
std::optional<Refusal> limitationIsTold(const Case &c);

extern const Rule closureLimited, closureNothingLoose, closureSomething;

} // namespace core::rules
