// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QElapsedTimer>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QWindow>

#include "app/desktop/main_window.hpp"
#include "app/desktop/pages/job/job_place.hpp"
#include "app/desktop/pages/list/interface_model.hpp"
#include "app/desktop/parts/item_card.hpp"
#include "app/desktop/parts/sign_sheet.hpp"
#include "app/desktop/scan/scanned.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/scripted_ask.hpp"

using namespace Qt::StringLiterals;

namespace {

/// In milliseconds from key to key.
constexpr int scanning = 4;
constexpr int typing = 90; // a quick hand
constexpr int atOnce = 0;

template <class Widget>
Widget *named(const QWidget &in, const char *name)
{
    auto *found = in.findChild<Widget *>(QString::fromLatin1(name));
    if (!found)
        qFatal("no widget %s", name);
    return found;
}

void press(QWindow &window, QChar c)
{
    if (c == u'\n')
        QTest::keyClick(&window, Qt::Key_Return);
    else
        QTest::keyClick(&window, c.toLatin1(), c.isUpper() ? Qt::ShiftModifier : Qt::NoModifier);
}

} // namespace

/// A hand scanner that types, in front of the real window; and hands that type. Hands type through the window system. Most scans bring their own moments
/// along to the widget that has the focus, so that they are fast on a busy machine, too.
class TstScanning : public QObject {
    Q_OBJECT

private slots:
    void init();
    void cleanup();
    void labelShowsItsInterface_data();
    void labelShowsItsInterface();
    void whatIsTaken_data();
    void whatIsTaken();
    void labelOfAnotherJobOffersIt_data();
    void labelOfAnotherJobOffersIt();
    void offeredJobIsNotOpenedUnasked();
    void offeredJobAsksForWhatWaits();
    void severalJobsOfOneWorkOrderAreNotOffered();
    void nothingIsBegunByAScan();
    void fieldKeepsWhatIsNoScan_data();
    void fieldKeepsWhatIsNoScan();
    void fieldLosesTheScanAlone();
    void slowTypingIsNoScan();
    void typedLetterBeginsItsAction();
    void returnOfAScanOpensNoJob();
    void sheetGetsWhatIsScanned();
    void secretIsNeverHeldBack();
    void keyThatRepeatsIsNoScan();
    void busyProgramMissesNothing();
    void scannedIntoTheFilter();
    void clickComesBehindWhatWasTyped();

private:
    void keys(const QString &text, int pace);
    void scan(const QString &text, int pace = scanning);
    void goToJobs();
    void go(const char *page) { m_window->findChild<desktop::JobPlace *>()->showPage(QString::fromLatin1(page)); }
    QWidget &page(const char *name) const { return *named<desktop::Page>(*m_window, name); }
    QTableView &table() const { return *named<QTableView>(page("list"), "interfaces"); }
    QLineEdit &filter() const { return *named<QLineEdit>(page("list"), "filter"); }
    /// The band that offers another job.
    QWidget &offer() const { return *named<QWidget>(*m_window, "otherJob"); }
    /// Opens a job with an interface E7, as another program would.
    std::optional<core::LedgerId> openAnother(const QString &workOrder);
    /// What stands below the title of the open job: its work order first.
    QString facts() const { return named<QLabel>(*m_window, "jobFacts")->text(); }
    /// The ids of the chosen rows.
    QStringList chosen() const;
    desktop::SignSheet *sheet() const { return m_window->findChild<desktop::SignSheet *>(); }
    void focus(QWidget &widget)
    {
        widget.setFocus();
        QTRY_VERIFY(widget.hasFocus());
    }

    std::unique_ptr<Bench> m_bench;
    std::unique_ptr<ScriptedAsk> m_ask;
    std::unique_ptr<desktop::MainWindow> m_window;
    quint64 m_moment = 1000;
};

void TstScanning::init()
{
    m_bench = std::make_unique<Bench>();
    QCOMPARE(m_bench->trouble(), QString());
    const auto session = m_bench->another();
    QVERIFY(session);
    const auto ledger = m_bench->openJob(*session);
    QVERIFY2(ledger, qPrintable(m_bench->trouble()));
    for (const char *id : {"D1", "D2", "D3"}) {
        const QString name = QString::fromLatin1(id);
        QCOMPARE(Bench::say(*session, *ledger, u"ana"_s, u"interface.listed"_s, name, {{u"name"_s, u"Drain "_s + name}, {u"kind"_s, u"drain"_s}, {u"zone"_s, u"Left"_s}}), QString());
    }
    QCOMPARE(Bench::say(*session, *ledger, u"ana"_s, u"interface.disconnected"_s, u"D3"_s, {{u"tag"_s, u"4020"_s}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}}), QString());
    m_ask = std::make_unique<ScriptedAsk>();
    m_window = std::make_unique<desktop::MainWindow>(*m_ask, m_bench->kinds(), desktop::SessionMaker{m_bench->clock(), core::leastCost, session::IdentityRule::usualIdleLimit}, desktop::Preferences());
    m_window->show();
    m_window->openStore(m_bench->path());
    m_window->openJob(*ledger);
    m_window->activateWindow();
    QVERIFY(QTest::qWaitForWindowActive(m_window.get()));
}

void TstScanning::cleanup()
{
    m_window.reset();
    m_ask.reset();
    m_bench.reset();
}

void TstScanning::keys(const QString &text, int pace)
{
    for (const QChar c : text) {
        if (pace > 0)
            QTest::qWait(pace);
        press(*m_window->windowHandle(), c);
    }
}

void TstScanning::scan(const QString &text, int pace)
{
    QWidget *to = m_window->focusWidget();
    QVERIFY(to);
    m_moment += 1000;
    for (const QChar c : text) {
        m_moment += static_cast<quint64>(pace);
        const bool isEnd = c == u'\n';
        for (const QEvent::Type type : {QEvent::ShortcutOverride, QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent event(type, isEnd ? Qt::Key_Return : static_cast<int>(c.toUpper().unicode()), c.isUpper() ? Qt::ShiftModifier : Qt::NoModifier, isEnd ? u"\r"_s : QString(c));
            event.setTimestamp(m_moment);
            QCoreApplication::sendEvent(to, &event);
        }
    }
}

void TstScanning::goToJobs()
{
    for (QPushButton *button : m_window->findChildren<QPushButton *>()) {
        if (button->text() == u"&Jobs")
            button->click();
    }
    auto *jobs = named<QWidget>(*m_window, "jobs");
    QTRY_VERIFY(jobs->isVisible());
    focus(*jobs);
}

std::optional<core::LedgerId> TstScanning::openAnother(const QString &workOrder)
{
    const auto session = m_bench->another();
    const auto job = session ? m_bench->openJob(*session, {{u"work_order"_s, workOrder}}) : std::nullopt;
    const QString no = job ? Bench::say(*session, *job, u"ana"_s, u"interface.listed"_s, u"E7"_s, {{u"name"_s, u"Drain mast"_s}, {u"kind"_s, u"drain"_s}, {u"zone"_s, u"Left"_s}}) : m_bench->trouble();
    m_window->look();
    return no.isEmpty() ? job : std::nullopt;
}

QStringList TstScanning::chosen() const
{
    QStringList ids;
    for (const QModelIndex &row : table().selectionModel()->selectedRows())
        ids << row.data(desktop::InterfaceModel::ItemRole).toString();
    return ids;
}

void TstScanning::labelShowsItsInterface_data()
{
    QTest::addColumn<QString>("page");
    for (const char *name : {"list", "inspect", "loose-ends", "holds", "record", "unit"})
        QTest::addRow("%s", name) << QString::fromLatin1(name);
}

/// Wherever the focus is.
void TstScanning::labelShowsItsInterface()
{
    QFETCH(QString, page);
    go("list");
    go(page.toLatin1().constData());
    scan(u"remate:WO-1/D2\n"_s);
    QTRY_COMPARE(chosen(), QStringList{u"D2"_s});
    QVERIFY(table().isVisible());
    QCOMPARE(m_ask->told, QStringList());
    QVERIFY(!sheet());
}

void TstScanning::labelOfAnotherJobOffersIt_data()
{
    QTest::addColumn<QString>("from");
    QTest::addColumn<QString>("scanned");
    QTest::addColumn<QString>("chosen");
    QTest::addColumn<QString>("told"); ///< the beginning of it

    QTest::addRow("from the list") << u"list"_s << u"remate:WO-2/E7"_s << u"E7"_s << QString();
    QTest::addRow("from the record") << u"record"_s << u"remate:WO-2/E7"_s << u"E7"_s << QString();
    QTest::addRow("from the filter") << u"filter"_s << u"remate:WO-2/E7"_s << u"E7"_s << QString();
    QTest::addRow("from the jobs") << u"jobs"_s << u"remate:WO-2/E7"_s << u"E7"_s << QString();
    QTest::addRow("before any job is open") << u"store"_s << u"remate:WO-2/E7"_s << u"E7"_s << QString();
    QTest::addRow("an interface that is on no list there") << u"list"_s << u"remate:WO-2/E9"_s << QString() << u"The interface is not on the list"_s;
}

/// One key after the scan: Space.
void TstScanning::labelOfAnotherJobOffersIt()
{
    QFETCH(QString, from);
    QFETCH(QString, scanned);
    QFETCH(QString, chosen);
    QFETCH(QString, told);
    const auto other = openAnother(u"WO-2"_s);
    QVERIFY(other);
    if (from == u"store")
        m_window->openStore(m_bench->path());
    if (from == u"jobs" || from == u"store")
        goToJobs();
    else
        go(from == u"filter" ? "list" : from.toLatin1().constData());
    if (from == u"filter")
        focus(filter());
    scan(scanned + u'\n');
    QVERIFY(offer().isVisible());
    const QString says = named<QLabel>(offer(), "otherJobText")->text();
    QVERIFY2(says.endsWith(from == u"store" ? u" of WO-2. No job is open." : u" of WO-2. The open job is WO-1."), qPrintable(says));
    QCOMPARE(m_ask->told, QStringList());
    // Nothing is opened before somebody said so.
    QVERIFY(from == u"store" ? m_window->findChild<desktop::JobPlace *>() == nullptr : facts().startsWith(u"WO-1 "));
    QTRY_VERIFY(named<QPushButton>(offer(), "openOtherJob")->hasFocus());
    QTest::keyClick(m_window->windowHandle(), Qt::Key_Space);
    QTRY_VERIFY(!offer().isVisible());
    QVERIFY2(facts().startsWith(u"WO-2 "), qPrintable(facts()));
    QVERIFY(table().isVisible());
    QCOMPARE(this->chosen().join(u' '), chosen);
    QCOMPARE(m_ask->told.size(), told.isEmpty() ? 0 : 1);
    QVERIFY2(m_ask->told.value(0).startsWith(told), qPrintable(m_ask->told.value(0)));
}

/// By a second Return of the scanner, by what is scanned next, or by whoever stays.
void TstScanning::offeredJobIsNotOpenedUnasked()
{
    QVERIFY(openAnother(u"WO-2"_s));
    focus(table());
    scan(u"remate:WO-2/E7\n"_s);
    QTRY_VERIFY(offer().isVisible());
    QTest::keyClick(m_window->windowHandle(), Qt::Key_Return);
    QTest::qWait(3 * desktop::ScannerKeys::longestGap);
    QVERIFY2(facts().startsWith(u"WO-1 "), qPrintable(facts()));
    QVERIFY(offer().isVisible());
    // On some desktops Return presses a button; here it comes to nothing at the button already.
    for (const Qt::Key key : {Qt::Key_Return, Qt::Key_Enter}) {
        QKeyEvent again(QEvent::KeyPress, key, Qt::NoModifier);
        QCoreApplication::sendEvent(named<QPushButton>(offer(), "openOtherJob"), &again);
        QVERIFY(again.isAccepted());
    }
    QVERIFY(offer().isVisible());
    // A label of this job: work goes on.
    scan(u"remate:WO-1/D2\n"_s);
    QTRY_VERIFY(!offer().isVisible());
    QCOMPARE(chosen(), QStringList{u"D2"_s});
    scan(u"remate:WO-2/E7\n"_s);
    QTRY_VERIFY(offer().isVisible());
    named<QPushButton>(offer(), "stayHere")->click();
    QVERIFY(!offer().isVisible());
    QVERIFY(table().hasFocus());
    QVERIFY2(facts().startsWith(u"WO-1 "), qPrintable(facts()));
    QCOMPARE(m_ask->told, QStringList());
}

/// The way to another job is the same as from the list of jobs: what waits on the pages is not lost unasked.
void TstScanning::offeredJobAsksForWhatWaits()
{
    QVERIFY(openAnother(u"WO-2"_s));
    go("photos");
    const QTemporaryDir camera;
    m_ask->folderPath = camera.path();
    named<QPushButton>(page("photos"), "watch")->click();
    m_ask->confirms = false;
    scan(u"remate:WO-2/E7\n"_s);
    QTRY_VERIFY(offer().isVisible());
    named<QPushButton>(offer(), "openOtherJob")->click();
    QCOMPARE(m_ask->asked, QStringList{u"Open another job?"_s});
    QVERIFY2(facts().startsWith(u"WO-1 "), qPrintable(facts()));
    QCOMPARE(m_ask->told, QStringList());
}

void TstScanning::severalJobsOfOneWorkOrderAreNotOffered()
{
    QVERIFY(openAnother(u"WO-2"_s));
    QVERIFY(openAnother(u"WO-2"_s));
    focus(table());
    scan(u"remate:WO-2/E7\n"_s);
    QTRY_COMPARE(m_ask->told.size(), 1);
    QVERIFY2(m_ask->told.front().contains(u"Several jobs of this store have that work order."), qPrintable(m_ask->told.front()));
    QVERIFY(!offer().isVisible());
}

void TstScanning::whatIsTaken_data()
{
    QTest::addColumn<QString>("scanned");
    QTest::addColumn<QString>("chosen");
    QTest::addColumn<QString>("told"); ///< the beginning of it

    QTest::addRow("label") << u"remate:WO-1/D2"_s << u"D2"_s << QString();
    QTest::addRow("label of another job") << u"remate:WO-2/D2"_s << QString() << u"The label is of another job: The label names D2 of WO-2."_s;
    QTest::addRow("label of another job whose work order begins alike") << u"remate:WO-10/D2"_s << QString() << u"The label is of another job: The label names D2 of WO-10. The open job is WO-1. No job of this store"_s;
    QTest::addRow("label of what is on no list") << u"remate:WO-1/D9"_s << QString() << u"The interface is not on the list"_s;
    QTest::addRow("tag") << u"4020"_s << u"D3"_s << QString();
    QTest::addRow("tag that hangs nowhere") << u"4021"_s << QString() << u"What was scanned is not known here: \"4021\""_s;
    QTest::addRow("letters that mean actions") << u"ddrr"_s << QString() << u"What was scanned is not known here"_s;
}

void TstScanning::whatIsTaken()
{
    QFETCH(QString, scanned);
    QFETCH(QString, chosen);
    QFETCH(QString, told);
    focus(table());
    scan(scanned + u'\n');
    QTRY_COMPARE(this->chosen().join(u' '), chosen);
    QTRY_COMPARE(m_ask->told.size(), told.isEmpty() ? 0 : 1);
    QVERIFY2(m_ask->told.value(0).startsWith(told), qPrintable(m_ask->told.value(0)));
    QVERIFY(!sheet());
}

/// D disconnects what is chosen, when a hand types it.
void TstScanning::nothingIsBegunByAScan()
{
    m_window->findChild<desktop::JobPlace *>()->showItem(*core::InterfaceId::parse(u"D1"_s));
    focus(table());
    scan(u"DDDD\n"_s);
    QTest::qWait(3 * desktop::ScannerKeys::longestGap);
    QVERIFY(!sheet());
    QCOMPARE(chosen(), QStringList{u"D1"_s});
}

void TstScanning::fieldKeepsWhatIsNoScan_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<int>("pace");
    QTest::addColumn<QString>("kept");

    QTest::addRow("by hand") << u"duct"_s << typing << u"duct"_s;
    QTest::addRow("in one go, without Return") << u"duct 12"_s << atOnce << u"duct 12"_s;
    QTest::addRow("in one go, capitals too") << u"DuCt"_s << atOnce << u"DuCt"_s;
    QTest::addRow("three characters in one go, and Return") << u"duc\n"_s << atOnce << u"duc"_s;
    QTest::addRow("four characters that mean nothing") << u"duct\n"_s << atOnce << u"duct"_s;
}

void TstScanning::fieldKeepsWhatIsNoScan()
{
    QFETCH(QString, typed);
    QFETCH(int, pace);
    QFETCH(QString, kept);
    focus(filter());
    keys(typed, pace);
    QTRY_COMPARE(filter().text(), kept);
    QTest::qWait(3 * desktop::ScannerKeys::longestGap);
    QCOMPARE(filter().text(), kept);
    QCOMPARE(m_ask->told, QStringList());
}

/// What a hand typed before it stays, as far as the list does not clear it.
void TstScanning::fieldLosesTheScanAlone()
{
    focus(filter());
    keys(u"drain"_s, typing);
    QTest::qWait(typing);
    scan(u"remate:WO-2/D1\n"_s);
    QTRY_COMPARE(m_ask->told.size(), 1);
    QCOMPARE(filter().text(), u"drain"_s);
}

void TstScanning::slowTypingIsNoScan()
{
    focus(filter());
    keys(u"4020"_s, typing);
    QTRY_COMPARE(filter().text(), u"4020"_s);
    QCOMPARE(chosen(), QStringList());
    filter().clear();
    focus(table());
    keys(u"4020\n"_s, typing);
    QTest::qWait(3 * desktop::ScannerKeys::longestGap);
    QCOMPARE(chosen(), QStringList());
    QCOMPARE(m_ask->told, QStringList());
}

void TstScanning::typedLetterBeginsItsAction()
{
    m_window->findChild<desktop::JobPlace *>()->showItem(*core::InterfaceId::parse(u"D1"_s));
    focus(table());
    keys(u"d"_s, typing);
    QTRY_VERIFY(sheet());
}

/// On the list of jobs, Return opens the one that is chosen.
void TstScanning::returnOfAScanOpensNoJob()
{
    // Through the window system, whose shortcuts it is about; once more where the machine was too busy for a scanner's pace.
    bool isScan = false;
    for (int attempt = 0; attempt < 5 && !isScan; ++attempt) {
        goToJobs();
        QTest::qWait(typing);
        QElapsedTimer timer;
        timer.start();
        keys(u"4020\n"_s, atOnce);
        isScan = timer.elapsed() <= desktop::ScannerKeys::longestGap;
    }
    QVERIFY(isScan);
    QTRY_VERIFY(!m_ask->told.isEmpty());
    QVERIFY(named<QWidget>(*m_window, "jobs")->isVisible());
    // A label of the job that was open leads back to it.
    scan(u"remate:WO-1/D2\n"_s);
    QTRY_VERIFY(table().isVisible());
    QCOMPARE(chosen(), QStringList{u"D2"_s});
}

/// The field that asks for a tag gets the tag.
void TstScanning::sheetGetsWhatIsScanned()
{
    m_window->findChild<desktop::JobPlace *>()->showItem(*core::InterfaceId::parse(u"D1"_s));
    named<QPushButton>(page("list"), "interface.disconnected")->click();
    QTRY_VERIFY(sheet());
    QVERIFY(QTest::qWaitForWindowActive(sheet()));
    auto *tag = named<QWidget>(*sheet(), "tag")->findChild<QLineEdit *>();
    tag->clear();
    focus(*tag);
    for (const QChar c : u"remate:WO-1/D2"_s)
        press(*sheet()->windowHandle(), c);
    press(*sheet()->windowHandle(), u'\n');
    QTRY_COMPARE(tag->text(), u"remate:WO-1/D2"_s);
    QVERIFY(sheet()->isVisible());
    QCOMPARE(chosen(), QStringList{u"D1"_s});
    QCOMPARE(m_ask->told, QStringList());
}

void TstScanning::secretIsNeverHeldBack()
{
    QLineEdit secret(m_window.get());
    secret.setEchoMode(QLineEdit::Password);
    secret.show();
    focus(secret);
    QTest::keyClick(m_window->windowHandle(), Qt::Key_4);
    QCOMPARE(secret.text(), u"4"_s);
    scan(u"020\n"_s);
    QCOMPARE(secret.text(), u"4020"_s);
    QCOMPARE(m_ask->told, QStringList());
}

void TstScanning::keyThatRepeatsIsNoScan()
{
    focus(filter());
    for (int i = 0; i < 6; ++i) {
        QKeyEvent repeat(QEvent::KeyPress, Qt::Key_X, Qt::NoModifier, u"x"_s, i > 0);
        QCoreApplication::sendEvent(&filter(), &repeat);
    }
    QKeyEvent end(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier, u"\r"_s);
    QCoreApplication::sendEvent(&filter(), &end);
    QTRY_COMPARE(filter().text(), u"xxxxxx"_s);
    QCOMPARE(m_ask->told, QStringList());
}

/// Keys that came at a hand's pace while the program did something else are a hand's: the window system's clock counts.
void TstScanning::busyProgramMissesNothing()
{
    focus(table());
    scan(u"4020\n"_s, desktop::ScannerKeys::longestGap + 1);
    QTest::qWait(3 * desktop::ScannerKeys::longestGap);
    QCOMPARE(chosen(), QStringList());
    QCOMPARE(m_ask->told, QStringList());
    scan(u"4020\n"_s, desktop::ScannerKeys::longestGap);
    QTRY_COMPARE(chosen(), QStringList{u"D3"_s});
}

/// By a scanner that is slower than we think scanners are.
void TstScanning::scannedIntoTheFilter()
{
    focus(filter());
    keys(u"remate:WO-1/D2\n"_s, desktop::ScannerKeys::longestGap + 15);
    QTRY_COMPARE(chosen(), QStringList{u"D2"_s});
    QCOMPARE(filter().text(), QString());
}

void TstScanning::clickComesBehindWhatWasTyped()
{
    focus(filter());
    press(*m_window->windowHandle(), u'd');
    QTest::mouseClick(m_window->windowHandle(), Qt::LeftButton, {}, table().mapTo(m_window.get(), table().rect().center()));
    QCOMPARE(filter().text(), u"d"_s);
    QVERIFY(!sheet());
}

QTEST_MAIN(TstScanning)
#include "tst_scanning.moc"
