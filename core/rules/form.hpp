// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/ledger/entry.hpp"
#include "core/rules/refusal.hpp"

namespace core {

/// Judges the form of a draft by the fields of its act: an unknown kind, a missing or blank field, a value of the wrong type,
/// a field that the act does not have, a subject where none belongs. Nothing blank or incomplete can be signed.
/// Rule names: form.kind, form.subject, form.missing, form.value, form.unknown.
Refusals refusalsOfForm(const Draft &draft);

/// Why a value does not fit the field's type, or nothing. Used by entry forms while somebody types.
struct Field;
std::optional<QString> whyNotOfType(const Field &field, const json::Value &value);

} // namespace core
