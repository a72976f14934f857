// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/job/state.hpp"

namespace core {

/// A hold point as the body of a `hold.set` entry describes it. Conditions and gates are objects:
/// `{"what": "interfaces", "stage": "disconnected", "except_kinds": ["mount"], "until": "lowering"}`,
/// `{"what": "applied", "names": ["hoist"], "least": 1}`, `{"act": "interface.disconnected", "kinds": ["mount"]}`.
/// What makes no sense in it is passed over; the rules on its form say so.
HoldPoint holdIn(const HoldId &id, const json::Object &body);

/// Members of these objects that mean nothing, or are of another form than they have to be: a sentence, or nothing.
std::optional<QString> faultOfHoldForm(const json::Object &body);

} // namespace core
