// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/main_window.hpp"

#include <QApplication>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QIcon>
#include <QKeyEvent>
#include <QLabel>
#include <QMenuBar>
#include <QMimeData>
#include <QPushButton>
#include <QStackedWidget>
#include <QStatusBar>
#include <QVBoxLayout>

#include "app/desktop/first_run/found_page.hpp"
#include "app/desktop/first_run/welcome_page.hpp"
#include "app/desktop/flows/demo_flow.hpp"
#include "app/desktop/flows/new_job.hpp"
#include "app/desktop/flows/record_flow.hpp"
#include "app/desktop/flows/signing.hpp"
#include "app/desktop/job_feed.hpp"
#include "app/desktop/manual/manual_window.hpp"
#include "app/desktop/manual/shortcuts_page.hpp"
#include "app/desktop/pages/calculator/calculator_page.hpp"
#include "app/desktop/pages/job/job_place.hpp"
#include "app/desktop/pages/people/people_page.hpp"
#include "app/desktop/pages/start/start_page.hpp"
#include "app/desktop/pages/verdict/packages_dialog.hpp"
#include "app/desktop/pages/verdict/verify_dialog.hpp"
#include "app/desktop/pages/where_used/where_used_dialog.hpp"
#include "app/desktop/parts/help_page.hpp"
#include "app/desktop/parts/keyboard.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/notice_band.hpp"
#include "app/desktop/scan/scanned.hpp"
#include "app/language/in_record_words.hpp"
#include "app/package/verify_package.hpp"
#include "app/photos/incoming.hpp"
#include "core/value/error_words.hpp"
#include "resources/resources.hpp"

namespace desktop {

namespace {

constexpr int watchMilliseconds = 500;

} // namespace

MainWindow::MainWindow(Ask &ask, const core::Kinds &kinds, SessionMaker maker, Preferences preferences, QWidget *parent)
    : QMainWindow(parent), m_ask(ask), m_kinds(kinds), m_maker(std::move(maker)), m_preferences(std::move(preferences))
{
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
    m_stack = new QStackedWidget(centre);
    column->addWidget(m_stack, 1);
    setCentralWidget(centre);
    setMenuWidget(makeTop());
    connect(m_notice, &NoticeBand::backupWanted, this, [this] { backUp(*m_place.session, m_ask, this); showNotice(); });
}

MainWindow::~MainWindow() { leave(); }

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
    row->addWidget(makeCorner(top));
    return top;
}

QWidget *MainWindow::makeCorner(QWidget *parent)
{
    m_corner = new QWidget(parent);
    auto *row = new QHBoxLayout(m_corner);
    const int gap = fontMetrics().averageCharWidth();
    row->setContentsMargins(gap, gap / 2, gap * 2, gap / 2);
    QPushButton *jobs = makeButton(tr("&Jobs"), "link", m_corner);
    QPushButton *people = makeButton(tr("&People and tools"), "link", m_corner);
    people->setObjectName(QStringLiteral("peopleAndTools"));
    m_who = makeLabel({}, "", m_corner);
    m_who->setObjectName(QStringLiteral("who"));
    m_who->setWordWrap(false);
    m_who->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_lock = makeButton(tr("Loc&k"), "", m_corner);
    m_lock->setObjectName(QStringLiteral("lock"));
    m_lock->setIcon(QIcon(QStringLiteral(":/icons/actions/lock.svg")));
    for (QWidget *widget : std::initializer_list<QWidget *>{jobs, people, m_who, m_lock})
        row->addWidget(widget);
    connect(jobs, &QPushButton::clicked, this, &MainWindow::showStart);
    connect(people, &QPushButton::clicked, this, &MainWindow::showPeople);
    connect(m_lock, &QPushButton::clicked, this, &MainWindow::lock);
    return m_corner;
}

bool MainWindow::mayLosePages(const QString &question, const QString &yes)
{
    return !m_job || !m_job->isAnythingUnsigned()
           || m_ask.confirm(question, tr("What is typed or marked on the pages and not signed is lost. Photos that wait are not attached, and no folder is watched any more. What was signed stands."), yes);
}

bool MainWindow::mayLeaveStore() { return mayLosePages(tr("Leave this store?"), tr("Leave the store")); }

void MainWindow::newStore()
{
    const auto path = m_ask.fileToSave(tr("New store"), QStringLiteral("jobs.remate"), tr("Store (*.remate)"));
    if (!path || !mayLeaveStore())
        return;
    auto place = createPlace(*path, m_maker);
    if (!place)
        m_ask.tell(tr("The store was not made"), core::errorInWords(place.error()));
    else
        take(*std::move(place));
}

void MainWindow::askStore()
{
    if (const auto path = m_ask.fileToOpen(tr("Open a store"), tr("Stores (*.remate);;All files (*)")))
        openStore(*path);
}

void MainWindow::askPackage()
{
    if (const auto path = m_ask.fileToOpen(tr("Verify a record package"), tr("Record packages (*.zip);;All files (*)")))
        openPackage(*path);
}

void MainWindow::openPackage(const QString &path)
{
    VerifyWhat what = packageToVerify(path, m_kinds);
    if (m_place.session)
        what.import = [this, path](const session::Known &known) { importPackage(*m_place.session, path, known, m_kinds, m_ask, this); };
    auto *dialog = new VerifyDialog(std::move(what), m_ask, this);
    dialog->open();
    dialog->verify();
}

void MainWindow::showPackages()
{
    auto *dialog = new PackagesDialog(*m_place.session, m_kinds, m_ask, this);
    connect(dialog, &PackagesDialog::openWanted, this, [this, dialog] {
        dialog->close();
        askPackage();
    });
    dialog->open();
}

void MainWindow::openDemo()
{
    if (const auto path = makeDemo(m_kinds, m_maker.care.cost, m_ask, this))
        openStore(*path);
}

void MainWindow::openStore(const QString &path)
{
    if (package::looksLikePackage(path)) {
        openPackage(path);
        return;
    }
    auto place = openPlace(path, m_maker);
    if (!place)
        m_ask.tell(tr("The store was not opened"), core::errorInWords(place.error()));
    else if (mayLeaveStore())
        take(*std::move(place));
}

void MainWindow::leave()
{
    m_watch.stop();
    leavePages();
    m_place = StorePlace();
    (void)m_notice->show(std::nullopt);
}

void MainWindow::leavePages()
{
    for (QWidget *page : std::initializer_list<QWidget *>{m_job, m_people, m_start})
        delete page;
    delete m_signing;
    delete m_feed;
    m_job = nullptr;
    m_people = nullptr;
    m_start = nullptr;
    m_signing = nullptr;
    m_feed = nullptr;
}

void MainWindow::take(StorePlace place)
{
    leave();
    m_place = std::move(place);
    m_preferences.remember(QFileInfo(m_place.store->path()).absoluteFilePath());
    session::Session &session = *m_place.session;
    // While a sheet is being signed; told once it is gone.
    session.setTell([this](const QString &sentence) { QTimer::singleShot(0, this, [this, sentence] { m_ask.tell(tr("About your key"), sentence); }); });
    makePages();
    m_watch.start(watchMilliseconds);
    showPlace();
}

void MainWindow::makePages()
{
    m_feed = new JobFeed(this);
    m_signing = new Signing(*m_place.session, *m_feed, m_kinds, m_ask, this);
    if (m_begun) {
        m_begun->dropOld(m_place.session->now());
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
    const bool isOpen = m_place.session != nullptr;
    const bool isFounded = isOpen && m_place.session->reg().root.has_value();
    m_corner->setVisible(isFounded);
    for (QAction *action : m_storeActions)
        action->setEnabled(isFounded);
    setWindowTitle(isOpen ? tr("%1 – Remate").arg(QFileInfo(m_place.store->path()).completeBaseName()) : tr("Remate"));
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
    auto *found = new FoundPage([this](const QString &organisation, const session::NewPerson &root) { return session::found(*m_place.session, organisation, root); }, m_stack);
    m_stack->addWidget(found);
    m_stack->setCurrentWidget(found);
    giveKeyboard(*found);
    connect(found, &FoundPage::founded, this, [this, found] {
        found->deleteLater();
        look();
        showPlace();
    });
}

void MainWindow::welcome()
{
    if (!m_welcome) {
        m_welcome = new WelcomePage(m_stack);
        m_stack->addWidget(m_welcome);
        connect(m_welcome, &WelcomePage::newStoreWanted, this, &MainWindow::newStore);
        connect(m_welcome, &WelcomePage::openStoreWanted, this, &MainWindow::askStore);
        connect(m_welcome, &WelcomePage::demoWanted, this, &MainWindow::openDemo);
        connect(m_welcome, &WelcomePage::packageWanted, this, &MainWindow::askPackage);
        connect(m_welcome, &WelcomePage::recentChosen, this, &MainWindow::openStore);
    }
    m_welcome->show(m_preferences.recentStores);
    m_stack->setCurrentWidget(m_welcome);
    giveKeyboard(*m_welcome);
}

void MainWindow::showStart()
{
    for (QAction *action : m_jobActions)
        action->setEnabled(false);
    const auto jobs = m_place.session->jobs();
    if (!jobs)
        statusBar()->showMessage(core::errorInWords(jobs.error()));
    m_start->show(jobs ? *jobs : std::vector<session::JobRow>(), m_place.session->reg());
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
        m_people = new PeoplePage(*m_place.session, *m_signing, m_stack);
        m_stack->addWidget(m_people);
    }
    m_people->refresh();
    m_stack->setCurrentWidget(m_people);
    giveKeyboard(*m_people);
}

void MainWindow::showWhereUsed()
{
    auto *dialog = new WhereUsedDialog(*m_place.session, m_ask, this);
    connect(dialog, &WhereUsedDialog::entryWanted, this, [this](const core::LedgerId &job, qint64 seq) {
        openJob(job);
        if (m_job && m_place.session->job() == job)
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
        m_calculator = new CalculatorPage(*std::move(tables), m_maker.clock, m_ask, m_stack);
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

QString MainWindow::pageForHelp() const
{
    const QWidget *over = sheetOver();
    if (const QString page = over ? helpPageOf(*over) : QString(); !page.isEmpty())
        return page;
    const QWidget *shown = m_stack->currentWidget();
    if (m_job && shown == m_job)
        return m_job->manualPage();
    if (m_people && shown == m_people)
        return QStringLiteral("signatures");
    return m_calculator && shown == m_calculator ? QStringLiteral("calculator") : QStringLiteral("index");
}

void MainWindow::showManual(const QString &page)
{
    if (!m_manual) {
        auto pages = manual::loadPages();
        if (!pages) {
            m_ask.tell(tr("The manual cannot be shown"), core::errorInWords(pages.error()));
            return;
        }
        pages->push_back(shortcutsPage(*m_menus));
        m_manual = std::make_unique<ManualWindow>(*std::move(pages), nullptr);
        m_manual->setWindowIcon(windowIcon());
        m_manual->setAttribute(Qt::WA_QuitOnClose, false);
    }
    m_manual->showPage(page);
    m_manual->show();
    m_manual->raise();
    m_manual->activateWindow();
}

void MainWindow::newJob() { m_signing->open(newJobPlan(*m_place.session, nullptr)); }

void MainWindow::openJob(const core::LedgerId &job)
{
    if (const auto opened = m_place.session->openJob(job); !opened) {
        m_ask.tell(tr("The job was not opened"), core::errorInWords(opened.error()));
        return;
    }
    feedJob();
    showNotice();
    if (!m_job)
        makeJob();
    showJob();
    m_job->showPage(QStringLiteral("list"));
}

void MainWindow::makeJob()
{
    m_job = new JobPlace(*m_place.session, *m_feed, *m_signing, m_kinds, m_ask, m_stack);
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
    if (m_place.session->job())
        m_feed->take(m_place.session->state(), m_place.session->said(), m_place.session->reg());
}

void MainWindow::afterSigning(const std::vector<core::Entry> &entries)
{
    look();
    if (entries.empty()) {
        statusBar()->showMessage(tr("Done."), 8000);
        return;
    }
    const core::Statement &first = entries.front().said;
    if (first.kind == u"job.opened")
        openJob(first.ledger);
    statusBar()->showMessage(tr("Signed by %1, entries: %2").arg(m_place.session->reg().nameOf(first.author)).arg(entries.size()), 8000);
}

void MainWindow::look()
{
    if (!m_place.session)
        return;
    if (const auto changes = m_place.session->refresh(); !changes)
        statusBar()->showMessage(core::errorInWords(changes.error()));
    // What we signed ourselves is no news to the session, but it is to the screens, so they compare for themselves.
    feedJob();
    const core::Head head = m_place.session->reg().head;
    const auto token = m_place.store->changeToken();
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

bool MainWindow::takeScan(const QString &text, ScannerKeys::Focus focus)
{
    if (!m_place.session)
        return false;
    const auto job = m_job ? m_place.session->state() : nullptr;
    const ScanAnswer answer = answerToScan(text, job.get(), m_job && m_stack->currentWidget() == m_job ? Shown::Job : Shown::SomethingElse, focus);
    if (answer.show) {
        showJob();
        m_job->showItem(*answer.show);
    } else if (answer.isForUs()) {
        m_ask.tell(answer.title, answer.words);
    }
    return answer.isForUs();
}

void MainWindow::showNotice()
{
    const core::Register &reg = m_place.session->reg();
    session::Health health{m_place.session->trouble(), m_place.store->checkpointTrouble(), std::nullopt, std::nullopt};
    if (const auto backup = m_place.store->lastBackup())
        health.lastBackup = *backup;
    if (const core::Person *founder = reg.root ? reg.person(*reg.root) : nullptr)
        health.firstEntry = founder->enrolledAt;
    const core::Instant now = m_place.session->now();
    const auto notice = session::noticeOf(health, now);
    if (!m_notice->show(notice) || !notice)
        return;
    const language::InRecordWords english;
    emit noticeShown(*session::noticeOf(health, now));
}

void MainWindow::showWho()
{
    const auto signer = m_place.session->currentSigner();
    if (signer != m_signer) {
        m_signer = signer;
        m_feed->tellPersonChanged();
    }
    m_who->setText(signer ? tr("%1 signs with the PIN alone").arg(m_place.session->reg().nameOf(*signer)) : tr("Nobody is signed in"));
    m_lock->setEnabled(signer.has_value());
}

void MainWindow::lock()
{
    m_place.session->lock();
    showWho();
}

bool MainWindow::event(QEvent *event)
{
    if (event->type() == QEvent::ThemeChange && m_preferences.appearance == Appearance::System)
        emit appearanceChosen(Appearance::System);
    return QMainWindow::event(event);
}

bool MainWindow::eventFilter(QObject *watched, QEvent *event)
{
    if (m_place.session && (event->type() == QEvent::KeyPress || event->type() == QEvent::MouseButtonPress || event->type() == QEvent::TouchBegin))
        m_place.session->touch();
    // The menu's own key does not reach over a sheet.
    if (event->type() == QEvent::KeyPress && static_cast<QKeyEvent *>(event)->matches(QKeySequence::HelpContents) && sheetOver()) {
        showManual(pageForHelp());
        return true;
    }
    return QMainWindow::eventFilter(watched, event);
}

void MainWindow::showEvent(QShowEvent *event)
{
    // Whoever gave a store sees it at once: the welcome is made only when there is none.
    if (!m_place.session && !m_welcome)
        showPlace();
    QMainWindow::showEvent(event);
}

void MainWindow::dragEnterEvent(QDragEnterEvent *event)
{
    const bool isPhoto = m_job && m_stack->currentWidget() == m_job && photos::mayHoldPhotos(*event->mimeData());
    if (isPhoto)
        event->acceptProposedAction();
    else if (event->mimeData()->hasUrls() && event->mimeData()->urls().size() == 1 && event->mimeData()->urls().front().isLocalFile())
        event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent *event)
{
    event->acceptProposedAction();
    if (m_job && m_stack->currentWidget() == m_job && photos::mayHoldPhotos(*event->mimeData())) {
        m_job->offerPhotos(*event->mimeData());
        return;
    }
    const QString path = event->mimeData()->urls().front().toLocalFile();
    if (!path.endsWith(QStringLiteral(".csv"), Qt::CaseInsensitive))
        openStore(path);
    else if (m_job && m_stack->currentWidget() == m_job)
        m_job->importList(path);
    else
        m_ask.tell(tr("Open a job first"), tr("An interface list is taken into a job. Open the job, then drop the list again."));
}

} // namespace desktop
