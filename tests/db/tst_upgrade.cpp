// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QtTest>

#include "core/ledger/canonical.hpp"
#include "db/migrator.hpp"
#include "db/opening.hpp"
#include "db/store.hpp"
#include "tests/db/support/files.hpp"
#include "tests/db/support/signed_entries.hpp"

using db::Access;
using db::Store;

namespace {

QString copyOf(const QString &version, const files::Folder &folder)
{
    const QString copy = folder / "a.remate";
    QFile::copy(QStringLiteral(STORES) + '/' + version, copy);
    QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    return copy;
}

qint64 versionOf(const QString &path)
{
    auto connection = db::openForReading(path, std::chrono::seconds(1));
    return connection ? *db::storeVersion(**connection) : -1;
}

} // namespace

/// tests/stores holds one old store for each version that a release wrote; see its README.
class TestUpgrade : public QObject {
    Q_OBJECT

private slots:
    void migrationsAreNumberedWithoutGaps()
    {
        QDir source(QStringLiteral(MIGRATIONS));
        const QStringList names = source.entryList({"*.sql"}, QDir::Files, QDir::Name);
        QVERIFY(!names.isEmpty());
        for (qsizetype i = 0; i < names.size(); ++i)
            QCOMPARE(names[i].left(5), QString("%1_").arg(i + 1, 4, 10, QChar('0')));
        QCOMPARE(db::newestVersion(), names.size()); // a file that was not listed in sql.qrc is missing in the program
    }

    void anOldStore_data()
    {
        QTest::addColumn<QString>("version");
        const QStringList stores = QDir(QStringLiteral(STORES)).entryList({"*.remate"}, QDir::Files, QDir::Name);
        QVERIFY(!stores.isEmpty());
        for (const QString &store : stores)
            QTest::addRow("%s", qPrintable(store)) << store;
    }

    void anOldStore()
    {
        QFETCH(QString, version);
        const files::Folder folder;
        const QString path = copyOf(version, folder);
        const QByteArray before = files::contentOf(path);
        const qint64 oldVersion = QRegularExpression("v(\\d+)").match(version).captured(1).toLongLong();
        if (oldVersion < db::newestVersion()) {
            const auto reading = Store::open(path, Access::ReadOnly);
            QCOMPARE(reading.error().code, core::ErrorCode::ReadOnly);
            QVERIFY(reading.error().message.contains("earlier version"));
            QVERIFY(files::contentOf(path) == before);
        }
        {
            auto store = Store::open(path, Access::ReadWrite);
            QVERIFY2(store, store ? "" : qPrintable(store.error().message));
            const auto job = entries::ledger("job");
            const auto rows = *(*store)->read(job);
            QCOMPARE(rows.size(), 5u);
            const auto expected = entries::chain(5, {}, job, core::parseStatement(rows[0].bytes)->reg, entries::hand("Ana"),
                                                 {.kind = "torque.applied", .body = {{"tool", QString("TW-1")}}});
            for (std::size_t i = 0; i < rows.size(); ++i) {
                QCOMPARE(rows[i].bytes, expected[i].bytes);
                QCOMPARE(rows[i].hash, expected[i].hash.bytes());
                QCOMPARE(rows[i].signature, expected[i].signature);
            }
            QCOMPARE((*store)->whereUsed().find({"tool", "TW-1"}, 10)->size(), 5u);
            QVERIFY(entries::appendOne(**store, job, entries::hand("Ana")));
            QVERIFY((*store)->attachments().put("photo", "image/jpeg"));
            QVERIFY((*store)->close());
        }
        QCOMPARE(versionOf(path), db::newestVersion());
    }
};

QTEST_GUILESS_MAIN(TestUpgrade)
#include "tst_upgrade.moc"
