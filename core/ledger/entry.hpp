// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QString>

#include <optional>
#include <vector>

#include "core/value/digest.hpp"
#include "core/value/id.hpp"
#include "core/value/instant.hpp"
#include "core/value/json.hpp"

namespace core {

/// What somebody wants to say, not yet ruled on, not yet signed.
struct Draft {
    PersonId author;
    Instant at;
    QString kind;                   ///< `interface.disconnected`
    std::optional<QString> subject; ///< whom or what it is about: an interface, a finding, a person, a tool
    json::Object body;
    bool operator==(const Draft &) const = default;
};

/// The last entry of a ledger: sequence number 0 and 64 zeros while it is empty.
struct Head {
    qint64 seq = 0;
    Digest hash;
    bool operator==(const Head &) const = default;
};

/// The head of another job's ledger, as the author of an entry saw it.
struct LinkedHead {
    LedgerId ledger;
    Head head;
    bool operator==(const LinkedHead &) const = default;
};

/// Exactly what is signed. Its canonical bytes are in canonical.hpp.
struct Statement {
    LedgerId ledger;
    qint64 seq; ///< from 1, without gaps
    Instant at;
    PersonId author;
    Digest key; ///< SHA-256 of the author's public key
    QString meaning;
    QString kind;
    std::optional<QString> subject;
    json::Object body;
    std::optional<Head> reg; ///< the register's head when this was signed; nothing in the register's own entries
    Digest prev;
    /// The heads of the jobs that this one is linked with when this was signed, each ledger once, by its name; empty in a job without links.
    std::vector<LinkedHead> linked{};
    bool operator==(const Statement &) const = default;
};

/// A signed statement, as stored. `bytes` are what was signed; `said` is what they say.
struct Entry {
    Statement said;
    QByteArray bytes;
    Digest hash;          ///< SHA-256 of bytes
    QByteArray signature; ///< Ed25519 over bytes, 64 bytes
    Head head() const { return {said.seq, hash}; }
    bool operator==(const Entry &) const = default;
};

/// The draft that a statement was made from; used to ask the rules again when a ledger is verified.
Draft draftOf(const Statement &said);

} // namespace core
