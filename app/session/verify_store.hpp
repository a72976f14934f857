// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "app/session/evidence.hpp"
#include "app/session/verified_before.hpp"
#include "core/ledger/verify.hpp"
#include "db/store.hpp"

namespace session {

/// What an auditor knows from elsewhere, from a printed record say.
struct Known {
    std::optional<core::Digest> rootFingerprint;
    std::vector<core::Digest> entries; ///< hashes that must be there: without one, a ledger whose end was cut off looks whole
};

struct VerifyReport {
    std::vector<core::Fault> faults; ///< none: all of it is as it was signed, and was allowed
    std::vector<QString> reservations{}; ///< what could not be looked at here, in sentences; no fault
    std::optional<core::Digest> rootFingerprint;
    struct Ledger {
        QString name;
        bool isRegister;
        core::Head head;
        qint64 entries;
        core::Digest content;                     ///< as in VerifiedUpTo, of all entries
        std::optional<VerifiedUpTo> takenFrom; ///< entries up to there were verified before and are unchanged
        std::vector<core::LinkedHead> linked{}; ///< the last head that its entries pin of each linked job
    };
    std::vector<Ledger> ledgers;
    qint64 attachments = 0;

    /// Over all ledgers.
    qint64 entries() const;
    /// Those of them that were verified before, and only compared now.
    qint64 entriesTakenFromBefore() const;
};

/// Told how many of how many entries were verified; false stops the work.
using VerifyProgress = std::function<bool(qint64 done, qint64 all)>;

/// Verifies all that is there, on all cores: the register and every job entry by entry with their rules replayed, every attachment,
/// and what is known from elsewhere. With `before`, entries of a job that were verified then and are the same to the last bit
/// are not verified again, as long as the linked jobs have the entries that they were judged by; the register always is. An error means that it could not be read (or Cancelled), not that it
/// is faulty.
core::Result<VerifyReport> verify(Evidence &evidence, const Known &known, const VerifyProgress &progress = {}, const VerifiedBefore *before = nullptr);
/// The same of a store.
core::Result<VerifyReport> verifyStore(db::Store &store, const Known &known, const VerifyProgress &progress = {},
                                       const VerifiedBefore *before = nullptr);

/// Adds what a report found good. Nothing when it names a fault.
void remember(VerifiedBefore &before, const VerifyReport &report, const core::Instant &now);

} // namespace session
