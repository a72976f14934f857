// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QtTest>

#include <sys/stat.h>

#include "db/store.hpp"
#include "tests/db/support/files.hpp"
#include "tests/db/support/signed_entries.hpp"

using core::ErrorCode;
using core::Instant;
using db::Access;
using db::BackupReport;
using db::Overwrite;
using db::Store;
using db::Walk;

namespace {

const Instant noon = Instant::fromMilliseconds(1'772'452'800'000);

std::unique_ptr<Store> filledStore(const QString &path)
{
    auto store = *Store::create(path);
    const auto reg = entries::beginRegister(*store, 3);
    const auto made = entries::chain(2000, {}, entries::ledger("job"), reg, entries::hand("Ana"));
    if (!store->append(made, {}) || !store->attachments().put(QByteArray(3'000'000, 'p'), "image/jpeg"))
        qFatal("not filled");
    return store;
}

} // namespace

class TestBackup : public QObject {
    Q_OBJECT

private slots:
    void theCopyIsWholeAndPrivate()
    {
        const files::Folder folder;
        auto store = filledStore(folder / "a.remate");
        QVERIFY(!*store->lastBackup());
        QList<qint64> steps;
        qint64 all = 0;
        const auto report = store->backUp(folder / "copy.remate", Overwrite::No, noon, [&](qint64 done, qint64 of) {
            steps += done;
            all = of;
            return Walk::On;
        });
        QVERIFY2(report, report ? "" : qPrintable(report.error().message));
        QCOMPARE(report->ledgers, 2);
        QCOMPARE(report->entries, 2003);
        QCOMPARE(report->bytes, QFileInfo(folder / "copy.remate").size());
        QVERIFY(steps.size() > 3 && std::is_sorted(steps.begin(), steps.end()));
        QCOMPARE(steps.last(), all);
        QCOMPARE(*store->lastBackup(), std::optional(noon));
        QCOMPARE(files::modeOf(folder / "copy.remate"), "600");
        QVERIFY(store->close());
        store.reset();
        QCOMPARE(folder.names(), (QStringList{"a.remate", "copy.remate"}));

        auto copy = *Store::open(folder / "copy.remate", Access::ReadWrite);
        auto original = *Store::open(folder / "a.remate", Access::ReadOnly);
        const auto job = entries::ledger("job");
        QVERIFY(*copy->read(job) == *original->read(job));
        QVERIFY(*copy->attachments().list() == *original->attachments().list());
        QVERIFY(entries::appendOne(*copy, job, entries::hand("Ana")));
    }

    void othersGoOnWriting()
    {
        const files::Folder folder;
        auto store = filledStore(folder / "a.remate");
        auto other = *Store::open(folder / "a.remate", Access::ReadWrite);
        const auto job = entries::ledger("job");
        const auto report = store->backUp(folder / "copy.remate", Overwrite::No, noon, [&](qint64, qint64) {
            return entries::appendOne(*other, job, entries::hand("Ben")) ? Walk::On : Walk::Stop;
        });
        QVERIFY2(report, report ? "" : qPrintable(report.error().message));
        QCOMPARE(report->entries, 2003);
        QVERIFY(store->head(job)->seq > 2003);
        QCOMPARE((*Store::open(folder / "copy.remate", Access::ReadOnly))->head(job)->seq, 2000);
    }

    void cancellingLeavesNothing_data()
    {
        QTest::addColumn<int>("after");
        QTest::addRow("at the first step") << 1;
        QTest::addRow("in the middle") << 3;
    }

    void cancellingLeavesNothing()
    {
        QFETCH(int, after);
        const files::Folder folder;
        auto store = filledStore(folder / "a.remate");
        const QStringList before = folder.names();
        int steps = 0;
        const auto report = store->backUp(folder / "copy.remate", Overwrite::No, noon,
                                          [&](qint64, qint64) { return ++steps == after ? Walk::Stop : Walk::On; });
        QCOMPARE(report.error().code, ErrorCode::Cancelled);
        QCOMPARE(folder.names(), before);
        QVERIFY(!*store->lastBackup());
    }

    void whatIsInTheWay_data()
    {
        QTest::addColumn<QString>("target");
        QTest::addColumn<bool>("overwrite");
        QTest::addColumn<QString>("says");
        QTest::addRow("a file") << "old.remate" << false << "exists already";
        QTest::addRow("the store itself") << "a.remate" << true << "is the store itself";
        QTest::addRow("the store under another name") << "link.remate" << true << "is the store itself";
        QTest::addRow("a store in use") << "used.remate" << true << "is in use";
        QTest::addRow("a folder") << "folder" << true << "exists already";
        QTest::addRow("no such folder") << "nowhere/copy.remate" << false << "No file could be made";
    }

    void whatIsInTheWay()
    {
        QFETCH(QString, target);
        QFETCH(bool, overwrite);
        QFETCH(QString, says);
        const files::Folder folder;
        auto store = filledStore(folder / "a.remate");
        files::write(folder / "old.remate", "old");
        files::write(folder / "used.remate", "used");
        files::write(folder / "used.remate-wal", "newest");
        QVERIFY(QFile::link(folder / "a.remate", folder / "link.remate"));
        QVERIFY(QDir(folder.path()).mkdir("folder"));
        const QStringList before = folder.names();
        const auto report = store->backUp(folder.path() + '/' + target, overwrite ? Overwrite::Yes : Overwrite::No, noon);
        QVERIFY(!report);
        QVERIFY2(report.error().message.contains(says), qPrintable(report.error().message));
        QCOMPARE(folder.names(), before);
        QCOMPARE(files::contentOf(folder / "old.remate"), "old");
        QCOMPARE(files::contentOf(folder / "used.remate"), "used");
    }

    void replacingWhenTold()
    {
        const files::Folder folder;
        auto store = filledStore(folder / "a.remate");
        files::write(folder / "copy.remate", "an old backup");
        QVERIFY(store->backUp(folder / "copy.remate", Overwrite::Yes, noon));
        QCOMPARE((*Store::open(folder / "copy.remate", Access::ReadOnly))->head(entries::ledger("job"))->seq, 2000);
        QCOMPARE(files::modeOf(folder / "copy.remate"), "600");
    }

    void aDamagedStoreIsNotCalledBackedUp()
    {
        const files::Folder folder;
        const QString path = folder / "a.remate";
        QVERIFY(filledStore(path)->close());
        const qint64 size = QFileInfo(path).size();
        // A page in the middle: opening does not meet it, reading everything does.
        files::overwrite(path, size / 4096 / 3 * 4096, QByteArray(4096, '\x5a'));
        auto store = *Store::open(path, Access::ReadOnly);
        const auto report = store->backUp(folder / "copy.remate", Overwrite::No, noon);
        QCOMPARE(report.error().code, ErrorCode::Damaged);
        QVERIFY(!QFile::exists(folder / "copy.remate"));
    }

    /// What integrity_check does not see: the pages hold together, an entry is not what was signed.
    void whatIsNotAsItWasRecordedIsNotBackedUp_data()
    {
        QTest::addColumn<QByteArray>("sql");
        QTest::addColumn<QString>("says");
        QTest::addRow("control: nothing changed") << QByteArray() << "";
        QTest::addRow("an entry") << QByteArray("DROP TRIGGER entries_are_never_changed; "
                                                "UPDATE entries SET bytes = CAST(replace(bytes, 'W3J1', 'W3J2') AS BLOB) "
                                                "WHERE ledger = 2 AND seq = 1000")
                                  << "Row 1000 of the ledger job is damaged";
        QTest::addRow("an attachment") << QByteArray("DROP TRIGGER attachments_are_never_changed; UPDATE attachments SET bytes = x'00'")
                                       << "Attachment 1 is damaged";
    }

    void whatIsNotAsItWasRecordedIsNotBackedUp()
    {
        QFETCH(QByteArray, sql);
        QFETCH(QString, says);
        const files::Folder folder;
        const QString path = folder / "a.remate";
        auto store = filledStore(path);
        QVERIFY(store->backUp(folder / "copy.remate", Overwrite::No, noon));
        const QByteArray good = files::contentOf(folder / "copy.remate");
        QCOMPARE(files::rawSql(path, sql.constData()), QString());
        const auto report = store->backUp(folder / "copy.remate", Overwrite::Yes, noon);
        QCOMPARE(report.has_value(), says.isEmpty());
        if (report)
            return;
        QCOMPARE(report.error().code, ErrorCode::Damaged);
        QVERIFY2(report.error().message.contains(says), qPrintable(report.error().message));
        QVERIFY(files::contentOf(folder / "copy.remate") == good);
    }

    void aBackupOpensFromAReadOnlyDisk()
    {
        const files::Folder folder;
        QVERIFY(filledStore(folder / "a.remate")->backUp(folder / "copy.remate", Overwrite::No, noon));
        QCOMPARE(chmod(QFile::encodeName(folder / "copy.remate"), 0444), 0);
        QCOMPARE(chmod(QFile::encodeName(folder.path()), 0555), 0);
        {
            const files::AsOrdinaryUser user;
            auto copy = Store::open(folder / "copy.remate", Access::ReadOnly);
            QVERIFY2(copy, copy ? "" : qPrintable(copy.error().message));
            QCOMPARE((*copy)->head(entries::ledger("job"))->seq, 2000);
        }
        QCOMPARE(chmod(QFile::encodeName(folder.path()), 0777), 0);
    }
};

QTEST_GUILESS_MAIN(TestBackup)
#include "tst_backup.moc"
