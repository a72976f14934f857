// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>
#include <QMimeData>
#include <QTemporaryDir>
#include <QTest>
#include <QUrl>
#include <QtEndian>

#include "app/photos/bare_copy.hpp"
#include "app/photos/exif_place.hpp"
#include "app/photos/incoming.hpp"
#include "tests/app/photos/camera.hpp"

using namespace Qt::StringLiterals;

namespace {

bool isReddish(QRgb colour) { return qRed(colour) > 150 && qBlue(colour) < 100; }

/// A PNG (ISO/IEC 15948, section 11.2.2) that claims such a size; its picture data stay those of a small one. CRC by section 5.3 and annex D.
QByteArray pngThatClaims(quint32 width, quint32 height, QImage::Format format = QImage::Format_RGB32)
{
    QByteArray png = camera::pngOf(camera::twoHalves(8, 8).convertToFormat(format));
    qToBigEndian(width, png.data() + 16);
    qToBigEndian(height, png.data() + 20);
    quint32 crc = 0xffffffff;
    for (int i = 12; i < 29; ++i) {
        crc ^= static_cast<quint8>(png[i]);
        for (int bit = 0; bit < 8; ++bit)
            crc = crc & 1 ? 0xedb88320 ^ (crc >> 1) : crc >> 1;
    }
    qToBigEndian(crc ^ 0xffffffff, png.data() + 29);
    return png;
}

const QByteArray homeward = "taken beside the owner's house";

} // namespace

class PhotoFilesTest : public QObject {
    Q_OBJECT

private slots:
    void whatIsTaken_data();
    void whatIsTaken();
    void aFileIsRead();
    void tellsWhereItWasTaken_data();
    void tellsWhereItWasTaken();
    void aBareCopyHoldsThePictureAlone_data();
    void aBareCopyHoldsThePictureAlone();
    void aLargePictureIsTakenWhole_data();
    void aLargePictureIsTakenWhole();
    void aCopyIsAnotherFile();
    void droppedAndPasted_data();
    void droppedAndPasted();

private:
    QTemporaryDir m_folder;
};

void PhotoFilesTest::whatIsTaken_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<QString>("says"); // the media type, or a word of the refusal
    QTest::addColumn<bool>("isTaken");
    const QByteArray jpeg = camera::jpegOf(camera::twoHalves(80, 40));
    const QByteArray png = camera::pngOf(camera::twoHalves(80, 40));
    QTest::newRow("JPEG") << jpeg << u"image/jpeg"_s << true;
    QTest::newRow("PNG") << png << u"image/png"_s << true;
    QTest::newRow("nothing") << QByteArray() << u"empty"_s << false;
    QTest::newRow("words") << QByteArray("no picture at all") << u"JPEG or PNG"_s << false;
    QTest::newRow("GIF") << QByteArray("GIF89a\1\0\1\0\0\0\0;", 14) << u"JPEG or PNG"_s << false;
    // A WebP (RFC 9649, section 2.7, whose layout of 1 × 1 pixel is written from memory): signed, it would have no place on paper, so it is refused.
    QTest::newRow("WebP") << QByteArray("RIFF\x1a\0\0\0WEBPVP8L\x0d\0\0\0\x2f\0\0\0\x10\x07\x10\x11\x11\x88\x88\xfe\x07\0", 34) << u"JPEG or PNG"_s << false;
    QTest::newRow("PNG cut off") << png.first(60) << u"damaged"_s << false;
    QTest::newRow("as large as can be, but a lie") << pngThatClaims(12'000, 10'000) << u"damaged"_s << false;
    QTest::newRow("larger than can be shown") << pngThatClaims(12'000, 10'001) << u"12000 × 10001 pixels"_s << false;
    QTest::newRow("16 bits a colour, as large as can be, but a lie") << pngThatClaims(12'000, 5'000, QImage::Format_RGBX64) << u"damaged"_s << false;
    QTest::newRow("16 bits a colour, larger") << pngThatClaims(12'000, 5'001, QImage::Format_RGBX64) << u"12000 × 5001 pixels"_s << false;
    QTest::newRow("more than a store keeps in one piece") << jpeg + QByteArray(photos::mostBytes - jpeg.size() + 1, 'x') << u"64 MiB"_s << false;
    QTest::newRow("just as much") << jpeg + QByteArray(photos::mostBytes - jpeg.size(), 'x') << u"image/jpeg"_s << true;
}

void PhotoFilesTest::whatIsTaken()
{
    QFETCH(QByteArray, bytes);
    QFETCH(QString, says);
    QFETCH(bool, isTaken);
    const auto photo = photos::photoFrom(u"IMG_7.jpg"_s, bytes);
    QCOMPARE(photo.has_value(), isTaken);
    const QString said = photo ? photo->mediaType : photo.error().message;
    QVERIFY2(said.contains(says), qPrintable(said));
    if (!isTaken)
        QVERIFY2(said.contains(u"IMG_7.jpg"), qPrintable(said));
}

void PhotoFilesTest::aFileIsRead()
{
    const QByteArray jpeg = camera::jpegOf(camera::twoHalves(80, 40));
    const QString path = m_folder.filePath(u"IMG_8.JPG"_s);
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly) && file.write(jpeg) == jpeg.size());
    file.close();
    const auto photo = photos::readPhoto(path);
    QVERIFY(photo);
    QCOMPARE(*photo, (photos::PhotoFile{u"IMG_8.JPG"_s, jpeg, u"image/jpeg"_s}));
    const auto none = photos::readPhoto(m_folder.filePath(u"none.jpg"_s));
    QCOMPARE(none.error().code, core::ErrorCode::Io);
    QVERIFY(none.error().message.contains(u"none.jpg"));
}

void PhotoFilesTest::tellsWhereItWasTaken_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<bool>("tells");
    const QByteArray jpeg = camera::jpegOf(camera::twoHalves(80, 40));
    QTest::newRow("nothing written") << jpeg << false;
    QTest::newRow("held upright alone") << camera::with(jpeg, {camera::exifSegment(6, false)}) << false;
    QTest::newRow("with its place") << camera::with(jpeg, {camera::exifSegment(1, true)}) << true;
    QTest::newRow("after a comment") << camera::with(jpeg, {camera::commentSegment("words"), camera::exifSegment(1, true)}) << true;
    const QByteArray exif = camera::exifSegment(1, true);
    for (const int left : {4, 9, 12, 18, 30, 40})
        QTest::addRow("cut off after %d bytes", left) << jpeg.first(2) + exif.first(left) << false;
    QTest::newRow("PNG") << camera::pngOf(camera::twoHalves(8, 8)) << false;
    QTest::newRow("nothing") << QByteArray() << false;
}

void PhotoFilesTest::tellsWhereItWasTaken()
{
    QFETCH(QByteArray, bytes);
    QFETCH(bool, tells);
    QCOMPARE(photos::tellsPlace(bytes), tells);
}

void PhotoFilesTest::aBareCopyHoldsThePictureAlone_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<int>("longest"); // 0: as it is
    QTest::addColumn<QSize>("size");
    QTest::addColumn<bool>("isRedAtTheBottom");
    const QByteArray jpeg = camera::jpegOf(camera::twoHalves(400, 200));
    const auto taken = [&](quint16 orientation) { return camera::with(jpeg, {camera::exifSegment(orientation, true), camera::commentSegment(homeward)}); };
    // Orientation: 1 as it lies; 6, column 0 is the top of the right hand side; 8, of the left (Exif 2.3, section 4.6.4 A).
    QTest::newRow("as it lies") << taken(1) << 0 << QSize(400, 200) << false;
    QTest::newRow("held upright") << taken(6) << 0 << QSize(200, 400) << true;
    QTest::newRow("held the other way up") << taken(8) << 0 << QSize(200, 400) << false;
    QTest::newRow("smaller") << taken(1) << 100 << QSize(100, 50) << false;
    QTest::newRow("held upright, smaller") << taken(6) << 100 << QSize(50, 100) << true;
    QTest::newRow("not made larger") << taken(6) << 4000 << QSize(200, 400) << true;
    QImage image = camera::twoHalves(400, 200);
    image.setText(u"Comment"_s, QString::fromLatin1(homeward));
    QTest::newRow("PNG with words in it") << camera::pngOf(image) << 0 << QSize(400, 200) << false;
}

void PhotoFilesTest::aBareCopyHoldsThePictureAlone()
{
    QFETCH(QByteArray, bytes);
    QFETCH(int, longest);
    QFETCH(QSize, size);
    QFETCH(bool, isRedAtTheBottom);
    QVERIFY(bytes.contains(homeward) || bytes.contains("Comment"));
    const auto photo = photos::photoFrom(u"IMG_9.png"_s, bytes);
    QVERIFY(photo);
    const auto copy = photos::bareCopy(*photo, longest > 0 ? std::optional(longest) : std::nullopt);
    QVERIFY(copy);
    QCOMPARE(copy->name, u"IMG_9.jpg"_s);
    QCOMPARE(copy->mediaType, u"image/jpeg"_s);
    for (const quint8 marker : camera::markersOf(copy->bytes)) {
        QVERIFY2(marker < 0xe1 || marker > 0xef, qPrintable(u"APP%1 is left"_s.arg(marker - 0xe0)));
        QVERIFY2(marker != 0xfe, "a comment is left");
    }
    QVERIFY(!copy->bytes.contains("Exif"));
    QVERIFY(!copy->bytes.contains(camera::latitudeBytes()));
    QVERIFY(!copy->bytes.contains(homeward));
    QVERIFY(!photos::tellsPlace(copy->bytes));
    // Read without any turning: what was written is upright by itself.
    const QImage picture = QImage::fromData(copy->bytes, "JPG");
    QCOMPARE(picture.size(), size);
    QCOMPARE(photos::uprightSize(copy->bytes), size);
    if (longest == 0)
        QCOMPARE(photos::uprightSize(bytes), size);
    QVERIFY(picture.text().isEmpty());
    QCOMPARE(isReddish(picture.pixel(picture.width() / 2, picture.height() - 4)) && !isReddish(picture.pixel(picture.width() / 2, 4)), isRedAtTheBottom);
}

/// 36 million pixels, as a camera of the trade makes: at four bytes each that is more than the 128 MiB that QImageReader allows by itself (Qt 6, documentation
/// of QImageReader::setAllocationLimit). The same colour everywhere leaves few bytes.
void PhotoFilesTest::aLargePictureIsTakenWhole_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QImage image(6000, 6000, QImage::Format_RGB32);
    image.fill(Qt::red);
    QTest::newRow("JPEG") << camera::jpegOf(image);
    QTest::newRow("PNG") << camera::pngOf(image);
}

void PhotoFilesTest::aLargePictureIsTakenWhole()
{
    QFETCH(QByteArray, bytes);
    const auto photo = photos::photoFrom(u"IMG_10.jpg"_s, bytes);
    QVERIFY2(photo, qPrintable(photo ? QString() : photo.error().message));
    const auto copy = photos::bareCopy(*photo, std::nullopt);
    QVERIFY2(copy, qPrintable(copy ? QString() : copy.error().message));
    QCOMPARE(photos::uprightSize(copy->bytes), QSize(6000, 6000));
}

void PhotoFilesTest::aCopyIsAnotherFile()
{
    const auto photo = photos::photoFrom(u"IMG_9.jpg"_s, camera::jpegOf(camera::twoHalves(400, 200)));
    QVERIFY(photo);
    const auto copy = photos::bareCopy(*photo, 100);
    const auto again = photos::bareCopy(*photo, 100);
    QVERIFY(copy && again);
    QVERIFY(photos::digestOf(*copy) != photos::digestOf(*photo));
    QCOMPARE(photos::digestOf(*again), photos::digestOf(*copy)); // so that the same photo is known again
}

void PhotoFilesTest::droppedAndPasted_data()
{
    QTest::addColumn<QStringList>("files");
    QTest::addColumn<QByteArray>("raw");
    QTest::addColumn<bool>("hasPicture");
    QTest::addColumn<bool>("mayHold");
    QTest::addColumn<QStringList>("taken"); // names, or the word "no"
    QTest::newRow("a file") << QStringList{u"a.jpg"_s} << QByteArray() << false << true << QStringList{u"a.jpg image/jpeg"_s};
    QTest::newRow("three, one of them words") << QStringList{u"a.jpg"_s, u"words.png"_s, u"b.png"_s} << QByteArray() << false << true << QStringList{u"a.jpg image/jpeg"_s, u"no"_s, u"b.png image/png"_s};
    QTest::newRow("what is not printed") << QStringList{u"c.webp"_s} << QByteArray() << false << false << QStringList{u"no"_s};
    QTest::newRow("a list") << QStringList{u"list.csv"_s} << QByteArray() << false << false << QStringList{u"no"_s};
    QTest::newRow("a picture") << QStringList() << QByteArray() << true << true << QStringList{u"pasted image/png"_s};
    QTest::newRow("a picture with its bytes") << QStringList() << camera::jpegOf(camera::twoHalves(20, 10)) << true << true << QStringList{u"pasted image/jpeg"_s};
    QTest::newRow("a file and its icon") << QStringList{u"a.jpg"_s} << QByteArray() << true << true << QStringList{u"a.jpg image/jpeg"_s};
    QTest::newRow("a list and its icon") << QStringList{u"list.csv"_s} << QByteArray() << true << false << QStringList{u"no"_s};
    QTest::newRow("a store and its icon") << QStringList{u"jobs.remate"_s} << QByteArray() << true << false << QStringList{u"no"_s};
    QTest::newRow("a store and its icon with its bytes") << QStringList{u"jobs.remate"_s} << camera::jpegOf(camera::twoHalves(20, 10)) << true << false << QStringList{u"no"_s};
    QTest::newRow("nothing") << QStringList() << QByteArray() << false << false << QStringList();
}

void PhotoFilesTest::droppedAndPasted()
{
    QFETCH(QStringList, files);
    QFETCH(QByteArray, raw);
    QFETCH(bool, hasPicture);
    QFETCH(bool, mayHold);
    QFETCH(QStringList, taken);
    const auto write = [&](const QString &name, const QByteArray &bytes) {
        QFile file(m_folder.filePath(name));
        return file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size();
    };
    QVERIFY(write(u"a.jpg"_s, camera::jpegOf(camera::twoHalves(20, 10))) && write(u"b.png"_s, camera::pngOf(camera::twoHalves(20, 10))));
    QVERIFY(write(u"words.png"_s, "words") && write(u"list.csv"_s, "id,name") && write(u"c.webp"_s, "RIFF") && write(u"jobs.remate"_s, "SQLite format 3"));
    QMimeData data;
    QList<QUrl> urls;
    for (const QString &file : files)
        urls << QUrl::fromLocalFile(m_folder.filePath(file));
    data.setUrls(urls);
    if (hasPicture)
        data.setImageData(camera::twoHalves(20, 10));
    if (!raw.isEmpty())
        data.setData(u"image/jpeg"_s, raw);
    QCOMPARE(photos::mayHoldPhotos(data), mayHold);
    QStringList got;
    for (const auto &photo : photos::photosIn(data, u"pasted"_s))
        got << (photo ? photo->name + u' ' + photo->mediaType : u"no"_s);
    QCOMPARE(got, taken);
}

QTEST_MAIN(PhotoFilesTest)
#include "tst_photo_files.moc"
