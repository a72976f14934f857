// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "app/desktop/ask.hpp"
#include "core/ledger/verify.hpp"
#include "db/store.hpp"

namespace desktop {

/// What verifying a whole store found.
struct Verdict {
    qint64 entries = 0;
    qint64 attachments = 0;
    std::vector<core::Fault> faults;
};

/// Checks the register, every job and the attachments that they name. Cancelled when progress answers false.
core::Result<Verdict> verifyStore(db::Store &store, const Progress &progress);

} // namespace desktop
