// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/migrator.hpp"

#include <QCoreApplication>

#include "db/embedded_sql.hpp"
#include "db/sqlite/connection.hpp"
#include "db/sqlite/transaction.hpp"

namespace db {

using core::ErrorCode;
using core::failure;
using core::Result;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Store", text); }

Result<void> checkForeignKeys(Connection &connection)
{
    auto broken = connection.query("PRAGMA foreign_key_check").one([](Statement &row) { return row.text(0); });
    if (!broken)
        return failure(broken.error());
    if (*broken)
        return failure(ErrorCode::Damaged, tr("The store could not be brought up to this version: rows of %1 belong to nothing. It "
                                              "was left as it was. Go on with the last backup.")
                                               .arg(**broken));
    return {};
}

Result<void> runMigration(Connection &connection, qint64 number, const QString &path)
{
    auto transaction = Transaction::begin(connection);
    if (!transaction)
        return failure(transaction.error());
    // Looked at again inside the transaction: another program may have been faster.
    const auto version = storeVersion(connection);
    if (!version)
        return failure(version.error());
    if (*version >= number)
        return {};
    const QByteArray raise = "PRAGMA user_version = " + QByteArray::number(number);
    return connection.runScript(embeddedSql(path))
        .and_then([&] { return connection.runScript(raise); })
        .and_then([&] { return checkForeignKeys(connection); })
        .and_then([&] { return transaction->commit(); });
}

} // namespace

qint64 newestVersion() { return embeddedMigrations().size(); }

Result<qint64> storeVersion(Connection &connection)
{
    auto version = connection.query("PRAGMA user_version").one([](const Statement &row) { return row.integer(0); });
    return version.map([](std::optional<qint64> stored) { return stored.value_or(0); });
}

Result<void> migrate(Connection &connection) { return migrateTo(connection, newestVersion()); }

Result<void> migrateTo(Connection &connection, qint64 version)
{
    auto present = storeVersion(connection);
    if (!present)
        return failure(present.error());
    const QStringList paths = embeddedMigrations();
    for (qint64 number = *present + 1; number <= version; ++number)
        if (auto done = runMigration(connection, number, paths.at(number - 1)); !done)
            return done;
    return {};
}

} // namespace db
