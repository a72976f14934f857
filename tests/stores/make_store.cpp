// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

// make_store FILE VERSION: writes a store as the version of that number did, for the upgrade test.

#include <QCoreApplication>
#include <QTextStream>

#include "db/migrator.hpp"
#include "db/opening.hpp"
#include "db/sqlite/transaction.hpp"
#include "tests/db/support/signed_entries.hpp"

using core::Result;
using db::Connection;

namespace {

Result<void> insert(Connection &connection, qint64 row, const core::LedgerId &ledger, const std::vector<core::Entry> &made)
{
    auto done = connection.query("INSERT INTO ledgers (id, uuid, is_register) VALUES (?, ?, ?)")
                    .with(row)
                    .with(ledger.text())
                    .with(qint64{made.front().said.reg ? 0 : 1})
                    .run();
    for (const core::Entry &entry : made) {
        const QByteArray hash = entry.hash.bytes();
        done = done.and_then([&] {
            return connection.query("INSERT INTO entries (ledger, seq, bytes, hash, signature) VALUES (?, ?, ?, ?, ?)")
                .with(row)
                .with(entry.said.seq)
                .with(QByteArrayView(entry.bytes))
                .with(QByteArrayView(hash))
                .with(QByteArrayView(entry.signature))
                .run();
        });
    }
    return done;
}

Result<void> fill(Connection &connection, qint64 version)
{
    const auto reg = entries::ledger(QStringLiteral("register"));
    const auto job = entries::ledger(QStringLiteral("job"));
    const auto people = entries::chain(2, {}, reg, {}, entries::hand(QStringLiteral("Root")),
                                       {.kind = QStringLiteral("person.enrolled"), .subject = QStringLiteral("Root")});
    const auto work = entries::chain(5, {}, job, people.back().head(), entries::hand(QStringLiteral("Ana")),
                                     {.kind = QStringLiteral("torque.applied"),
                                      .body = {{QStringLiteral("tool"), QStringLiteral("TW-1")}}});
    const QByteArray mark = "PRAGMA application_id = " + QByteArray::number(db::applicationId);
    return connection.runScript(mark)
        .and_then([&] { return db::migrateTo(connection, version); })
        .and_then([&] { return connection.runScript("PRAGMA journal_mode = WAL"); })
        .and_then([&] { return insert(connection, 1, reg, people); })
        .and_then([&] { return insert(connection, 2, job, work); })
        .and_then([&] { return connection.emptySideFile(); })
        .and_then([&] { return connection.close(db::Leaving::Settle); });
}

} // namespace

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    const QStringList arguments = application.arguments();
    if (arguments.size() != 3)
        return 2;
    auto made = db::makeEmptyFile(arguments[1]);
    auto connection = made.and_then([&] { return Connection::open(arguments[1], db::Mode::ReadWrite, std::chrono::seconds(1)); });
    auto done = connection.and_then([&](std::unique_ptr<Connection> &opened) { return fill(*opened, arguments[2].toLongLong()); });
    if (!done)
        QTextStream(stderr) << done.error().message << '\n';
    return done ? 0 : 1;
}
