// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// What went on must come off: tags, blanks, the halves that belong together, new for old.

std::optional<Refusal> tagIsNew(const Case &c);
std::optional<Refusal> tagIsRecovered(const Case &c);
/// A connector is joined only to its own mate.
std::optional<Refusal> halvesBelongTogether(const Case &c);
std::optional<Refusal> sealIsNew(const Case &c);

extern const Rule tagUnique, tagRecovered, mate, sealNew;

} // namespace core::rules
