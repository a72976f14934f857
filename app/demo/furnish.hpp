// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/demo/play.hpp"

namespace demo {

/// Founds the register and fills it: people with their keys and authorisations, tools with their calibrations; all some
/// weeks before the day of the story. The keys stay unlocked in the play.
core::Result<void> furnish(Play &play);

} // namespace demo
