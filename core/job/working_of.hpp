// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/job/state.hpp"
#include "core/measure/working.hpp"
#include "core/register/register.hpp"

namespace core {

/// The calculation behind a draft or an entry, as far as its body goes: what the wrench is to be set to, how a reading stands in its
/// band, what a hoist carries. Nothing for acts that measure nothing, and where the list asks for nothing.
/// The job is the state in which it is signed; for an entry, that before it.
std::optional<measure::Working> workingOf(const JobState &job, const Register &reg, const Draft &draft);

} // namespace core
