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
#include "app/session/people.hpp"
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
    void nothingFoundSaysWhy_data();
    void nothingFoundSaysWhy();
    void isNarrowedAsTheCommandIs();
    void badDaysAreRefused();
    void rowLeadsToTheEntry();
    void jobsComeFirst();
    void allOfItIsWritten();
    void signatureInDoubtIsMarked();
    void severalOfOneNameAreTold();

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
            QCOMPARE(Bench::say(*session, *ledger, workOrder == u"WO-2"_s ? u"ben"_s : u"ana"_s, QString::fromLatin1(kind), u"F1"_s, body), QString());
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
    QCOMPARE(named<QLabel>(*m_dialog, u"count"_s)->text(), u"Nothing was found."_s);
    QVERIFY(named<QPushButton>(*m_dialog, u"csv"_s)->isEnabled()); // that nothing was found is an answer as well
    m_ask.savePath = m_bench.file(u"none.csv"_s, {});
    named<QPushButton>(*m_dialog, u"csv"_s)->click();
    QFile file(*m_ask.savePath);
    QVERIFY(file.open(QIODevice::ReadOnly));
    QVERIFY(file.readAll().contains("No entry of any job names batch L-70."));
    find(u"tool"_s, u"TW1"_s);
    rows().choose(rows().model().rows().front().key);
    QVERIFY(!named<QPushButton>(*m_dialog, u"lead"_s)->isEnabled()); // of the register, which has no page of entries
}

/// Said beside the list and not only by its being empty, and told from a slip of the pen.
void TestWhereUsed::nothingFoundSaysWhy_data()
{
    QTest::addColumn<QString>("sort");
    QTest::addColumn<QString>("value");
    QTest::addColumn<QString>("says");
    QTest::addRow("batch that is there") << u"batch"_s << u"L-7"_s << QString();
    QTest::addRow("batch with a digit more") << u"batch"_s << u"L-70"_s << u"Known that are spelt alike: L-7."_s;
    QTest::addRow("tool that nobody registered") << u"tool"_s << u"TX-99"_s << u"The register knows no tool TX-99"_s;
    QTest::addRow("tool in small letters") << u"tool"_s << u"tw1"_s << u"spelt alike: TW1"_s;
    QTest::addRow("person whose name has two letters swapped") << u"person"_s << u"Dara Vsos"_s << u"spelt alike: dara (Dara Voss)"_s;
    QTest::addRow("nothing typed") << u"tool"_s << QString() << u"Say what is looked for"_s;
}

void TestWhereUsed::nothingFoundSaysWhy()
{
    QFETCH(QString, sort);
    QFETCH(QString, value);
    QFETCH(QString, says);
    find(sort, value);
    const auto *why = named<QLabel>(*m_dialog, u"nothing"_s);
    QCOMPARE(why->isVisible(), !says.isEmpty());
    QVERIFY2(why->text().contains(says), qPrintable(why->text()));
    QCOMPARE(rows().model().rowCount() == 0, !says.isEmpty());
}

/// By the kind of entry and by days; the file that is written has the same entries and says what it was narrowed to.
void TestWhereUsed::isNarrowedAsTheCommandIs()
{
    auto *kind = named<QComboBox>(*m_dialog, u"kind"_s);
    auto *from = named<QLineEdit>(*m_dialog, u"from"_s);
    auto *until = named<QLineEdit>(*m_dialog, u"until"_s);
    find(u"part"_s, u"S-77"_s);
    QCOMPARE(rows().model().rowCount(), 4);
    const auto session = m_bench.another();
    const QString day = session->now().utcDate().toString(Qt::ISODate);
    kind->setCurrentIndex(kind->findData(u"interface.reconnected"_s));
    QVERIFY(kind->currentIndex() > 0);
    find(u"part"_s, u"S-77"_s);
    QCOMPARE(rows().model().rowCount(), 2);
    from->setText(day);
    until->setText(day);
    QTest::keyClick(until, Qt::Key_Return);
    QCOMPARE(rows().model().rowCount(), 2);
    m_ask.savePath = m_bench.file(u"narrow.csv"_s, {});
    named<QPushButton>(*m_dialog, u"csv"_s)->click();
    QFile file(*m_ask.savePath);
    QVERIFY(file.open(QIODevice::ReadOnly));
    QCOMPARE(core::csv::read(file.readAll(), u"narrow.csv"_s).records.size(), 3U);
    const QString dayBefore = session->now().utcDate().addDays(-1).toString(Qt::ISODate);
    from->clear();
    until->setText(dayBefore);
    QTest::keyClick(until, Qt::Key_Return);
    QCOMPARE(rows().model().rowCount(), 0);
    const QString why = named<QLabel>(*m_dialog, u"nothing"_s)->text();
    QVERIFY2(why.contains(u"entries of kind interface.reconnected, up to "_s + dayBefore) && why.contains(u"there are: 4"_s), qPrintable(why));
}

void TestWhereUsed::badDaysAreRefused()
{
    auto *from = named<QLineEdit>(*m_dialog, u"from"_s);
    auto *until = named<QLineEdit>(*m_dialog, u"until"_s);
    const auto *why = named<QLabel>(*m_dialog, u"nothing"_s);
    from->setText(u"2026-03-03"_s);
    until->setText(u"2026-03-02"_s);
    find(u"batch"_s, u"L-7"_s);
    QVERIFY2(why->isVisible() && why->text().contains(u"2026-03-03 is later than 2026-03-02"_s), qPrintable(why->text()));
    QCOMPARE(named<QLabel>(*m_dialog, u"count"_s)->text(), u"Nothing was looked for."_s);
    QVERIFY(!named<QPushButton>(*m_dialog, u"pdf"_s)->isEnabled());
    from->setText(u"3 March"_s);
    find(u"batch"_s, u"L-7"_s);
    QVERIFY2(why->text().contains(u"\"3 March\" is no day"_s), qPrintable(why->text()));
    from->clear();
    until->clear();
    find(u"batch"_s, u"L-7"_s);
    QVERIFY(!why->isVisible());
    QCOMPARE(rows().model().rowCount(), 2);
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
    QCOMPARE(table.records[0].fields.size(), 14U);
    QCOMPARE(table.records[2].fields[0].text, u"WO-2"_s);
    QCOMPARE(table.records[2].fields[2].text, u"open"_s);
    QCOMPARE(table.records[2].fields[6].text, u"interface.reconnected"_s);
    QCOMPARE(table.records[2].fields[11].text, u"stands"_s);
    QCOMPARE(table.records[2].fields[13].text.size(), 64);
    m_ask.savePath = m_bench.file(u"used.pdf"_s, {});
    named<QPushButton>(*m_dialog, u"pdf"_s)->click();
    QFile pdf(*m_ask.savePath);
    QVERIFY(pdf.open(QIODevice::ReadOnly));
    QVERIFY(pdf.read(5) == "%PDF-");
}

/// The last one, as it stops the key of who signed in the second job.
void TestWhereUsed::signatureInDoubtIsMarked()
{
    find(u"batch"_s, u"L-7"_s);
    QCOMPARE(rows().model().rows()[1].cells[3], u"Ben Orr"_s);
    const auto session = m_bench.another();
    const auto uses = session::answerTo(*session, {u"batch"_s, u"L-7"_s});
    QVERIFY(uses && uses->uses.size() == 2);
    const core::Instant first = uses->uses[0].said.at; // by somebody else, within the same doubt
    QCOMPARE(Bench::say(*session, *session->reg().ledger, session->reg().root->text(), u"key.stopped"_s, u"ben"_s, {{u"since"_s, first.text()}, {u"reason"_s, u"PIN seen"_s}}), QString());
    cleanup();
    init();
    find(u"batch"_s, u"L-7"_s);
    QCOMPARE(rows().model().rows()[0].cells[3], u"Ana Sol"_s);
    QCOMPARE(rows().model().rows()[1].cells[3], u"Ben Orr (signature in doubt: PIN seen)"_s);
}

/// One of two would be looked for, and the other would seem to have done nothing.
void TestWhereUsed::severalOfOneNameAreTold()
{
    find(u"person"_s, u"Cho Lim"_s);
    QVERIFY(rows().model().rowCount() > 0);
    const auto session = m_bench.another();
    const auto person = [](QStringView id) { return *core::PersonId::parse(id); };
    const auto enrolled = session::enrol(*session, {person(u"cho2"), u"Cho Lim"_s, Bench::pinOf(u"cho2"_s), u"badge"_s}, {person(u"ana"), Bench::pinOf(u"ana"_s)});
    QVERIFY(enrolled.has_value());
    cleanup();
    init();
    find(u"person"_s, u"Cho Lim"_s);
    QCOMPARE(rows().model().rowCount(), 0);
    QCOMPARE(named<QLabel>(*m_dialog, u"nothing"_s)->text(), u"Several people are called Cho Lim: cho, cho2. Say which by the id."_s);
    find(u"person"_s, u"cho"_s);
    QVERIFY(rows().model().rowCount() > 0);
}

QTEST_MAIN(TestWhereUsed)
#include "tst_where_used.moc"
