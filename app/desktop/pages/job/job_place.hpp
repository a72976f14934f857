// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include "app/desktop/flows/signing.hpp"
#include "app/desktop/pages/page.hpp"
#include "core/reports/one_page.hpp"

class QLabel;
class QMenu;
class QMimeData;
class QPushButton;
class QScrollArea;
class QStackedWidget;

namespace desktop {

class Seam;

/// One job: its facts, its seam, how much is loose, and the pages.
class JobPlace : public QWidget {
    Q_OBJECT

public:
    JobPlace(session::Session &session, JobFeed &feed, Signing &signing, const core::Kinds &kinds, Ask &ask, QWidget *parent);

    /// With the row of that key chosen on it, where one is given.
    void showPage(const QString &name, const QString &row = {});
    /// The name of the page that is shown, and what is chosen.
    QString shownPage() const;
    const std::vector<core::InterfaceId> &chosen() const { return m_selection.items(); }
    void choose(const std::vector<core::InterfaceId> &items) { m_selection.choose(items); }
    /// Whether a page has something under way that is lost with it.
    bool isAnythingUnsigned() const;
    /// The page of the manual that tells of what is shown.
    QString manualPage() const;
    /// Chooses an interface of the job and shows it on the list.
    void showItem(const core::InterfaceId &item);
    /// Lists what may be done with what is chosen, with its keys; what is refused is greyed and says why.
    void fillMenu(QMenu &menu);
    /// Reads a list, shows it, and has it signed.
    void importList(const QString &path);
    void askImport();
    /// Photos that were dropped on the window wait on their page.
    void offerPhotos(const QMimeData &offered);
    void exportListAsked();
    void exportLabelsAsked();
    void exportPackageAsked();
    void exportRecordAsked();
    void exportSheetAsked(core::SheetSort sort);
    void verify();
    void backUpAsked();
    /// Begins to strike the last entry of whoever signed last; says why where it may not be struck.
    void strikeLastAsked();

private:
    QWidget *makeHead();
    QWidget *makeRail();
    /// Made when it is shown first: a job opens sooner, and what nobody looks at is not kept up to date.
    Page *pageAt(std::size_t line);
    void refresh();
    void fitRail();

    session::Session &m_session;
    JobFeed &m_feed;
    Signing &m_signing;
    const core::Kinds &m_kinds;
    Ask &m_ask;
    Selection m_selection;
    PageTools m_tools;
    QLabel *m_title;
    QLabel *m_facts;
    QPushButton *m_loose;
    Seam *m_seam;
    QScrollArea *m_railArea;
    std::vector<QPushButton *> m_rail;
    QStackedWidget *m_pages;
    std::vector<Page *> m_built; ///< beside pages(); null until shown
};

} // namespace desktop
