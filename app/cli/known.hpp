// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/cli/command.hpp"
#include "app/session/verify_store.hpp"

namespace cli {

/// `--root DIGEST` and `--head DIGEST …`: what an auditor knows from elsewhere.
Option rootOption();
Option headOption();

/// What was given. BadInput where it is no digest.
core::Result<session::Known> knownIn(const Arguments &arguments);

} // namespace cli
