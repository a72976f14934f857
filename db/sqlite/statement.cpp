// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/sqlite/statement.hpp"

#include <utility>

#include <sqlite3.h>

#include "db/sqlite/connection.hpp"
#include "db/sqlite/failure.hpp"

namespace db {

using core::Result;

Statement::Statement(Connection &connection, const char *sql, sqlite3_stmt *prepared, int status)
    : m_connection(&connection), m_sql(sql), m_prepared(prepared), m_status(status), m_tell(&errorFrom)
{
}

Statement::Statement(Statement &&other) noexcept
    : m_connection(other.m_connection), m_sql(other.m_sql), m_prepared(std::exchange(other.m_prepared, nullptr)),
      m_status(other.m_status), m_systemError(other.m_systemError), m_bound(other.m_bound),
      m_tell(other.m_tell)
{
}

Statement::~Statement()
{
    if (m_prepared)
        m_connection->takeBack(m_sql, m_prepared);
}

void Statement::note(int status)
{
    if (status == SQLITE_OK || m_status != 0)
        return;
    m_status = status;
    m_systemError = m_connection->systemError();
}

core::Error Statement::error() const { return m_tell(m_status, m_systemError); }

Statement &Statement::toldBy(Tell tell)
{
    m_tell = tell;
    return *this;
}

Statement &Statement::with(qint64 value)
{
    if (m_prepared)
        note(sqlite3_bind_int64(m_prepared, ++m_bound, value));
    return *this;
}

Statement &Statement::with(const QString &text)
{
    const QByteArray utf8 = text.toUtf8();
    if (m_prepared)
        note(sqlite3_bind_text64(m_prepared, ++m_bound, utf8.constData(), static_cast<sqlite3_uint64>(utf8.size()),
                                 SQLITE_TRANSIENT, SQLITE_UTF8));
    return *this;
}

Statement &Statement::with(QByteArrayView bytes)
{
    // A null pointer would bind NULL; an empty blob needs an address of its own.
    const char *data = bytes.isEmpty() ? "" : bytes.data();
    if (m_prepared)
        note(sqlite3_bind_blob64(m_prepared, ++m_bound, data, static_cast<sqlite3_uint64>(bytes.size()), SQLITE_STATIC));
    return *this;
}

Result<bool> Statement::step()
{
    // An unbound parameter would silently run as NULL.
    Q_ASSERT(!m_prepared || m_bound == sqlite3_bind_parameter_count(m_prepared));
    if (m_status == 0) {
        Connection::forgetSystemError();
        const int status = sqlite3_step(m_prepared);
        if (status == SQLITE_ROW)
            return true;
        if (status == SQLITE_DONE)
            return false;
        note(status);
    }
    return core::failure(error());
}

void Statement::stop()
{
    Connection::forgetSystemError();
    note(sqlite3_reset(m_prepared));
}

Result<void> Statement::run()
{
    return each([](Statement &) { return Walk::On; });
}

qint64 Statement::integer(int column) const { return sqlite3_column_int64(m_prepared, column); }

QString Statement::text(int column)
{
    const auto *utf8 = reinterpret_cast<const char *>(sqlite3_column_text(m_prepared, column));
    const int size = sqlite3_column_bytes(m_prepared, column);
    if (!utf8 && sqlite3_column_type(m_prepared, column) != SQLITE_NULL)
        note(SQLITE_NOMEM);
    return utf8 ? QString::fromUtf8(utf8, size) : QString();
}

QByteArrayView Statement::bytes(int column)
{
    const auto *data = static_cast<const char *>(sqlite3_column_blob(m_prepared, column));
    const int size = sqlite3_column_bytes(m_prepared, column);
    if (!data && size > 0)
        note(SQLITE_NOMEM);
    return data ? QByteArrayView(data, size) : QByteArrayView();
}

} // namespace db
