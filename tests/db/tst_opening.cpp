// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QProcess>
#include <QtTest>

#include <sqlite3.h>
#include <sys/stat.h>

#include "db/migrator.hpp"
#include "db/store.hpp"
#include "tests/db/support/files.hpp"
#include "tests/db/support/signed_entries.hpp"

using core::ErrorCode;
using db::Access;
using db::Store;
using namespace std::chrono_literals;

namespace {

using Spoil = void (*)(const QString &path);

/// A store with a register of 40 entries, so that it has more than a few pages.
void makeFilledStore(const QString &path)
{
    auto store = *Store::create(path);
    entries::beginRegister(*store, 40);
    if (!store->close())
        qFatal("not closed");
}

QString outcomeOf(const core::Result<std::unique_ptr<Store>> &opened)
{
    if (opened)
        return QStringLiteral("opened");
    return opened.error().message;
}

int codeOf(const core::Result<std::unique_ptr<Store>> &opened) { return opened ? -1 : static_cast<int>(opened.error().code); }

} // namespace

class TestOpening : public QObject {
    Q_OBJECT

private slots:
    void aNewStoreIsPrivate_data()
    {
        QTest::addColumn<int>("mask");
        QTest::addRow("usual umask") << 0022;
        QTest::addRow("no umask at all") << 0;
        QTest::addRow("umask that takes the owner's rights") << 0777;
    }

    void aNewStoreIsPrivate()
    {
        QFETCH(int, mask);
        const files::Folder folder;
        const QString path = folder / "a.remate";
        const mode_t before = umask(static_cast<mode_t>(mask));
        auto store = Store::create(path);
        umask(before);
        QVERIFY2(store, qPrintable(outcomeOf(store)));
        entries::beginRegister(**store);
        QCOMPARE(files::modeOf(path), "600");
        QCOMPARE(files::modeOf(path + "-wal"), "600");
        QCOMPARE(files::modeOf(path + "-shm"), "600");
        QCOMPARE(files::modeOf(path + "-queue"), "600");
        QVERIFY((*store)->close());
        store->reset();
        QCOMPARE(folder.names(), QStringList{"a.remate"});
    }

    void creatingOverwritesNothing_data()
    {
        QTest::addColumn<QByteArray>("present");
        QTest::addColumn<QString>("content");
        QTest::addRow("a file of that name") << QByteArray("a.remate") << "precious";
        QTest::addRow("an empty file of that name") << QByteArray("a.remate") << "";
        QTest::addRow("what another store left") << QByteArray("a.remate-wal") << "precious";
    }

    void creatingOverwritesNothing()
    {
        QFETCH(QByteArray, present);
        QFETCH(QString, content);
        const files::Folder folder;
        files::write(folder / present.constData(), content.toUtf8());
        const auto made = Store::create(folder / "a.remate");
        QCOMPARE(codeOf(made), static_cast<int>(ErrorCode::BadInput));
        QCOMPARE(folder.names(), QStringList{present});
        QCOMPARE(files::contentOf(folder / present.constData()), content.toUtf8());
    }

    void whatIsRefusedIsNotTouched_data()
    {
        QTest::addColumn<Spoil>("spoil");
        QTest::addColumn<int>("code");
        QTest::addColumn<QString>("says");
        QTest::addRow("newer") << Spoil([](const QString &path) { files::rawSql(path, "PRAGMA user_version = 9999"); })
                               << static_cast<int>(ErrorCode::StoreNewer) << "later version";
        QTest::addRow("newer, as the side file alone tells")
            << Spoil([](const QString &path) { copyWithSideFile(path, "PRAGMA user_version = 9999"); })
            << static_cast<int>(ErrorCode::StoreNewer) << "later version";
        QTest::addRow("database of another program")
            << Spoil([](const QString &path) { files::rawSql(path, "PRAGMA application_id = 7"); })
            << static_cast<int>(ErrorCode::NotAStore) << "not a store";
        QTest::addRow("text") << Spoil([](const QString &path) { files::write(path, QByteArray(5000, 'x')); })
                              << static_cast<int>(ErrorCode::NotAStore) << "not a store";
        QTest::addRow("empty") << Spoil([](const QString &path) { files::write(path, {}); })
                               << static_cast<int>(ErrorCode::NotAStore) << "not a store";
        QTest::addRow("shorter than a header") << Spoil([](const QString &path) { files::write(path, "SQLite format 3"); })
                                               << static_cast<int>(ErrorCode::NotAStore) << "not a store";
        QTest::addRow("damaged page size") << Spoil([](const QString &path) { files::overwrite(path, 16, "\x12\x34"); })
                                           << static_cast<int>(ErrorCode::Damaged) << "damaged";
        QTest::addRow("damaged fractions") << Spoil([](const QString &path) { files::overwrite(path, 21, "xyz"); })
                                           << static_cast<int>(ErrorCode::Damaged) << "damaged";
        QTest::addRow("damaged table of tables")
            << Spoil([](const QString &path) { files::overwrite(path, 100, QByteArray(3000, 'z')); })
            << static_cast<int>(ErrorCode::Damaged) << "damaged";
        QTest::addRow("cut short")
            << Spoil([](const QString &path) { files::write(path, files::contentOf(path).left(3 * 4096)); })
            << static_cast<int>(ErrorCode::Damaged) << "damaged";
    }

    void whatIsRefusedIsNotTouched()
    {
        QFETCH(Spoil, spoil);
        QFETCH(int, code);
        QFETCH(QString, says);
        const files::Folder folder;
        const QString path = folder / "a.remate";
        makeFilledStore(path);
        spoil(path);
        const QStringList names = folder.names();
        const QByteArray before = files::contentOf(path);
        for (const Access access : {Access::ReadWrite, Access::ReadOnly}) {
            const auto opened = Store::open(path, access);
            QCOMPARE(codeOf(opened), code);
            QVERIFY2(opened.error().message.contains(says), qPrintable(opened.error().message));
            QVERIFY(files::contentOf(path) == before);
            // SQLite's index of a side file is not content; it is made again by whoever needs it.
            QStringList after = folder.names();
            if (names.contains("a.remate-wal"))
                after.removeAll("a.remate-shm");
            QCOMPARE(after, names);
        }
    }

    /// The power went while the first page was written back: the side file holds it still.
    void theFirstPageIsReadThroughTheSideFile()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        makeFilledStore(path);
        copyWithSideFile(path, "PRAGMA user_version = " + QByteArray::number(db::newestVersion()));
        QVERIFY(!files::contentOf(path + "-wal").isEmpty());
        files::overwrite(path, 0, QByteArray(512, '\x5a'));
        auto store = Store::open(path, Access::ReadWrite);
        QVERIFY2(store, qPrintable(outcomeOf(store)));
        QCOMPARE((*store)->head(entries::ledger("register"))->seq, 40);
        QVERIFY((*store)->close());
    }

    void anotherProgramsSideFileIsNotTouched()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        files::write(path, QByteArray(5000, 'x'));
        files::write(path + "-wal", "precious");
        for (const Access access : {Access::ReadWrite, Access::ReadOnly})
            QCOMPARE(codeOf(Store::open(path, access)), static_cast<int>(ErrorCode::NotAStore));
        QCOMPARE(files::contentOf(path), QByteArray(5000, 'x'));
        QCOMPARE(files::contentOf(path + "-wal"), "precious");
    }

    void whatIsNotThereIsNotFound()
    {
        const files::Folder folder;
        QCOMPARE(codeOf(Store::open(folder / "a.remate", Access::ReadWrite)), static_cast<int>(ErrorCode::NotFound));
        QCOMPARE(codeOf(Store::open(folder.path(), Access::ReadOnly)), static_cast<int>(ErrorCode::NotAStore));
        QCOMPARE(folder.names(), QStringList{});
    }

    void whatMayNotBeWrittenMayBeRead_data()
    {
        QTest::addColumn<int>("fileMode");
        QTest::addColumn<int>("folderMode");
        QTest::addColumn<QString>("says");
        QTest::addRow("file is read-only") << 0444 << 0777 << "You may read";
        QTest::addRow("folder is read-only") << 0666 << 0555 << "write to the folder";
        QTest::addRow("both are read-only") << 0444 << 0555 << "You may read";
    }

    void whatMayNotBeWrittenMayBeRead()
    {
        QFETCH(int, fileMode);
        QFETCH(int, folderMode);
        QFETCH(QString, says);
        const files::Folder folder;
        const QString path = folder / "a.remate";
        makeFilledStore(path);
        const QByteArray before = files::contentOf(path);
        QCOMPARE(chmod(QFile::encodeName(path), static_cast<mode_t>(fileMode)), 0);
        QCOMPARE(chmod(QFile::encodeName(folder.path()), static_cast<mode_t>(folderMode)), 0);
        {
            const files::AsOrdinaryUser user;
            const auto opened = Store::open(path, Access::ReadWrite);
            QCOMPARE(codeOf(opened), static_cast<int>(ErrorCode::ReadOnly));
            QVERIFY2(opened.error().message.contains(says), qPrintable(opened.error().message));
            auto reading = Store::open(path, Access::ReadOnly);
            QVERIFY2(reading, qPrintable(outcomeOf(reading)));
            QCOMPARE((*reading)->read(entries::ledger("register"))->size(), 40u);
            QVERIFY((*reading)->close());
        }
        QCOMPARE(chmod(QFile::encodeName(folder.path()), 0777), 0);
        QVERIFY(files::contentOf(path) == before);
        QCOMPARE(folder.names(), QStringList{"a.remate"});
    }

    void readingLeavesNothingBehind()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        makeFilledStore(path);
        const QByteArray before = files::contentOf(path);
        {
            auto store = Store::open(path, Access::ReadOnly);
            QVERIFY2(store, qPrintable(outcomeOf(store)));
            QCOMPARE((*store)->head(entries::ledger("register"))->seq, 40);
            QVERIFY((*store)->close());
        }
        QVERIFY(files::contentOf(path) == before);
        QCOMPARE(folder.names(), QStringList{"a.remate"});
    }

    void readingWritesNothingBack()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        makeFilledStore(path);
        copyWithSideFile(path, "INSERT INTO meta (name, value) VALUES ('newest', 7)");
        const QByteArray before = files::contentOf(path);
        const QByteArray sideFile = files::contentOf(path + "-wal");
        QVERIFY(!sideFile.isEmpty());
        {
            auto store = Store::open(path, Access::ReadOnly);
            QVERIFY2(store, qPrintable(outcomeOf(store)));
            QCOMPARE((*store)->head(entries::ledger("register"))->seq, 40);
            QVERIFY((*store)->close());
        }
        QVERIFY(files::contentOf(path) == before);
        QVERIFY(files::contentOf(path + "-wal") == sideFile);
    }

    void aStoreOpenForReadingTakesNothing()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        makeFilledStore(path);
        auto store = *Store::open(path, Access::ReadOnly);
        const auto head = *store->head(entries::ledger("register"));
        const auto entry = entries::after(head, entries::ledger("register"), {}, entries::hand("Root"));
        QCOMPARE(store->append({&entry, 1}, head).error().code, ErrorCode::ReadOnly);
        QCOMPARE(store->attachments().put("photo", "image/jpeg").error().code, ErrorCode::ReadOnly);
        QCOMPARE(*store->head(entries::ledger("register")), head);
    }

    void anotherProgramHoldsTheStore()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        makeFilledStore(path);
        sqlite3 *other = nullptr;
        QCOMPARE(sqlite3_open(QFile::encodeName(path), &other), SQLITE_OK);
        QCOMPARE(sqlite3_exec(other, "PRAGMA locking_mode = EXCLUSIVE; PRAGMA journal_mode = DELETE; BEGIN EXCLUSIVE", nullptr,
                              nullptr, nullptr),
                 SQLITE_OK);
        for (const Access access : {Access::ReadWrite, Access::ReadOnly}) {
            const auto opened = Store::open(path, access, 50ms);
            QCOMPARE(codeOf(opened), static_cast<int>(ErrorCode::Locked));
            QVERIFY2(opened.error().message.contains("held by another program"), qPrintable(opened.error().message));
        }
        sqlite3_close(other);
        QVERIFY(Store::open(path, Access::ReadWrite));
    }

    void anotherProgramIsWriting()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        makeFilledStore(path);
        auto store = *Store::open(path, Access::ReadWrite, 100ms);
        const auto head = *store->head(entries::ledger("register"));
        const auto entry = entries::after(head, entries::ledger("register"), {}, entries::hand("Root"));
        sqlite3 *other = nullptr;
        QCOMPARE(sqlite3_open(QFile::encodeName(path), &other), SQLITE_OK);
        QCOMPARE(sqlite3_exec(other, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr), SQLITE_OK);
        const auto refused = store->append({&entry, 1}, head);
        QCOMPARE(refused.error().code, ErrorCode::Locked);
        QVERIFY2(refused.error().message.contains("Another program holds the store"), qPrintable(refused.error().message));
        QCOMPARE(*store->head(entries::ledger("register")), head);
        QCOMPARE(sqlite3_exec(other, "ROLLBACK", nullptr, nullptr, nullptr), SQLITE_OK);
        sqlite3_close(other);
        QVERIFY(store->append({&entry, 1}, head));
    }

    void twoStoresOnOneFileInOneProgram()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        makeFilledStore(path);
        auto first = *Store::open(path, Access::ReadWrite);
        const auto head = *first->head(entries::ledger("register"));
        // Opening reads the file's header. Were the file closed by other means than SQLite's, POSIX would drop the locks that
        // first holds; another program, closing as if it were the last, would then take the side file away from under it.
        QVERIFY((*Store::open(path, Access::ReadWrite))->close());
        QCOMPARE(QProcess::execute(QCoreApplication::applicationDirPath() + "/store_writer", {path, "job", "Ana", "1"}), 0);
        QVERIFY(QFile::exists(path + "-wal"));
        const auto entry = entries::after(head, entries::ledger("register"), {}, entries::hand("Root"));
        QVERIFY(first->append({&entry, 1}, head));
        QVERIFY(first->close());
        first.reset();
        auto again = *Store::open(path, Access::ReadOnly);
        QCOMPARE(again->head(entries::ledger("register"))->seq, 41);
        QCOMPARE(again->head(entries::ledger("job"))->seq, 1);
    }

private:
    /// Puts a change into the side file and leaves it there, as a program that was killed would.
    static void copyWithSideFile(const QString &path, const char *sql)
    {
        const QString live = path + ".live";
        QFile::rename(path, live);
        sqlite3 *handle = nullptr;
        sqlite3_open(QFile::encodeName(live), &handle);
        sqlite3_exec(handle, sql, nullptr, nullptr, nullptr);
        QFile::copy(live, path);
        QFile::copy(live + "-wal", path + "-wal");
        sqlite3_close(handle);
        QFile::remove(live);
    }
};

QTEST_GUILESS_MAIN(TestOpening)
#include "tst_opening.moc"
