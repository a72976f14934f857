// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

#include "core/value/digest.hpp"
#include "core/value/result.hpp"

namespace db {

class Connection;

/// Everything that is worth keeping in a store, so that two of them can be compared.
struct Contents {
    struct Ledger {
        QString name;
        qint64 entries;
        core::Digest digest; ///< over all its rows, in order
        bool operator==(const Ledger &) const = default;
    };
    std::vector<Ledger> ledgers; ///< in the order in which they were begun
    core::Digest attachments;    ///< over all of them, with their bytes
    core::Digest keys;           ///< over all wrapped keys
    qint64 entries() const;
    bool operator==(const Contents &) const = default;
};

/// Reads all of a store. Damaged when an entry or an attachment is not what its own digest says.
core::Result<Contents> contentsOf(Connection &connection);

} // namespace db
