// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QtTest>

#include "db/store.hpp"
#include "tests/db/support/files.hpp"

using core::Digest;
using core::ErrorCode;
using db::Store;

class TestAttachments : public QObject {
    Q_OBJECT

private slots:
    void keptUnderItsDigest()
    {
        const files::Folder folder;
        auto store = *Store::create(folder / "a.remate");
        auto &attachments = store->attachments();
        // FIPS 180-4, example "abc" of SHA-256 (NIST, SHA256.pdf).
        const QString abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
        const auto digest = *attachments.put("abc", "image/png");
        QCOMPARE(digest.hex(), abc);
        QCOMPARE(*attachments.get(digest), "abc");
        QCOMPARE(*attachments.exists(digest), true);
        QCOMPARE(*attachments.put("abc", "image/jpeg"), digest);
        const auto other = *attachments.put(QByteArray(300'000, '\0'), "application/pdf");
        const std::vector<db::Attachment> all{{digest, "image/png", 3}, {other, "application/pdf", 300'000}};
        QVERIFY(*attachments.list() == all);
    }

    void whatIsNotThereIsNotFound()
    {
        const files::Folder folder;
        auto store = *Store::create(folder / "a.remate");
        QCOMPARE(*store->attachments().exists(Digest::of("abc")), false);
        QCOMPARE(store->attachments().get(Digest::of("abc")).error().code, ErrorCode::NotFound);
    }

    void whatIsNotTaken_data()
    {
        QTest::addColumn<qint64>("size");
        QTest::addColumn<QString>("mediaType");
        QTest::addColumn<QString>("says");
        QTest::addRow("empty") << qint64{0} << "image/png" << "is empty";
        QTest::addRow("one byte too large") << db::Attachments::largest + 1 << "image/png" << "has 65 MiB; at most 64 MiB";
        QTest::addRow("no media type") << qint64{3} << "" << "what sort of file";
    }

    void whatIsNotTaken()
    {
        QFETCH(qint64, size);
        QFETCH(QString, mediaType);
        QFETCH(QString, says);
        const files::Folder folder;
        auto store = *Store::create(folder / "a.remate");
        const auto done = store->attachments().put(QByteArray(size, 'x'), mediaType);
        QCOMPARE(done.error().code, ErrorCode::BadInput);
        QVERIFY2(done.error().message.contains(says), qPrintable(done.error().message));
        QVERIFY(store->attachments().list()->empty());
    }

    void theLargestIsTaken()
    {
        const files::Folder folder;
        auto store = *Store::create(folder / "a.remate");
        const QByteArray bytes(db::Attachments::largest, 'x');
        const auto digest = store->attachments().put(bytes, "image/png");
        QVERIFY2(digest, digest ? "" : qPrintable(digest.error().message));
        QVERIFY(*store->attachments().get(*digest) == bytes);
    }

    void changedInTheStore_data()
    {
        QTest::addColumn<QByteArray>("sql");
        QTest::addRow("one byte") << QByteArray("UPDATE attachments SET bytes = CAST('abd' AS BLOB)");
        QTest::addRow("cut off") << QByteArray("UPDATE attachments SET bytes = x'61'");
        QTest::addRow("emptied") << QByteArray("UPDATE attachments SET bytes = x''");
    }

    void changedInTheStore()
    {
        QFETCH(QByteArray, sql);
        const files::Folder folder;
        const QString path = folder / "a.remate";
        auto store = *Store::create(path);
        const auto digest = *store->attachments().put("abc", "image/png");
        QCOMPARE(files::rawSql(path, "DROP TRIGGER attachments_are_never_changed; " + sql), QString());
        const auto read = store->attachments().get(digest);
        QCOMPARE(read.error().code, ErrorCode::Damaged);
        QVERIFY(read.error().message.contains(digest.hex()));
    }
};

QTEST_GUILESS_MAIN(TestAttachments)
#include "tst_attachments.moc"
