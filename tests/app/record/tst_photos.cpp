// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QBuffer>
#include <QFile>
#include <QImage>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QtEndian>
#include <QtTest>

#include "app/record/photo.hpp"
#include "app/record/record.hpp"
#include "tests/app/record/programs.hpp"
#include "tests/core/reports/scene.hpp"

using namespace Qt::StringLiterals;

namespace {

/// Red on its left half, blue on its right.
QImage twoHalves(int width, int height)
{
    QImage image(width, height, QImage::Format_RGB32);
    for (int y = 0; y < height; ++y) {
        for (int x = 0; x < width; ++x)
            image.setPixel(x, y, x < width / 2 ? qRgb(220, 20, 20) : qRgb(20, 20, 220));
    }
    return image;
}

QByteArray encoded(const QImage &image, const char *format, int quality = 95)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, format, quality);
    return buffer.data();
}

/// The JPEG as a camera that was held upright writes it: Exif (CIPA DC-008) tag 274 says where row and column 0 were.
QByteArray heldAs(const QByteArray &jpeg, char orientation)
{
    const QByteArray exif = QByteArray("Exif\0\0II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0", 24) + orientation + QByteArray(7, '\0');
    const auto length = static_cast<quint16>(exif.size() + 2);
    return jpeg.left(2) + QByteArray("\xff\xe1", 2) + static_cast<char>(length >> 8) + static_cast<char>(length & 0xff) + exif + jpeg.mid(2);
}

/// A PNG whose header claims that size: ISO/IEC 15948, section 11.2.2. Width and height stand at bytes 16 and 20, the checksum of the header
/// at 29.
QByteArray claiming(QByteArray png, quint32 width, quint32 height)
{
    qToBigEndian(width, png.data() + 16);
    qToBigEndian(height, png.data() + 20);
    quint32 crc = 0xffffffff; // section D
    for (qsizetype i = 12; i < 29; ++i) {
        crc ^= static_cast<quint8>(png[i]);
        for (int bit = 0; bit < 8; ++bit)
            crc = (crc & 1) != 0 ? 0xedb88320 ^ (crc >> 1) : crc >> 1;
    }
    qToBigEndian(crc ^ 0xffffffff, png.data() + 29);
    return png;
}

bool isReddish(QRgb colour) { return qRed(colour) > 150 && qBlue(colour) < 100; }

} // namespace

class PhotosTest : public QObject {
    Q_OBJECT

private slots:
    void uprightAndSmall_data();
    void uprightAndSmall();
    void seeThroughBecomesWhite();
    void shownWithItsProof();
    void aCopyNamesItsOriginal();
    void whatCannotBeShownIsNamed_data();
    void whatCannotBeShownIsNamed();
    void zoneByZone();
    void struckIsMarked();
    void marksAreDrawnAndListed();
    void marksAreSeenOnThePicture();
    void staysAnArchive();
    void hundredsStaySmall();

private:
    QString write(const QByteArray &pdf) const
    {
        const QString path = m_folder.filePath(u"photos.pdf"_s);
        QFile file(path);
        return file.open(QIODevice::WriteOnly) && file.write(pdf) == pdf.size() ? path : QString();
    }
    /// The record as text, blanks made one.
    QString textOf(const QString &path) const { return programs::run(u"pdftotext"_s, {u"-raw"_s, path, u"-"_s}).output.replace(QRegularExpression(u"\\s+"_s), u" "_s); }
    /// The pictures in the file, a line each.
    QStringList picturesIn(const QString &path) const { return programs::run(u"pdfimages"_s, {u"-list"_s, path}).output.split(u'\n', Qt::SkipEmptyParts).mid(2); }
    QTemporaryDir m_folder;
};

namespace {

record::RecordOptions draft() { return {.pageSize = record::PageSize::A4, .whenOpen = record::WhenOpen::MarkAsDraft}; }

void attach(scene::Scene &scene, const QString &item, const QByteArray &bytes, const QString &mediaType, const QString &caption, const QByteArray &copyOf = {})
{
    core::json::Object body{{u"sha256"_s, core::Digest::of(bytes).hex()}, {u"media_type"_s, mediaType}, {u"caption"_s, caption}, {u"moment"_s, u"before"_s}};
    if (!copyOf.isEmpty())
        body.set(u"copy_of"_s, core::Digest::of(copyOf).hex());
    scene.say(u"ana"_s, u"photo.attached"_s, item, body);
}

record::FetchAttachment from(const QList<QByteArray> &kept)
{
    return [kept](const core::Digest &digest) -> core::Result<QByteArray> {
        for (const QByteArray &bytes : kept) {
            if (core::Digest::of(bytes) == digest)
                return bytes;
        }
        return core::failure(core::ErrorCode::NotFound, u"No such attachment is kept."_s);
    };
}

} // namespace

void PhotosTest::uprightAndSmall_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<QSize>("size");
    QTest::addColumn<bool>("isRedAtTheTop");
    QTest::addRow("as it is") << encoded(twoHalves(400, 200), "PNG") << QSize(400, 200) << false;
    QTest::addRow("larger than its place") << encoded(twoHalves(4000, 2000), "JPG") << QSize(600, 300) << false;
    // Of 16 bits a colour it is decoded whole: more than the 128 MiB that QImageReader allows by itself.
    QTest::addRow("needs much room") << encoded(twoHalves(54, 36).scaled(5400, 3600).convertToFormat(QImage::Format_RGBX64), "PNG", 50) << QSize(600, 400) << false;
    // Exif (CIPA DC-008), tag 274, from memory: 6 is column 0 at the top, 8 is column 0 at the bottom.
    QTest::addRow("held upright") << heldAs(encoded(twoHalves(400, 200), "JPG"), 6) << QSize(200, 400) << true;
    QTest::addRow("held upright, larger") << heldAs(encoded(twoHalves(4000, 2000), "JPG"), 6) << QSize(200, 400) << true;
    QTest::addRow("held the other way up") << heldAs(encoded(twoHalves(400, 200), "JPG"), 8) << QSize(200, 400) << false;
}

void PhotosTest::uprightAndSmall()
{
    QFETCH(QByteArray, bytes);
    QFETCH(QSize, size);
    QFETCH(bool, isRedAtTheTop);
    const auto photo = record::shown(bytes, {600, 400});
    QVERIFY(photo);
    QCOMPARE(photo->pixels, size);
    const QImage image = QImage::fromData(photo->jpeg, "JPG");
    QCOMPARE(image.size(), size);
    const bool isLying = size.width() > size.height();
    QCOMPARE(isReddish(image.pixel(size.width() / 4, size.height() / 8)), isLying || isRedAtTheTop);
    QCOMPARE(isReddish(image.pixel(size.width() * 3 / 4, size.height() * 7 / 8)), !isLying && !isRedAtTheTop);
}

void PhotosTest::seeThroughBecomesWhite()
{
    QImage glass(20, 20, QImage::Format_ARGB32);
    glass.fill(QColor(0, 0, 0, 0));
    const auto photo = record::shown(encoded(glass, "PNG"), {600, 400});
    QVERIFY(photo);
    const QRgb colour = QImage::fromData(photo->jpeg, "JPG").pixel(10, 10);
    QVERIFY(qRed(colour) > 250 && qGreen(colour) > 250 && qBlue(colour) > 250);
}

void PhotosTest::shownWithItsProof()
{
    const QByteArray bytes = encoded(twoHalves(3000, 2000), "JPG");
    scene::Scene scene;
    scene.open(1);
    attach(scene, u"E001"_s, bytes, u"image/jpeg"_s, u"Clamp ear, seen from below"_s);
    auto options = draft();
    options.attachment = from({bytes});
    const core::JobRecord job = scene.record();
    const QString path = write(*record::recordPdf(job, options));
    const QString text = textOf(path);
    const core::Entry &entry = job.entries().back();
    for (const QString &expected : {u"E001 Bleed duct, station 1 Entry %1, before: Clamp ear, seen from below"_s.arg(entry.said.seq),
                                    u"Ana Ruiz, recorded %1. SHA-256 %2…"_s.arg(entry.said.at.spoken(), core::Digest::of(bytes).hex().left(16))})
        QVERIFY2(text.contains(expected), qPrintable(expected));
    const QStringList pictures = picturesIn(path);
    QCOMPARE(pictures.size(), 1);
    // Page, number, kind, width, height, colour, components, bits, encoding.
    QVERIFY2(QRegularExpression(u"image +670 +44[67] +rgb +3 +8 +jpeg"_s).match(pictures.first()).hasMatch(), qPrintable(pictures.first()));
    QVERIFY(!text.contains(u"is not shown"_s));
}

/// Of a copy the record names the file that it was made from, and asks for no such file.
void PhotosTest::aCopyNamesItsOriginal()
{
    const QByteArray original = encoded(twoHalves(3000, 2000), "JPG");
    const QByteArray copy = encoded(twoHalves(300, 200), "JPG");
    scene::Scene scene;
    scene.open(1);
    attach(scene, u"E001"_s, copy, u"image/jpeg"_s, u"Clamp ear"_s, original);
    attach(scene, u"E001"_s, original, u"image/jpeg"_s, u"All of it"_s);
    auto options = draft();
    options.attachment = from({copy, original});
    const QString text = textOf(write(*record::recordPdf(scene.record(), options)));
    const QString named = u"SHA-256 %1… Copy of a file with SHA-256 %2…"_s.arg(core::Digest::of(copy).hex().left(16), core::Digest::of(original).hex().left(16));
    QVERIFY2(text.contains(named), qPrintable(text));
    QCOMPARE(text.count(u"Copy of a file"_s), 1);
}

void PhotosTest::whatCannotBeShownIsNamed_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<bool>("isKept");
    QTest::addColumn<QString>("because");
    const QByteArray png = encoded(twoHalves(40, 20), "PNG");
    QTest::addRow("a paper") << QByteArray("%PDF-1.4 a certificate") << true << u"It is neither JPEG nor PNG"_s;
    QTest::addRow("a drawing of another sort") << QByteArray("<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'/>") << true << u"It is neither JPEG nor PNG"_s;
    QTest::addRow("cut off") << png.left(png.size() / 2) << true << u"It cannot be decoded"_s;
    QTest::addRow("a few bytes that claim to fill the memory") << claiming(png, 60'000, 60'000) << true << u"It claims 60000 × 60000 pixels"_s;
    QTest::addRow("claims as much as is drawn, but a lie") << claiming(png, 10'000, 10'000) << true << u"It cannot be decoded"_s;
    QTest::addRow("not in the store") << png << false << u"No such attachment is kept."_s;
}

void PhotosTest::whatCannotBeShownIsNamed()
{
    QFETCH(QByteArray, bytes);
    QFETCH(bool, isKept);
    QFETCH(QString, because);
    scene::Scene scene;
    scene.open(1);
    attach(scene, u"E001"_s, bytes, u"image/png"_s, u"Seen from below"_s);
    auto options = draft();
    options.attachment = from(isKept ? QList<QByteArray>{bytes} : QList<QByteArray>());
    const QString path = write(*record::recordPdf(scene.record(), options));
    const QString text = textOf(path);
    QVERIFY2(text.contains(u"This attachment is not shown. "_s + because), qPrintable(text.mid(text.indexOf(u"Photos"_s), 400)));
    QVERIFY(text.contains(u"before: Seen from below"_s));
    QCOMPARE(picturesIn(path), QStringList());
    // With nobody to ask for it, it has its place as well.
    const QString unasked = textOf(write(*record::recordPdf(scene.record(), draft())));
    QVERIFY(unasked.contains(u"This attachment is not shown. The store that holds it was not at hand."_s));
}

void PhotosTest::zoneByZone()
{
    const QByteArray bytes = encoded(twoHalves(40, 20), "PNG");
    scene::Scene scene;
    scene.open(6); // E006 is outboard
    for (const QString &item : {u"E006"_s, u"E003"_s, u"E001"_s})
        attach(scene, item, bytes, u"image/png"_s, u"picture of "_s + item);
    auto options = draft();
    options.attachment = from({bytes});
    const QString text = textOf(write(*record::recordPdf(scene.record(), options)));
    const QString photos = text.mid(text.indexOf(u" Photos Zone "_s));
    static const QRegularExpression order(u"^ Photos Zone Inboard .*picture of E001.*picture of E003.*Zone Outboard .*picture of E006"_s);
    QVERIFY2(order.match(photos).hasMatch(), qPrintable(photos.left(800)));
}

void PhotosTest::struckIsMarked()
{
    const QByteArray bytes = encoded(twoHalves(40, 20), "PNG");
    scene::Scene scene;
    scene.open(1);
    attach(scene, u"E001"_s, bytes, u"image/png"_s, u"of the wrong clamp"_s);
    scene.say(u"ana"_s, u"entry.struck"_s, {}, {{u"entry"_s, 3}, {u"reason"_s, u"Taken at another engine."_s}});
    auto options = draft();
    options.attachment = from({bytes});
    const QString path = write(*record::recordPdf(scene.record(), options));
    const QString text = textOf(path);
    const QString photos = text.mid(text.indexOf(u" Photos Zone "_s));
    QVERIFY2(photos.contains(u"before: of the wrong clamp Ana Ruiz, recorded"_s), qPrintable(photos.left(400)));
    QVERIFY2(photos.left(600).contains(u"Struck by entry 4: Taken at another engine."_s), qPrintable(photos.left(600)));
    QCOMPARE(picturesIn(path).size(), 1);
}

/// ISO 19005-1: pictures as well.
void PhotosTest::marksAreDrawnAndListed()
{
    scene::Scene scene;
    scene.open(1);
    const QByteArray photo = encoded(twoHalves(400, 200), "PNG");
    attach(scene, u"E001"_s, photo, u"image/png"_s, u"as it came off"_s);
    scene.say(u"ana"_s, u"photo.marked"_s, u"E001"_s,
              {{u"sha256"_s, core::Digest::of(photo).hex()},
               {u"marks"_s, core::json::Array{core::json::Object{{u"number"_s, 1}, {u"across"_s, 250}, {u"down"_s, 500}, {u"what"_s, u"chafed here"_s}},
                                              core::json::Object{{u"number"_s, 2}, {u"across"_s, 900}, {u"down"_s, 100}, {u"what"_s, u"rivet missing"_s}}}}});
    auto options = draft();
    options.attachment = from({photo});
    const QString path = write(*record::recordPdf(scene.record(), options));
    const QString text = textOf(path);
    const QString photos = text.mid(text.indexOf(u" Photos Zone "_s));
    QVERIFY2(photos.contains(u"Mark 1: chafed here. Ana Ruiz, recorded"_s), qPrintable(photos.left(600)));
    QVERIFY2(photos.contains(u"Mark 2: rivet missing."_s), qPrintable(photos.left(600)));
    QCOMPARE(picturesIn(path).size(), 1); // the entry that marks brings no second picture
}

/// Black and white where the photo is blue: the ring around the place, and nothing where no mark is.
void PhotosTest::marksAreSeenOnThePicture()
{
    const core::Mark entry{1, *core::PersonId::parse(u"ana"), core::Instant::fromMilliseconds(0)};
    const auto colours = [](const core::Result<record::Shown> &shown, const QRect &around) {
        const QImage image = QImage::fromData(shown->jpeg, "JPG");
        int white = 0;
        for (int y = around.top(); y <= around.bottom(); ++y) {
            for (int x = around.left(); x <= around.right(); ++x)
                white += qRed(image.pixel(x, y)) > 200 && qGreen(image.pixel(x, y)) > 200 ? 1 : 0;
        }
        return white;
    };
    const QByteArray lying = encoded(twoHalves(400, 200), "JPG");
    QCOMPARE(colours(record::shown(lying, {400, 400}), QRect(0, 0, 400, 200)), 0);
    const std::vector<core::PhotoMark> marks{{entry, 1, 250, 500, u"chafed"_s}};
    const auto marked = record::shown(lying, {400, 400}, marks);
    QVERIFY(colours(marked, QRect(70, 70, 60, 60)) > 50);
    QCOMPARE(colours(marked, QRect(200, 0, 200, 200)), 0);
    // On a photo that was held upright the place is one of the upright picture.
    const auto upright = record::shown(heldAs(lying, 6), {400, 400}, {{entry, 1, 500, 250, u"chafed"_s}});
    QVERIFY(colours(upright, QRect(70, 70, 60, 60)) > 50);
    QCOMPARE(colours(upright, QRect(0, 200, 200, 200)), 0);
}

void PhotosTest::staysAnArchive()
{
    QImage glass(90, 60, QImage::Format_ARGB32);
    glass.fill(QColor(200, 10, 10, 90));
    QImage grey(90, 60, QImage::Format_Grayscale8);
    grey.fill(120);
    const QList<QByteArray> kept{encoded(glass, "PNG"), encoded(grey, "JPG"), encoded(twoHalves(900, 600), "JPG")};
    scene::Scene scene;
    scene.open(1);
    for (const QByteArray &bytes : kept)
        attach(scene, u"E001"_s, bytes, u"image/png"_s, u"One of three"_s);
    auto options = draft();
    options.attachment = from(kept);
    const auto pdf = record::recordPdf(scene.record(), options);
    QVERIFY(*pdf == *record::recordPdf(scene.record(), options));
    const QString path = write(*pdf);
    QCOMPARE(picturesIn(path).size(), 3);
    const programs::Ran validated = programs::validateArchive(path);
    QVERIFY2(validated.code == 0, qPrintable(validated.output));
}

void PhotosTest::hundredsStaySmall()
{
    // Noise is the worst that a camera can bring.
    QImage noise(1500, 1000, QImage::Format_RGB32);
    quint32 seed = 7;
    for (int y = 0; y < noise.height(); ++y) {
        for (int x = 0; x < noise.width(); ++x) {
            seed = seed * 1664525 + 1013904223;
            noise.setPixel(x, y, 0xff000000U | (seed >> 8));
        }
    }
    const QByteArray bytes = encoded(noise, "JPG");
    scene::Scene scene;
    scene.open(1);
    auto options = draft();
    options.attachment = from({bytes});
    const qsizetype without = record::recordPdf(scene.record(), options)->size();
    for (int i = 0; i < 10; ++i)
        attach(scene, u"E001"_s, bytes, u"image/jpeg"_s, u"Noise"_s);
    const qsizetype with = record::recordPdf(scene.record(), options)->size();
    QVERIFY2(with - without < 10 * 400 * 1024, qPrintable(QString::number(with - without)));
    QVERIFY(bytes.size() > 1024 * 1024);
}

QTEST_MAIN(PhotosTest)
#include "tst_photos.moc"
