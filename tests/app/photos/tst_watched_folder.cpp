// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include "app/photos/watched_folder.hpp"
#include "tests/app/photos/camera.hpp"

using namespace Qt::StringLiterals;

class WatchedFolderTest : public QObject {
    Q_OBJECT

private slots:
    void init();
    void aPhotoThatComesInIsTold();
    void whatWasThereIsNot();
    void aPhotoIsToldOnceItIsWhole();
    void aNameThatCameAgain();
    void nothingIsToldAfterStopping();
    void aFolderThatIsGone();
    void noFolder();

private:
    QString path(const QString &name) const { return m_folder->filePath(name); }
    bool write(const QString &name, const QByteArray &bytes, QIODevice::OpenMode mode = QIODevice::WriteOnly) const
    {
        QFile file(path(name));
        return file.open(mode) && file.write(bytes) == bytes.size();
    }
    /// A round in which nothing more is told, whatever was put there.
    static void waitARound() { QTest::qWait(2 * photos::WatchedFolder::settleMilliseconds + 300); }
    std::unique_ptr<QTemporaryDir> m_folder;
    QByteArray m_photo = camera::jpegOf(camera::twoHalves(40, 20));
};

void WatchedFolderTest::init() { m_folder = std::make_unique<QTemporaryDir>(); }

void WatchedFolderTest::aPhotoThatComesInIsTold()
{
    photos::WatchedFolder folder;
    QSignalSpy arrived(&folder, &photos::WatchedFolder::arrived);
    QVERIFY(folder.watch(m_folder->path()));
    QVERIFY(write(u"IMG_1.JPG"_s, m_photo));
    QVERIFY(write(u"notes.txt"_s, "words"));
    QTRY_COMPARE(arrived.size(), 1);
    QCOMPARE(arrived.front().front().toString(), path(u"IMG_1.JPG"_s));
    waitARound();
    QCOMPARE(arrived.size(), 1);
}

void WatchedFolderTest::whatWasThereIsNot()
{
    QVERIFY(write(u"IMG_0.jpg"_s, m_photo));
    photos::WatchedFolder folder;
    QSignalSpy arrived(&folder, &photos::WatchedFolder::arrived);
    QVERIFY(folder.watch(m_folder->path()));
    QVERIFY(write(u"IMG_1.jpg"_s, m_photo));
    QTRY_COMPARE(arrived.size(), 1);
    QCOMPARE(arrived.front().front().toString(), path(u"IMG_1.jpg"_s));
}

void WatchedFolderTest::aPhotoIsToldOnceItIsWhole()
{
    photos::WatchedFolder folder;
    QSignalSpy arrived(&folder, &photos::WatchedFolder::arrived);
    QVERIFY(folder.watch(m_folder->path()));
    QVERIFY(write(u"IMG_1.jpg"_s, m_photo.first(10)));
    for (int piece = 1; piece < 5; ++piece) {
        QTest::qWait(photos::WatchedFolder::settleMilliseconds / 2);
        QVERIFY(arrived.isEmpty());
        QVERIFY(write(u"IMG_1.jpg"_s, m_photo.sliced(10 * piece, 10), QIODevice::Append));
    }
    QTRY_COMPARE(arrived.size(), 1);
}

void WatchedFolderTest::aNameThatCameAgain()
{
    photos::WatchedFolder folder;
    QSignalSpy arrived(&folder, &photos::WatchedFolder::arrived);
    QVERIFY(folder.watch(m_folder->path()));
    QVERIFY(write(u"IMG_1.jpg"_s, m_photo));
    QTRY_COMPARE(arrived.size(), 1);
    QVERIFY(QFile::remove(path(u"IMG_1.jpg"_s)));
    QTest::qWait(200);
    QVERIFY(write(u"IMG_1.jpg"_s, m_photo));
    QTRY_COMPARE(arrived.size(), 2);
}

void WatchedFolderTest::nothingIsToldAfterStopping()
{
    photos::WatchedFolder folder;
    QSignalSpy arrived(&folder, &photos::WatchedFolder::arrived);
    QVERIFY(folder.watch(m_folder->path()));
    QCOMPARE(folder.path(), m_folder->path());
    folder.stop();
    QCOMPARE(folder.path(), QString());
    QVERIFY(write(u"IMG_1.jpg"_s, m_photo));
    waitARound();
    QVERIFY(arrived.isEmpty());
}

void WatchedFolderTest::aFolderThatIsGone()
{
    photos::WatchedFolder folder;
    QSignalSpy lost(&folder, &photos::WatchedFolder::lost);
    const QString camera = path(u"camera"_s);
    QVERIFY(QDir().mkdir(camera));
    QVERIFY(folder.watch(camera));
    QVERIFY(QDir().rmdir(camera));
    QTRY_COMPARE(lost.size(), 1);
    QCOMPARE(lost.front().front().toString(), camera);
    QCOMPARE(folder.path(), QString());
}

void WatchedFolderTest::noFolder()
{
    photos::WatchedFolder folder;
    const auto none = folder.watch(path(u"none"_s));
    QVERIFY(!none);
    QCOMPARE(none.error().code, core::ErrorCode::NotFound);
    QVERIFY(none.error().message.contains(path(u"none"_s)));
    QVERIFY(write(u"file"_s, "words"));
    QVERIFY(!folder.watch(path(u"file"_s)));
}

QTEST_GUILESS_MAIN(WatchedFolderTest)
#include "tst_watched_folder.moc"
