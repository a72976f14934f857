// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/cli/parse.hpp"

namespace cli {

/// Runs a command and prints its answer, as words or as JSON; what went wrong goes to the standard error. Returns the exit code.
int run(const Invocation &invocation, const Context &context);

/// Prints what there is to say instead of running. Returns the exit code.
int tell(const Told &told);

} // namespace cli
