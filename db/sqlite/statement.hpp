// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QByteArrayView>
#include <QString>

#include <optional>
#include <type_traits>

#include "core/value/result.hpp"
#include "db/stored.hpp"

struct sqlite3_stmt;

namespace db {

class Connection;

/// A prepared statement on loan from its connection, which keeps it prepared for the next time. It remembers the first thing
/// that went wrong, from preparing on, and reports it when it is stepped; so preparing and binding need no check of their own.
class Statement {
public:
    Statement(Statement &&other) noexcept;
    Statement &operator=(Statement &&) = delete;
    Statement(const Statement &) = delete;
    Statement &operator=(const Statement &) = delete;
    ~Statement();

    /// Bind the next parameter.
    Statement &with(qint64 value);
    Statement &with(const QString &text);
    /// The bytes are not copied and must live as long as the statement is used.
    Statement &with(QByteArrayView bytes);
    template <class T>
    Statement &with(const T &) = delete; // a pointer or a bool would turn into an integer unnoticed

    /// Has its failures put into words by another function than errorFrom.
    using Tell = core::Error (*)(int extendedCode, int systemError);
    Statement &toldBy(Tell tell);

    /// Runs to the end, passing over rows.
    core::Result<void> run();

    /// Reads the first row with `read(const Statement &)`, or nothing when there is none.
    template <class Read>
    auto one(Read read) -> core::Result<std::optional<std::invoke_result_t<Read, Statement &>>>
    {
        const auto row = step();
        if (!row)
            return core::failure(row.error());
        if (!*row)
            return std::nullopt;
        auto value = read(*this);
        stop();
        if (m_status != 0)
            return core::failure(error());
        return value;
    }

    /// Calls `visit(Statement &)` for each row until it answers Walk::Stop.
    template <class Visit>
    core::Result<void> each(Visit visit)
    {
        for (;;) {
            const auto row = step();
            if (!row)
                return core::failure(row.error());
            if (!*row || visit(*this) == Walk::Stop)
                break;
        }
        stop();
        if (m_status != 0)
            return core::failure(error());
        return {};
    }

    // Columns of the current row, from 0. Bytes live until the next step.
    qint64 integer(int column) const;
    QString text(int column);
    QByteArrayView bytes(int column);

private:
    friend class Connection;
    Statement(Connection &connection, const char *sql, sqlite3_stmt *prepared, int status);
    core::Result<bool> step();
    /// Ends before the last row: what was changed is settled only then, and that can fail as well.
    void stop();
    void note(int status);
    core::Error error() const;

    Connection *m_connection;
    const char *m_sql;
    sqlite3_stmt *m_prepared;
    int m_status; ///< extended code of the first failure, or 0
    int m_systemError = 0;
    int m_bound = 0;
    Tell m_tell;
};

} // namespace db
