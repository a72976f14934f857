// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/meta.hpp"

#include "db/sqlite/connection.hpp"

namespace db {

using core::Result;

Result<std::optional<qint64>> Meta::get(const QString &name)
{
    return m_connection.query("SELECT value FROM meta WHERE name = ?").with(name).one([](const Statement &row) {
        return row.integer(0);
    });
}

Result<void> Meta::set(const QString &name, qint64 value)
{
    return m_connection.query("INSERT INTO meta (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value")
        .with(name)
        .with(value)
        .run();
}

} // namespace db
