// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/value/json.hpp"

class QWidget;

namespace desktop {

/// What stands in the fields of a form now, by their names: those of its FieldForm, and each named line, text and box beside it.
/// Nothing of what is typed unseen (a PIN), nor ticks that say that somebody looked: whoever signs looks again.
core::json::Object typedIn(const QWidget &form);

/// What of `now` is otherwise than it was before: what somebody typed.
core::json::Object changedSince(const core::json::Object &before, const core::json::Object &now);

/// Types it again. Names that the form does not have are left out.
void typeInto(QWidget &form, const core::json::Object &typed);

} // namespace desktop
