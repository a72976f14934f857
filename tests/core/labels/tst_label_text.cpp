// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/labels/label_text.hpp"

#include <QTest>
#include <QUrl>

using namespace Qt::StringLiterals;

namespace {

core::LabelText label(const QString &workOrder, const QString &item) { return {workOrder, *core::InterfaceId::parse(item)}; }

} // namespace

/// The text in the code of a label, both ways.
class TestLabelText : public QObject {
    Q_OBJECT

private slots:
    void written_data();
    void written();
    void segmentsAreThoseOfAUri_data();
    void segmentsAreThoseOfAUri();
    void alsoRead_data();
    void alsoRead();
    void refused_data();
    void refused();
};

void TestLabelText::written_data()
{
    QTest::addColumn<QString>("workOrder");
    QTest::addColumn<QString>("item");
    QTest::addColumn<QString>("text");

    QTest::addRow("as most are") << u"WO-2207-14"_s << u"E12"_s << u"remate:WO-2207-14/E12"_s;
    QTest::addRow("every unreserved mark, RFC 3986 section 2.3") << u"A-z.0_9~"_s << u"E1"_s << u"remate:A-z.0_9~/E1"_s;
    QTest::addRow("a slash in the work order") << u"22/07"_s << u"E1"_s << u"remate:22%2F07/E1"_s;
    QTest::addRow("a slash in the id") << u"WO-1"_s << u"P101/J101"_s << u"remate:WO-1/P101%2FJ101"_s;
    QTest::addRow("a blank") << u"WO 1"_s << u"E 1"_s << u"remate:WO%201/E%201"_s;
    QTest::addRow("a percent sign, RFC 3986 section 2.4") << u"WO-1"_s << u"50%"_s << u"remate:WO-1/50%25"_s;
    QTest::addRow("what already looks encoded") << u"WO-1"_s << u"%2F"_s << u"remate:WO-1/%252F"_s;
    QTest::addRow("a colon") << u"a:b"_s << u"E1"_s << u"remate:a%3Ab/E1"_s;
    // The letters and their encodings are the examples of RFC 3986 section 2.5.
    QTest::addRow("letter A with grave") << u"WO-1"_s << u"\u00c0"_s << u"remate:WO-1/%C3%80"_s;
    QTest::addRow("katakana letter A") << u"\u30a2"_s << u"E1"_s << u"remate:%E3%82%A2/E1"_s;
}

void TestLabelText::written()
{
    QFETCH(QString, workOrder);
    QFETCH(QString, item);
    QFETCH(QString, text);
    QCOMPARE(core::writeLabelText(label(workOrder, item)), text);
    QCOMPARE(core::readLabelText(text), std::optional(label(workOrder, item)));
}

void TestLabelText::segmentsAreThoseOfAUri_data()
{
    QTest::addColumn<QString>("character");
    for (char16_t c = 0x21; c < 0x7f; ++c)
        QTest::addRow("U+%04X", c) << QString(QChar(c));
    for (const QString &beyond : {u"é"_s, u"Ω"_s, u"ж"_s, u"漢"_s, QString::fromUcs4(U"\U0001F6E0", 1)})
        QTest::addRow("%s", qPrintable(beyond)) << beyond;
}

/// Qt's reading of URIs is the outside source: it has to find the scheme, and in the path what was put there.
void TestLabelText::segmentsAreThoseOfAUri()
{
    QFETCH(QString, character);
    const core::LabelText said = label(u"WO"_s + character, character + u"12"_s);
    const QString text = core::writeLabelText(said);
    QCOMPARE(core::readLabelText(text), std::optional(said));

    const QUrl uri(text, QUrl::StrictMode);
    QVERIFY2(uri.isValid(), qPrintable(uri.errorString()));
    QCOMPARE(uri.scheme(), u"remate"_s);
    QVERIFY(!uri.hasQuery() && !uri.hasFragment());
    const QString path = uri.path(QUrl::FullyEncoded);
    QCOMPARE(path.count(u'/'), 1);
    QCOMPARE(QUrl::fromPercentEncoding(path.section(u'/', 0, 0).toLatin1()), said.workOrder);
    QCOMPARE(QUrl::fromPercentEncoding(path.section(u'/', 1).toLatin1()), said.item.text());
}

void TestLabelText::alsoRead_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("item");

    QTest::addRow("scheme in capitals, RFC 3986 section 3.1") << u"REMATE:WO-1/E12"_s << u"E12"_s;
    QTest::addRow("digits of an encoding in small letters, section 2.1") << u"remate:WO-1/a%2fb"_s << u"a/b"_s;
    QTest::addRow("encoded without need, section 6.2.2.2") << u"remate:WO-1/%4512"_s << u"E12"_s;
}

void TestLabelText::alsoRead()
{
    QFETCH(QString, text);
    QFETCH(QString, item);
    QCOMPARE(core::readLabelText(text), std::optional(label(u"WO-1"_s, item)));
}

void TestLabelText::refused_data()
{
    QTest::addColumn<QString>("text");

    QTest::addRow("nothing") << QString();
    QTest::addRow("a tag's number") << u"40"_s;
    QTest::addRow("no scheme") << u"WO-1/E12"_s;
    QTest::addRow("another scheme") << u"https:WO-1/E12"_s;
    QTest::addRow("a longer scheme") << u"remates:WO-1/E12"_s;
    QTest::addRow("something in front") << u" remate:WO-1/E12"_s;
    QTest::addRow("no interface") << u"remate:WO-1"_s;
    QTest::addRow("an empty interface") << u"remate:WO-1/"_s;
    QTest::addRow("an empty work order") << u"remate:/E12"_s;
    QTest::addRow("three segments") << u"remate:WO/1/E12"_s;
    QTest::addRow("an authority") << u"remate://WO-1/E12"_s;
    QTest::addRow("a blank that is not encoded") << u"remate:WO-1/E 12"_s;
    QTest::addRow("a letter that is not encoded") << u"remate:WO-1/É1"_s;
    QTest::addRow("a query") << u"remate:WO-1/E12?x=1"_s;
    QTest::addRow("a fragment") << u"remate:WO-1/E12#x"_s;
    QTest::addRow("a plus for a blank") << u"remate:WO-1/E+12"_s;
    QTest::addRow("an encoding cut off") << u"remate:WO-1/E%2"_s;
    QTest::addRow("a percent sign alone") << u"remate:WO-1/E%"_s;
    QTest::addRow("no hexadecimal digits") << u"remate:WO-1/E%G0"_s;
    QTest::addRow("half of a letter") << u"remate:WO-1/E%C3"_s;
    QTest::addRow("an overlong encoding of a slash, RFC 3629 section 10") << u"remate:WO-1/E%C0%AF"_s;
    QTest::addRow("half of a pair, RFC 3629 section 3") << u"remate:WO-1/E%ED%A0%80"_s;
    QTest::addRow("a line end behind it") << u"remate:WO-1/E12\n"_s;
    QTest::addRow("a line end inside") << u"remate:WO-1/E%0A12"_s;
    QTest::addRow("an id that begins with a blank") << u"remate:WO-1/%20E12"_s;
    QTest::addRow("an id longer than ids are") << u"remate:WO-1/"_s + QString(129, u'E');
}

void TestLabelText::refused()
{
    QFETCH(QString, text);
    QVERIFY(!core::readLabelText(text));
}

QTEST_APPLESS_MAIN(TestLabelText)
#include "tst_label_text.moc"
