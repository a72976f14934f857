// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>
#include <vector>

#include "app/session/evidence.hpp"
#include "core/ledger/entry.hpp"
#include "core/value/result.hpp"
#include "db/store.hpp"

namespace session {

using TakeStatement = std::function<void(const core::Statement &said, const core::Digest &hash)>;

/// Reads a ledger's entries that follow `head`, in order. Damaged when one is not what its digest says, cannot be read, or
/// does not follow the one before; those before it were taken. Signatures and rules are not asked: that is verifying.
core::Result<void> readOn(db::Store &store, const core::LedgerId &ledger, core::Head head, const TakeStatement &take);

/// All entries of a ledger with their bytes and signatures, for a record. Same care, same errors.
core::Result<std::vector<core::Entry>> readEntries(Evidence &evidence, const core::LedgerId &ledger);
core::Result<std::vector<core::Entry>> readEntries(db::Store &store, const core::LedgerId &ledger);

} // namespace session
