// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QAction>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>

#include "app/desktop/main_window.hpp"
#include "app/desktop/pages/page.hpp"
#include "app/desktop/pages/where_used/where_used_dialog.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "core/list/csv.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/scripted_ask.hpp"

using namespace Qt::StringLiterals;

namespace {

template <class Widget>
Widget *named(const QWidget &in, const QString &name)
{
    auto *found = in.findChild<Widget *>(name);
    if (!found)
        qFatal("no widget %s", qPrintable(name));
    return found;
}

} // namespace

/// A batch that is called back, a tool that was wrong, a person who left: found in every job of the store.
class TestWhereUsed : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void init();
    void cleanup();
    void findsItInEveryJob_data();
    void findsItInEveryJob();
    void nothingNamesIt();
    void rowLeadsToTheEntry();
    void jobsComeFirst();
    void allOfItIsWritten();

private:
    void find(const QString &sort, const QString &value);
    desktop::RowTable &rows() { return *named<desktop::RowTable>(*m_dialog, u"uses"_s); }

    Bench m_bench;
    std::vector<core::LedgerId> m_jobs;
    ScriptedAsk m_ask;
    std::unique_ptr<desktop::MainWindow> m_window;
    desktop::WhereUsedDialog *m_dialog = nullptr;
};

/// Two jobs, in each of which a seal of batch L-7 went in.
void TestWhereUsed::initTestCase()
{
    QCOMPARE(m_bench.trouble(), QString());
    const auto session = m_bench.another();
    QVERIFY(session);
    for (const QString &workOrder : {u"WO-1"_s, u"WO-2"_s}) {
        const auto ledger = m_bench.openJob(*session, {{u"work_order"_s, workOrder}});
        QVERIFY2(ledger, qPrintable(m_bench.trouble()));
        m_jobs.push_back(*ledger);
        const std::tuple<const char *, core::json::Object> said[] = {
            {"interface.listed", {{u"name"_s, u"Fuel feed line"_s}, {u"kind"_s, u"fuel_line"_s}, {u"zone"_s, u"Right"_s}, {u"requirements"_s, core::json::arrayOf({u"seal"_s})}, {u"seal_part"_s, u"S-77"_s}}},
            {"interface.disconnected", {{u"tag"_s, u"1"_s}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}}},
            {"interface.reconnected", {{u"tag_recovered"_s, u"1"_s}, {u"blanks_removed"_s, 0}, {u"seal_part"_s, u"S-77"_s}, {u"seal_batch"_s, u"L-7"_s}}}};
        for (const auto &[kind, body] : said)
            QCOMPARE(Bench::say(*session, *ledger, u"ana"_s, QString::fromLatin1(kind), u"F1"_s, body), QString());
    }
}

void TestWhereUsed::init()
{
    m_window = std::make_unique<desktop::MainWindow>(m_ask, m_bench.kinds(), desktop::SessionMaker{m_bench.clock(), core::leastCost, session::IdentityRule::usualIdleLimit}, desktop::Preferences());
    m_window->resize(1366, 768);
    m_window->show();
    m_window->openStore(m_bench.path());
    m_window->openJob(m_jobs.front());
    for (QAction *action : m_window->findChildren<QAction *>()) {
        if (action->shortcut() == QKeySequence(u"Ctrl+Shift+F"_s))
            action->trigger();
    }
    m_dialog = m_window->findChild<desktop::WhereUsedDialog *>();
    QVERIFY(m_dialog);
}

void TestWhereUsed::cleanup() { m_window.reset(); }

void TestWhereUsed::find(const QString &sort, const QString &value)
{
    auto *box = named<QComboBox>(*m_dialog, u"sort"_s);
    QVERIFY(box->findData(sort) >= 0);
    box->setCurrentIndex(box->findData(sort));
    named<QLineEdit>(*m_dialog, u"value"_s)->setText(value);
    QTest::keyClick(named<QLineEdit>(*m_dialog, u"value"_s), Qt::Key_Return);
}

void TestWhereUsed::findsItInEveryJob_data()
{
    QTest::addColumn<QString>("sort");
    QTest::addColumn<QString>("value");
    QTest::addColumn<int>("entries");
    QTest::addRow("batch") << u"batch"_s << u"L-7"_s << 2;
    QTest::addRow("a like batch is another") << u"batch"_s << u"L-70"_s << 0;
    QTest::addRow("seal, listed and put in") << u"part"_s << u"S-77"_s << 4;
    QTest::addRow("serial number of the unit") << u"serial"_s << u"K-2"_s << 2;
    QTest::addRow("tool, in the register alone") << u"tool"_s << u"TW1"_s << 2;
    QTest::addRow("person by id") << u"person"_s << u"dara"_s << 2;
    QTest::addRow("person by name") << u"person"_s << u"Dara Voss"_s << 2;
}

void TestWhereUsed::findsItInEveryJob()
{
    QFETCH(QString, sort);
    QFETCH(QString, value);
    QFETCH(int, entries);
    find(sort, value);
    QCOMPARE(rows().model().rowCount(), entries);
}

void TestWhereUsed::nothingNamesIt()
{
    QVERIFY(!named<QPushButton>(*m_dialog, u"lead"_s)->isEnabled());
    find(u"batch"_s, u"L-70"_s);
    QCOMPARE(named<QLabel>(*m_dialog, u"count"_s)->text(), u"Nothing names it."_s);
    QVERIFY(!named<QPushButton>(*m_dialog, u"csv"_s)->isEnabled());
    find(u"tool"_s, u"TW1"_s);
    rows().choose(rows().model().rows().front().key);
    QVERIFY(!named<QPushButton>(*m_dialog, u"lead"_s)->isEnabled()); // of the register, which has no page of entries
}

void TestWhereUsed::rowLeadsToTheEntry()
{
    find(u"batch"_s, u"L-7"_s);
    const desktop::Row second = rows().model().rows()[1];
    QCOMPARE(second.cells[0], u"WO-2"_s);
    QVERIFY2(second.cells[4].contains(u"L-7"), qPrintable(second.cells[4]));
    rows().choose(second.key);
    QTest::keyClick(&rows().view(), Qt::Key_Return);
    const auto *record = named<desktop::Page>(*m_window, u"record"_s);
    QVERIFY(record->isVisible());
    QCOMPARE(named<desktop::RowTable>(*record, u"entries"_s)->chosen(), second.cells[1]);
    QVERIFY(!m_dialog->isVisible());
}

/// Jobs first, each with whether it is closed and how many entries it has; choosing one leaves its entries alone.
void TestWhereUsed::jobsComeFirst()
{
    find(u"part"_s, u"S-77"_s);
    auto *jobs = named<desktop::RowTable>(*m_dialog, u"jobs"_s);
    QCOMPARE(jobs->model().rowCount(), 2);
    QCOMPARE(jobs->model().rows()[1].cells, QStringList({u"WO-2"_s, u"Freighter 07"_s, u"open"_s, u"2"_s}));
    QVERIFY(!named<QPushButton>(*m_dialog, u"allJobs"_s)->isEnabled());
    jobs->choose(jobs->model().rows()[1].key);
    QCOMPARE(rows().model().rowCount(), 2);
    QCOMPARE(rows().model().rows()[0].cells[0], u"WO-2"_s);
    QCOMPARE(named<QLabel>(*m_dialog, u"count"_s)->text(), u"2 of 4 entries"_s);
    named<QPushButton>(*m_dialog, u"allJobs"_s)->click();
    QCOMPARE(rows().model().rowCount(), 4);
    jobs->choose(jobs->model().rows()[1].key);
    find(u"batch"_s, u"L-70"_s); // a new question, of which nothing is chosen
    QCOMPARE(jobs->model().rowCount(), 0);
    QVERIFY(!named<QPushButton>(*m_dialog, u"allJobs"_s)->isEnabled());
}

void TestWhereUsed::allOfItIsWritten()
{
    find(u"batch"_s, u"L-7"_s);
    auto *jobs = named<desktop::RowTable>(*m_dialog, u"jobs"_s);
    jobs->choose(jobs->model().rows()[0].key); // what is shown narrows nothing
    m_ask.savePath = m_bench.file(u"used.csv"_s, {});
    named<QPushButton>(*m_dialog, u"csv"_s)->click();
    QFile file(*m_ask.savePath);
    QVERIFY(file.open(QIODevice::ReadOnly));
    const core::csv::Table table = core::csv::read(file.readAll(), u"used.csv"_s);
    QVERIFY(table.faults.empty());
    QCOMPARE(table.records.size(), 3U);
    QCOMPARE(table.records[0].fields.size(), 13U);
    QCOMPARE(table.records[2].fields[0].text, u"WO-2"_s);
    QCOMPARE(table.records[2].fields[2].text, u"open"_s);
    QCOMPARE(table.records[2].fields[6].text, u"interface.reconnected"_s);
    QCOMPARE(table.records[2].fields[11].text, u"stands"_s);
    QCOMPARE(table.records[2].fields[12].text.size(), 64);
    m_ask.savePath = m_bench.file(u"used.pdf"_s, {});
    named<QPushButton>(*m_dialog, u"pdf"_s)->click();
    QFile pdf(*m_ask.savePath);
    QVERIFY(pdf.open(QIODevice::ReadOnly));
    QVERIFY(pdf.read(5) == "%PDF-");
}

QTEST_MAIN(TestWhereUsed)
#include "tst_where_used.moc"
