// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <map>
#include <optional>
#include <vector>

#include "core/ledger/entry.hpp"
#include "core/value/digest.hpp"
#include "core/value/id.hpp"
#include "core/value/instant.hpp"
#include "core/value/result.hpp"

namespace session {

/// How far a job's ledger was verified, and what it was.
struct VerifiedUpTo {
    qint64 seq;
    core::Digest content; ///< of bytes, hash and signature of all entries up to there
    core::Head reg;       ///< the register's head at that time: entries up to it vouched for them
    core::Instant at;     ///< when it was verified
    /// The last head that its entries pin of each linked job: what was found good rested on those ledgers up to there.
    std::vector<core::LinkedHead> linked{};
    bool operator==(const VerifiedUpTo &) const = default;
};

/// What this computer verified before, entry by entry, and found good. Kept in a file apart from every store, so that whoever
/// can alter a store cannot alter this too. It saves time alone: without it everything is verified again.
class VerifiedBefore {
public:
    /// Nothing when the file is not there, cannot be read, or was written by another version of the program, whose rules may
    /// have been others.
    static VerifiedBefore load(const QString &path);

    std::optional<VerifiedUpTo> find(const core::LedgerId &ledger) const;
    void set(const core::LedgerId &ledger, const VerifiedUpTo &upTo) { m_ledgers.insert_or_assign(ledger, upTo); }
    /// Makes the folder when it is not there. The file appears whole or not at all, with mode 0600.
    core::Result<void> save() const;

private:
    explicit VerifiedBefore(QString path) : m_path(std::move(path)) {}
    QString m_path;
    std::map<core::LedgerId, VerifiedUpTo> m_ledgers;
};

} // namespace session
