// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/store.hpp"

#include <QCoreApplication>
#include <QFileInfo>

#include "db/ledger_table.hpp"
#include "db/meta.hpp"
#include "db/opening.hpp"
#include "db/schema_check.hpp"
#include "db/turn_queue.hpp"
#include "db/write_gate.hpp"

namespace db {

using core::ErrorCode;
using core::failure;
using core::LedgerId;
using core::Result;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Store", text); }

QString lastBackupName() { return QStringLiteral("backup.last_at"); }

/// All programs must mean the same file by its side files' names, whatever links they came by.
QString realPath(const QString &path)
{
    const QString real = QFileInfo(path).canonicalFilePath();
    return real.isEmpty() ? QFileInfo(path).absoluteFilePath() : real;
}

} // namespace

Store::Store(QString path, Access access, std::unique_ptr<Connection> connection, std::unique_ptr<WriteGate> gate)
    : m_path(std::move(path)), m_access(access), m_connection(std::move(connection)), m_gate(std::move(gate)),
      m_meta(std::make_unique<Meta>(*m_connection)),
      m_whereUsed(std::make_unique<WhereUsed>(*m_connection, *m_gate, *m_meta)),
      m_ledgers(std::make_unique<LedgerTable>(*m_connection, *m_gate, *m_whereUsed)),
      m_attachments(std::make_unique<Attachments>(*m_connection, *m_gate)),
      m_packages(std::make_unique<Packages>(*m_connection, *m_gate)),
      m_credentials(std::make_unique<Credentials>(*m_connection, *m_gate)),
      m_summaries(std::make_unique<Summaries>(*m_connection, *m_gate, *m_meta))
{
}

Store::~Store() = default;

Result<std::unique_ptr<Store>> Store::create(const QString &path, Patience patience)
{
    const QString real = realPath(path);
    if (auto made = makeEmptyFile(real); !made)
        return failure(made.error());
    auto store = fillNewStore(real, patience).and_then([&] { return open(real, Access::ReadWrite, patience); });
    if (!store)
        removeWithSideFiles(real);
    return store;
}

Result<std::unique_ptr<Store>> Store::open(const QString &path, Access access, Patience patience)
{
    const QString real = realPath(path);
    auto connection = access == Access::ReadWrite ? openForWriting(real, patience) : openForReading(real, patience);
    if (!connection)
        return failure(connection.error());
    std::unique_ptr<TurnQueue> queue;
    if (access == Access::ReadWrite) {
        auto opened = TurnQueue::open(real);
        if (!opened)
            return failure(opened.error());
        queue = *std::move(opened);
    }
    auto gate = std::make_unique<WriteGate>(**connection, std::move(queue));
    std::unique_ptr<Store> store(new Store(real, access, *std::move(connection), std::move(gate)));
    if (access == Access::ReadOnly)
        return store;
    auto current = store->m_whereUsed->makeCurrent().and_then([&](bool) { return store->m_summaries->makeCurrent(); });
    if (!current)
        return failure(current.error());
    return store;
}

Result<void> Store::close()
{
    auto written = m_access == Access::ReadWrite ? m_connection->emptySideFile() : Result<void>();
    auto closed = m_connection->close(Leaving::Settle);
    if (written && closed)
        return {};
    return failure(ErrorCode::Io, tr("The store was closed, but its side file %1-wal could not be written back into it. Keep both files "
                                     "together, and check the disk. (%2)")
                                      .arg(m_path, (written ? closed : written).error().message));
}

Result<Turn> Store::takeTurn() { return m_gate->takeTurn(); }

Result<void> Store::append(std::span<const core::Entry> entries, const core::Head &seen)
{
    return m_ledgers->append(entries, seen);
}

Result<core::Head> Store::head(const LedgerId &ledger) { return m_ledgers->head(ledger); }

Result<std::vector<StoredEntry>> Store::read(const LedgerId &ledger, qint64 afterSeq)
{
    std::vector<StoredEntry> all;
    auto done = m_ledgers->forEach(ledger, afterSeq, [&](const StoredEntryView &entry) {
        all.push_back(entry.copy());
        return Walk::On;
    });
    return done.map([&] { return std::move(all); });
}

Result<void> Store::forEach(const LedgerId &ledger, qint64 afterSeq, const EntryVisitor &visit)
{
    return m_ledgers->forEach(ledger, afterSeq, visit);
}

Result<std::optional<QString>> Store::damage()
{
    auto said = m_connection->query("PRAGMA integrity_check(1)").one([](Statement &row) { return row.text(0); });
    return said.map([](const std::optional<QString> &text) { return text == QLatin1String("ok") ? std::nullopt : text; });
}

Result<std::vector<QString>> Store::schemaDifferences() { return db::schemaDifferences(*m_connection); }

Result<std::vector<StoredLedger>> Store::ledgers() { return m_ledgers->ledgers(); }

Result<std::optional<LedgerId>> Store::registerLedger() { return m_ledgers->registerLedger(); }

Result<std::optional<core::Instant>> Store::jobsLastAt() { return m_ledgers->jobsLastAt(); }

Result<ChangeToken> Store::changeToken()
{
    auto version = m_connection->query("PRAGMA data_version").one([](const Statement &row) { return row.integer(0); });
    return version.map([this](std::optional<qint64> elsewhere) { return ChangeToken{elsewhere.value_or(0), m_gate->commits()}; });
}

Result<bool> Store::changedSince(const ChangeToken &token)
{
    return changeToken().map([&](const ChangeToken &now) { return now != token; });
}

Result<BackupReport> Store::backUp(const QString &target, Overwrite overwrite, const core::Instant &now,
                                   const BackupProgress &progress)
{
    auto report = copyStore(m_path, target, overwrite, m_connection->patience(), progress);
    if (!report || m_access == Access::ReadOnly)
        return report;
    // The backup is there; a store too full to remember it is no reason to call it failed.
    (void)m_gate->write([&] { return m_meta->set(lastBackupName(), now.milliseconds()); });
    return report;
}

Result<std::optional<core::Instant>> Store::lastBackup()
{
    return m_meta->get(lastBackupName()).map([](std::optional<qint64> at) {
        return at ? std::optional(core::Instant::fromMilliseconds(*at)) : std::nullopt;
    });
}

Result<void> Store::checkpoint() { return m_gate->writeBack(); }

const std::optional<core::Error> &Store::checkpointTrouble() const { return m_gate->trouble(); }

} // namespace db
