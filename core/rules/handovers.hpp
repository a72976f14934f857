// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

std::optional<Refusal> noHandoverPends(const Case &c);
/// What is handed over is the list as it stands now, computed, not typed.
std::optional<Refusal> listIsCurrent(const Case &c);
std::optional<Refusal> incomingMayLead(const Case &c);
std::optional<Refusal> handoverPends(const Case &c);
std::optional<Refusal> acceptedByIncoming(const Case &c);

extern const Rule handoverOnce, handoverList, handoverTo, handoverPending, handoverBy;

} // namespace core::rules
