// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QDir>
#include <QtMath>
#include <QtTest>

#include "core/tables/catalogue.hpp"
#include "resources/resources.hpp"

using namespace Qt::StringLiterals;
using core::LookUpRow;
using core::LookUpTable;

/// The tables against what their sources print. Every spot check names the document; where the project only remembers a
/// figure, the check says so and proves no more than that the table holds what was remembered.
class PublishedTablesTest : public QObject {
    Q_OBJECT

private slots:
    void everyTableIsThere();
    void figuresAreAsPublished_data();
    void figuresAreAsPublished();
    void everyTableHasACheck();
    void aBandBeginsBeforeItEnds();
    void bandsOfThreadsStayBelowTheirLimit();
    void estimatedShearBands();
    void dragIsNotBreakaway();
    void slingFactors();
    void leakClassesFollowOneAnother();
    void passesEndAtTheWholeTorque();
    void whereSourcesDisagreeBothStand_data();
    void whereSourcesDisagreeBothStand();
    void cautionIsTheSame();

private:
    static const core::LookUpTables &tables();
};

namespace {

/// A row as its source has it.
struct Published {
    const char *source;
    const char *table;
    const char *row;
    const char *cells; ///< column=value, separated by blanks; ~ stands for a blank within
    const char *seen;
};

const std::vector<Published> &published()
{
    static const std::vector<Published> all{
        {"AC 43.13-1B (9/8/98) table 7-1", "thread_torque", "fine-10-32", "tension_least=20 tension_most=25 shear_least=12 shear_most=15 tension_greatest=40 shear_greatest=25 shear_is_estimated=no", "read"},
        {"AC 43.13-1B (9/8/98) table 7-1", "thread_torque", "fine-1/4-28", "tension_least=50 tension_most=70 shear_least=30 shear_most=40 tension_greatest=100 shear_greatest=60 shear_is_estimated=no", "read"},
        {"AC 43.13-1B (9/8/98) table 7-1", "thread_torque", "fine-3/8-24", "tension_least=160 tension_most=190 shear_least=95 shear_most=110 tension_greatest=390 shear_greatest=240", "read"},
        {"AC 43.13-1B (9/8/98) table 7-1", "thread_torque", "fine-1-1/4-12", "tension_least=9000 tension_most=11000 shear_least=5400 shear_most=6600 shear_is_estimated=yes", "read"},
        {"AC 43.13-1B (9/8/98) table 7-1", "thread_torque", "coarse-1/4-20", "tension_least=40 tension_most=50 shear_least=25 shear_most=30 tension_greatest=75 shear_greatest=45", "read"},
        {"AC 43.13-1B (9/8/98) table 7-1", "thread_torque", "coarse-7/8-9", "tension_least=2200 tension_most=3000 shear_least=1300 shear_most=1800 tension_greatest=4600 shear_greatest=2700", "read"},
        {"AC 43.13-1B (9/8/98) table 7-2", "locknut_drag", "fine-7/16-20", "drag_least=8", "read"},
        {"AC 43.13-1B (9/8/98) table 7-2", "locknut_drag", "fine-1-1/4-12", "drag_least=94", "read"},
        {"AC 43.13-1B (9/8/98) table 7-2", "locknut_drag", "coarse-1-8", "drag_least=51", "read"},
        {"ISO 6789:2003, through a leaflet on it", "torque_tool_deviation", "2003-over-10", "above=10 deviation=4", "read"},
        {"ISO 6789:2003, through a leaflet on it", "torque_tool_deviation", "2003-to-10", "up_to=10 deviation=6", "read"},
        {"ISO 6789-1:2017 clause 5.1.5, from memory", "torque_tool_deviation", "2017-over-10", "above=10 deviation=4", "from memory"},
        {"ISO 6789-1:2017 clause 5.1.5, from memory", "torque_tool_deviation", "2017-to-10", "up_to=10 deviation=6", "from memory"},
        {"MS33540 or NASM33540, as quoted", "lockwire_twists", "0.051-0.060", "wire_least=0.051 wire_most=0.060 twists_least=4 twists_most=8", "read"},
        {"AC 43.13-1B, as quoted", "lockwire_twists", "0.032-faa", "wire_least=0.032 wire_most=0.032 twists_least=6 twists_most=8", "read"},
        {"AC 43.13-1B chapter 7 section 7, as quoted", "lockwire_wire", "large-hole", "hole_above=0.045 wire_least=0.032", "read"},
        {"AC 43.13-1B chapter 7 section 7, as quoted", "lockwire_wire", "small-hole-close", "hole_from=0.045 hole_up_to=0.062 wire_least=0.020", "read"},
        {"AC 43.13-1B (9/8/98) paragraph 11-189", "bonding_limits", "jumper-connection", "limit=3 comparison=at~most", "read"},
        {"AC 43.13-1B (9/8/98) paragraph 11-188 f", "bonding_limits", "frame-to-structure", "limit=2.5 comparison=less~than", "read"},
        {"MIL-B-5087B class R, from memory", "bonding_limits", "class-r", "limit=2.5 comparison=at~most", "from memory"},
        {"A sling maker's chart of angles", "sling_angles", "45", "angle_from_horizontal=45 angle_from_vertical=45 tension_factor=1.414 capacity_factor=0.707", "read"},
        {"A sling maker's chart of angles", "sling_angles", "30", "angle_from_horizontal=30 angle_from_vertical=60 tension_factor=2 capacity_factor=0.500", "read"},
        {"FAA-H-8083-31 chapter 14", "leak_classes", "faa-3", "class=heavy~seep above=1.5 above_edge=included up_to=4 observation_time=30~min", "read"},
        {"FAA-H-8083-31 chapter 14: less than 3/4 in", "leak_classes", "faa-1", "class=stain up_to=0.75 up_to_edge=excluded", "read"},
        {"FAA-H-8083-31 chapter 14: 1 1/2 in stands in two classes", "leak_classes", "faa-2", "above_edge=included up_to=1.5 up_to_edge=included", "read"},
        {"28-11-0 of a large jet (15 Nov 1968): not over", "leak_classes", "jet-1", "class=stain up_to=1.5 up_to_edge=included", "read"},
        {"28-11-0 of a large jet (15 Nov 1968): no larger than", "leak_classes", "jet-3", "class=heavy~seep above_edge=excluded up_to=6 up_to_edge=included", "read"},
        {"28-11-0 of a large jet (15 Nov 1968): anything beyond", "leak_classes", "jet-4", "class=running~leak above=6 above_edge=excluded", "read"},
        {"28-11-0 of a large jet (15 Nov 1968)", "leak_classes", "jet-2", "class=seep above=1.5 up_to=4", "read"},
        {"NAVEDTRA 14315 chapter 4", "leak_classes", "navy-4", "class=running~leak above= up_to=", "read"},
        {"TM 10-5430-238-12&P work package 0009", "leak_classes", "army-3", "class=class~III criterion=drops~fall", "read"},
        {"TO 1-1-3, from memory", "leak_classes", "air-force-1", "class=stain up_to=0.75", "from memory"},
        {"Pages of two firms on flanges", "tightening_passes", "three-passes-2", "target_least=60 target_most=60", "read"},
        {"ASME PCC-1, from memory", "tightening_passes", "pcc-1-crosswise-2", "target_least=50 target_most=70", "from memory"},
        {"AC 43.13-1B change 1 (9/27/01) paragraph 10-2 c", "weight_change", "light", "empty_weight_below=5000 change_most=1", "read"},
        {"AC 43.13-1B change 1 (9/27/01) paragraph 10-2 c", "weight_change", "middle", "empty_weight_above=5000 empty_weight_below=50000 change_most=2", "read"},
        {"AC 43.13-1B change 1 (9/27/01) paragraph 10-2 c", "weight_change", "heavy", "empty_weight_above=50000 change_most=5", "read"},
    };
    return all;
}

QString faultOf(const core::Result<core::LookUpTables> &tables)
{
    return tables ? QString() : u"%1:%2:%3: %4"_s.arg(tables.error().where.file).arg(tables.error().where.row.value_or(0)).arg(tables.error().where.column.value_or(0)).arg(tables.error().message);
}

QString seenText(core::Seen seen)
{
    switch (seen) {
    case core::Seen::Read:
        return u"read"_s;
    case core::Seen::FromMemory:
        return u"from memory"_s;
    }
    Q_UNREACHABLE();
}

} // namespace

const core::LookUpTables &PublishedTablesTest::tables()
{
    static const auto all = resources::loadTables();
    if (!all)
        qFatal("%s", qPrintable(faultOf(all)));
    return *all;
}

void PublishedTablesTest::everyTableIsThere()
{
    const auto all = resources::loadTables();
    QVERIFY2(all, qPrintable(faultOf(all)));
    QStringList expected;
    for (const core::TableForm &form : core::tableForms())
        expected << QString::fromUtf8(form.id) + u".csv"_s;
    expected.sort();
    QVERIFY(!expected.isEmpty());
    const auto filesIn = [](const QString &folder) { return QDir(folder).entryList(QDir::Files, QDir::Name); };
    QCOMPARE(filesIn(qEnvironmentVariable("REMATE_SOURCE_DIR") + u"/resources/tables"_s), expected);
    QCOMPARE(filesIn(u":/tables"_s), expected);
}

void PublishedTablesTest::figuresAreAsPublished_data()
{
    QTest::addColumn<QString>("table");
    QTest::addColumn<QString>("row");
    QTest::addColumn<QString>("cells");
    QTest::addColumn<QString>("seen");
    for (const Published &one : published())
        QTest::addRow("%s: %s", one.source, one.row) << QString::fromUtf8(one.table) << QString::fromUtf8(one.row) << QString::fromUtf8(one.cells) << QString::fromUtf8(one.seen);
}

void PublishedTablesTest::figuresAreAsPublished()
{
    QFETCH(QString, table);
    QFETCH(QString, row);
    QFETCH(QString, cells);
    QFETCH(QString, seen);
    const LookUpTable *found = tables().find(table);
    QVERIFY(found);
    const LookUpRow *at = found->row(u"id", row);
    QVERIFY(at);
    for (const QString &cell : cells.split(u' ')) {
        const QString column = cell.section(u'=', 0, 0);
        QVERIFY2(std::any_of(found->columns.begin(), found->columns.end(), [&](const auto &one) { return one.id == column; }), qPrintable(column));
        QCOMPARE(column + u'=' + found->text(*at, column).replace(u' ', u'~'), cell);
    }
    QCOMPARE(seenText(at->seen), seen);
}

void PublishedTablesTest::everyTableHasACheck()
{
    for (const LookUpTable &table : tables().all())
        QVERIFY2(std::any_of(published().begin(), published().end(), [&](const Published &one) { return table.id == QLatin1String(one.table); }), qPrintable(table.id));
}

void PublishedTablesTest::aBandBeginsBeforeItEnds()
{
    int bands = 0;
    const std::vector<std::pair<QString, QString>> ends{{u"_least"_s, u"_most"_s}, {u"above"_s, u"up_to"_s}, {u"above"_s, u"below"_s}, {u"from"_s, u"up_to"_s}};
    for (const LookUpTable &table : tables().all()) {
        for (const core::LookUpColumn &column : table.columns) {
            for (const auto &[begin, end] : ends) {
                if (!column.id.endsWith(begin))
                    continue;
                const QString other = column.id.chopped(begin.size()) + end;
                for (const LookUpRow &row : table.rows) {
                    const auto least = table.number(row, column.id);
                    const auto most = table.number(row, other);
                    if (!least || !most)
                        continue;
                    ++bands;
                    QVERIFY2(begin == u"above" ? *least < *most : *least <= *most, qPrintable(table.id + u' ' + row.id));
                }
            }
        }
    }
    QVERIFY(bands >= 2 * 25 + 4 + 18); // threads twice, wires, passes
}

void PublishedTablesTest::bandsOfThreadsStayBelowTheirLimit()
{
    const LookUpTable *table = tables().find(u"thread_torque");
    QCOMPARE(table->rows.size(), 25u);
    for (const LookUpRow &row : table->rows) {
        QVERIFY2(*table->number(row, u"tension_most") < *table->number(row, u"tension_greatest"), qPrintable(row.id));
        QVERIFY2(*table->number(row, u"shear_most") < *table->number(row, u"shear_greatest"), qPrintable(row.id));
        QVERIFY2(*table->number(row, u"shear_most") < *table->number(row, u"tension_most"), qPrintable(row.id));
        QCOMPARE(row.id, table->text(row, u"series") + u'-' + table->text(row, u"thread_size"));
    }
}

void PublishedTablesTest::estimatedShearBands()
{
    // AC 43.13-1B (9/8/98) table 7-1 marks three.
    QStringList ids;
    for (const LookUpRow *row : tables().find(u"thread_torque")->rowsWith(u"shear_is_estimated", u"yes")) {
        ids << row->id;
        QVERIFY(row->note.contains(u"estimated"));
    }
    QCOMPARE(ids.join(u' '), u"fine-1-14 fine-1-1/8-12 fine-1-1/4-12"_s);
}

void PublishedTablesTest::dragIsNotBreakaway()
{
    // AC 43.13-1B (9/8/98) table 7-2 begins at 7/16 in; figures for smaller nuts are of another standard and another quantity.
    const LookUpTable *table = tables().find(u"locknut_drag");
    QCOMPARE(table->rows.size(), 18u);
    for (const LookUpRow &row : table->rows) {
        QVERIFY2(row.source.contains(u"table 7-2"), qPrintable(row.id));
        QCOMPARE(seenText(row.seen), u"read"_s);
    }
    for (const char16_t *small : {u"8-32", u"10-32", u"1/4-28", u"5/16-24", u"3/8-24"})
        QVERIFY(table->rowsWith(u"thread_size", small).empty());
}

void PublishedTablesTest::slingFactors()
{
    // A chart prints three decimals. Where its last digit is not that of 1/sin or sin, the row's note says what is.
    const LookUpTable *table = tables().find(u"sling_angles");
    QStringList odd;
    for (const LookUpRow &row : table->rows) {
        const auto degrees = table->number(row, u"angle_from_horizontal");
        QCOMPARE(degrees->digits() + table->number(row, u"angle_from_vertical")->digits(), 90);
        const double sine = qSin(qDegreesToRadians(degrees->approximate()));
        const auto isRounded = [&](const char16_t *column, double exact) {
            const auto printed = table->number(row, column);
            return !printed || printed->text() == QString::number(exact, 'f', printed->places());
        };
        if (isRounded(u"tension_factor", 1 / sine) && isRounded(u"capacity_factor", sine))
            continue;
        odd << row.id;
        const bool isTension = !isRounded(u"tension_factor", 1 / sine);
        const auto printed = table->number(row, isTension ? u"tension_factor" : u"capacity_factor");
        const double exact = isTension ? 1 / sine : sine;
        QVERIFY2(qAbs(printed->approximate() - exact) < 0.0015, qPrintable(row.id));
        if (row.id != u"60-other")
            QVERIFY2(row.note.contains(QString::number(exact, 'f', 3)), qPrintable(row.note));
    }
    QCOMPARE(odd.join(u' '), u"65 60-other 40 35 15"_s);
}

void PublishedTablesTest::leakClassesFollowOneAnother()
{
    const LookUpTable *table = tables().find(u"leak_classes");
    QHash<QString, const LookUpRow *> last;
    for (const LookUpRow &row : table->rows) {
        const QString scheme = table->text(row, u"scheme");
        const LookUpRow *before = last.value(scheme);
        QCOMPARE(table->number(row, u"order")->digits(), before ? table->number(*before, u"order")->digits() + 1 : 1);
        if (before && !table->text(row, u"above").isEmpty())
            QCOMPARE(table->text(row, u"above"), table->text(*before, u"up_to"));
        // An edge stands beside each size and nowhere else; of two neighbours at least one has the size between them.
        QCOMPARE(table->text(row, u"above").isEmpty(), table->text(row, u"above_edge").isEmpty());
        QCOMPARE(table->text(row, u"up_to").isEmpty(), table->text(row, u"up_to_edge").isEmpty());
        if (before && !table->text(row, u"above").isEmpty())
            QVERIFY2(table->text(row, u"above_edge") == u"included" || table->text(*before, u"up_to_edge") == u"included", qPrintable(row.id));
        QVERIFY2(!table->text(row, u"above").isEmpty() || !table->text(row, u"criterion").isEmpty() || row.seen == core::Seen::FromMemory, qPrintable(row.id));
        last.insert(scheme, &row);
    }
    QCOMPARE(last.size(), 5);
}

void PublishedTablesTest::passesEndAtTheWholeTorque()
{
    const LookUpTable *table = tables().find(u"tightening_passes");
    QHash<QString, const LookUpRow *> last;
    for (const LookUpRow &row : table->rows) {
        const QString scheme = table->text(row, u"scheme");
        const LookUpRow *before = last.value(scheme);
        QCOMPARE(table->number(row, u"pass")->digits(), before ? table->number(*before, u"pass")->digits() + 1 : 1);
        if (before)
            QVERIFY2(*table->number(*before, u"target_most") <= *table->number(row, u"target_least"), qPrintable(row.id));
        last.insert(scheme, &row);
    }
    QCOMPARE(last.size(), 4);
    for (const LookUpRow *row : std::as_const(last))
        QCOMPARE(table->text(*row, u"target_least"), u"100"_s);
}

void PublishedTablesTest::whereSourcesDisagreeBothStand_data()
{
    QTest::addColumn<QString>("table");
    QTest::addColumn<QString>("one");
    QTest::addColumn<QString>("other");
    QTest::addColumn<QString>("column");
    QTest::addRow("a sling at 60°") << u"sling_angles"_s << u"60"_s << u"60-other"_s << u"tension_factor"_s;
    QTest::addRow("wire of 0.032 in") << u"lockwire_twists"_s << u"0.032-0.041"_s << u"0.032-faa"_s << u"twists_most"_s;
    QTest::addRow("a heavy seep") << u"leak_classes"_s << u"faa-3"_s << u"jet-2"_s << u"class"_s;
    QTest::addRow("a torque wrench") << u"torque_tool_deviation"_s << u"2003-over-10"_s << u"alone-type-ii"_s << u"deviation"_s;
    QTest::addRow("a jumper and a frame") << u"bonding_limits"_s << u"jumper-connection"_s << u"frame-to-structure"_s << u"limit"_s;
}

void PublishedTablesTest::whereSourcesDisagreeBothStand()
{
    QFETCH(QString, table);
    QFETCH(QString, one);
    QFETCH(QString, other);
    QFETCH(QString, column);
    const LookUpTable *found = tables().find(table);
    const LookUpRow *a = found->row(u"id", one);
    const LookUpRow *b = found->row(u"id", other);
    QVERIFY(a && b);
    QVERIFY(found->text(*a, column) != found->text(*b, column));
    QVERIFY(!a->note.isEmpty() || !b->note.isEmpty());
}

void PublishedTablesTest::cautionIsTheSame()
{
    for (const LookUpTable &table : tables().all()) {
        QCOMPARE(table.caution, core::tableCaution());
        QVERIFY2(table.about.endsWith(u'.'), qPrintable(table.id));
    }
    QVERIFY(core::tableCaution().contains(u"approved maintenance data governs"));
}

QTEST_GUILESS_MAIN(PublishedTablesTest)
#include "tst_published_tables.moc"
