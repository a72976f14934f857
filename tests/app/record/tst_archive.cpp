// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QtTest>

#include "app/record/finish.hpp"
#include "app/record/record.hpp"
#include "tests/app/record/programs.hpp"
#include "tests/core/reports/scene.hpp"

using namespace Qt::StringLiterals;

namespace {

/// One change of as many bytes, so that no offset of the file moves.
QByteArray with(QByteArray pdf, const QByteArray &before, const QByteArray &after)
{
    const qsizetype at = pdf.indexOf(before);
    return at < 0 || before.size() != after.size() ? QByteArray() : pdf.replace(at, before.size(), after);
}

} // namespace

/// Whether the record is what an archive asks for, by programs that are not ours.
class ArchiveTest : public QObject {
    Q_OBJECT

private slots:
    void isValid_data();
    void isValid();
    void brokenIsRefused_data();
    void brokenIsRefused();
    void everyFontIsEmbedded();
    void anyTextAsTitle();
    void whatIsNoPdfIsRefused();

private:
    QString write(const QByteArray &pdf) const
    {
        const QString path = m_folder.filePath(u"record.pdf"_s);
        QFile file(path);
        return file.open(QIODevice::WriteOnly) && file.write(pdf) == pdf.size() ? path : QString();
    }
    QTemporaryDir m_folder;
};

void ArchiveTest::isValid_data()
{
    QTest::addColumn<record::PageSize>("size");
    QTest::addColumn<bool>("isClosed");
    QTest::addRow("A4") << record::PageSize::A4 << true;
    QTest::addRow("Letter") << record::PageSize::Letter << true;
    QTest::addRow("A4, a draft") << record::PageSize::A4 << false;
}

/// ISO 19005-1, conformance level B, as preflight checks it; and the syntax of ISO 32000-1, as qpdf does.
void ArchiveTest::isValid()
{
    QFETCH(record::PageSize, size);
    QFETCH(bool, isClosed);
    const auto pdf = record::recordPdf(isClosed ? scene::closedRecord(25) : scene::openRecord(10), {.pageSize = size, .whenOpen = record::WhenOpen::MarkAsDraft});
    QVERIFY(pdf);
    const QString path = write(*pdf);
    const programs::Ran validated = programs::validateArchive(path);
    QVERIFY2(validated.code == 0 && validated.output.contains(u"is a valid PDF/A-1b file"_s), qPrintable(validated.output));
    const programs::Ran checked = programs::run(u"qpdf"_s, {u"--check"_s, path});
    QVERIFY2(checked.code == 0 && checked.output.contains(u"No syntax or stream encoding errors found"_s), qPrintable(checked.output));
}

void ArchiveTest::brokenIsRefused_data()
{
    QTest::addColumn<QByteArray>("before");
    QTest::addColumn<QByteArray>("after");
    QTest::addColumn<QString>("said");
    // The clauses are those of ISO 19005-1.
    QTest::addRow("6.7.11: does not call itself an archive") << QByteArray("pdfaid:part=\"1\"") << QByteArray("pdfaid:part=\"7\"") << u"7.11.2"_s;
    QTest::addRow("6.7.3: dated otherwise outside and inside") << QByteArray("xmp:CreateDate=\"2026") << QByteArray("xmp:CreateDate=\"2025") << u"7.2"_s;
    QTest::addRow("6.2.2: no intent for its colours") << QByteArray("/OutputIntents") << QByteArray("/OutputIntentz") << u"2.4.3"_s;
}

/// The validator notices what it is trusted to notice.
void ArchiveTest::brokenIsRefused()
{
    QFETCH(QByteArray, before);
    QFETCH(QByteArray, after);
    QFETCH(QString, said);
    const QByteArray broken = with(*record::recordPdf(scene::closedRecord(5)), before, after);
    QVERIFY(!broken.isEmpty());
    const programs::Ran validated = programs::validateArchive(write(broken));
    QCOMPARE(validated.code, 255);
    QVERIFY2(validated.output.contains(u"is not a valid PDF/A-1b file"_s) && validated.output.contains(u'\n' + said), qPrintable(validated.output));
}

void ArchiveTest::everyFontIsEmbedded()
{
    const programs::Ran fonts = programs::run(u"pdffonts"_s, {write(*record::recordPdf(scene::closedRecord(10)))});
    QCOMPARE(fonts.code, 0);
    const QStringList lines = fonts.output.split(u'\n', Qt::SkipEmptyParts).mid(2);
    QCOMPARE_GE(lines.size(), 3); // text, bold, and that of hashes
    // Columns from the right: object and generation, Unicode map, subset, embedded.
    for (const QString &line : lines)
        QVERIFY2(QRegularExpression(u"\\syes\\s+(yes|no)\\s+yes\\s+\\d+\\s+\\d+$"_s).match(line).hasMatch(), qPrintable(line));
}

/// What a ledger from elsewhere may hold as work order and organisation. ISO 19005-1 section 6.7.3: the same text in both places, and XML 1.0
/// section 2.2 has no place for control characters.
void ArchiveTest::anyTextAsTitle()
{
    const QByteArray drawn = *record::recordPdf(scene::closedRecord(5));
    const record::Particulars particulars{u"Left & right <inboard> \"4\" Größe ✈ 😀"_s + QChar(1) + QChar(0xffff), u"Ō & söhne"_s, core::Instant::fromMilliseconds(0), {}};
    const auto pdf = record::finished(drawn, particulars, {});
    QVERIFY(pdf);
    const QString path = write(*pdf);
    const programs::Ran validated = programs::validateArchive(path);
    QVERIFY2(validated.code == 0, qPrintable(validated.output));
    const programs::Ran info = programs::run(u"pdfinfo"_s, {u"-isodates"_s, path});
    for (const QString &line : {u"Left & right <inboard> \"4\" Größe ✈ 😀"_s, u"Ō & söhne"_s, u"1970-01-01T00:00:00Z"_s})
        QVERIFY2(info.output.contains(line), qPrintable(info.output));
}

void ArchiveTest::whatIsNoPdfIsRefused()
{
    const QByteArray good = *record::recordPdf(scene::closedRecord(5));
    const record::Particulars particulars{u"Title"_s, {}, core::Instant::fromMilliseconds(0), {}};
    for (const QByteArray &bad : {QByteArray(), QByteArray("no pages here"), good.left(good.size() / 2)}) {
        const auto pdf = record::finished(bad, particulars, {});
        QVERIFY(!pdf);
        QCOMPARE(pdf.error().code, core::ErrorCode::Damaged);
    }
    QVERIFY(record::finished(good, particulars, {}));
}

QTEST_MAIN(ArchiveTest)
#include "tst_archive.moc"
