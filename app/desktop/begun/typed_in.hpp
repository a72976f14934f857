// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/value/json.hpp"

class QWidget;

namespace desktop {

/// A property of boxes, true on one whose tick says that something is meant all the same.
inline constexpr char confirms[] = "confirms";

/// A property of lines, true on one whose words are no loss: they only look for something, or its page keeps what they say.
inline constexpr char losesNothing[] = "losesNothing";

/// What stands in the fields of a form now, by their names: those of its FieldForm, and each named line, text and box beside it.
/// Nothing of what is typed unseen (a PIN), nor ticks that say that somebody looked or means it: whoever signs says so again.
core::json::Object typedIn(const QWidget &form);

/// Types it again. Names that the form does not have are left out.
void typeInto(QWidget &form, const core::json::Object &typed);

/// Whether a person typed something on that page, or one inside it, that still stands there and is nowhere else. Sheets over it and other
/// windows are not part of it.
bool isAnythingTyped(const QWidget &page);

} // namespace desktop
