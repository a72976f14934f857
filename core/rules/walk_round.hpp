// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

/// Off, and with nothing that was found to hold it still.
std::optional<Refusal> isFreeToConfirm(const Case &c);
/// Off at all: what was never undone cannot be found still attached.
std::optional<Refusal> isOffForWalkRound(const Case &c);
std::optional<Refusal> wasFoundAttached(const Case &c);
/// Source: two persons, one undoes and another looks: common practice.
std::optional<Refusal> walkedByAnother(const Case &c);

extern const Rule walkFree, walkOff, walkAttached, walkAnother;

} // namespace core::rules
