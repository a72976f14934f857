// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QtTest>

#include <cerrno>

#include <sqlite3.h>

#include "db/sqlite/connection.hpp"
#include "db/sqlite/failure.hpp"
#include "tests/db/support/files.hpp"
#include "tests/db/support/signed_entries.hpp"

using core::ErrorCode;

/// What a technician reads when the disk or the database says no: each sentence says what happened and what to do next.
class TestFailures : public QObject {
    Q_OBJECT

private slots:
    void eachHasItsSentence_data()
    {
        QTest::addColumn<int>("code");
        QTest::addColumn<int>("systemError");
        QTest::addColumn<int>("expected");
        QTest::addColumn<QString>("happened");
        QTest::addColumn<QString>("next");
        const auto row = [](const char *name, int code, int systemError, ErrorCode expected, const char *happened, const char *next) {
            QTest::addRow("%s", name) << code << systemError << static_cast<int>(expected) << QString(happened) << QString(next);
        };
        row("disk full", SQLITE_FULL, ENOSPC, ErrorCode::NoSpace, "The disk is full. Nothing was recorded.", "Make room and sign again.");
        row("disk full while syncing", SQLITE_IOERR_FSYNC, ENOSPC, ErrorCode::NoSpace, "The disk is full.", "Make room");
        row("quota used up", SQLITE_IOERR_WRITE, EDQUOT, ErrorCode::NoSpace, "The disk is full.", "Make room");
        row("disk broken", SQLITE_IOERR_FSYNC, EIO, ErrorCode::Io, "The disk reported an error (SQLite 1034, system 5).", "sign again");
        row("too many files open", SQLITE_CANTOPEN, EMFILE, ErrorCode::Io, "The disk reported an error (SQLite 14, system 24).", "Check");
        row("held", SQLITE_BUSY, 0, ErrorCode::Locked, "Another program holds the store.", "Wait for it to finish");
        row("held while it recovers", SQLITE_BUSY_RECOVERY, 0, ErrorCode::Locked, "Another program holds the store.", "try again");
        row("damaged", SQLITE_CORRUPT, 0, ErrorCode::Damaged, "The store is damaged (SQLite 11).", "last backup");
        row("damaged, says SQLite, but the disk could not be read", SQLITE_CORRUPT, EIO, ErrorCode::Io, "The disk could not be read (SQLite 11, system 5).", "try again");
        row("the disk could not be read", SQLITE_IOERR_CORRUPTFS, 0, ErrorCode::Io, "The disk could not be read (SQLite 8458", "try again");
        row("no locks", SQLITE_PROTOCOL, 0, ErrorCode::Io, "does not keep programs apart", "open it again");
        row("damaged at the beginning", SQLITE_NOTADB, 0, ErrorCode::Damaged, "The beginning of the store is damaged.", "last backup");
        row("read-only", SQLITE_READONLY, 0, ErrorCode::ReadOnly, "may be read but not written", "open it again; if it stays so, ask");
        row("no memory", SQLITE_NOMEM, 0, ErrorCode::Io, "not enough memory. Nothing was recorded.", "Close other programs");
        row("too large", SQLITE_TOOBIG, 0, ErrorCode::BadInput, "larger than the store can hold", "Nothing was recorded");
        row("a trigger said no", SQLITE_CONSTRAINT_TRIGGER, 0, ErrorCode::Refused, "The store refused a change", "report it");
        row("anything else", SQLITE_INTERNAL, 0, ErrorCode::Io, "The store could not be used (SQLite 2, system 0).", "report these numbers");
    }

    void eachHasItsSentence()
    {
        QFETCH(int, code);
        QFETCH(int, systemError);
        QFETCH(int, expected);
        QFETCH(QString, happened);
        QFETCH(QString, next);
        const auto error = db::errorFrom(code, systemError);
        QCOMPARE(static_cast<int>(error.code), expected);
        QVERIFY2(error.message.contains(happened), qPrintable(error.message));
        QVERIFY2(error.message.contains(next), qPrintable(error.message));
    }

    /// Only what is certain is said of a COMMIT.
    void aCommitSaysWhatIsCertain()
    {
        const auto unconfirmed = db::errorOfCommit(SQLITE_IOERR_FSYNC, EIO);
        QCOMPARE(unconfirmed.code, ErrorCode::Io);
        QVERIFY(unconfirmed.message.contains("It is not certain whether it was recorded.") && !unconfirmed.message.contains("Nothing was recorded"));
        QCOMPARE(db::errorOfCommit(SQLITE_IOERR_FSYNC, ENOSPC).code, ErrorCode::NoSpace);
        QVERIFY(db::errorOfCommit(SQLITE_IOERR_WRITE, EIO).message.contains("Nothing was recorded."));
    }

    /// The entries were recorded before; a word about them would be false.
    void writingBackSaysNothingOfRecording_data()
    {
        QTest::addColumn<int>("code");
        QTest::addColumn<int>("systemError");
        QTest::addRow("disk full") << SQLITE_FULL << 0;
        QTest::addRow("disk broken") << SQLITE_IOERR_FSYNC << EIO;
        QTest::addRow("not read") << SQLITE_CORRUPT << EIO;
    }

    void writingBackSaysNothingOfRecording()
    {
        QFETCH(int, code);
        QFETCH(int, systemError);
        QVERIFY(!db::errorOfWritingBack(code, systemError).message.contains("ecorded"));
    }

    void aStatementThatCannotBePreparedSaysSoWhenItRuns()
    {
        const files::Folder folder;
        files::makeStore(folder / "a.remate");
        auto connection = *db::Connection::open(folder / "a.remate", db::Mode::ReadWrite, std::chrono::milliseconds(10));
        const auto done = connection->query("SELECT nothing FROM nowhere WHERE name = ?").with(QString("x")).run();
        QVERIFY(!done);
        QVERIFY2(done.error().message.contains("SQLite 1"), qPrintable(done.error().message));
    }

    void aScriptStopsAtItsFirstFault()
    {
        const files::Folder folder;
        files::makeStore(folder / "a.remate");
        auto connection = *db::Connection::open(folder / "a.remate", db::Mode::ReadWrite, std::chrono::milliseconds(10));
        const auto done = connection->runScript("CREATE TABLE a (x); -- one; two\n INSERT INTO nowhere VALUES (1); CREATE TABLE b (x);");
        QVERIFY(!done);
        const auto made = connection->query("SELECT count(*) FROM sqlite_schema WHERE name IN ('a', 'b')").one([](const auto &row) {
            return row.integer(0);
        });
        QCOMPARE(**made, 1);
    }

    /// A store that may not grow says what a full disk says; tests/fault fills a real one.
    void noRoom()
    {
        const files::Folder folder;
        files::makeStore(folder / "a.remate");
        auto connection = *db::Connection::open(folder / "a.remate", db::Mode::ReadWrite, std::chrono::milliseconds(10));
        const auto done = connection->runScript("PRAGMA max_page_count = 1; CREATE TABLE a (x); INSERT INTO a VALUES (zeroblob(100000));");
        QCOMPARE(done.error().code, ErrorCode::NoSpace);
    }
};

QTEST_GUILESS_MAIN(TestFailures)
#include "tst_failures.moc"
