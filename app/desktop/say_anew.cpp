// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QDialog>
#include <QStackedWidget>

#include <algorithm>

#include "app/desktop/job_feed.hpp"
#include "app/desktop/main_window.hpp"
#include "app/desktop/manual/manual_opener.hpp"
#include "app/desktop/open_store.hpp"
#include "app/desktop/pages/calculator/calculator_page.hpp"
#include "app/desktop/pages/job/job_place.hpp"
#include "app/desktop/pages/people/people_page.hpp"
#include "app/desktop/pages/start/start_page.hpp"

namespace desktop {

/// The whole window is made anew in another language, over the same open store and the same sitting: every label, table and tooltip is
/// put into words where it is made, and a second place that does so later would fall behind the first.
struct MainWindow::View {
    enum class Shown { Place, People, Job };
    Shown shown = Shown::Place; ///< below the calculator where that is shown
    bool isCalculator = false;
    bool hasJob = false;
    QString page; ///< of the job
    std::vector<core::InterfaceId> items;
    std::optional<QString> manual; ///< its page, where it is open
};

namespace {

bool isASheetOpen(const QWidget &window)
{
    const QList<QDialog *> dialogs = window.findChildren<QDialog *>();
    return std::any_of(dialogs.begin(), dialogs.end(), [](const QDialog *dialog) { return dialog->isVisible() && dialog->isModal(); });
}

} // namespace

void MainWindow::chooseLanguage(language::Language language)
{
    const bool isBusy = isASheetOpen(*this);
    if (isBusy)
        m_ask.tell(tr("The language was not changed"), tr("Sign or close the sheet that is open, then choose the language again."));
    if (isBusy || !mayLose(allPages(), tr("Change the language?"), tr("Change the language"))) {
        findChild<QAction *>(QStringLiteral("language.") + QLatin1String(language::lineOf(m_preferences.spoken(QLocale::system())).code))->setChecked(true);
        return;
    }
    m_preferences.language = language;
    emit languageChosen(language);
    sayAnew();
}

MainWindow::View MainWindow::view() const
{
    View view;
    const QWidget *shown = m_stack->currentWidget();
    view.isCalculator = m_calculator && shown == m_calculator;
    if (view.isCalculator)
        shown = m_beforeCalculator;
    view.manual = m_manual->shownPage();
    view.hasJob = m_job != nullptr;
    if (m_job) {
        view.page = m_job->shownPage();
        view.items = m_job->chosen();
    }
    view.shown = m_job && shown == m_job ? View::Shown::Job : m_people && shown == m_people ? View::Shown::People : View::Shown::Place;
    return view;
}

void MainWindow::sayAnew()
{
    const View before = view();
    setUpdatesEnabled(false);
    leavePages();
    m_manual->close();
    delete takeCentralWidget();
    delete menuWidget();
    m_calculator = nullptr;
    m_welcome = nullptr;
    m_storeActions.clear();
    m_jobActions.clear();
    m_signer.reset();
    build();
    if (m_store->session())
        makePages();
    showPlace();
    if (before.hasJob) {
        feedJob();
        makeJob();
        m_job->choose(before.items);
        m_job->showPage(before.page);
    }
    if (before.shown == View::Shown::Job)
        showJob();
    else if (before.shown == View::Shown::People)
        showPeople();
    if (before.isCalculator)
        showCalculator();
    if (m_store->session())
        look();
    if (before.manual)
        showManual({*before.manual});
    setUpdatesEnabled(true);
}

} // namespace desktop
