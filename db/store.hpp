// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <chrono>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "core/ledger/entry.hpp"
#include "core/value/result.hpp"
#include "db/attachments.hpp"
#include "db/backup.hpp"
#include "db/credentials.hpp"
#include "db/packages.hpp"
#include "db/stored.hpp"
#include "db/summaries.hpp"
#include "db/turn.hpp"
#include "db/where_used.hpp"

namespace db {

class Connection;
class LedgerTable;
class Meta;
class WriteGate;

enum class Access { ReadWrite, ReadOnly };

/// How long to wait for other programs before saying that one of them holds the store.
using Patience = std::chrono::milliseconds;
constexpr Patience usualPatience{15'000};

/// What the store looked like at one moment, for polling: see Store::changedSince.
struct ChangeToken {
    qint64 elsewhere = 0; ///< counts commits by other programs
    qint64 here = 0;      ///< counts our own
    bool operator==(const ChangeToken &) const = default;
};

/// One file with the register, the jobs, their attachments and the wrapped keys. Several programs may have the same file
/// open. A Store belongs to one thread at a time; open another one on the same path for another thread.
///
/// Every function that fails leaves the store as it was.
class Store {
public:
    /// Makes an empty store, readable and writable by its owner alone (mode 0600). Never overwrites: BadInput when something
    /// of that name is there.
    static core::Result<std::unique_ptr<Store>> create(const QString &path, Patience patience = usualPatience);

    /// Opens a store and brings it up to this version. NotFound, NotAStore, StoreNewer, ReadOnly, Damaged or Locked; in all
    /// of these the file is not touched. A store of an earlier version opens for reading only after it was once opened for
    /// writing.
    static core::Result<std::unique_ptr<Store>> open(const QString &path, Access access, Patience patience = usualPatience);

    /// Closes without a report; prefer close().
    ~Store();
    Store(const Store &) = delete;
    Store &operator=(const Store &) = delete;

    /// Writes the side file back into the store and closes. Nothing else may be called afterwards. An error means that the
    /// entries are safe in the side file (`-wal`), which then must stay beside the store.
    core::Result<void> close();

    const QString &path() const { return m_path; }
    Access access() const { return m_access; }

    // --- writing ---

    /// Waits for the head of the queue of writers. A program that sleeps in its turn is passed over after a while, so this fails
    /// only when the store is open for reading (ReadOnly). Optional: append takes a turn of its own when none is held. Take one
    /// around "read what is new, fold, admit, sign, append": without it, writers to one job make each other sign again.
    core::Result<Turn> takeTurn();

    /// Appends signed entries of one ledger, all or none, durable when it returns. `seen` is the head that the first of them
    /// follows. A ledger that is not there yet is made by its first entry (seen = Head{}); it is the register when its
    /// entries pin none. HeadMoved when the ledger's head is not `seen`, the register's head or that of a linked ledger is not
    /// the one that the entries pin, or a job has an entry that is later than one for the register: fold again, ask again, sign again.
    core::Result<void> append(std::span<const core::Entry> entries, const core::Head &seen);

    // --- reading ---

    /// Head{} for a ledger that is not there.
    core::Result<core::Head> head(const core::LedgerId &ledger);
    /// The rows with seq > afterSeq, in order, as stored. Empty for a ledger that is not there.
    core::Result<std::vector<StoredEntry>> read(const core::LedgerId &ledger, qint64 afterSeq = 0);
    /// The same, one by one, without copies. The visitor must not write to this store.
    core::Result<void> forEach(const core::LedgerId &ledger, qint64 afterSeq, const EntryVisitor &visit);
    /// All ledgers, in the order in which they were begun.
    core::Result<std::vector<StoredLedger>> ledgers();
    /// The register, or nothing while the store has none.
    core::Result<std::optional<core::LedgerId>> registerLedger();
    /// When the last entry of any job was signed, by its own clock. A last entry that cannot be read counts for nothing.
    core::Result<std::optional<core::Instant>> jobsLastAt();

    /// Cheap enough to ask twice a second. Any commit counts, so what was noticed may turn out not to concern a ledger.
    core::Result<ChangeToken> changeToken();
    core::Result<bool> changedSince(const ChangeToken &token);

    /// What SQLite says of a file that does not agree with itself, table against index say; nothing where it does. Reads all of it.
    core::Result<std::optional<QString>> damage();

    /// What differs in the store's guard from how it was made, see schemaDifferences().
    core::Result<std::vector<QString>> schemaDifferences();

    Attachments &attachments() { return *m_attachments; }
    Packages &packages() { return *m_packages; }
    Credentials &credentials() { return *m_credentials; }
    WhereUsed &whereUsed() { return *m_whereUsed; }
    Summaries &summaries() { return *m_summaries; }

    // --- keeping ---

    /// Copies the store, as it is at this moment, to `target` while others go on writing. Appears complete, checked, durable
    /// and with mode 0600, or not at all. BadInput when the target exists and `overwrite` is No; Cancelled.
    core::Result<BackupReport> backUp(const QString &target, Overwrite overwrite, const core::Instant &now,
                                      const BackupProgress &progress = {});
    /// When backUp last succeeded.
    core::Result<std::optional<core::Instant>> lastBackup();

    /// Writes the side file back into the store now. Appending does this by itself every few megabytes.
    core::Result<void> checkpoint();
    /// Why the side file could not be written back, the last time it was tried; nothing once it could. The entries themselves
    /// are safe.
    const std::optional<core::Error> &checkpointTrouble() const;

private:
    Store(QString path, Access access, std::unique_ptr<Connection> connection, std::unique_ptr<WriteGate> gate);

    QString m_path;
    Access m_access;
    std::unique_ptr<Connection> m_connection;
    std::unique_ptr<WriteGate> m_gate;
    std::unique_ptr<Meta> m_meta;
    std::unique_ptr<WhereUsed> m_whereUsed;
    std::unique_ptr<LedgerTable> m_ledgers;
    std::unique_ptr<Attachments> m_attachments;
    std::unique_ptr<Packages> m_packages;
    std::unique_ptr<Credentials> m_credentials;
    std::unique_ptr<Summaries> m_summaries;
};

} // namespace db
