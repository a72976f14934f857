// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

/// The entry that a strike names, whether it stands or not; nullptr where the job has none of that number.
const Line *lineNamed(const Case &c);

/// The same where it may be struck: it counts, and is no part of the record's frame. Else nullptr, and rules of their own say why.
const Line *lineToStrike(const Case &c);

/// Whether a strike says that nothing of the entry ever was so.
bool saysNeverWas(const Case &c);

/// The interface that an entry is about, where the list has it, or nullptr.
const InterfaceState *itemOf(const Case &c, const Line &line);

/// Another entry about the same thing that stands and came later, or nullptr; of these kinds, or of any where none is named.
const Line *laterOfTheSame(const Case &c, const Line &line, std::initializer_list<QLatin1String> kinds = {});

} // namespace core::rules
