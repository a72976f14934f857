// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/ask.hpp"
#include "app/session/session.hpp"
#include "core/kinds/kinds.hpp"

class QWidget;

namespace desktop {

/// Asks for paper size and file and writes the record package of the opened job, a draft where it is open. Tells how it went.
void exportPackage(session::Session &session, const core::Kinds &kinds, Ask &ask, QWidget *window);

/// Asks for paper size and file and writes the record of the opened job: PDF, and beside it the CSV of its interfaces. A job
/// that is still open is written as a draft that says so on every page. Tells how it went.
void exportRecord(session::Session &session, const core::Kinds &kinds, Ask &ask, QWidget *window);

/// Asks for a file and writes the interface list of the opened job, ready to be imported again.
void exportList(const core::JobState &job, Ask &ask);

/// Asks for a file and copies the whole store to it.
void backUp(session::Session &session, Ask &ask, QWidget *window);

} // namespace desktop
