// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <map>
#include <vector>

#include "core/job/fold.hpp"
#include "core/kinds/kinds.hpp"
#include "core/ledger/entry.hpp"
#include "core/register/register.hpp"

namespace core {

/// A job with all that its reports draw on: its entries with their hashes, the register as each of them pinned it, and the
/// kinds for their words.
class JobRecord {
public:
    /// Entries of both ledgers in the order of their sequence numbers, as read from a store. Whether they hold together is
    /// for verify to say.
    JobRecord(std::vector<Entry> job, const std::vector<Entry> &reg, Kinds kinds);

    /// Shows a linked job as it stood at the head that the last entry pins.
    void see(const LinkedHead &at, std::shared_ptr<const JobState> other) { m_fold.see(at.ledger, at.head, std::move(other)); }

    const JobState &job() const { return m_fold.state(); }
    const std::vector<Entry> &entries() const { return m_entries; }
    /// All that was said, in order.
    const Series<Statement> &said() const { return m_fold.said(); }
    const Head &head() const { return m_fold.head(); }
    const Kinds &kinds() const { return m_kinds; }
    bool isClosed() const { return m_fold.state().closed.has_value(); }

    /// The entry of that sequence number, or nullptr.
    const Entry *entry(qint64 seq) const;
    /// The register as the entry of that sequence number pinned it: who was authorised and which tool was in date then has
    /// one answer for ever.
    const Register &registerAt(qint64 seq) const;
    /// The register as the last entry pinned it.
    const Register &reg() const { return registerAt(m_fold.head().seq); }
    /// The kind of the interface, or nullptr where the job or the program does not know it.
    const Kind *kindOf(const InterfaceId &id) const;

private:
    std::vector<Entry> m_entries;
    Kinds m_kinds;
    JobFold m_fold;
    std::map<qint64, Register> m_registers; ///< by the register's sequence number, each that some entry pins
};

} // namespace core
