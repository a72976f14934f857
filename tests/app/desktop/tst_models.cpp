// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QAbstractItemModelTester>
#include <QCollator>
#include <QSignalSpy>
#include <QTest>

#include <algorithm>

#include "app/desktop/pages/list/interface_filter.hpp"
#include "app/desktop/pages/list/interface_model.hpp"
#include "app/desktop/parts/row_model.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/job/loose_ends.hpp"
#include "resources/resources.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using Reporting = QAbstractItemModelTester::FailureReportingMode;

namespace {

void take(desktop::JobFeed &feed, const story::Story &story)
{
    feed.take(std::make_shared<const core::JobState>(story.job()), story.fold().said(), story.reg());
}

QStringList keysOf(const desktop::RowModel &model)
{
    QStringList keys;
    for (const desktop::Row &row : model.rows())
        keys << row.key;
    return keys;
}

QStringList idsOf(const QAbstractItemModel &model)
{
    QStringList ids;
    for (int row = 0; row < model.rowCount(); ++row)
        ids << model.index(row, desktop::InterfaceModel::Id).data().toString();
    return ids;
}

std::vector<desktop::Row> rowsOf(const QString &keys)
{
    std::vector<desktop::Row> rows;
    for (const QString &key : keys.split(u' ', Qt::SkipEmptyParts))
        rows.push_back({key.left(1), {key}});
    return rows;
}

} // namespace

class TstModels : public QObject {
    Q_OBJECT

private slots:
    void rowsFollow_data();
    void rowsFollow();
    void interfacesFollowWithoutReset();
    void anotherJobResets();
    void filterFindsWords();
    void filterSortsNumbersByValue();
    void filterKeepsWhatStays();
    void filterFollowsTheModel();
    void looseOnlyHidesWhatHasNoLooseEnd_data();
    void looseOnlyHidesWhatHasNoLooseEnd();
    void aToolInDoubtMakesItsInterfaceLoose();
    void stageStandsAsWord();
    void columnsAreNamedAsInSpreadsheets_data();
    void columnsAreNamedAsInSpreadsheets();
};

void TstModels::columnsAreNamedAsInSpreadsheets_data()
{
    QTest::addColumn<qint64>("column");
    QTest::addColumn<QString>("letters");
    for (const auto &[column, letters] : {std::pair{1, "A"}, {4, "D"}, {26, "Z"}, {27, "AA"}, {52, "AZ"}, {53, "BA"}, {702, "ZZ"}, {703, "AAA"}, {16384, "XFD"}})
        QTest::newRow(letters) << qint64{column} << QString::fromLatin1(letters);
}

void TstModels::columnsAreNamedAsInSpreadsheets()
{
    QFETCH(qint64, column);
    QTEST(desktop::spreadsheetColumn(column), "letters");
}

void TstModels::rowsFollow_data()
{
    QTest::addColumn<QString>("before");
    QTest::addColumn<QString>("after");
    QTest::addColumn<int>("inserted");
    QTest::addColumn<int>("removed");
    QTest::addColumn<int>("moved");
    QTest::addColumn<int>("changed");
    QTest::addRow("nothing moved") << "a b c" << "a b c" << 0 << 0 << 0 << 0;
    QTest::addRow("one came in front") << "a b" << "n a b" << 1 << 0 << 0 << 0;
    QTest::addRow("one went") << "a b c" << "a c" << 0 << 1 << 0 << 0;
    QTest::addRow("one changed") << "a b c" << "a b2 c" << 0 << 0 << 0 << 1;
    QTest::addRow("one moved up") << "a b c" << "c a b" << 0 << 0 << 1 << 0;
    QTest::addRow("all at once") << "a b c d" << "e d2 a" << 1 << 2 << 1 << 1;
    QTest::addRow("all went") << "a b" << "" << 0 << 2 << 0 << 0;
}

void TstModels::rowsFollow()
{
    QFETCH(QString, before);
    QFETCH(QString, after);
    desktop::RowModel model({u"Text"_s});
    const QAbstractItemModelTester tester(&model, Reporting::QtTest);
    model.take(rowsOf(before));
    QSignalSpy inserted(&model, &QAbstractItemModel::rowsInserted);
    QSignalSpy removed(&model, &QAbstractItemModel::rowsRemoved);
    QSignalSpy moved(&model, &QAbstractItemModel::rowsMoved);
    QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    model.take(rowsOf(after));
    QCOMPARE(model.rows(), rowsOf(after));
    QCOMPARE(keysOf(model).size(), rowsOf(after).size());
    QTEST(static_cast<int>(inserted.size()), "inserted");
    QTEST(static_cast<int>(removed.size()), "removed");
    QTEST(static_cast<int>(moved.size()), "moved");
    QTEST(static_cast<int>(changed.size()), "changed");
    QCOMPARE(reset.size(), 0);
}

void TstModels::interfacesFollowWithoutReset()
{
    const auto kinds = resources::loadKinds();
    QVERIFY(kinds);
    story::Story story;
    desktop::JobFeed feed;
    desktop::InterfaceModel model(feed, *kinds);
    const QAbstractItemModelTester tester(&model, Reporting::QtTest);
    take(feed, story);
    QVERIFY(model.rowCount() > 0);
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
    story.tell(u"Ana disconnects D1"_s);
    QCOMPARE(story.refusedBy(), QString());
    take(feed, story);
    QCOMPARE(reset.size(), 0);
    QCOMPARE(changed.size(), 1);
    const auto row = model.rowOf(*core::InterfaceId::parse(u"D1"));
    QVERIFY(row);
    QCOMPARE(changed.front().front().toModelIndex().row(), *row);
    QCOMPARE(model.index(*row, desktop::InterfaceModel::Stage).data(desktop::InterfaceModel::StageRole).toInt(), static_cast<int>(core::Stage::Disconnected));
}

void TstModels::anotherJobResets()
{
    const auto kinds = resources::loadKinds();
    QVERIFY(kinds);
    const story::Story story;
    desktop::JobFeed feed;
    desktop::InterfaceModel model(feed, *kinds);
    const QAbstractItemModelTester tester(&model, Reporting::QtTest);
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    take(feed, story);
    QCOMPARE(reset.size(), 1);
    feed.take(nullptr, {}, story.reg());
    QCOMPARE(reset.size(), 2);
    QCOMPARE(model.rowCount(), 0);
}

void TstModels::filterFindsWords()
{
    const auto kinds = resources::loadKinds();
    QVERIFY(kinds);
    const story::Story story;
    desktop::JobFeed feed;
    desktop::InterfaceModel model(feed, *kinds);
    desktop::InterfaceFilter filter(model);
    const QAbstractItemModelTester tester(&filter, Reporting::QtTest);
    take(feed, story);
    filter.setWords(u"d1"_s);
    QVERIFY(filter.rowCount() >= 1);
    for (int row = 0; row < filter.rowCount(); ++row)
        QVERIFY(model.haystackAt(filter.mapToSource(filter.index(row, 0)).row()).contains("d1"));
    filter.setWords(u"d1 nosuchword"_s);
    QCOMPARE(filter.rowCount(), 0);
    QCOMPARE(filter.headerData(desktop::InterfaceModel::Zone, Qt::Horizontal, Qt::DisplayRole).toString(), u"Zone"_s);
    filter.setWords({});
    QCOMPARE(filter.rowCount(), model.rowCount());
}

void TstModels::filterSortsNumbersByValue()
{
    const auto kinds = resources::loadKinds();
    QVERIFY(kinds);
    const story::Story story;
    desktop::JobFeed feed;
    desktop::InterfaceModel model(feed, *kinds);
    desktop::InterfaceFilter filter(model);
    const QAbstractItemModelTester tester(&filter, Reporting::QtTest);
    take(feed, story);
    const QStringList asListed = idsOf(filter);
    filter.sort(desktop::InterfaceModel::Id);
    QStringList expected = asListed;
    QCollator collator;
    collator.setNumericMode(true);
    std::sort(expected.begin(), expected.end(), collator);
    QVERIFY(expected != asListed);
    QCOMPARE(idsOf(filter), expected);
    filter.sort(desktop::InterfaceModel::Id, Qt::DescendingOrder);
    std::reverse(expected.begin(), expected.end());
    QCOMPARE(idsOf(filter), expected);
    filter.sort(-1);
    QCOMPARE(idsOf(filter), asListed);
}

void TstModels::filterKeepsWhatStays()
{
    const auto kinds = resources::loadKinds();
    QVERIFY(kinds);
    const story::Story story;
    desktop::JobFeed feed;
    desktop::InterfaceModel model(feed, *kinds);
    desktop::InterfaceFilter filter(model);
    const QAbstractItemModelTester tester(&filter, Reporting::QtTest);
    take(feed, story);
    QVERIFY(filter.rowCount() > 2);
    const QString id = filter.index(filter.rowCount() - 1, desktop::InterfaceModel::Id).data().toString();
    const QPersistentModelIndex last(filter.index(filter.rowCount() - 1, desktop::InterfaceModel::Id));
    const QPersistentModelIndex first(filter.index(0, desktop::InterfaceModel::Id));
    QSignalSpy reset(&filter, &QAbstractItemModel::modelReset);
    QSignalSpy layout(&filter, &QAbstractItemModel::layoutChanged);
    filter.setWords(id.toLower());
    QCOMPARE(last.data().toString(), id);
    QVERIFY(!first.isValid());
    QCOMPARE(layout.size(), 1);
    filter.setWords(id.toLower() + u' ');
    QCOMPARE(layout.size(), 1); // the same rows: nothing to tell
    filter.setWords({});
    QCOMPARE(last.row(), filter.rowCount() - 1);
    QCOMPARE(last.data().toString(), id);
    QCOMPARE(reset.size(), 0);
}

void TstModels::filterFollowsTheModel()
{
    const auto kinds = resources::loadKinds();
    QVERIFY(kinds);
    story::Story story;
    desktop::JobFeed feed;
    desktop::InterfaceModel model(feed, *kinds);
    desktop::InterfaceFilter filter(model);
    const QAbstractItemModelTester tester(&filter, Reporting::QtTest);
    take(feed, story);
    filter.setWords(u"disconnected"_s);
    QCOMPARE(filter.rowCount(), 0);
    story.tell(u"Ana disconnects D1"_s);
    QCOMPARE(story.refusedBy(), QString());
    take(feed, story);
    QCOMPARE(idsOf(filter), QStringList{u"D1"_s});
    filter.setWords({});
    QSignalSpy changed(&filter, &QAbstractItemModel::dataChanged);
    story.tell(u"Ben reconnects D1"_s);
    QCOMPARE(story.refusedBy(), QString());
    take(feed, story);
    QCOMPARE(changed.size(), 1);
    QCOMPARE(changed.front().front().toModelIndex().siblingAtColumn(desktop::InterfaceModel::Id).data().toString(), u"D1"_s);
}

void TstModels::looseOnlyHidesWhatHasNoLooseEnd_data()
{
    QTest::addColumn<QString>("told");
    QTest::addColumn<QStringList>("hidden");

    QTest::addRow("nothing done") << QString() << QStringList();
    QTest::addRow("waits for its inspection") << u"Ana disconnects K1; Ben reconnects K1"_s << QStringList();
    QTest::addRow("inspected") << u"Ana disconnects K1; Ben reconnects K1; Cho accepts K1"_s << QStringList{u"K1"_s};
    QTest::addRow("inspected, and a finding of that name is open") << u"Ana disconnects K1; Ben reconnects K1; Cho accepts K1; Ben raises K1 interface=D1"_s << QStringList{u"K1"_s};
    QTest::addRow("inspected, then disturbed") << u"Ana disconnects K1; Ben reconnects K1; Cho accepts K1; Dee disturbs K1"_s << QStringList();
    QTest::addRow("undisturbed") << u"Ben finds-undisturbed K1"_s << QStringList{u"K1"_s};
    QTest::addRow("not applicable") << u"Ben finds-inapplicable B1"_s << QStringList{u"B1"_s};
    QTest::addRow("not applicable and critical: nobody agreed yet") << u"Ben finds-inapplicable M1"_s << QStringList();
}

/// The same interfaces have a loose end on the list as on the page Loose ends, while the job goes on and when it is opened as it is.
void TstModels::looseOnlyHidesWhatHasNoLooseEnd()
{
    QFETCH(QString, told);
    QFETCH(QStringList, hidden);
    const auto kinds = resources::loadKinds();
    QVERIFY(kinds);
    story::Story story;
    desktop::JobFeed feed;
    desktop::InterfaceModel model(feed, *kinds);
    desktop::InterfaceFilter filter(model);
    filter.setLooseOnly(true);
    take(feed, story);
    QCOMPARE(filter.rowCount(), model.rowCount());
    story.tell(told);
    QCOMPARE(story.refusedBy(), QString());
    take(feed, story);
    const auto hiddenBy = [](const desktop::InterfaceFilter &by, const desktop::InterfaceModel &of) {
        QStringList ids;
        for (int row = 0; row < of.rowCount(); ++row) {
            if (!by.mapFromSource(of.index(row, 0)).isValid())
                ids << of.index(row, 0).data(desktop::InterfaceModel::ItemRole).toString();
        }
        return ids;
    };
    QCOMPARE(hiddenBy(filter, model), hidden);
    for (const core::LooseEnd &end : feed.looseEnds())
        QVERIFY2(!core::isAboutInterface(end) || !hidden.contains(end.subject), qPrintable(end.sentence));
    desktop::InterfaceModel fresh(feed, *kinds);
    desktop::InterfaceFilter freshFilter(fresh);
    freshFilter.setLooseOnly(true);
    QCOMPARE(hiddenBy(freshFilter, fresh), hidden);
}

/// It is inspected, and nobody touched it since: only the register says that its wrench was wrong.
void TstModels::aToolInDoubtMakesItsInterfaceLoose()
{
    const auto kinds = resources::loadKinds();
    QVERIFY(kinds);
    const story::Story story(u"Ana lists X1 requirements=torque torque_fasteners=1 torque_min=180 torque_max=200 torque_unit=lbf·in; Ana disconnects X1; Ben reconnects X1; Ben torques X1 fastener=1 value=190 tool=TW6; Cho accepts X1"_s);
    QCOMPARE(story.refusedBy(), QString());
    desktop::JobFeed feed;
    desktop::InterfaceModel model(feed, *kinds);
    desktop::InterfaceFilter filter(model);
    filter.setLooseOnly(true);
    const auto job = std::make_shared<const core::JobState>(story.job());
    feed.take(job, story.fold().said(), story.reg());
    const QModelIndex row = model.index(*model.rowOf(*core::InterfaceId::parse(u"X1")), 0);
    QVERIFY(!filter.mapFromSource(row).isValid());
    core::Register doubted = story.reg();
    doubted.tools.at(*core::ToolId::parse(u"TW6")).doubts = {{QDate(2026, 1, 2), *core::Instant::parse(u"2026-03-05T08:00:00Z"), u"Reads 6 % low."_s, u"CC-10"_s}};
    ++doubted.head.seq;
    feed.take(job, story.fold().said(), doubted);
    QVERIFY(filter.mapFromSource(row).isValid());
    // Out of doubt, it goes again.
    core::Register cleared = story.reg();
    cleared.head.seq = doubted.head.seq + 1;
    feed.take(job, story.fold().said(), cleared);
    QVERIFY(!filter.mapFromSource(row).isValid());
}

void TstModels::stageStandsAsWord()
{
    const auto kinds = resources::loadKinds();
    QVERIFY(kinds);
    const story::Story story;
    desktop::JobFeed feed;
    desktop::InterfaceModel model(feed, *kinds);
    take(feed, story);
    QCOMPARE(model.index(0, desktop::InterfaceModel::Stage).data().toString(), core::stageWord(core::Stage::Connected));
}

QTEST_MAIN(TstModels)
#include "tst_models.moc"
