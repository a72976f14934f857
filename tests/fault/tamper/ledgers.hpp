// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>
#include <map>
#include <set>
#include <vector>

#include "core/ledger/entry.hpp"
#include "core/ledger/seal.hpp"
#include "core/value/id.hpp"
#include "tests/fault/tamper/bag.hpp"
#include "tests/fault/tamper/closed_job.hpp"

namespace battery {

/// The ledgers of a package in the hands of a forger: statements are changed, and then chain, pins and digests are made right all over, in each
/// ledger that rests on what was changed.
class Ledgers {
public:
    /// Gives the key with which a changed statement is signed anew; nullptr leaves the old signature under the new bytes.
    using Sign = std::function<const core::SigningKey *(const core::Statement &said)>;

    static Ledgers of(const Bag &bag);

    std::map<core::LedgerId, std::vector<core::Entry>> entries;

    core::Statement &said(const core::LedgerId &ledger, std::size_t at) { return entries.at(ledger).at(at).said; }
    /// Whatever rests on a statement that was changed is written anew, and signed with what `sign` gives.
    void rebuild(const Sign &sign);
    /// The lines of all ledgers, and what the program makes of them: labels and CSV (not the PDF); with all digests.
    void putInto(Bag &bag, const core::Kinds &kinds) const;

private:
    core::Digest digestOf(const core::LedgerId &ledger, qint64 seq, const core::Digest &otherwise);
    void rebuildOne(const core::LedgerId &ledger, std::size_t at);
    const Sign *m_sign = nullptr;
    std::set<std::pair<core::LedgerId, std::size_t>> m_done;
};

/// Where the two files of a ledger lie, without their endings.
QString nameOf(const core::LedgerId &ledger);
/// The lines of the two files of a ledger.
void putLines(Bag &bag, const QString &name, const std::vector<core::Entry> &entries);

/// Nobody signs anew.
const core::SigningKey *nobody(const core::Statement &said);
/// Everybody signs what is theirs, with the key that the statement names.
Ledgers::Sign everybody(const ClosedJob &job);

} // namespace battery
