// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QByteArrayView>
#include <QString>

#include <functional>
#include <optional>

#include "core/ledger/entry.hpp"
#include "core/value/id.hpp"

namespace db {

/// One row of a ledger exactly as it lies in the store: nothing parsed, nothing checked.
struct StoredEntry {
    qint64 seq;
    QByteArray bytes;
    QByteArray hash;
    QByteArray signature;
    bool operator==(const StoredEntry &) const = default;
};

/// The same without a copy. The bytes live until the callback that was given them returns.
struct StoredEntryView {
    qint64 seq;
    QByteArrayView bytes;
    QByteArrayView hash;
    QByteArrayView signature;
    StoredEntry copy() const { return {seq, bytes.toByteArray(), hash.toByteArray(), signature.toByteArray()}; }
};

enum class LedgerRole { Register, Job };

struct StoredLedger {
    QString uuid; ///< as stored; a damaged store may hold a text that names nothing, see id()
    LedgerRole role;
    qint64 headSeq; ///< 0 when it has no entry
    std::optional<core::LedgerId> id() const { return core::LedgerId::parse(uuid); }
    bool operator==(const StoredLedger &) const = default;
};

/// What a callback answers: whether it wants the next one.
enum class Walk { On, Stop };

using EntryVisitor = std::function<Walk(const StoredEntryView &)>;

} // namespace db
