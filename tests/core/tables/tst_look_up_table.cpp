// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/tables/look_up_table.hpp"

#include <QtTest>

#include "core/tables/catalogue.hpp"
#include "core/tables/look_up_tables.hpp"

using namespace Qt::StringLiterals;
using core::Filled;
using core::Holds;

namespace {

const core::TableForm &form()
{
    static const core::TableForm made{"wires", "Wires", "Wires of a test.",
                                      {{"series", "Series", Holds::OneOf, Filled::Always, "", "fine|coarse"},
                                       {"size", "Size", Holds::Words, Filled::Always, "", ""},
                                       {"least", "Least", Holds::Number, Filled::Always, "in", ""},
                                       {"most", "Most", Holds::Number, Filled::OrEmpty, "in", ""}}};
    return made;
}

const QByteArray soundFile = "id,series,size,least,most,note,source,seen\n"
                             "fine-1/4-28,fine,1/4-28,0.020,0.50,,Document A section 1,read\n"
                             "other,coarse,1/4-20,0.020,,\"Another, on note\",Document B,from memory\n"
                             "third,coarse,5/16-18,60,70,,Document B,read\n";

core::Result<core::LookUpTable> parsed(const QByteArray &bytes) { return core::parseTable(form(), bytes, u"wires.csv"_s); }

QString idsOf(const std::vector<const core::LookUpRow *> &rows)
{
    QStringList ids;
    for (const core::LookUpRow *row : rows)
        ids << row->id;
    return ids.join(u' ');
}

} // namespace

class LookUpTableTest : public QObject {
    Q_OBJECT

private slots:
    void soundFileIsRead();
    void rowsAreFound_data();
    void rowsAreFound();
    void severalRowsAreNoAnswer();
    void whatIsRefused_data();
    void whatIsRefused();
    void aTableWithoutRows();
    void theCollectionIsWholeOrNone();
};

void LookUpTableTest::soundFileIsRead()
{
    const auto table = parsed(soundFile);
    QVERIFY2(table, table ? "" : qPrintable(table.error().message));
    QCOMPARE(table->id, u"wires"_s);
    QCOMPARE(table->title, u"Wires"_s);
    QCOMPARE(table->about, u"Wires of a test."_s);
    QCOMPARE(table->caution, core::tableCaution());
    QVERIFY(table->caution.startsWith(u"The approved maintenance data governs."));
    QCOMPARE(table->columns, (std::vector<core::LookUpColumn>{{u"series"_s, u"Series"_s, u""_s}, {u"size"_s, u"Size"_s, u""_s}, {u"least"_s, u"Least"_s, u"in"_s}, {u"most"_s, u"Most"_s, u"in"_s}}));
    QCOMPARE(table->rows.size(), 3u);
    const core::LookUpRow &first = table->rows[0];
    QCOMPARE(first, (core::LookUpRow{u"fine-1/4-28"_s, {u"fine"_s, u"1/4-28"_s, u"0.020"_s, u"0.50"_s}, u""_s, u"Document A section 1"_s, core::Seen::Read}));
    QCOMPARE(table->number(first, u"least")->text(), u"0.020"_s); // as printed
    QVERIFY(!table->number(first, u"size"));
    QVERIFY(!table->number(table->rows[1], u"most")); // left open is not zero
    QVERIFY(!table->number(first, u"no_such_column"));
    QCOMPARE(table->rows[1].note, u"Another, on note"_s);
    QCOMPARE(table->rows[1].seen, core::Seen::FromMemory);
}

void LookUpTableTest::rowsAreFound_data()
{
    QTest::addColumn<QString>("column");
    QTest::addColumn<QString>("value");
    QTest::addColumn<QString>("ids");
    QTest::addRow("words") << u"size"_s << u"1/4-28"_s << u"fine-1/4-28"_s;
    QTest::addRow("nearly the same words") << u"size"_s << u"1/4-2"_s << u""_s;
    QTest::addRow("capitals are other words") << u"series"_s << u"Fine"_s << u""_s;
    QTest::addRow("several") << u"series"_s << u"coarse"_s << u"other third"_s;
    QTest::addRow("by its id") << u"id"_s << u"other"_s << u"other"_s;
    QTest::addRow("the same number, written otherwise") << u"least"_s << u"0.02"_s << u"fine-1/4-28 other"_s;
    QTest::addRow("a number that is none of them") << u"least"_s << u"0.021"_s << u""_s;
    QTest::addRow("a whole number") << u"least"_s << u"60.0"_s << u"third"_s;
    QTest::addRow("nothing finds no open cell") << u"most"_s << u""_s << u""_s;
    QTest::addRow("no such column") << u"width"_s << u"60"_s << u""_s;
}

void LookUpTableTest::rowsAreFound()
{
    QFETCH(QString, column);
    QFETCH(QString, value);
    QFETCH(QString, ids);
    const auto table = parsed(soundFile);
    QCOMPARE(idsOf(table->rowsWith(column, value)), ids);
    const core::LookUpRow *row = table->row(column, value);
    const bool isOne = !ids.isEmpty() && !ids.contains(u' ');
    QCOMPARE(row ? row->id : QString(), isOne ? ids : QString());
}

void LookUpTableTest::severalRowsAreNoAnswer()
{
    const auto table = parsed(soundFile);
    QVERIFY(!table->row(u"series", u"coarse"));
    QCOMPARE(table->row(u"series", u"fine"), &table->rows[0]);
}

void LookUpTableTest::whatIsRefused_data()
{
    QTest::addColumn<QByteArray>("part");
    QTest::addColumn<QByteArray>("instead");
    QTest::addColumn<QString>("at"); // row:column
    QTest::addColumn<QString>("named");
    const QByteArray second = "other,coarse,1/4-20,0.020,,\"Another, on note\",Document B,from memory";
    QTest::addRow("another column") << QByteArray("least,most") << QByteArray("lowest,most") << u"1:4"_s << u"\"least\""_s;
    QTest::addRow("columns in another order") << QByteArray("series,size") << QByteArray("size,series") << u"1:2"_s << u"\"series\""_s;
    QTest::addRow("no column for the source") << QByteArray("note,source,seen") << QByteArray("note,seen") << u"1:7"_s << u"\"source\""_s;
    QTest::addRow("a column too many") << QByteArray("source,seen") << QByteArray("source,seen,by") << u"1:9"_s << u"\"seen\""_s;
    QTest::addRow("a short row") << QByteArray("third,coarse,") << QByteArray("third,") << u"4:"_s << u"Cells in this row: 7. Expected: 8."_s;
    QTest::addRow("a long row") << QByteArray("third,coarse,") << QByteArray("third,coarse,coarse,") << u"4:"_s << u"Cells in this row: 9. Expected: 8."_s;
    QTest::addRow("a row without id") << QByteArray("third,coarse") << QByteArray(",coarse") << u"4:1"_s << u"names no row"_s;
    QTest::addRow("an id in capitals") << QByteArray("third,coarse") << QByteArray("Third,coarse") << u"4:1"_s << u"\"Third\""_s;
    QTest::addRow("an id with a blank") << QByteArray("third,coarse") << QByteArray("row 3,coarse") << u"4:1"_s << u"\"row 3\""_s;
    QTest::addRow("an id twice") << QByteArray("third,coarse") << QByteArray("other,coarse") << u"4:1"_s << u"Two rows"_s;
    QTest::addRow("a word that is no choice") << QByteArray("third,coarse") << QByteArray("third,medium") << u"4:2"_s << u"fine, coarse"_s;
    QTest::addRow("an empty choice") << QByteArray("third,coarse") << QByteArray("third,") << u"4:2"_s << u"may not be empty"_s;
    QTest::addRow("an empty cell that is needed") << QByteArray("5/16-18,60") << QByteArray("5/16-18,") << u"4:4"_s << u"may not be empty"_s;
    QTest::addRow("words for a number") << QByteArray("60,70") << QByteArray("sixty,70") << u"4:4"_s << u"\"sixty\""_s;
    QTest::addRow("a decimal comma") << QByteArray("60,70") << QByteArray("\"60,5\",70") << u"4:4"_s << u"\"60,5\""_s;
    QTest::addRow("less than nothing") << QByteArray("60,70") << QByteArray("60,-70") << u"4:5"_s << u"\"-70\""_s;
    QTest::addRow("a blank behind a number") << QByteArray("60,70") << QByteArray("60 ,70") << u"4:4"_s << u"blank"_s;
    QTest::addRow("no source") << QByteArray("Document A section 1") << QByteArray() << u"2:7"_s << u"without a source"_s;
    QTest::addRow("a source of blanks") << QByteArray("Document A section 1") << QByteArray("\"  \"") << u"2:7"_s << u"blank"_s;
    QTest::addRow("not said whether it was seen") << QByteArray(",from memory") << QByteArray(",") << u"3:8"_s << u"\"from memory\""_s;
    QTest::addRow("seen in another word") << QByteArray(",from memory") << QByteArray(",remembered") << u"3:8"_s << u"\"remembered\""_s;
    QTest::addRow("seen in capitals") << QByteArray("section 1,read") << QByteArray("section 1,Read") << u"2:8"_s << u"\"Read\""_s;
    QTest::addRow("a quote that never closes") << QByteArray("on note\"") << QByteArray("on note") << u"3:6"_s << u""_s;
    QTest::addRow("an empty line between rows") << second << QByteArray("\n" + second) << u"3:"_s << u"Cells in this row: 1. Expected: 8."_s;
}

void LookUpTableTest::whatIsRefused()
{
    QFETCH(QByteArray, part);
    QFETCH(QByteArray, instead);
    QFETCH(QString, at);
    QFETCH(QString, named);
    QByteArray bytes = soundFile;
    QCOMPARE(bytes.count(part), 1);
    const auto table = parsed(bytes.replace(part, instead));
    QVERIFY(!table);
    const core::Error &error = table.error();
    QCOMPARE(error.code, core::ErrorCode::BadInput);
    QCOMPARE(error.where.file, u"wires.csv"_s);
    const auto shown = [](const std::optional<qint64> &number) { return number ? QString::number(*number) : QString(); };
    QCOMPARE(shown(error.where.row) + u':' + shown(error.where.column), at);
    QVERIFY2(error.message.contains(named), qPrintable(error.message));
}

void LookUpTableTest::aTableWithoutRows()
{
    QVERIFY(!parsed({}));
    QVERIFY(!parsed(soundFile.left(soundFile.indexOf('\n') + 1)));
}

void LookUpTableTest::theCollectionIsWholeOrNone()
{
    std::vector<core::LookUpTable> tables;
    for (const core::TableForm &one : core::tableForms()) {
        core::LookUpTable table;
        table.id = QString::fromUtf8(one.id);
        tables.push_back(table);
    }
    const auto all = core::LookUpTables::of(tables);
    QVERIFY(all);
    QCOMPARE(all->find(tables.back().id), &all->all().back());
    QVERIFY(!all->find(u"no_such_table"));
    auto changed = tables;
    changed.pop_back();
    QVERIFY(!core::LookUpTables::of(changed));
    changed = tables;
    changed.push_back(tables.front());
    QVERIFY(!core::LookUpTables::of(changed));
    changed = tables;
    changed.front().id = u"unknown"_s;
    QVERIFY(!core::LookUpTables::of(changed));
    QVERIFY(!core::LookUpTables::of({}));
}

QTEST_GUILESS_MAIN(LookUpTableTest)
#include "tst_look_up_table.moc"
