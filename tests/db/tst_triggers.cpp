// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QtTest>

#include "db/store.hpp"
#include "tests/db/support/files.hpp"
#include "tests/db/support/signed_entries.hpp"

using db::Access;
using db::Store;

/// What the database refuses whoever asks, and what it cannot.
class TestTriggers : public QObject {
    Q_OBJECT

private slots:
    void ledgersAreAddedToAlone_data()
    {
        QTest::addColumn<QByteArray>("sql");
        QTest::addColumn<QString>("refused");
        const QString entryChanged = "an entry is never changed";
        const QString entryDeleted = "an entry is never deleted";
        const QString entryReplaced = "an entry is never replaced";
        const QByteArray values = "x'00', zeroblob(32), zeroblob(64))";
        QTest::addRow("bytes") << QByteArray("UPDATE entries SET bytes = x'00' WHERE seq = 2") << entryChanged;
        QTest::addRow("hash") << QByteArray("UPDATE entries SET hash = zeroblob(32)") << entryChanged;
        QTest::addRow("number") << QByteArray("UPDATE entries SET seq = 9 WHERE seq = 2") << entryChanged;
        QTest::addRow("to the same value") << QByteArray("UPDATE entries SET seq = seq") << entryChanged;
        QTest::addRow("row number") << QByteArray("UPDATE entries SET rowid = 99 WHERE seq = 2") << entryChanged;
        QTest::addRow("update or replace") << QByteArray("UPDATE OR REPLACE entries SET seq = 1 WHERE seq = 2") << entryChanged;
        QTest::addRow("one deleted") << QByteArray("DELETE FROM entries WHERE seq = 3") << entryDeleted;
        QTest::addRow("all deleted") << QByteArray("DELETE FROM entries") << entryDeleted;
        QTest::addRow("replaced") << "INSERT OR REPLACE INTO entries (ledger, seq, bytes, hash, signature) VALUES (1, 2, " + values
                                  << entryReplaced;
        QTest::addRow("replaced by row number")
            << "INSERT OR REPLACE INTO entries (rowid, ledger, seq, bytes, hash, signature) VALUES (2, 1, 77, " + values
            << entryReplaced;
        QTest::addRow("replace into") << "REPLACE INTO entries (ledger, seq, bytes, hash, signature) VALUES (1, 2, " + values
                                      << entryReplaced;
        QTest::addRow("upsert") << "INSERT INTO entries (ledger, seq, bytes, hash, signature) VALUES (1, 2, " + values
                                       + " ON CONFLICT DO UPDATE SET bytes = x'01'"
                                << entryReplaced;
        QTest::addRow("ledger renamed") << QByteArray("UPDATE ledgers SET uuid = 'x'") << "a ledger is never changed";
        QTest::addRow("ledger deleted") << QByteArray("DELETE FROM ledgers") << "a ledger is never deleted";
        QTest::addRow("ledger replaced by name")
            << QByteArray("INSERT OR REPLACE INTO ledgers (uuid, is_register) VALUES ('register', 0)")
            << "a ledger is never replaced";
        QTest::addRow("ledger replaced by number")
            << QByteArray("INSERT OR REPLACE INTO ledgers (id, uuid, is_register) VALUES (1, 'x', 0)")
            << "a ledger is never replaced";
        QTest::addRow("another register") << QByteArray("INSERT OR REPLACE INTO ledgers (uuid, is_register) VALUES ('x', 1)")
                                          << "a ledger is never replaced";
        QTest::addRow("attachment changed") << QByteArray("UPDATE attachments SET media_type = 'x'")
                                            << "an attachment is never changed";
        QTest::addRow("attachment deleted") << QByteArray("DELETE FROM attachments") << "an attachment is never deleted";
        QTest::addRow("attachment replaced")
            << QByteArray("INSERT OR REPLACE INTO attachments (digest, media_type, size, bytes) "
                          "SELECT digest, 'x', 1, x'00' FROM attachments")
            << "an attachment is never replaced";
        QTest::addRow("attachment replaced by number")
            << QByteArray("INSERT OR REPLACE INTO attachments (id, digest, media_type, size, bytes) "
                          "VALUES (1, zeroblob(32), 'x', 1, x'00')")
            << "an attachment is never replaced";
    }

    void ledgersAreAddedToAlone()
    {
        QFETCH(QByteArray, sql);
        QFETCH(QString, refused);
        const files::Folder folder;
        const QString path = folder / "a.remate";
        auto store = *Store::create(path);
        entries::beginRegister(*store, 3);
        QVERIFY(store->attachments().put("photo", "image/jpeg"));
        const auto before = *store->read(entries::ledger("register"));
        QCOMPARE(files::rawSql(path, sql), refused);
        QCOMPARE(*store->read(entries::ledger("register")), before);
        QCOMPARE(store->ledgers()->size(), 1u);
        QCOMPARE(store->attachments().list()->size(), 1u);
    }

    /// Whoever can write the file can drop the triggers. Reading then gives what is stored; finding it out is the work of
    /// whoever verifies.
    void aChangedRowIsReadAsStored()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        auto store = *Store::create(path);
        entries::beginRegister(*store, 3);
        const auto before = *store->read(entries::ledger("register"));
        QCOMPARE(files::rawSql(path, "DROP TRIGGER entries_are_never_changed;"
                                     "UPDATE entries SET bytes = CAST('{' AS BLOB) WHERE seq = 2;"),
                 QString());
        const auto after = *store->read(entries::ledger("register"));
        QCOMPARE(after.size(), 3u);
        QCOMPARE(after[0], before[0]);
        QCOMPARE(after[1].bytes, "{");
        QCOMPARE(after[1].hash, before[1].hash);
        QCOMPARE(after[2], before[2]);
    }

    void anEntryPutInIsReadAsStored()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        auto store = *Store::create(path);
        entries::beginRegister(*store, 3);
        QCOMPARE(files::rawSql(path, "INSERT INTO entries (ledger, seq, bytes, hash, signature) "
                                     "VALUES (1, 4, x'7b7d', zeroblob(32), zeroblob(64))"),
                 QString());
        QCOMPARE(store->read(entries::ledger("register"), 3)->front().bytes, "{}");
        QCOMPARE(store->head(entries::ledger("register"))->seq, 4);
    }
};

QTEST_GUILESS_MAIN(TestTriggers)
#include "tst_triggers.moc"
