// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

#include <functional>

#include "app/package/zip_reader.hpp"
#include "app/package/zip_writer.hpp"
#include "tests/fault/tamper/zip_parts.hpp"

using namespace Qt::StringLiterals;
using battery::ZipParts;

namespace {

/// The CRC-32 of "123456789", which is its check value in every catalogue of such sums (from memory).
constexpr quint32 crcOfNineDigits = 0xcbf43926;
const QByteArray nineDigits = "123456789";

} // namespace

/// What a file in a ZIP unpacks to is what its headers say, and nothing stands behind it.
class TstZipReader : public QObject {
    Q_OBJECT

private slots:
    void initTestCase()
    {
        auto zip = package::ZipWriter::create(path(u"good.zip"_s));
        QVERIFY(zip);
        QVERIFY(zip->addBytes(u"bag/deflated.txt"_s, m_long, package::Packing::Deflated) && zip->addBytes(u"bag/stored.txt"_s, nineDigits, package::Packing::Stored));
        QVERIFY(zip->finish({}));
        QFile file(path(u"good.zip"_s));
        QVERIFY(file.open(QIODevice::ReadOnly));
        m_good = file.readAll();
    }

    void checkSumIsThatOfTheCatalogues()
    {
        const ZipParts parts = ZipParts::of(m_good);
        QCOMPARE(ZipParts::four(parts.files[1].local, ZipParts::crc.local), crcOfNineDigits);
    }

    void anotherReaderUnpacksTheSame()
    {
        QProcess unzip;
        unzip.start(u"unzip"_s, {u"-p"_s, path(u"good.zip"_s)});
        QVERIFY(unzip.waitForFinished() && unzip.exitCode() == 0);
        QVERIFY(unzip.readAllStandardOutput() == m_long + nineDigits);
    }

    void aFileIsReadAsItsHeadersSayOrNotAtAll_data()
    {
        using File = ZipParts::File;
        using Play = std::function<void(File &)>;
        QTest::addColumn<int>("at");
        QTest::addColumn<Play>("play");
        QTest::addColumn<QString>("told");
        constexpr int deflated = 0, stored = 1;
        const auto packedAs = [](File &file, const QByteArray &data) {
            file.data = data;
            ZipParts::setFour(file, ZipParts::packed, static_cast<quint32>(data.size()));
        };
        const auto row = [](const char *name, int at, const Play &play, const QString &told) { QTest::newRow(name) << at << play << told; };
        row("deflated, as written", deflated, [](File &) {}, {});
        row("stored, as written", stored, [](File &) {}, {});
        row("one byte behind the end of what is deflated", deflated, [=](File &file) { packedAs(file, file.data + '\0'); }, u"behind the end"_s);
        row("a whole stream behind the end of what is deflated", deflated, [=](File &file) { packedAs(file, file.data + file.data); }, u"behind the end"_s);
        row("so much behind the end that it is read later", deflated, [=](File &file) { packedAs(file, file.data + QByteArray(200'000, 'x')); }, u"behind the end"_s);
        row("deflated, and the last byte gone", deflated, [=](File &file) { packedAs(file, file.data.chopped(1)); }, u"does not unpack"_s);
        row("deflated, and nothing there", deflated, [=](File &file) { packedAs(file, {}); }, u"does not unpack"_s);
        row("deflated, and no such stream", deflated, [=](File &file) { packedAs(file, QByteArray(file.data.size(), '\xff')); }, u"does not unpack"_s);
        row("one byte longer than its header says", deflated, [this](File &file) { ZipParts::setFour(file, ZipParts::size, static_cast<quint32>(m_long.size() - 1)); }, u"the length that it states"_s);
        row("one byte shorter than its header says", deflated, [this](File &file) { ZipParts::setFour(file, ZipParts::size, static_cast<quint32>(m_long.size() + 1)); }, u"the length that it states"_s);
        row("stored, one digit another", stored, [](File &file) { file.data[4] = '6'; }, u"check sum"_s);
        row("stored, another check sum", stored, [](File &file) { ZipParts::setFour(file, ZipParts::crc, crcOfNineDigits + 1); }, u"check sum"_s);
        row("deflated, another check sum", deflated, [](File &file) { ZipParts::setFour(file, ZipParts::crc, crcOfNineDigits); }, u"check sum"_s);
    }

    void aFileIsReadAsItsHeadersSayOrNotAtAll()
    {
        QFETCH(int, at);
        QFETCH(std::function<void(ZipParts::File &)>, play);
        QFETCH(QString, told);
        ZipParts parts = ZipParts::of(m_good);
        play(parts.files[static_cast<std::size_t>(at)]);
        QFile file(path(u"played.zip"_s));
        QVERIFY(file.open(QIODevice::WriteOnly | QIODevice::Truncate) && file.write(parts.zip()) > 0);
        file.close();
        const auto zip = package::ZipReader::open(file.fileName());
        QVERIFY2(zip.has_value(), zip ? "" : qPrintable(zip.error().message));
        const package::ZipReader::Entry &entry = (*zip)->entries()[static_cast<std::size_t>(at)];
        const auto whole = (*zip)->bytes(entry, entry.size);
        package::ZipStream byPieces = (*zip)->stream(entry);
        QByteArray pieces;
        auto piece = byPieces.read(7);
        for (; piece && !piece->isEmpty(); piece = byPieces.read(7))
            pieces += *piece;
        QCOMPARE(whole.has_value(), told.isEmpty());
        QCOMPARE(piece.has_value(), told.isEmpty());
        if (told.isEmpty()) {
            QVERIFY(*whole == (at == 0 ? m_long : nineDigits) && pieces == *whole);
        } else {
            QVERIFY2(whole.error().message.contains(told), qPrintable(whole.error().message));
            QVERIFY2(piece.error().message.contains(told), qPrintable(piece.error().message));
        }
    }

private:
    QString path(const QString &name) const { return m_folder.filePath(name); }

    QTemporaryDir m_folder;
    QByteArray m_good;
    QByteArray m_long = QByteArray("Each loose end is kept. ").repeated(20'000);
};

QTEST_GUILESS_MAIN(TstZipReader)
#include "tst_zip_reader.moc"
