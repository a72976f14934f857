// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/main_window.hpp"

#include <QApplication>
#include <QDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QIcon>
#include <QMenuBar>
#include <QStackedWidget>
#include <QStatusBar>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/begun/typed_in.hpp"
#include "app/desktop/first_run/found_page.hpp"
#include "app/desktop/first_run/welcome_page.hpp"
#include "app/desktop/flows/new_job.hpp"
#include "app/desktop/flows/record_flow.hpp"
#include "app/desktop/flows/signing.hpp"
#include "app/desktop/job_feed.hpp"
#include "app/desktop/manual/manual_opener.hpp"
#include "app/desktop/open_store.hpp"
#include "app/desktop/pages/calculator/calculator_page.hpp"
#include "app/desktop/pages/job/job_place.hpp"
#include "app/desktop/pages/people/people_page.hpp"
#include "app/desktop/pages/start/start_page.hpp"
#include "app/desktop/pages/where_used/where_used_dialog.hpp"
#include "app/desktop/parts/keyboard.hpp"
#include "app/desktop/parts/notice_band.hpp"
#include "app/desktop/parts/signer_bar.hpp"
#include "app/desktop/scan/other_job_band.hpp"
#include "app/language/in_record_words.hpp"
#include "core/value/error_words.hpp"
#include "resources/resources.hpp"

namespace desktop {

namespace {

constexpr int watchMilliseconds = 500;

} // namespace

MainWindow::MainWindow(Ask &ask, const core::Kinds &kinds, SessionMaker maker, Preferences preferences, QWidget *parent)
    : QMainWindow(parent), m_ask(ask), m_kinds(kinds), m_preferences(std::move(preferences))
{
    m_store = new OpenStore(ask, kinds, std::move(maker), [this] { return mayLose(pagesOfStore(), tr("Leave this store?"), tr("Leave the store")); }, this);
    connect(m_store, &OpenStore::leaving, this, &MainWindow::leavePlace);
    connect(m_store, &OpenStore::opened, this, &MainWindow::takePlace);
    m_manual = new ManualOpener(ask, this);
    setWindowIcon(QIcon(QStringLiteral(":/icons/remate.svg")));
    setAcceptDrops(true);
    build();
    resize(fontMetrics().averageCharWidth() * 220, fontMetrics().height() * 54);
    restoreGeometry(m_preferences.windowGeometry);
    restoreState(m_preferences.windowState);
    connect(&m_watch, &QTimer::timeout, this, &MainWindow::look);
    // The scanner's filter first, so that ours is asked before it: what is scanned shows as well that somebody is there.
    new ScannerKeys(*this, [this](const QString &text, ScannerKeys::Focus focus) { return takeScan(text, focus); }, this);
    QCoreApplication::instance()->installEventFilter(this);
}

void MainWindow::build()
{
    setWindowTitle(tr("Remate"));
    auto *centre = new QWidget(this);
    auto *column = new QVBoxLayout(centre);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    m_notice = new NoticeBand(centre);
    column->addWidget(m_notice);
    m_otherJob = new OtherJobBand(centre);
    column->addWidget(m_otherJob);
    connect(m_otherJob, &OtherJobBand::openWanted, this, &MainWindow::openScanned);
    m_stack = new QStackedWidget(centre);
    column->addWidget(m_stack, 1);
    setCentralWidget(centre);
    setMenuWidget(makeTop());
    connect(m_notice, &NoticeBand::backupWanted, this, [this] { backUp(*m_store->session(), m_ask, this); showNotice(); });
}

MainWindow::~MainWindow() { m_store->leave(); }

Preferences MainWindow::preferences() const
{
    Preferences now = m_preferences;
    now.windowGeometry = saveGeometry();
    now.windowState = saveState();
    return now;
}

/// The menus, and beside them who signs. Not as the menu bar's own corner: to a screen reader a menu bar has menus and nothing else.
QWidget *MainWindow::makeTop()
{
    auto *top = new QWidget(this);
    auto *row = new QHBoxLayout(top);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    m_menus = new QMenuBar(top);
    makeMenus();
    row->addWidget(m_menus, 1, Qt::AlignVCenter);
    m_corner = new SignerBar(top);
    connect(m_corner, &SignerBar::jobsWanted, this, &MainWindow::showStart);
    connect(m_corner, &SignerBar::peopleWanted, this, &MainWindow::showPeople);
    connect(m_corner, &SignerBar::lockWanted, this, &MainWindow::lock);
    row->addWidget(m_corner);
    return top;
}

bool MainWindow::mayLose(const std::vector<const QWidget *> &pages, const QString &question, const QString &yes)
{
    const auto has = [&](const QWidget *page) { return page && std::find(pages.begin(), pages.end(), page) != pages.end(); };
    if (has(m_job) && m_job->isAnythingUnsigned())
        return m_ask.confirm(question, tr("What is typed or marked on the pages and not signed is lost. Photos that wait are not attached, and no folder is watched any more. What was signed stands."), yes);
    const bool isTyped = std::any_of(pages.begin(), pages.end(), [](const QWidget *page) { return page && isAnythingTyped(*page); });
    return !isTyped || m_ask.confirm(question, tr("What is typed on the pages and not signed is lost. What was signed stands."), yes);
}

std::vector<const QWidget *> MainWindow::pagesOfStore() const { return {m_found, m_job}; }
std::vector<const QWidget *> MainWindow::allPages() const { return {m_found, m_job, m_calculator}; }

void MainWindow::openStore(const QString &path) { m_store->open(path); }
void MainWindow::takeStore(core::Result<StorePlace> opened) { m_store->takeOpened(std::move(opened)); }
void MainWindow::openPackage(const QString &path) { m_store->openPackage(path); }

void MainWindow::leavePlace()
{
    m_watch.stop();
    leavePages();
    m_otherJob->dismiss();
    (void)m_notice->show(std::nullopt);
}

void MainWindow::leavePages()
{
    for (QWidget *page : std::initializer_list<QWidget *>{m_job, m_people, m_start, m_found})
        delete page;
    delete m_signing;
    delete m_feed;
    m_job = nullptr;
    m_people = nullptr;
    m_start = nullptr;
    m_found = nullptr;
    m_signing = nullptr;
    m_feed = nullptr;
}

void MainWindow::takePlace()
{
    m_preferences.remember(QFileInfo(m_store->store().path()).absoluteFilePath());
    makePages();
    m_watch.start(watchMilliseconds);
    showPlace();
}

void MainWindow::makePages()
{
    m_feed = new JobFeed(this);
    m_signing = new Signing(*m_store->session(), *m_feed, m_kinds, m_ask, this);
    if (m_begun) {
        m_begun->dropOld(m_store->session()->now());
        m_signing->keepBegun(*m_begun);
    }
    m_start = new StartPage(m_stack);
    m_stack->addWidget(m_start);
    connect(m_start, &StartPage::jobChosen, this, &MainWindow::openJob);
    connect(m_start, &StartPage::newJobWanted, this, &MainWindow::newJob);
    connect(m_start, &StartPage::peopleWanted, this, &MainWindow::showPeople);
    connect(m_signing, &Signing::hasSigned, this, &MainWindow::afterSigning);
}

void MainWindow::showPlace()
{
    const bool isOpen = m_store->session() != nullptr;
    const bool isFounded = isOpen && m_store->session()->reg().root.has_value();
    m_corner->setVisible(isFounded);
    for (QAction *action : m_storeActions)
        action->setEnabled(isFounded);
    setWindowTitle(isOpen ? tr("%1 – Remate").arg(QFileInfo(m_store->store().path()).completeBaseName()) : tr("Remate"));
    if (isFounded) {
        showStart();
        giveKeyboard(*m_start); // it may have been in its place already, before the window was shown
        return;
    }
    for (QAction *action : m_jobActions)
        action->setEnabled(false);
    if (!isOpen) {
        welcome();
        return;
    }
    if (!m_found) {
        m_found = new FoundPage([this](const QString &organisation, const session::NewPerson &root) { return session::found(*m_store->session(), organisation, root); }, m_stack);
        m_stack->addWidget(m_found);
        connect(m_found, &FoundPage::founded, this, [this] {
            m_found->deleteLater();
            m_found = nullptr;
            look();
            showPlace();
        });
    }
    m_stack->setCurrentWidget(m_found);
    giveKeyboard(*m_found);
}

void MainWindow::welcome()
{
    if (!m_welcome) {
        m_welcome = new WelcomePage(m_stack);
        m_stack->addWidget(m_welcome);
        connect(m_welcome, &WelcomePage::newStoreWanted, m_store, &OpenStore::askNew);
        connect(m_welcome, &WelcomePage::openStoreWanted, m_store, &OpenStore::askOpen);
        connect(m_welcome, &WelcomePage::demoWanted, m_store, &OpenStore::openDemo);
        connect(m_welcome, &WelcomePage::packageWanted, m_store, &OpenStore::askPackage);
        connect(m_welcome, &WelcomePage::recentChosen, m_store, &OpenStore::open);
    }
    m_welcome->show(m_preferences.recentStores);
    m_stack->setCurrentWidget(m_welcome);
    giveKeyboard(*m_welcome);
}

void MainWindow::showStart()
{
    for (QAction *action : m_jobActions)
        action->setEnabled(false);
    const auto jobs = m_store->session()->jobs();
    if (!jobs)
        statusBar()->showMessage(core::errorInWords(jobs.error()));
    m_start->show(jobs ? *jobs : std::vector<session::JobRow>(), m_store->session()->reg());
    if (m_stack->currentWidget() != m_start) {
        m_stack->setCurrentWidget(m_start);
        giveKeyboard(*m_start);
    }
    showWho();
}

void MainWindow::showPeople()
{
    for (QAction *action : m_jobActions)
        action->setEnabled(false);
    if (!m_people) {
        m_people = new PeoplePage(*m_store->session(), *m_signing, m_stack);
        m_stack->addWidget(m_people);
    }
    m_people->refresh();
    m_stack->setCurrentWidget(m_people);
    giveKeyboard(*m_people);
}

void MainWindow::showWhereUsed()
{
    auto *dialog = new WhereUsedDialog(*m_store->session(), m_ask, this);
    connect(dialog, &WhereUsedDialog::entryWanted, this, [this](const core::LedgerId &job, qint64 seq) {
        openJob(job);
        if (m_job && m_store->session()->job() == job)
            m_job->showPage(QStringLiteral("record"), QString::number(seq));
    });
    dialog->open();
}

void MainWindow::showCalculator()
{
    if (!m_calculator) {
        auto tables = resources::loadTables();
        if (!tables) {
            m_ask.tell(tr("The calculator cannot be shown"), core::errorInWords(tables.error()));
            return;
        }
        m_calculator = new CalculatorPage(*std::move(tables), m_store->maker().clock, m_ask, m_stack);
        m_stack->addWidget(m_calculator);
        connect(m_calculator, &CalculatorPage::left, this, &MainWindow::leaveCalculator);
    }
    if (m_stack->currentWidget() == m_calculator)
        return;
    m_beforeCalculator = m_stack->currentWidget();
    for (QAction *action : m_jobActions)
        action->setEnabled(false);
    m_stack->setCurrentWidget(m_calculator);
    giveKeyboard(*m_calculator);
}

void MainWindow::leaveCalculator()
{
    if (!m_beforeCalculator) {
        showPlace();
        return;
    }
    for (QAction *action : m_jobActions)
        action->setEnabled(m_beforeCalculator == m_job);
    m_stack->setCurrentWidget(m_beforeCalculator);
    giveKeyboard(*m_beforeCalculator);
}

const QWidget *MainWindow::sheetOver() const
{
    const QWidget *over = QApplication::activeModalWidget();
    // What blocks every window, such as the system's own box for files, would block the manual as well.
    if (!over || over->windowModality() != Qt::WindowModal)
        return nullptr;
    for (const QWidget *at = over; at; at = at->parentWidget()) {
        if (at == this)
            return over;
    }
    return nullptr;
}

HelpPlace MainWindow::placeForHelp() const
{
    // A question has no page of its own: it is about the sheet that it was asked over.
    const QWidget *over = sheetOver();
    QList<const QWidget *> asking{over};
    for (const QDialog *sheet : over ? findChildren<QDialog *>() : QList<QDialog *>())
        asking << sheet;
    for (const QWidget *one : asking) {
        if (const QString page = one && one->isVisible() ? helpPageOf(*one) : QString(); !page.isEmpty())
            return {page, helpSectionOf(*one)};
    }
    const QWidget *shown = m_stack->currentWidget();
    if (m_job && shown == m_job)
        return {m_job->manualPage()};
    if (m_people && shown == m_people)
        return {QStringLiteral("signatures")};
    return {m_calculator && shown == m_calculator ? QStringLiteral("calculator") : QStringLiteral("index")};
}

ManualWindow *MainWindow::manual() const { return m_manual->window(); }

void MainWindow::showManual(const HelpPlace &place) { m_manual->show(place, *m_menus); }

void MainWindow::newJob() { m_signing->open(newJobPlan(*m_store->session(), nullptr)); }

void MainWindow::openJob(const core::LedgerId &job)
{
    const bool isAnother = m_job && m_store->session()->job() != job;
    if (isAnother && !mayLose({m_job}, tr("Open another job?"), tr("Open the other job")))
        return;
    if (const auto opened = m_store->session()->openJob(job); !opened) {
        m_ask.tell(tr("The job was not opened"), core::errorInWords(opened.error()));
        return;
    }
    m_otherJob->dismiss();
    if (isAnother)
        leaveJob();
    feedJob();
    showNotice();
    if (!m_job)
        makeJob();
    showJob();
    m_job->showPage(QStringLiteral("list"));
}

/// Nothing that waits on the pages of one job may be met on those of another: its photos, marks and words would be signed for the wrong aircraft.
void MainWindow::leaveJob()
{
    delete m_job;
    m_job = nullptr;
}

void MainWindow::makeJob()
{
    m_job = new JobPlace(*m_store->session(), *m_feed, *m_signing, m_kinds, m_ask, m_stack);
    m_stack->addWidget(m_job);
}

void MainWindow::showJob()
{
    for (QAction *action : m_jobActions)
        action->setEnabled(true);
    m_stack->setCurrentWidget(m_job);
}

void MainWindow::feedJob()
{
    if (m_store->session()->job())
        m_feed->take(m_store->session()->state(), m_store->session()->said(), m_store->session()->reg());
}

void MainWindow::afterSigning(const std::vector<core::Entry> &entries)
{
    look();
    if (entries.empty()) {
        statusBar()->showMessage(tr("Done."), 8000);
        return;
    }
    const core::Statement &first = entries.front().said;
    // Once the sheet is gone: another job is not opened before anybody was asked.
    if (first.kind == u"job.opened")
        QTimer::singleShot(0, this, [this, job = first.ledger] { openJob(job); });
    statusBar()->showMessage(tr("Signed by %1, entries: %2").arg(m_store->session()->reg().nameOf(first.author)).arg(entries.size()), 8000);
}

void MainWindow::look()
{
    if (!m_store->session())
        return;
    if (const auto changes = m_store->session()->refresh(); !changes)
        statusBar()->showMessage(core::errorInWords(changes.error()));
    // What we signed ourselves is no news to the session, but it is to the screens, so they compare for themselves.
    feedJob();
    const core::Head head = m_store->session()->reg().head;
    const auto token = m_store->store().changeToken();
    const bool isNew = !token || !m_seen || !(m_seen->first == *token) || !(m_seen->second == head);
    if (token)
        m_seen = std::pair(*token, head);
    if (isNew && m_stack->currentWidget() == m_start)
        showStart();
    if (isNew && m_stack->currentWidget() == m_people)
        m_people->refresh();
    showWho();
    showNotice();
}

void MainWindow::showNotice()
{
    const session::Health health = session::healthOf(*m_store->session());
    const core::Instant now = m_store->session()->now();
    const auto notice = session::noticeOf(health, now);
    if (!m_notice->show(notice) || !notice)
        return;
    const language::InRecordWords english;
    emit noticeShown(*session::noticeOf(health, now));
}

void MainWindow::showWho()
{
    const auto signer = m_store->session()->currentSigner();
    if (signer != m_signer) {
        m_signer = signer;
        m_feed->tellPersonChanged();
    }
    m_corner->show(signer ? std::optional(m_store->session()->reg().nameOf(*signer)) : std::nullopt);
}

void MainWindow::lock()
{
    m_store->session()->lock();
    showWho();
}

bool MainWindow::event(QEvent *event)
{
    if (event->type() == QEvent::ThemeChange && m_preferences.appearance == Appearance::System)
        emit appearanceChosen(Appearance::System);
    return QMainWindow::event(event);
}

void MainWindow::showEvent(QShowEvent *event)
{
    // Whoever gave a store sees it at once: the welcome is made only when there is none.
    if (!m_store->session() && !m_welcome)
        showPlace();
    QMainWindow::showEvent(event);
}

} // namespace desktop
