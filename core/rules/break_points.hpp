// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// Where somebody stopped in the middle of an interface.

/// Something of it is still to be done.
std::optional<Refusal> workIsUnderWay(const Case &c);
/// Who works on it next has seen where it was left.
std::optional<Refusal> breakPointWasSeen(const Case &c);
/// There is a break point, and the author has not taken it up yet.
std::optional<Refusal> breakPointIsThere(const Case &c);
/// An inspector accepts nothing that somebody left half done and nobody took up.
std::optional<Refusal> nobodyStopped(const Case &c);

extern const Rule breakUnderWay, breakSeen, breakThere, breakOver;

} // namespace core::rules
