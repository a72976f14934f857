// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "core/ledger/verify.hpp"
#include "core/value/digest.hpp"
#include "core/value/id.hpp"
#include "core/value/result.hpp"
#include "db/store.hpp"

namespace session {

/// Ledgers and attachments as they were found, wherever they lie: in a store, in a package. Nothing of it is believed yet.
class Evidence {
public:
    Evidence() = default;
    virtual ~Evidence() = default;
    Evidence(const Evidence &) = delete;
    Evidence &operator=(const Evidence &) = delete;

    /// All ledgers, in the order in which they are told about.
    virtual core::Result<std::vector<db::StoredLedger>> ledgers() = 0;
    /// The rows with seq > afterSeq, in order. Quickest when asked to go on where the last call for that ledger stopped.
    virtual core::Result<void> forEach(const core::LedgerId &ledger, qint64 afterSeq, const db::EntryVisitor &visit) = 0;

    /// An attachment that is there, and what is wrong with it; nothing where it is what its name says.
    using AttachmentVisitor = std::function<void(const core::Digest &name, const std::optional<QString> &damage)>;
    virtual core::Result<void> forEachAttachment(const AttachmentVisitor &visit) = 0;

    /// What is wrong with that which holds it all: the store's guard, the bag.
    virtual core::Result<std::vector<core::Fault>> faultsOfTheWhole() = 0;

    /// What is wrong with that by which things are looked up in it. Asked where everything else is good.
    virtual core::Result<std::vector<core::Fault>> faultsOfLookUps() { return std::vector<core::Fault>(); }

    /// What is remembered of a job at these heads, beside its entries, for a screen to show at once; nothing where nothing is remembered.
    virtual core::Result<std::optional<db::KeptSummary>> rememberedOf(const db::SummarySource &) { return std::nullopt; }
};

/// The evidence of a store. The store must outlive it.
class StoreEvidence final : public Evidence {
public:
    explicit StoreEvidence(db::Store &store) : m_store(store) {}

    core::Result<std::vector<db::StoredLedger>> ledgers() override { return m_store.ledgers(); }
    core::Result<void> forEach(const core::LedgerId &ledger, qint64 afterSeq, const db::EntryVisitor &visit) override { return m_store.forEach(ledger, afterSeq, visit); }
    core::Result<void> forEachAttachment(const AttachmentVisitor &visit) override;
    core::Result<std::vector<core::Fault>> faultsOfTheWhole() override;
    core::Result<std::vector<core::Fault>> faultsOfLookUps() override;
    core::Result<std::optional<db::KeptSummary>> rememberedOf(const db::SummarySource &source) override { return m_store.summaries().find(source); }

private:
    db::Store &m_store;
};

/// A name for faults of what has no ledger to name.
core::LedgerId noLedger();

} // namespace session
