// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/job/summary.hpp"
#include "core/ledger/entry.hpp"
#include "core/value/digest.hpp"
#include "core/value/id.hpp"
#include "core/value/result.hpp"

namespace db {

class Connection;
class Meta;
class WriteGate;

/// What a summary was made from: the last entry of the job and that of the register.
struct SummarySource {
    core::LedgerId ledger;
    core::Digest job;
    core::Digest reg;
};

struct KeptSummary {
    SummarySource source;
    core::JobSummary summary;
    /// The jobs that it is linked with, and how far each had come: Head{} for one that the store did not have. It holds for these alone.
    std::vector<core::LinkedHead> linked{};
};

/// Job summaries remembered for the start page, so that it need not fold every job. Each holds for exactly the heads that it
/// was made from. Computed from the ledgers and kept with a version of its own: forgotten, never migrated.
class Summaries {
public:
    Summaries(Connection &connection, WriteGate &gate, Meta &meta) : m_connection(connection), m_gate(gate), m_meta(meta) {}

    /// The summary of a job at exactly these heads, or nothing: then fold the job, and remember what comes out. The same where one of the
    /// linked jobs has moved, which is for the caller to see.
    core::Result<std::optional<KeptSummary>> find(const SummarySource &source);
    /// Remembers summaries, one a job, in place of older ones. Does nothing when the store is open for reading only.
    core::Result<void> remember(std::span<const KeptSummary> summaries);

    // --- for db itself ---

    /// Forgets them all when their version is another one. Returns true when it did.
    core::Result<bool> makeCurrent();
    core::Result<bool> isCurrent();

private:
    core::Result<void> keep(const KeptSummary &kept);

    Connection &m_connection;
    WriteGate &m_gate;
    Meta &m_meta;
};

} // namespace db
