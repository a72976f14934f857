// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/sqlite/connection.hpp"

#include <QFile>
#include <QUrl>

#include <algorithm>
#include <cerrno>
#include <thread>
#include <utility>

#include <sqlite3.h>

#include "db/sqlite/failure.hpp"

namespace db {

using core::failure;
using core::Result;
using std::chrono::milliseconds;
using std::chrono::steady_clock;

namespace {

/// A path as SQLite's URI, so that a `?` or `%` in it stays part of the name.
QByteArray uriOf(const QString &path, Mode mode)
{
    QByteArray uri = "file:" + QUrl::toPercentEncoding(path, "/");
    if (mode == Mode::Frozen)
        uri += "?immutable=1";
    return uri;
}

} // namespace

Result<std::unique_ptr<Connection>> Connection::open(const QString &path, Mode mode, milliseconds patience)
{
    std::unique_ptr<Connection> connection(new Connection(patience));
    const int flags = (mode == Mode::ReadWrite ? SQLITE_OPEN_READWRITE : SQLITE_OPEN_READONLY) | SQLITE_OPEN_URI |
                      SQLITE_OPEN_EXRESCODE;
    const QByteArray uri = uriOf(path, mode);
    forgetSystemError();
    const int status = sqlite3_open_v2(uri.constData(), &connection->m_handle, flags, nullptr);
    if (status != SQLITE_OK)
        return failure(errorFrom(status, connection->m_handle ? connection->systemError() : 0));
    // When opening for writing fails for any reason, SQLite quietly opens for reading.
    if (mode == Mode::ReadWrite && sqlite3_db_readonly(connection->m_handle, "main") != 0)
        return failure(errorFrom(SQLITE_CANTOPEN, connection->systemError()));
    if (auto ready = connection->setUp(mode); !ready)
        return failure(ready.error());
    return connection;
}

Result<std::unique_ptr<Connection>> Connection::inMemory()
{
    std::unique_ptr<Connection> connection(new Connection(milliseconds(0)));
    const int status = sqlite3_open_v2(":memory:", &connection->m_handle, SQLITE_OPEN_READWRITE | SQLITE_OPEN_MEMORY | SQLITE_OPEN_EXRESCODE, nullptr);
    if (status != SQLITE_OK)
        return failure(errorFrom(status, 0));
    if (auto ready = connection->setUp(Mode::ReadOnly); !ready)
        return failure(ready.error());
    return connection;
}

Result<void> Connection::setUp(Mode mode)
{
    int answer = 0;
    const int statuses[] = {
        sqlite3_busy_handler(m_handle, &Connection::onBusy, this),
        sqlite3_db_config(m_handle, SQLITE_DBCONFIG_DEFENSIVE, 1, &answer),
        sqlite3_db_config(m_handle, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, &answer),
        sqlite3_db_config(m_handle, SQLITE_DBCONFIG_DQS_DML, 0, &answer),
        sqlite3_db_config(m_handle, SQLITE_DBCONFIG_DQS_DDL, 0, &answer),
    };
    for (const int status : statuses)
        if (status != SQLITE_OK)
            return failure(errorFrom(status, systemError()));
    // Taking the hook also turns SQLite's own checkpoints off: their result is told to nobody.
    if (mode == Mode::ReadWrite)
        sqlite3_wal_hook(m_handle, &Connection::onCommit, this);
    return {};
}

Connection::~Connection()
{
    if (m_handle)
        (void)close(Leaving::Settle); // whoever wants to know calls close()
}

Result<void> Connection::close(Leaving leaving)
{
    finalizeAll();
    int answer = 0;
    const int told = sqlite3_db_config(m_handle, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, leaving == Leaving::Untouched, &answer);
    const int status = sqlite3_close(m_handle);
    if (status != SQLITE_OK) // a statement is still on loan: a bug, and closing anyway would leave it dangling
        return failure(errorFrom(status, systemError()));
    m_handle = nullptr;
    if (told != SQLITE_OK)
        return failure(errorFrom(told, 0));
    return {};
}

void Connection::finalizeAll()
{
    for (auto &[sql, idle] : m_idle)
        for (sqlite3_stmt *prepared : idle)
            sqlite3_finalize(prepared); // repeats the statement's last failure, which was reported when it happened
    m_idle.clear();
}

Statement Connection::query(const char *sql)
{
    auto &idle = m_idle[sql];
    if (!idle.empty()) {
        sqlite3_stmt *prepared = idle.back();
        idle.pop_back();
        return {*this, sql, prepared, 0};
    }
    sqlite3_stmt *prepared = nullptr;
    forgetSystemError();
    const int status = sqlite3_prepare_v3(m_handle, sql, -1, SQLITE_PREPARE_PERSISTENT, &prepared, nullptr);
    Statement statement(*this, sql, prepared, 0);
    statement.note(status);
    return statement;
}

void Connection::takeBack(const char *sql, sqlite3_stmt *prepared)
{
    sqlite3_reset(prepared); // repeats the last step's failure, which was reported when it happened
    sqlite3_clear_bindings(prepared);
    m_idle[sql].push_back(prepared);
}

Result<void> Connection::runScript(QByteArrayView sql)
{
    const char *rest = sql.data();
    const char *const end = rest + sql.size();
    while (rest < end) {
        sqlite3_stmt *prepared = nullptr;
        forgetSystemError();
        int status = sqlite3_prepare_v2(m_handle, rest, static_cast<int>(end - rest), &prepared, &rest);
        if (status != SQLITE_OK)
            return failure(error());
        if (!prepared) // a comment or blanks
            continue;
        do
            status = sqlite3_step(prepared);
        while (status == SQLITE_ROW);
        const bool isDone = status == SQLITE_DONE;
        const auto fault = isDone ? core::Error{} : error();
        sqlite3_finalize(prepared);
        if (!isDone)
            return failure(fault);
    }
    return {};
}

Result<WriteBack> Connection::writeBack()
{
    WriteBack done{0, 0};
    forgetSystemError();
    const int status =
        sqlite3_wal_checkpoint_v2(m_handle, "main", SQLITE_CHECKPOINT_PASSIVE, &done.pages, &done.pagesDone);
    if ((status & 0xff) == SQLITE_BUSY || (status & 0xff) == SQLITE_LOCKED)
        return WriteBack{std::max(m_sideFilePages, 0), 0}; // another program is at it already
    if (status != SQLITE_OK)
        return failure(errorOfWritingBack(status, systemError()));
    return done;
}

Result<void> Connection::emptySideFile()
{
    if (auto done = writeBack(); !done)
        return failure(done.error());
    const auto usual = std::exchange(m_patience, milliseconds{0});
    forgetSystemError();
    const int status = sqlite3_wal_checkpoint_v2(m_handle, "main", SQLITE_CHECKPOINT_TRUNCATE, nullptr, nullptr);
    m_patience = usual;
    if (status != SQLITE_OK && (status & 0xff) != SQLITE_BUSY && (status & 0xff) != SQLITE_LOCKED)
        return failure(errorOfWritingBack(status, systemError()));
    return {};
}

qint64 Connection::lastRow() const { return sqlite3_last_insert_rowid(m_handle); }

bool Connection::isInTransaction() const { return sqlite3_get_autocommit(m_handle) == 0; }

int Connection::systemError() const
{
    const int seen = errno;
    return seen != 0 ? seen : sqlite3_system_errno(m_handle);
}

void Connection::forgetSystemError() { errno = 0; }

core::Error Connection::error() const { return errorFrom(sqlite3_extended_errcode(m_handle), systemError()); }

int Connection::onBusy(void *self, int times)
{
    auto *connection = static_cast<Connection *>(self);
    const auto now = steady_clock::now();
    if (times == 0)
        connection->m_busySince = now;
    if (now - connection->m_busySince >= connection->m_patience)
        return 0;
    // Programs that keep to the queue hardly ever come here: short naps, so that nobody waits for long without need.
    std::this_thread::sleep_for(milliseconds(std::min(1 + times, 20)));
    return 1;
}

int Connection::onCommit(void *self, sqlite3 *, const char *, int pages)
{
    static_cast<Connection *>(self)->m_sideFilePages = pages;
    return SQLITE_OK;
}

} // namespace db
