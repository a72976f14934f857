// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/session/session.hpp"
#include "core/measure/working.hpp"
#include "core/job/fold.hpp"

namespace session {

/// What would happen if drafts were signed one after the other: each is asked on what those before it leave. Nothing is
/// signed, nothing is written.
class Rehearsal {
public:
    /// Begins with the register and the opened job as they are. The session must outlive it.
    explicit Rehearsal(const Session &session);

    /// Empty when the draft would be admitted; it then counts for those that follow. A draft that opens a job begins another one.
    core::Refusals take(const core::Draft &draft);
    /// What the draft works out to on what was taken so far; nothing where nothing is measured.
    std::optional<core::measure::Working> workingOf(const core::Draft &draft) const;

private:
    const Session *m_session;
    core::Instant m_now;
    core::Register m_register;
    core::JobFold m_job;
    core::LedgerId m_ledger;
};

} // namespace session
