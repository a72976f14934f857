// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/parts/sign_sheet.hpp"

namespace desktop {

/// The sheet on which the lead sets a hold point of the opened job: one of the standard set, as it is or changed, or one of its own. What it
/// asks for and what waits for it are lines of small tables; what only eyes can tell is a line each.
SheetPlan setHoldPlan(session::Session &session, QWidget *parent);

} // namespace desktop
