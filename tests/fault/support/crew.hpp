// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "app/session/session.hpp"

/// The people and the job of the stores that are hurt.
namespace crew {

/// A clock that begins on 2 March 2026 and goes on from program to program: computers' own clocks are set as they like.
core::Instant now();
session::Clock clock();

/// Founds the register with `root` and enrols `lead`, who may lead and work. Empty, or why not.
QString enrol(session::Session &session);
/// Begins a job led by `lead`. Empty, or why not.
QString beginJob(session::Session &session);
/// Makes a store with people and a job, and closes it: later faults then hit entries, not the making of tables.
QString makeStore(const QString &path);

/// The store's one job.
std::optional<core::LedgerId> jobOf(db::Store &store);

/// Lists one more interface, a name of its own for each `number`; signed by the lead with their secret.
session::Signed listOne(session::Session &session, const core::LedgerId &job, int number);

} // namespace crew
