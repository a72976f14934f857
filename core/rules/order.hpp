// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// What may follow what in a job's ledger.

std::optional<Refusal> jobIsNotYetOpen(const Case &c);
std::optional<Refusal> jobIsOpen(const Case &c);
std::optional<Refusal> jobIsNotClosed(const Case &c);
/// A clock that was set back would put an entry before the one it rests on.
std::optional<Refusal> clockDoesNotRunBack(const Case &c);
/// An act recorded late was done before its entry was made, and not before the job was opened.
std::optional<Refusal> lateEntryIsInThePast(const Case &c);

extern const Rule notYetOpen, open, notClosed, clock, lateEntry;

} // namespace core::rules
