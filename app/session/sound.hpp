// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/session/verify_store.hpp"
#include "core/kinds/kinds.hpp"
#include "core/reports/job_record.hpp"

namespace session {

/// Verifies all that a job's record rests on: the job's ledger, the register, linked jobs, and the attachments that they name. What leaves
/// the store as a record is believed by people who cannot look into it, so it has to be sound before.
/// Damaged: it is not, with the first fault in words; Cancelled; and what reading the store says.
core::Result<void> requireSound(db::Store &store, const core::LedgerId &job, const VerifyProgress &progress = {});

/// The job's record, once it is found sound.
core::Result<core::JobRecord> soundRecordOf(db::Store &store, const core::LedgerId &job, core::Kinds kinds, const VerifyProgress &progress = {});

} // namespace session
