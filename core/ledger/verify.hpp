// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>

#include <vector>

#include "core/job/fold.hpp"
#include "core/ledger/entry.hpp"
#include "core/register/register.hpp"

namespace core {

/// An entry as it was found, before anything about it is believed.
struct FoundEntry {
    qint64 seq;
    QByteArray bytes;
    QByteArray hash;
    QByteArray signature;
};

/// Something that is not as it must be.
struct Fault {
    LedgerId ledger;
    qint64 seq;       ///< of the entry, as found
    QString rule;     ///< `ledger.hash`, `ledger.signature`, or the name of the rule that would have refused it
    QString sentence; ///< plain words
    bool operator==(const Fault &) const = default;
};

/// Checks the register ledger entry by entry: canonical form, digest, chain, sequence, clock, key, signature, and whether
/// each entry would have been admitted. Keeps the register as it stood at each head, for the jobs that pin it.
class RegisterVerifier {
public:
    explicit RegisterVerifier(LedgerId ledger) : m_ledger(std::move(ledger)) {}
    void take(const FoundEntry &found);

    const std::vector<Fault> &faults() const { return m_faults; }
    const Register &reg() const { return m_register; }
    const LedgerId &ledger() const { return m_ledger; }
    /// Statements in order, and their hashes, for walking a job along the register that it pins.
    const std::vector<Entry> &entries() const { return m_entries; }

private:
    LedgerId m_ledger;
    Register m_register;
    std::vector<Entry> m_entries;
    std::vector<Fault> m_faults;
};

/// Checks a job ledger against a verified register. Entries must be taken in the order of their sequence numbers.
class JobVerifier {
public:
    JobVerifier(LedgerId ledger, const RegisterVerifier &reg) : m_ledger(std::move(ledger)), m_registerLedger(&reg) {}
    void take(const FoundEntry &found);

    const std::vector<Fault> &faults() const { return m_faults; }
    const JobFold &fold() const { return m_fold; }
    /// The attachments that the entries name, for the store to check.
    const std::vector<Digest> &attachments() const { return m_attachments; }

private:
    void advanceRegister(const Statement &said);
    LedgerId m_ledger;
    const RegisterVerifier *m_registerLedger;
    Register m_register; ///< as pinned by the entry before
    std::size_t m_registerAt = 0;
    JobFold m_fold;
    Head m_head;
    std::vector<Fault> m_faults;
    std::vector<Digest> m_attachments;
};

} // namespace core
