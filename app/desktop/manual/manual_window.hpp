// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDialog>

#include <vector>

#include "app/manual/pages.hpp"

class QLineEdit;
class QListWidget;
class QPushButton;
class QTextBrowser;

namespace desktop {

/// The manual beside the work: contents that a few words narrow, and the page. Links lead through it; Alt+Left leads back.
class ManualWindow : public QDialog {
    Q_OBJECT

public:
    ManualWindow(std::vector<manual::Page> pages, QWidget *parent);

    /// The page of that name, or the first where there is none; from that section on, where one is named.
    void showPage(const QString &name, const QString &section = {});
    QString shownPage() const { return m_shown; }

private:
    void narrow(const QString &words);
    void follow(const QString &link);
    void back();
    void take(const manual::Page &page);
    void choose(const QString &name);

    std::vector<manual::Page> m_pages;
    QString m_shown;
    QStringList m_before; ///< pages to go back to, the last at the end
    QLineEdit *m_search;
    QListWidget *m_contents;
    QTextBrowser *m_text;
    QPushButton *m_back;
};

} // namespace desktop
