// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/ask.hpp"
#include "app/session/session.hpp"
#include "core/reports/one_page.hpp"

namespace desktop {

/// Asks for paper or printer and puts a sheet of one page of the opened job on it. Tells how it went. Refuses for a damaged job: what comes
/// after the damage would be missing on the wall, and nobody would see that.
void exportSheet(const session::Session &session, core::SheetSort sort, Ask &ask);

} // namespace desktop
