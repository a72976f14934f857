// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArrayView>
#include <QString>

#include <chrono>
#include <map>
#include <memory>
#include <string_view>
#include <vector>

#include "core/value/result.hpp"
#include "db/sqlite/statement.hpp"

struct sqlite3;

namespace db {

/// How a file is opened. Frozen: nobody here can write to it, so it is read without locks and side files.
enum class Mode { ReadWrite, ReadOnly, Frozen };

/// What closing does with a side file of committed changes: Settle writes it back, Untouched leaves all files as they are.
enum class Leaving { Settle, Untouched };

/// How far the side file has been written back.
struct WriteBack {
    int pages;     ///< in the side file
    int pagesDone; ///< of them now in the store
    bool isComplete() const { return pages == pagesDone; }
};

/// One SQLite connection. Every result code is looked at; none is thrown.
class Connection {
public:
    /// Opens an existing file. Nothing is read yet, so whether it is any good shows with the first query.
    static core::Result<std::unique_ptr<Connection>> open(const QString &path, Mode mode, std::chrono::milliseconds patience);
    /// An empty one that lives in memory and nowhere else.
    static core::Result<std::unique_ptr<Connection>> inMemory();
    ~Connection();
    Connection(const Connection &) = delete;
    Connection &operator=(const Connection &) = delete;

    /// Closes; with Leaving::Settle, and when nobody else has the file open, SQLite writes the side file back and removes it.
    core::Result<void> close(Leaving leaving);

    /// Lends a prepared statement. `sql` must be a literal: its address is kept.
    Statement query(const char *sql);
    /// Runs statements one after another, cut by SQLite's own parser, since triggers contain semicolons.
    core::Result<void> runScript(QByteArrayView sql);

    /// Writes back as much of the side file as readers allow; waits for nobody.
    core::Result<WriteBack> writeBack();
    /// Writes back all of it and empties it, if nobody else is reading or writing just now; that is no error.
    core::Result<void> emptySideFile();
    /// Pages in the side file after this connection's last commit.
    int sideFilePages() const { return m_sideFilePages; }

    std::chrono::milliseconds patience() const { return m_patience; }
    bool isInTransaction() const;
    /// The row number that the last INSERT gave.
    qint64 lastRow() const;
    /// The errno of the system call that failed, since the last call of forgetSystemError(); 0 when it is not known.
    int systemError() const;
    /// Before each call of SQLite whose failure is told. SQLite itself notes the system's error for some failures alone.
    static void forgetSystemError();
    /// The last failure of this connection.
    core::Error error() const;
    sqlite3 *handle() const { return m_handle; }

private:
    friend class Statement;
    explicit Connection(std::chrono::milliseconds patience) : m_patience(patience) {}
    core::Result<void> setUp(Mode mode);
    void takeBack(const char *sql, struct sqlite3_stmt *prepared);
    void finalizeAll();
    static int onBusy(void *self, int times);
    static int onCommit(void *self, sqlite3 *handle, const char *database, int pages);

    sqlite3 *m_handle = nullptr;
    std::chrono::milliseconds m_patience;
    std::chrono::steady_clock::time_point m_busySince{};
    int m_sideFilePages = 0;
    std::map<std::string_view, std::vector<struct sqlite3_stmt *>> m_idle; ///< prepared, by their text
};

} // namespace db
