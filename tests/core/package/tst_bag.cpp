// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/package/bag.hpp"

#include <QTest>

#include "core/package/signature_line.hpp"

using namespace Qt::StringLiterals;

namespace {

const QByteArray abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"; ///< SHA-256 of "abc", FIPS 180-2 appendix B.1
const QByteArray empty = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"; ///< of nothing, NIST CAVP short messages

} // namespace

/// The text files of a bag: RFC 8493 (October 2018).
class TstBag : public QObject {
    Q_OBJECT

private slots:
    // Section 2.1.1: two lines, UTF-8, no byte order mark (section 2.3). The labels' spelling is from memory of that section.
    void declarationIsOfVersion1() { QCOMPARE(core::bag::declaration(), QByteArray("BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n")); }

    void manifestLines_data()
    {
        QTest::addColumn<QString>("path");
        QTest::addColumn<QByteArray>("line");
        QTest::newRow("section 4.1: a path as in its example") << u"data/27613-h/images/q172.png"_s << QByteArray("data/27613-h/images/q172.png");
        QTest::newRow("section 2.1.3: LF is encoded") << u"data/a\nb"_s << QByteArray("data/a%0Ab");
        QTest::newRow("section 2.1.3: CR is encoded") << u"data/a\rb"_s << QByteArray("data/a%0Db");
        QTest::newRow("section 2.1.3: the per cent sign is encoded") << u"data/50%0A"_s << QByteArray("data/50%250A");
        QTest::newRow("section 2.1.3: nothing else is") << u"data/a b+ü&.txt"_s << QByteArray("data/a b+\xc3\xbc&.txt");
    }
    void manifestLines()
    {
        QFETCH(QString, path);
        QFETCH(QByteArray, line);
        QCOMPARE(core::bag::manifest({{path, core::Digest::of("abc")}}), abc + "  " + line + '\n');
    }

    void manifestIsReadBack()
    {
        const std::vector<core::bag::Listed> files{{u"data/a"_s, core::Digest::of("abc")}, {u"data/b"_s, core::Digest::of("")}};
        QCOMPARE(core::bag::manifest({files[1], files[0]}), abc + "  data/a\n" + empty + "  data/b\n");
        const auto read = core::bag::parseManifest(abc + "  data/a\n" + empty + "  data/b\n", u"manifest-sha256.txt"_s);
        QVERIFY(read);
        QVERIFY(*read == files);
    }

    // Section 5.1: a reader follows no path out of the bag. Section 3: a payload file stands in a manifest once.
    void manifestsThatAreRefused_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<int>("row");
        const QByteArray a = abc + "  data/a\n";
        QTest::newRow("out of the bag") << a + abc + "  data/../../b\n" << 2;
        QTest::newRow("absolute") << abc + "  /etc/passwd\n" << 1;
        QTest::newRow("of a user") << abc + "  ~root/b\n" << 1;
        QTest::newRow("of a drive") << abc + "  C:/b\n" << 1;
        QTest::newRow("with a backslash") << abc + "  data\\b\n" << 1;
        QTest::newRow("with an empty part") << abc + "  data//b\n" << 1;
        QTest::newRow("twice") << a + a << 2;
        QTest::newRow("out of order") << abc + "  data/b\n" + a << 2;
        QTest::newRow("digest too short") << abc.chopped(2) + "  data/a\n" << 1;
        QTest::newRow("capitals, a second spelling") << abc.toUpper() + "  data/a\n" << 1;
        QTest::newRow("one blank") << abc + " data/a\n" << 1;
        QTest::newRow("no path") << abc + "  \n" << 1;
        QTest::newRow("last line cut off") << a.chopped(1) << 1;
        QTest::newRow("not UTF-8") << abc + "  data/\xff\n" << 1;
        QTest::newRow("an encoded letter, a second spelling") << abc + "  data/%61\n" << 1;
    }
    void manifestsThatAreRefused()
    {
        QFETCH(QByteArray, text);
        QFETCH(int, row);
        const auto read = core::bag::parseManifest(text, u"manifest-sha256.txt"_s);
        QVERIFY(!read);
        QCOMPARE(read.error().where.row, std::optional<qint64>(row));
    }

    // Section 2.2.2.
    void labels()
    {
        const QByteArray text = core::bag::info({{u"External-Identifier"_s, u"WO-1"_s}, {u"External-Description"_s, u"Engine\nchange: right"_s}});
        QCOMPARE(text, QByteArray("External-Identifier: WO-1\nExternal-Description: Engine change: right\n"));
        const auto read = core::bag::parseInfo(text, u"bag-info.txt"_s);
        QVERIFY(read);
        QCOMPARE(read->at(1), (core::bag::Label{u"External-Description"_s, u"Engine change: right"_s}));
        QVERIFY2(!core::bag::parseInfo("External-Identifier: 1\nexternal-identifier: 2\n", u"bag-info.txt"_s), "reserved names are the same whatever their case");
        QVERIFY2(!core::bag::parseInfo("A: 1\n  2\n", u"bag-info.txt"_s), "no value of ours goes over two lines");
    }

    // RFC 4648 section 4, and RFC 8785 for the line.
    void signatureLines()
    {
        const core::SignatureLine line{core::Digest::of("abc"), 17, QByteArray(64, '\xff')};
        const QByteArray base64 = QByteArray(84, '/') + "/w==";
        const QByteArray text = "{\"hash\":\"" + abc + "\",\"seq\":17,\"signature\":\"" + base64 + "\"}";
        QCOMPARE(core::signatureLine(line), text);
        const auto read = core::parseSignatureLine(text);
        QVERIFY(read && *read == line);
    }

    void signatureLinesThatAreRefused_data()
    {
        QTest::addColumn<QByteArray>("from");
        QTest::addColumn<QByteArray>("to");
        QTest::newRow("a blank") << QByteArray(",\"seq\"") << QByteArray(", \"seq\"");
        QTest::newRow("number zero") << QByteArray(":17") << QByteArray(":0");
        QTest::newRow("bits in base64 that say nothing") << QByteArray("/w==") << QByteArray("/x==");
        QTest::newRow("without padding") << QByteArray("/w==") << QByteArray("/w");
        QTest::newRow("63 bytes") << QByteArray("///w==") << QByteArray("//8=");
        QTest::newRow("a member more") << QByteArray("\"}") << QByteArray("\",\"x\":1}");
        QTest::newRow("the digest in capitals") << QByteArray("ba78") << QByteArray("BA78");
    }
    void signatureLinesThatAreRefused()
    {
        QFETCH(QByteArray, from);
        QFETCH(QByteArray, to);
        QByteArray text = core::signatureLine({core::Digest::of("abc"), 17, QByteArray(64, '\xff')});
        QVERIFY(text.contains(from));
        QVERIFY(!core::parseSignatureLine(text.replace(from, to)));
    }
};

QTEST_GUILESS_MAIN(TstBag)
#include "tst_bag.moc"
