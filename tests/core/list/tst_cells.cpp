// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/list/cells.hpp"
#include "core/value/digest.hpp"

using namespace core;
using namespace Qt::StringLiterals;
using json::Array;
using json::Value;

/// What one cell of a list says, by the type of its field.
class CellsTest : public QObject {
    Q_OBJECT

private slots:
    void cells_data();
    void cells();
    void blanksOfQuotedText();
    void whatIsWrittenReadsBack_data();
    void whatIsWrittenReadsBack();
    void lines_data();
    void lines();
};

void CellsTest::cells_data()
{
    QTest::addColumn<FieldType>("type");
    QTest::addColumn<QString>("cell");
    QTest::addColumn<Value>("value"); // null: nothing stands in the cell
    QTest::addColumn<QString>("expected");
    const auto taken = [](const char *name, FieldType type, const QString &cell, const Value &value) { QTest::newRow(name) << type << cell << value << QString(); };
    const auto refused = [](const char *name, FieldType type, const QString &cell, const QString &expected) { QTest::newRow(name) << type << cell << Value() << expected; };
    const QString digest = Digest::of("abc").hex();
    taken("empty", FieldType::Text, u"  "_s, {});
    taken("text", FieldType::Text, u" Duct "_s, u"Duct"_s);
    taken("text that a spreadsheet would run, guarded", FieldType::Text, u"'=1+1"_s, u"=1+1"_s);
    taken("whole number", FieldType::Integer, u"4"_s, 4);
    taken("whole number of nine digits", FieldType::Integer, u"999999999"_s, 999999999);
    refused("whole number of ten digits", FieldType::Integer, u"1000000000"_s, u"whole number"_s);
    refused("whole number with a sign", FieldType::Integer, u"+4"_s, u"whole number"_s);
    refused("whole number with a letter", FieldType::Integer, u"4a"_s, u"whole number"_s);
    taken("yes", FieldType::Flag, u"Yes"_s, true);
    taken("no", FieldType::Flag, u"NO"_s, {});
    refused("perhaps", FieldType::Flag, u"y"_s, u"yes or no"_s);
    taken("decimal", FieldType::Decimal, u"12.50"_s, u"12.50"_s);
    taken("decimal nought", FieldType::Decimal, u"0"_s, u"0"_s);
    refused("decimal comma", FieldType::Decimal, u"12,5"_s, u"decimal comma"_s);
    refused("comma in front", FieldType::Decimal, u",5"_s, u"12.5"_s);
    refused("comma behind", FieldType::Decimal, u"12,"_s, u"12.5"_s);
    refused("two commas", FieldType::Decimal, u"1,234,567"_s, u"12.5"_s);
    refused("a comma among letters", FieldType::Decimal, u"a,b"_s, u"12.5"_s);
    refused("below nought", FieldType::Decimal, u"-1"_s, u"not below 0"_s);
    refused("no number", FieldType::Decimal, u"tight"_s, u"12.5"_s);
    taken("unit", FieldType::Unit, u"Nm"_s, u"N·m"_s);
    refused("unknown unit", FieldType::Unit, u"in-lb"_s, u"lbf·in"_s);
    taken("texts", FieldType::Texts, u"torque | seal"_s, Array{u"torque"_s, u"seal"_s});
    taken("texts with nothing between", FieldType::Texts, u"torque||seal|"_s, Array{u"torque"_s, u"seal"_s});
    taken("ids", FieldType::Interfaces, u"E1|E2"_s, Array{u"E1"_s, u"E2"_s});
    refused("ids, one too long", FieldType::Interfaces, u"E1|"_s + QString(129, u'E'), u"ids of interfaces"_s);
    taken("people", FieldType::People, u"Ana|Ben"_s, Array{u"Ana"_s, u"Ben"_s});
    taken("date", FieldType::Date, u"2026-03-02"_s, u"2026-03-02"_s);
    refused("date as elsewhere", FieldType::Date, u"02.03.2026"_s, u"2026-03-02"_s);
    taken("moment", FieldType::Moment, u"2026-03-02T06:00:00.000Z"_s, u"2026-03-02T06:00:00.000Z"_s);
    refused("moment without seconds", FieldType::Moment, u"2026-03-02T06:00Z"_s, u"a time such as"_s);
    refused("choice of none", FieldType::Choice, u"worn"_s, u"one of"_s);
    taken("person", FieldType::Person, u"Ana"_s, u"Ana"_s);
    taken("interface", FieldType::Interface, u"E1"_s, u"E1"_s);
    taken("tool", FieldType::Tool, u"TW1"_s, u"TW1"_s);
    taken("digest", FieldType::Digest, digest, digest);
    refused("digest in capitals", FieldType::Digest, digest.toUpper(), u"lower-case"_s);
    taken("public key", FieldType::PublicKey, digest, digest);
    refused("records", FieldType::Records, u"left"_s, u"cannot hold"_s);
}

void CellsTest::cells()
{
    QFETCH(FieldType, type);
    QFETCH(QString, cell);
    QFETCH(Value, value);
    QFETCH(QString, expected);
    const CellValue read = cellValue(field("of"_L1, type, Needed::IfKnown, "Of"), {cell, false});
    if (!expected.isEmpty()) {
        QVERIFY(!read);
        QVERIFY2(read.error().contains(expected), qPrintable(read.error()));
        return;
    }
    QVERIFY2(read, read ? "" : qPrintable(read.error()));
    QCOMPARE(read->value_or(Value()), value);
}

void CellsTest::blanksOfQuotedText()
{
    const Field note = field("note"_L1, FieldType::Text, Needed::IfKnown, "Note");
    QCOMPARE(cellValue(note, {u" a "_s, true}), CellValue(Value(u" a "_s)));
    QCOMPARE(cellValue(note, {u" a "_s, false}), CellValue(Value(u"a"_s)));
}

void CellsTest::whatIsWrittenReadsBack_data()
{
    QTest::addColumn<Value>("value");
    QTest::addColumn<QString>("cell");
    QTest::newRow("text") << Value(u"Duct"_s) << u"Duct"_s;
    QTest::newRow("number") << Value(7) << u"7"_s;
    QTest::newRow("yes") << Value(true) << u"yes"_s;
    QTest::newRow("no") << Value(false) << u"no"_s;
    QTest::newRow("list") << Value(Array{u"a|b"_s, u"c\\d"_s}) << u"a\\|b|c\\\\d"_s;
    QTest::newRow("empty list") << Value(Array{}) << QString();
    QTest::newRow("nothing") << Value() << QString();
}

void CellsTest::whatIsWrittenReadsBack()
{
    QFETCH(Value, value);
    QFETCH(QString, cell);
    QCOMPARE(cellText(value), cell);
    if (const json::Array *list = value.array())
        QCOMPARE(Value(json::arrayOf(partsOfCell(cell))), Value(*list));
    QCOMPARE(partsOfCell(u"a\\"_s), std::vector{u"a\\"_s}); // a backslash at the very end means itself
}

/// Our own form: `part x quantity`, and the names of the flags that are set.
void CellsTest::lines_data()
{
    QTest::addColumn<QString>("cell");
    QTest::addColumn<QString>("written"); // empty: refused
    QTest::newRow("one") << u"BOLT-6 x 4"_s << u"BOLT-6 x 4"_s;
    QTest::newRow("new") << u"SEAL-28 x 1 new"_s << u"SEAL-28 x 1 new"_s;
    QTest::newRow("two") << u" BOLT-6 x 4 | SEAL-28 x 1  New "_s << u"BOLT-6 x 4|SEAL-28 x 1 new"_s;
    QTest::newRow("with a sign of multiplication") << u"BOLT-6 × 4"_s << u"BOLT-6 x 4"_s;
    QTest::newRow("a part with the same letter in it") << u"M6 x 20 x 4"_s << u"M6 x 20 x 4"_s;
    QTest::newRow("a part with a bar in it") << u"A\\|B x 4"_s << u"A\\|B x 4"_s;
    QTest::newRow("a part called new") << u"new x 4"_s << u"new x 4"_s;
    QTest::newRow("no number") << u"BOLT-6 x"_s << QString();
    QTest::newRow("no part") << u" x 4"_s << QString();
    QTest::newRow("a part alone") << u"BOLT-6"_s << QString();
    QTest::newRow("half a bolt") << u"BOLT-6 x 0.5"_s << QString();
    QTest::newRow("less than none") << u"BOLT-6 x -4"_s << QString();
    QTest::newRow("no blanks between") << u"BOLT-6x4"_s << QString();
    QTest::newRow("another word behind") << u"BOLT-6 x 4 old"_s << QString();
}

void CellsTest::lines()
{
    QFETCH(QString, cell);
    QFETCH(QString, written);
    const Field hardware = records("hardware"_L1, Needed::IfKnown, "Hardware",
                                   {field("part"_L1, FieldType::Text, Needed::Always, "Part"), field("quantity"_L1, FieldType::Integer, Needed::Always, "Number"), field("new"_L1, FieldType::Flag, Needed::IfKnown, "New")});
    const CellValue value = cellValue(hardware, {cell, false});
    QCOMPARE(value.has_value(), !written.isEmpty());
    if (!value) {
        QVERIFY2(value.error().contains(u"part x quantity"_s) && value.error().contains(u"new"_s), qPrintable(value.error()));
        return;
    }
    QCOMPARE(cellText(hardware, **value), written);
    QCOMPARE(cellValue(hardware, {written, false}), value);
}

QTEST_GUILESS_MAIN(CellsTest)
#include "tst_cells.moc"
