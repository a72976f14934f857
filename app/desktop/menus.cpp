// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QActionGroup>
#include <QApplication>
#include <QMenuBar>
#include <QStackedWidget>

#include "app/desktop/main_window.hpp"
#include "app/desktop/open_store.hpp"
#include "app/desktop/pages/job/job_place.hpp"
#include "app/desktop/pages/pages.hpp"
#include "app/desktop/parts/command_search.hpp"

namespace desktop {

void MainWindow::makeMenus()
{
    QMenu *file = m_menus->addMenu(tr("&File"));
    file->addAction(tr("&New store …"), m_store, &OpenStore::askNew);
    file->addAction(tr("&Open a store …"), QKeySequence::Open, m_store, &OpenStore::askOpen);
    QMenu *recent = file->addMenu(tr("&Recent stores"));
    connect(recent, &QMenu::aboutToShow, this, [this, recent] {
        recent->clear();
        for (const QString &path : m_preferences.recentStores)
            recent->addAction(path, this, [this, path] { openStore(path); });
        recent->addAction(tr("None yet"))->setVisible(m_preferences.recentStores.isEmpty());
    });
    file->addAction(tr("Tr&y the demo …"), m_store, &OpenStore::openDemo);
    file->addSeparator();
    file->addAction(tr("&Verify a record package …"), m_store, &OpenStore::askPackage);
    const auto ofStore = [&](QAction *action) { m_storeActions.push_back(action); };
    ofStore(file->addAction(tr("I&mported packages …"), m_store, &OpenStore::showPackages));
    file->addSeparator();
    const auto ofJob = [&](QAction *action) { m_jobActions.push_back(action); };
    ofJob(file->addAction(tr("&Import the list …"), QKeySequence(QStringLiteral("Ctrl+I")), this, [this] { m_job->askImport(); }));
    ofJob(file->addAction(tr("E&xport the list …"), this, [this] { m_job->exportListAsked(); }));
    ofJob(file->addAction(tr("Export &tag labels …"), this, [this] { m_job->exportLabelsAsked(); }));
    ofJob(file->addAction(tr("&Export the record package …"), QKeySequence(QStringLiteral("Ctrl+E")), this, [this] { m_job->exportPackageAsked(); }));
    ofJob(file->addAction(tr("Export PDF and &CSV …"), this, [this] { m_job->exportRecordAsked(); }));
    ofJob(file->addAction(tr("&Wall sheet: what is open …"), this, [this] { m_job->exportSheetAsked(core::SheetSort::Wall); }));
    ofJob(file->addAction(tr("&Handover sheet …"), this, [this] { m_job->exportSheetAsked(core::SheetSort::Handover); }));
    ofJob(file->addAction(tr("&Back up the store …"), this, [this] { m_job->backUpAsked(); }));
    file->addSeparator();
    file->addAction(tr("&Quit"), QKeySequence::Quit, this, &QWidget::close);

    QMenu *edit = m_menus->addMenu(tr("&Edit"));
    // A line of text takes the same keys for itself while somebody types into it.
    ofJob(edit->addAction(tr("&Strike my last entry …"), QKeySequence::Undo, this, [this] { m_job->strikeLastAsked(); }));

    QMenu *go = m_menus->addMenu(tr("&Go"));
    ofStore(go->addAction(tr("&Jobs"), QKeySequence(QStringLiteral("Ctrl+J")), this, &MainWindow::showStart));
    ofStore(go->addAction(tr("&People and tools"), QKeySequence(QStringLiteral("Ctrl+P")), this, &MainWindow::showPeople));
    ofStore(go->addAction(tr("&Where used …"), QKeySequence(QStringLiteral("Ctrl+Shift+F")), this, &MainWindow::showWhereUsed));
    ofStore(go->addAction(tr("&New job …"), QKeySequence::New, this, &MainWindow::newJob));
    go->addAction(tr("Ca&lculator"), QKeySequence(QStringLiteral("Ctrl+K")), this, &MainWindow::showCalculator);
    go->addSeparator();
    for (const PageLine &line : pages()) {
        QAction *action = go->addAction(QCoreApplication::translate("Page", line.title), this, [this, name = QString(line.name)] { m_job->showPage(name); });
        action->setShortcut(QKeySequence(QString::fromLatin1(line.shortcut)));
        ofJob(action);
    }
    ofStore(go->addAction(tr("Loc&k"), QKeySequence(QStringLiteral("Ctrl+L")), this, &MainWindow::lock));

    QMenu *act = m_menus->addMenu(tr("&Do"));
    connect(act, &QMenu::aboutToShow, this, [this, act] { m_job->fillMenu(*act); });
    ofJob(act->menuAction());

    makeLookMenu();

    QMenu *help = m_menus->addMenu(tr("&Help"));
    help->addAction(tr("&Manual"), QKeySequence::HelpContents, this, [this] { showManual(placeForHelp()); });
    help->addAction(tr("&Find a command …"), QKeySequence(QStringLiteral("Ctrl+Shift+A")), this, [this] { (new CommandSearch(*m_menus, this))->open(); });
    help->addAction(tr("Manual, &contents"), this, [this] { showManual({QStringLiteral("index")}); });
    help->addAction(tr("&Keys"), QKeySequence(QStringLiteral("Ctrl+F1")), this, [this] { showManual({QStringLiteral("shortcuts")}); });
}

void MainWindow::makeLookMenu()
{
    QMenu *look = m_menus->addMenu(tr("&Look"));
    auto *group = new QActionGroup(look);
    const std::pair<QString, Appearance> choices[] = {{tr("As the &system"), Appearance::System}, {tr("&Light"), Appearance::Light}, {tr("&Dark"), Appearance::Dark},
        {tr("Light with &more contrast"), Appearance::StarkLight}, {tr("Dark with more &contrast"), Appearance::StarkDark}};
    for (const auto &[text, appearance] : choices) {
        QAction *action = look->addAction(text);
        action->setCheckable(true);
        action->setChecked(m_preferences.appearance == appearance);
        group->addAction(action);
        connect(action, &QAction::triggered, this, [this, appearance = appearance] {
            m_preferences.appearance = appearance;
            emit appearanceChosen(appearance);
        });
    }
    look->addSeparator();
    // A name of its own in every language, so that whoever cannot read the others finds theirs.
    auto *languages = new QActionGroup(look);
    for (const language::LanguageLine &line : language::languages()) {
        QAction *action = look->addAction(QString::fromUtf16(line.own));
        action->setObjectName(QStringLiteral("language.") + QLatin1String(line.code));
        action->setCheckable(true);
        action->setChecked(m_preferences.spoken(QLocale::system()) == line.language);
        languages->addAction(action);
        // The menu itself is made anew, so it is let go first.
        connect(action, &QAction::triggered, this, [this, language = line.language] { QTimer::singleShot(0, this, [this, language] { chooseLanguage(language); }); });
    }
}

} // namespace desktop
