// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "core/job/fold.hpp"
#include "core/ledger/entry.hpp"
#include "core/ledger/seal.hpp"
#include "core/register/register.hpp"
#include "core/value/result.hpp"

namespace core {

/// An entry as it was found, before anything about it is believed.
struct FoundEntry {
    qint64 seq;
    QByteArray bytes;
    QByteArray hash;
    QByteArray signature;
};

/// An entry as it was found, with what its bytes are and say.
struct ReadEntry {
    FoundEntry found;
    Digest digest;          ///< of the bytes
    Result<Statement> said; ///< Damaged when the bytes are no entry in canonical form
};

/// Digests and parses; the same whichever thread does it.
ReadEntry readEntry(FoundEntry found);
ReadEntry readEntry(FoundEntry found, json::ObjectReader &objects);

/// Something that is not as it must be.
struct Fault {
    LedgerId ledger;
    qint64 seq;       ///< of the entry, as found
    QString rule;     ///< `ledger.hash`, `ledger.signature`, or the name of the rule that would have refused it
    QString sentence; ///< plain words
    bool operator==(const Fault &) const = default;
};

/// What a verifier leaves to whoever drives it, since it takes longer than all the rest and needs nothing else: is this
/// signature the author's over these bytes?
struct SignatureClaim {
    LedgerId ledger;
    qint64 seq;
    PersonId author;
    PublicKey key;
    QByteArray bytes;
    QByteArray signature;
};

/// The fault, or nothing when the signature holds. May be asked in any thread.
std::optional<Fault> faultOf(const SignatureClaim &claim);

/// Takes a claim to ask faultOf() about it, now or later.
using TakeClaim = std::function<void(SignatureClaim &&)>;

/// Checks the register ledger entry by entry: canonical form, digest, chain, sequence, clock, key, signature, and whether
/// each entry would have been admitted. Keeps the register as it stood at each head, for the jobs that pin it.
class RegisterVerifier {
public:
    /// Without `claims`, signatures are checked at once and their faults are among faults().
    explicit RegisterVerifier(LedgerId ledger, TakeClaim claims = {});
    void take(const FoundEntry &found) { take(readEntry(found)); }
    void take(const ReadEntry &entry);

    const std::vector<Fault> &faults() const { return m_faults; }
    const Register &reg() const { return m_register; }
    const LedgerId &ledger() const { return m_ledger; }
    /// Statements in order, and their hashes, for walking a job along the register that it pins.
    const std::vector<Entry> &entries() const { return m_entries; }

private:
    LedgerId m_ledger;
    TakeClaim m_claims;
    Register m_register;
    std::vector<Entry> m_entries;
    std::vector<Fault> m_faults;
};

/// Another job as it stood at a head of its ledger; null when the ledger has no such entry. For one ledger it is asked with heads that never
/// go back, so that whoever answers reads each entry once.
using SeeLinked = std::function<std::shared_ptr<const JobState>(const LinkedHead &)>;

/// Checks a job ledger against a verified register. Entries must be taken in the order of their sequence numbers.
class JobVerifier {
public:
    /// Without `claims`, signatures are checked at once and their faults are among faults().
    /// Without `linked`, no other ledger can be seen: the entries of a job with links are then faulty.
    JobVerifier(LedgerId ledger, const RegisterVerifier &reg, TakeClaim claims = {}, SeeLinked linked = {});
    void take(const FoundEntry &found) { take(readEntry(found)); }
    void take(const ReadEntry &entry);
    /// Takes an entry that was verified before and is known to be the same: nothing is asked of it again.
    void takeVerified(const ReadEntry &entry);

    const std::vector<Fault> &faults() const { return m_faults; }
    const JobFold &fold() const { return m_fold; }
    /// The last head that was pinned of each linked ledger.
    const std::map<LedgerId, Head> &linked() const { return m_linked; }
    /// The attachments that the entries name, for the store to check.
    const std::vector<Digest> &attachments() const { return m_attachments; }

private:
    void advanceRegister(const Statement &said);
    const Entry *unseenBy(const Statement &said) const;
    template <class TheReport>
    void lookAtLinked(TheReport &report, const Statement &said);
    void notePins(const Statement &said);
    void takeIn(const Statement &said, const Digest &digest, qint64 seq);
    LedgerId m_ledger;
    const RegisterVerifier *m_registerLedger;
    TakeClaim m_claims;
    SeeLinked m_seeLinked;
    std::map<LedgerId, Head> m_linked;
    Register m_register; ///< as pinned by the entry before
    std::size_t m_registerAt = 0;
    JobFold m_fold;
    Head m_head;
    std::vector<Fault> m_faults;
    std::vector<Digest> m_attachments;
};

} // namespace core
