// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

/// Due on a day that is not past.
std::optional<Refusal> followUpIsToCome(const Case &c);
/// It names one that is not done.
std::optional<Refusal> followUpIsOpen(const Case &c);

extern const Rule followUpDue, followUpOpen;

} // namespace core::rules
