// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>

#include "core/value/result.hpp"

namespace db {

class Connection;

/// Single numbers about the store itself, by name. Writing happens within a transaction of the caller's.
class Meta {
public:
    explicit Meta(Connection &connection) : m_connection(connection) {}
    core::Result<std::optional<qint64>> get(const QString &name);
    core::Result<void> set(const QString &name, qint64 value);

private:
    Connection &m_connection;
};

} // namespace db
