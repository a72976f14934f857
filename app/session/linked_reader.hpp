// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>
#include <map>
#include <memory>

#include "app/session/evidence.hpp"
#include "core/job/fold.hpp"
#include "core/reports/job_record.hpp"
#include "db/store.hpp"

namespace session {

/// Folds other jobs' ledgers along while somebody walks through one that pins their heads. As the pins go forward, each entry is read once.
/// Whether those ledgers hold together is for their own verification to say.
class LinkedReader {
public:
    /// Rows of a ledger with seq > afterSeq, in order.
    using ReadLedger = std::function<core::Result<void>(const core::LedgerId &ledger, qint64 afterSeq, const db::EntryVisitor &visit)>;

    explicit LinkedReader(ReadLedger read) : m_read(std::move(read)) {}

    /// The job as it stood at that head; null when its ledger has no such entry, or cannot be read so far.
    std::shared_ptr<const core::JobState> upTo(const core::LinkedHead &at);

private:
    struct Along {
        core::JobFold fold;
        std::shared_ptr<const core::JobState> state; ///< at the fold's head, once somebody asked for it
    };
    void readOn(const core::LedgerId &ledger, Along &along, qint64 upToSeq);

    ReadLedger m_read;
    std::map<core::LedgerId, Along> m_along;
};

/// Shows a record the linked jobs as they stood at the heads that its last entry pins; one that cannot be read stays unseen.
void showLinked(core::JobRecord &record, Evidence &evidence);
void showLinked(core::JobRecord &record, db::Store &store);

} // namespace session
