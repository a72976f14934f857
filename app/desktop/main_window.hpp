// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QMainWindow>
#include <QPointer>
#include <QTimer>

#include <memory>
#include <optional>

#include "app/desktop/ask.hpp"
#include "app/desktop/begun/begun_forms.hpp"
#include "app/desktop/parts/help_page.hpp"
#include "app/desktop/preferences.hpp"
#include "app/desktop/scan/scanned.hpp"
#include "app/desktop/store_place.hpp"
#include "app/session/notice.hpp"
#include "core/kinds/kinds.hpp"

class QMenuBar;
class QStackedWidget;

namespace desktop {

class CalculatorPage;
class FoundPage;
class JobFeed;
class JobPlace;
class ManualOpener;
class ManualWindow;
class NoticeBand;
class OpenStore;
class OtherJobBand;
class PeoplePage;
class SignerBar;
class Signing;
class StartPage;
class WelcomePage;

/// Places the pages and menus over the store that is open; what they do, they do themselves.
class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    MainWindow(Ask &ask, const core::Kinds &kinds, SessionMaker maker, Preferences preferences, QWidget *parent = nullptr);
    ~MainWindow() override;

    /// From now on what is typed into forms is kept in that folder until it is signed. Before a store is opened.
    void keepBegunForms(const QString &folder) { m_begun.emplace(folder); }
    /// Opens a store and shows its jobs; says why when it cannot.
    void openStore(const QString &path);
    /// The same with one that was opened already.
    void takeStore(core::Result<StorePlace> opened);
    /// Asks first where photos, marks or a watched folder of the job that is open would go with its pages.
    void openJob(const core::LedgerId &job);
    /// Verifies a record package and shows the verdict; no store needs to be open.
    void openPackage(const QString &path);
    /// As they are now, for main to keep.
    Preferences preferences() const;
    /// The manual, once somebody asked for it.
    ManualWindow *manual() const;
    /// Looks for what other programs appended; also done twice a second.
    void look();

signals:
    void appearanceChosen(desktop::Appearance appearance);
    /// To be spoken from now on: whoever is connected sees to that before it returns, and the window then says everything anew.
    void languageChosen(language::Language language);
    /// For the log, in the record's words. Holds nothing that a person typed.
    void noticeShown(const session::Notice &notice);

protected:
    bool event(QEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;
    void closeEvent(QCloseEvent *event) override;
    void showEvent(QShowEvent *event) override;
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    /// What is looked at, to come back to it.
    struct View;
    void build();
    View view() const;
    void chooseLanguage(language::Language language);
    void sayAnew();
    void makeMenus();
    void makeLookMenu();
    QWidget *makeTop();
    /// Whether those pages may go, nullptr for one that is not there: asks the question where something typed, photos, marks or a watched
    /// folder would go with them.
    bool mayLose(const std::vector<const QWidget *> &pages, const QString &question, const QString &yes);
    /// The pages that go with the store.
    std::vector<const QWidget *> pagesOfStore() const;
    /// And those that go with the window.
    std::vector<const QWidget *> allPages() const;
    /// What is open now, once it is open; and before it goes.
    void takePlace();
    void leavePlace();
    void makePages();
    void leavePages();
    void showPlace();
    void welcome();
    void showStart();
    void showPeople();
    void showWhereUsed();
    void showCalculator();
    /// Back from the calculator to what was shown before it.
    void leaveCalculator();
    /// The dialog of this window that has to be answered before anything else, or nullptr.
    const QWidget *sheetOver() const;
    /// Where the manual tells of what is shown.
    HelpPlace placeForHelp() const;
    void showManual(const HelpPlace &place);
    /// The open job, whatever was shown before it.
    void showJob();
    void makeJob();
    void leaveJob();
    void newJob();
    void afterSigning(const std::vector<core::Entry> &entries);
    void feedJob();
    Shown shown() const;
    bool takeScan(const QString &text, ScannerKeys::Focus focus);
    /// Opens the job of a label, and shows its interface.
    void openScanned(const OtherJob &other);
    void showNotice();
    void showWho();
    void lock();

    Ask &m_ask;
    const core::Kinds &m_kinds;
    Preferences m_preferences;
    std::optional<BegunForms> m_begun;
    OpenStore *m_store;
    QTimer m_watch;
    std::optional<std::pair<db::ChangeToken, core::Head>> m_seen; ///< what the pages show
    std::optional<core::PersonId> m_signer; ///< as the pages know it
    NoticeBand *m_notice = nullptr;
    OtherJobBand *m_otherJob = nullptr;
    QStackedWidget *m_stack = nullptr;
    CalculatorPage *m_calculator = nullptr; ///< made when it is shown first, and needs no store
    QPointer<QWidget> m_beforeCalculator;
    ManualOpener *m_manual;
    WelcomePage *m_welcome = nullptr; ///< made when there is no store to show
    QMenuBar *m_menus = nullptr;
    SignerBar *m_corner = nullptr;
    std::vector<QAction *> m_storeActions; ///< need a store
    std::vector<QAction *> m_jobActions;   ///< need an open job
    JobFeed *m_feed = nullptr;             ///< these six go when the store is left
    Signing *m_signing = nullptr;
    StartPage *m_start = nullptr;
    PeoplePage *m_people = nullptr; ///< these two are made when they are shown first
    JobPlace *m_job = nullptr;
    FoundPage *m_found = nullptr; ///< in their place while the store has no register
};

} // namespace desktop
