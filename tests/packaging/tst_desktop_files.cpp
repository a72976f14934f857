// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QDir>
#include <QFile>
#include <QMimeDatabase>
#include <QRegularExpression>
#include <QTest>
#include <QXmlStreamReader>

#include "tests/app/record/programs.hpp"

using namespace Qt::StringLiterals;

namespace {

QString source(const char *name) { return QStringLiteral(PACKAGING_FOLDER "/") + QString::fromLatin1(name); }
QString metainfo() { return QStringLiteral(CONFIGURED_FOLDER "/io.github.remate.remate.metainfo.xml"); }

QByteArray contentOf(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// The texts of all elements of that name, or of an attribute of theirs.
QStringList inXml(const QString &path, const QString &element, const QString &attribute = {})
{
    QStringList found;
    QXmlStreamReader xml(contentOf(path));
    while (!xml.atEnd()) {
        if (xml.readNext() == QXmlStreamReader::StartElement && xml.name() == element)
            found << (attribute.isEmpty() ? xml.readElementText() : xml.attributes().value(attribute).toString());
    }
    return found;
}

QString desktopKey(const QString &key)
{
    const QStringList lines = QString::fromUtf8(contentOf(source("remate.desktop"))).split(u'\n');
    return lines.filter(QRegularExpression(u"^%1="_s.arg(key))).value(0).section(u'=', 1);
}

/// As long as the first page of an SQLite file, with that application id. https://www.sqlite.org/fileformat2.html, the database header.
QByteArray sqliteFile(const QByteArray &applicationId)
{
    QByteArray bytes(4096, '\0');
    bytes.replace(0, 16, QByteArray("SQLite format 3\0", 16));
    bytes.replace(68, 4, applicationId);
    return bytes;
}

/// The local header of a ZIP's first file, which is 30 bytes long, and the file's name. APPNOTE.TXT of PKWARE, 4.3.7.
QByteArray zipThatBegins(const QByteArray &name)
{
    QByteArray bytes(30, '\0');
    bytes.replace(0, 4, QByteArray("PK\003\004", 4));
    bytes[26] = static_cast<char>(name.size());
    return bytes + name + QByteArray(200, 'x');
}

} // namespace

/// What is installed so that a desktop knows the program and its files, as the desktop's own tools see it.
class TstDesktopFiles : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void desktopFileIsValid();
    void metainfoIsValid();
    void metainfoIsOfThisProgram();
    void allNameTheSameFileTypes();
    void fileTypes_data();
    void fileTypes();
};

/// Ours beside everybody's, in one database as where both are installed; it lies in the data folder of this test alone.
void TstDesktopFiles::initTestCase()
{
    const QString folder = qEnvironmentVariable("XDG_DATA_HOME") + u"/mime"_s;
    QDir(folder).removeRecursively();
    QVERIFY(QDir().mkpath(folder + u"/packages"_s));
    QVERIFY(QFile::copy(source("remate.xml"), folder + u"/packages/remate.xml"_s));
    QVERIFY(QFile::copy(u"/usr/share/mime/packages/freedesktop.org.xml"_s, folder + u"/packages/freedesktop.org.xml"_s));
    QVERIFY(qputenv("XDG_DATA_DIRS", qgetenv("XDG_DATA_HOME")));
    const programs::Ran ran = programs::run(u"update-mime-database"_s, {folder});
    QCOMPARE(ran.output, QString());
    QCOMPARE(ran.code, 0);
}

void TstDesktopFiles::desktopFileIsValid()
{
    const programs::Ran ran = programs::run(u"desktop-file-validate"_s, {source("remate.desktop")});
    QCOMPARE(ran.output, QString());
    QCOMPARE(ran.code, 0);
}

void TstDesktopFiles::metainfoIsValid()
{
    const programs::Ran ran = programs::run(u"appstreamcli"_s, {u"validate"_s, u"--no-net"_s, u"--pedantic"_s, u"--no-color"_s, metainfo()});
    QVERIFY2(ran.code == 0, qPrintable(ran.output));
    QVERIFY2(!ran.output.contains(u"pedantic:"_s) && !ran.output.contains(u"infos:"_s), qPrintable(ran.output));
}

void TstDesktopFiles::metainfoIsOfThisProgram()
{
    QCOMPARE(inXml(metainfo(), u"release"_s, u"version"_s), QStringList{QStringLiteral(VERSION)});
    QCOMPARE(inXml(metainfo(), u"launchable"_s), QStringList{u"remate.desktop"_s});
    QCOMPARE(inXml(metainfo(), u"name"_s), QStringList{desktopKey(u"Name"_s)});
    QCOMPARE(inXml(metainfo(), u"icon"_s), QStringList{desktopKey(u"Icon"_s)});
    QCOMPARE(inXml(metainfo(), u"binary"_s), (QStringList{u"remate"_s, u"remate-cli"_s}));
}

void TstDesktopFiles::allNameTheSameFileTypes()
{
    const QStringList types = inXml(source("remate.xml"), u"mime-type"_s, u"type"_s);
    QCOMPARE(types, (QStringList{u"application/x-remate-store"_s, u"application/x-remate-package"_s}));
    QCOMPARE(inXml(metainfo(), u"mediatype"_s), types);
    QCOMPARE(desktopKey(u"MimeType"_s).split(u';', Qt::SkipEmptyParts), types);
}

void TstDesktopFiles::fileTypes_data()
{
    QTest::addColumn<QString>("name");
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<QString>("type");

    const QByteArray ours("RMTE");
    const QByteArray package = zipThatBegins("remate-3161208c/data/job.entries.jsonl");
    QTest::addRow("store") << u"hangar.remate"_s << sqliteFile(ours) << u"application/x-remate-store"_s;
    QTest::addRow("store that lost its ending") << u"hangar"_s << sqliteFile(ours) << u"application/x-remate-store"_s;
    QTest::addRow("store of the first version") << u"v1"_s << contentOf(QStringLiteral(PACKAGING_FOLDER "/../tests/stores/store-v1.remate")) << u"application/x-remate-store"_s;
    QTest::addRow("store of another program") << u"hangar"_s << sqliteFile("RMTF") << u"application/vnd.sqlite3"_s;
    QTest::addRow("package") << u"WO-2207-14-record.zip"_s << package << u"application/x-remate-package"_s;
    QTest::addRow("package that lost its ending") << u"package"_s << package << u"application/x-remate-package"_s;
    QTest::addRow("another ZIP") << u"photos.zip"_s << zipThatBegins("photos/1.jpg") << u"application/zip"_s;
    QTest::addRow("another ZIP that lost its ending") << u"photos"_s << zipThatBegins("photos/1.jpg") << u"application/zip"_s;
    QTest::addRow("interface list") << u"list.csv"_s << QByteArray("id,name\n") << u"text/csv"_s;
}

/// Qt reads the same database as desktops do.
void TstDesktopFiles::fileTypes()
{
    QFETCH(QString, name);
    QFETCH(QByteArray, bytes);
    QFETCH(QString, type);
    QVERIFY(!bytes.isEmpty());
    QCOMPARE(QMimeDatabase().mimeTypeForFileNameAndData(name, bytes).name(), type);
}

QTEST_GUILESS_MAIN(TstDesktopFiles)
#include "tst_desktop_files.moc"
