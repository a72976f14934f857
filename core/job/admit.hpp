// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/job/state.hpp"
#include "core/ledger/entry.hpp"
#include "core/register/register.hpp"
#include "core/rules/refusal.hpp"

namespace core {

/// Rules on a draft: empty when it may be signed, else every refusal there is. First the form of the draft is judged; only
/// a sound form is judged by the rulebook. Pure: the moment that counts is the draft's own `at`, so a replay years later
/// gives the same answer.
Refusals admit(const JobState &job, const Register &reg, const Draft &draft);

/// The same for the register's own entries.
Refusals admit(const Register &reg, const Draft &draft);

} // namespace core
