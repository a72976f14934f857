// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/list/csv.hpp"

#include <QtTest>

#include <rapidcheck.h>

using namespace core;
using namespace Qt::StringLiterals;

namespace {

/// Records as lines of text: fields between bars, line breaks shown.
QString shown(const csv::Table &table)
{
    QStringList lines;
    for (const csv::Record &record : table.records) {
        QStringList fields;
        for (csv::Field field : record.fields)
            fields << field.text.replace(u"\r"_s, u"<CR>"_s).replace(u"\n"_s, u"<LF>"_s);
        lines << fields.join(u" | "_s);
    }
    return lines.join(u" ; "_s);
}

/// Text out of the characters that matter to a CSV file, and some that do not.
QString anyText(const std::vector<int> &choices)
{
    static const QString alphabet = u"ab,;\"\r\n\t '=+-@|\\é€"_s;
    QString text;
    for (const int choice : choices)
        text += alphabet[std::abs(choice % static_cast<int>(alphabet.size()))];
    return text;
}

} // namespace

class CsvTest : public QObject {
    Q_OBJECT

private slots:
    void publishedExamples_data();
    void publishedExamples();
    void otherPrograms_data();
    void otherPrograms();
    void quotedFieldsAreKnown();
    void separators_data();
    void separators();
    void faults_data();
    void faults();
    void allFaultsAtOnce();
    void whatNoListIs();
    void formulasAreGuarded_data();
    void formulasAreGuarded();
    void whatIsWrittenReadsBack();
    void guardIsTakenOffAgain();
};

// RFC 4180 (October 2005), section 2, examples of rules 1 to 7; <CRLF> as printed there.
void CsvTest::publishedExamples_data()
{
    QTest::addColumn<QByteArray>("file");
    QTest::addColumn<QString>("records");
    QTest::addRow("CSV-1: last line with its break") << QByteArray("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n") << u"aaa | bbb | ccc ; zzz | yyy | xxx"_s;
    QTest::addRow("CSV-1: last line without") << QByteArray("aaa,bbb,ccc\r\nzzz,yyy,xxx") << u"aaa | bbb | ccc ; zzz | yyy | xxx"_s;
    QTest::addRow("CSV-2: a header is a record here") << QByteArray("field_name,field_name,field_name\r\naaa,bbb,ccc\r\n")
                                                      << u"field_name | field_name | field_name ; aaa | bbb | ccc"_s;
    QTest::addRow("CSV-3: spaces belong to the field") << QByteArray("aaa, bbb ,ccc") << u"aaa |  bbb  | ccc"_s;
    QTest::addRow("CSV-4: quoted") << QByteArray("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx") << u"aaa | bbb | ccc ; zzz | yyy | xxx"_s;
    QTest::addRow("CSV-5: break inside quotes") << QByteArray("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx")
                                                << u"aaa | b<CR><LF>bb | ccc ; zzz | yyy | xxx"_s;
    QTest::addRow("CSV-6: quote inside quotes") << QByteArray("\"aaa\",\"b\"\"bb\",\"ccc\"") << u"aaa | b\"bb | ccc"_s;
}

void CsvTest::publishedExamples()
{
    QFETCH(QByteArray, file);
    QFETCH(QString, records);
    const csv::Table table = csv::read(file, u"list.csv"_s);
    QVERIFY(table.faults.empty());
    QCOMPARE(shown(table), records);
}

// What spreadsheets write beyond the RFC: common practice.
void CsvTest::otherPrograms_data()
{
    QTest::addColumn<QByteArray>("file");
    QTest::addColumn<QString>("records");
    QTest::addRow("line feeds alone") << QByteArray("a,b\nc,d\n") << u"a | b ; c | d"_s;
    QTest::addRow("byte order mark") << QByteArray("\xEF\xBB\xBF" "a,b\r\nc,d") << u"a | b ; c | d"_s;
    QTest::addRow("byte order mark before a quote") << QByteArray("\xEF\xBB\xBF" "\"a\",b") << u"a | b"_s;
    QTest::addRow("semicolons") << QByteArray("a;b\r\n1,5;d") << u"a | b ; 1,5 | d"_s;
    QTest::addRow("beyond ASCII") << QByteArray("\xC3\xA9,\xE2\x82\xAC,\xF0\x9F\x94\xA7") << u"é | € | 🔧"_s;
    QTest::addRow("empty fields") << QByteArray("a,,\r\n,,") << u"a |  |  ;  |  | "_s;
    QTest::addRow("empty line") << QByteArray("a,b\r\n\r\nc,d") << u"a | b ;  ; c | d"_s;
    QTest::addRow("nothing") << QByteArray() << QString();
}

void CsvTest::otherPrograms() { publishedExamples(); }

void CsvTest::quotedFieldsAreKnown()
{
    const csv::Table table = csv::read(" a,\" a\"", {});
    QCOMPARE(table.records[0].fields, (std::vector<csv::Field>{{u" a"_s, false}, {u" a"_s, true}}));
}

void CsvTest::separators_data()
{
    QTest::addColumn<QByteArray>("header");
    QTest::addColumn<char>("separator");
    QTest::addRow("commas") << QByteArray("id,name;zone,kind") << ',';
    QTest::addRow("semicolons") << QByteArray("id;name,zone;kind") << ';';
    QTest::addRow("as many of both") << QByteArray("id,name;zone") << ',';
    QTest::addRow("neither") << QByteArray("id") << ',';
    QTest::addRow("semicolons in quotes do not count") << QByteArray("\"a;b;c\",d") << ',';
    QTest::addRow("line ends in quotes do not count") << QByteArray("\"a\nb\";c;d") << ';';
    QTest::addRow("later lines do not count after a line feed") << QByteArray("id,name\na;b;c;d;e") << ',';
    QTest::addRow("later lines do not count") << QByteArray("id,name\r\na;b;c;d;e") << ',';
}

void CsvTest::separators()
{
    QFETCH(QByteArray, header);
    QFETCH(char, separator);
    QCOMPARE(csv::read(header, {}).separator, separator);
}

void CsvTest::faults_data()
{
    QTest::addColumn<QByteArray>("file");
    QTest::addColumn<qint64>("row");
    QTest::addColumn<qint64>("column");
    QTest::addColumn<QString>("named");
    QTest::addRow("not UTF-8") << QByteArray("a,b\nc,d\xE9\n") << qint64{2} << qint64{2} << u"UTF-8"_s;
    QTest::addRow("half a UTF-8 sequence") << QByteArray("a,\xE2\x82\nc,d") << qint64{1} << qint64{2} << u"UTF-8"_s;
    QTest::addRow("UTF-8 of a surrogate") << QByteArray("a,\xED\xA0\x80\n") << qint64{1} << qint64{2} << u"UTF-8"_s;
    QTest::addRow("quote inside") << QByteArray("a,b\nc\"c,d\n") << qint64{2} << qint64{1} << u"quote"_s;
    QTest::addRow("text after a quote") << QByteArray("a,\"b\"c\n") << qint64{1} << qint64{2} << u"closing quote"_s;
    QTest::addRow("quote never closes") << QByteArray("a,b\n\"c,d\ne,f\n") << qint64{2} << qint64{1} << u"never closes"_s;
    QTest::addRow("carriage return alone") << QByteArray("a,b\rc,d\n") << qint64{1} << qint64{2} << u"carriage return"_s;
    QTest::addRow("carriage return alone at the end") << QByteArray("a,b\r") << qint64{1} << qint64{2} << u"carriage return"_s;
    QTest::addRow("text after a quote, and more fields") << QByteArray("\"a\"b,c\nd,e\n") << qint64{1} << qint64{1} << u"closing quote"_s;
    QTest::addRow("text after a quote, up to the end") << QByteArray("\"a\"b") << qint64{1} << qint64{1} << u"closing quote"_s;
    QTest::addRow("two quotes inside are told once") << QByteArray("a\"b\"c,d\n") << qint64{1} << qint64{1} << u"quote"_s;
    QTest::addRow("control character") << QByteArray("a,b\x07\n") << qint64{1} << qint64{2} << u"control"_s;
    QTest::addRow("after an empty line, as a spreadsheet counts") << QByteArray("a\n\n\xFF\n") << qint64{3} << qint64{1} << u"UTF-8"_s;
    QTest::addRow("after a break in quotes, as a spreadsheet counts") << QByteArray("\"a\nb\",c\nd,\xFF") << qint64{2} << qint64{2} << u"UTF-8"_s;
}

void CsvTest::faults()
{
    QFETCH(QByteArray, file);
    QFETCH(qint64, row);
    QFETCH(qint64, column);
    QFETCH(QString, named);
    const csv::Table table = csv::read(file, u"list.csv"_s);
    QCOMPARE(table.faults.size(), 1U);
    QCOMPARE(table.faults[0].where, (Where{u"list.csv"_s, row, column}));
    QVERIFY2(table.faults[0].message.contains(named), qPrintable(table.faults[0].message));
}

void CsvTest::allFaultsAtOnce()
{
    QCOMPARE(csv::read("a,\xFF\nb\"b,c\n\"d\"e,f\n", {}).faults.size(), 3U);
}

void CsvTest::whatNoListIs()
{
    const csv::Table table = csv::read(QByteArray(csv::largestFile + 1, 'a'), u"list.csv"_s);
    QVERIFY(table.records.empty());
    QCOMPARE(table.faults.size(), 1U);
    QVERIFY2(table.faults[0].message.contains(u"64 MiB"), qPrintable(table.faults[0].message));
}

void CsvTest::formulasAreGuarded_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("guarded");
    QTest::addRow("formula") << u"=1+1"_s << u"'=1+1"_s;
    QTest::addRow("plus") << u"+1"_s << u"'+1"_s;
    QTest::addRow("minus") << u"-1"_s << u"'-1"_s;
    QTest::addRow("at") << u"@SUM(A1)"_s << u"'@SUM(A1)"_s;
    QTest::addRow("tab") << u"\t=1"_s << u"'\t=1"_s;
    QTest::addRow("guarded before") << u"'=1"_s << u"''=1"_s;
    QTest::addRow("apostrophe of a word") << u"'s Gravenhage"_s << u"'s Gravenhage"_s;
    QTest::addRow("sign further in") << u"E-12"_s << u"E-12"_s;
    QTest::addRow("carriage return") << u"\r=1"_s << u"'\r=1"_s;
    QTest::addRow("apostrophes alone") << u"''"_s << u"''"_s;
    QTest::addRow("nothing") << QString() << QString();
}

void CsvTest::formulasAreGuarded()
{
    QFETCH(QString, text);
    QFETCH(QString, guarded);
    QCOMPARE(csv::guarded(text), guarded);
    QCOMPARE(csv::unguarded(guarded), text);
}

void CsvTest::whatIsWrittenReadsBack()
{
    QVERIFY(rc::check("records come back as they were", [](const std::vector<std::vector<std::vector<int>>> &choices) {
        // The first record is of commas alone to the eye of the reader; a record has at least one field.
        std::vector<std::vector<QString>> records{{u"head"_s}};
        for (const auto &record : choices) {
            records.push_back({u"x"_s});
            for (const auto &field : record)
                records.back().push_back(anyText(field));
        }
        const csv::Table table = csv::read(csv::write(records), {});
        RC_ASSERT(table.faults.empty());
        RC_ASSERT(table.records.size() == records.size());
        for (std::size_t i = 0; i < records.size(); ++i) {
            RC_ASSERT(table.records[i].fields.size() == records[i].size());
            for (std::size_t j = 0; j < records[i].size(); ++j)
                RC_ASSERT(table.records[i].fields[j].text == records[i][j]);
        }
    }));
}

void CsvTest::guardIsTakenOffAgain()
{
    QVERIFY(rc::check("unguarded(guarded(x)) is x, and guarded text starts no formula", [](const std::vector<int> &choices) {
        const QString text = anyText(choices);
        const QString guarded = csv::guarded(text);
        RC_ASSERT(csv::unguarded(guarded) == text);
        const bool runs = !guarded.isEmpty() && u"=+-@\t\r"_s.contains(guarded.front());
        RC_ASSERT(!runs);
    }));
}

QTEST_GUILESS_MAIN(CsvTest)
#include "tst_csv.moc"
