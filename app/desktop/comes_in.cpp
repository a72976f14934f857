// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QKeyEvent>
#include <QMimeData>
#include <QStackedWidget>

#include "app/desktop/dropped.hpp"
#include "app/desktop/main_window.hpp"
#include "app/desktop/open_store.hpp"
#include "app/desktop/pages/job/job_place.hpp"
#include "app/desktop/scan/other_job_band.hpp"

namespace desktop {

// What comes to the window from outside: keys, scans, what is dropped on it, and that it is closed.

bool MainWindow::eventFilter(QObject *watched, QEvent *event)
{
    if (m_store->session() && (event->type() == QEvent::KeyPress || event->type() == QEvent::MouseButtonPress || event->type() == QEvent::TouchBegin))
        m_store->session()->touch();
    // The menu's own key does not reach over a sheet.
    if (event->type() == QEvent::KeyPress && static_cast<QKeyEvent *>(event)->matches(QKeySequence::HelpContents) && sheetOver()) {
        showManual(placeForHelp());
        return true;
    }
    return QMainWindow::eventFilter(watched, event);
}

void MainWindow::closeEvent(QCloseEvent *event)
{
    if (mayLose(allPages(), tr("Close the program?"), tr("Close the program")))
        QMainWindow::closeEvent(event);
    else
        event->ignore();
}

Shown MainWindow::shown() const { return m_job && m_stack->currentWidget() == m_job ? Shown::Job : Shown::SomethingElse; }

bool MainWindow::takeScan(const QString &text, ScannerKeys::Focus focus)
{
    if (!m_store->session())
        return false;
    const auto job = m_job ? m_store->session()->state() : nullptr;
    const auto jobsOf = [this](const QString &workOrder) { return m_store->jobsOf(workOrder); };
    const ScanAnswer answer = answerToScan(text, job.get(), jobsOf, shown(), focus);
    if (answer.isForUs())
        m_otherJob->dismiss();
    if (answer.offer) {
        m_otherJob->offer(*answer.offer);
    } else if (answer.show) {
        showJob();
        m_job->showItem(*answer.show);
    } else if (answer.isForUs()) {
        m_ask.tell(answer.title, answer.words);
    }
    return answer.isForUs();
}

void MainWindow::openScanned(const OtherJob &other)
{
    openJob(other.job);
    if (m_job && m_store->session()->job() == other.job)
        (void)takeScan(other.scanned, ScannerKeys::Focus::Elsewhere);
}

void MainWindow::dragEnterEvent(QDragEnterEvent *event)
{
    if (whatIsDropped(*event->mimeData(), shown()) != Dropped::Nothing)
        event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent *event)
{
    event->acceptProposedAction();
    const QMimeData &offered = *event->mimeData();
    switch (whatIsDropped(offered, shown())) {
    case Dropped::Nothing: break;
    case Dropped::Photos: m_job->offerPhotos(offered); break;
    case Dropped::StoreOrPackage: openStore(offered.urls().front().toLocalFile()); break;
    case Dropped::List:
        if (shown() == Shown::Job)
            m_job->importList(offered.urls().front().toLocalFile());
        else
            m_ask.tell(tr("Open a job first"), tr("An interface list is taken into a job. Open the job, then drop the list again."));
        break;
    }
}

} // namespace desktop
