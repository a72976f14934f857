// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/parts/sign_sheet.hpp"

class QWidget;

namespace desktop {

/// The sheet for a new job: work order, aircraft, maintenance data, unit, serial numbers, lead, crew, and the zones of the
/// unit with the technician who looks after each.
SheetPlan newJobPlan(session::Session &session, QWidget *parent);

} // namespace desktop
