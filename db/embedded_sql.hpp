// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

namespace db {

/// A file of db/migrations or db/derived, as built into the program.
QByteArray embeddedSql(const QString &path);

/// The names of all migrations, in the order of their numbers: `migrations/0001_ledgers.sql` first.
QStringList embeddedMigrations();

} // namespace db
