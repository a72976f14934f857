// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDialog>
#include <QPointer>

#include <vector>

class QAction;
class QLineEdit;
class QListWidget;
class QMenuBar;

namespace desktop {

/// Finds what the menus can do by some letters of it, with its key beside it; Enter does it. What cannot be done now is there as well, and
/// says why.
class CommandSearch : public QDialog {
    Q_OBJECT

public:
    /// The menus fill themselves as they would when they are opened.
    CommandSearch(const QMenuBar &menus, QWidget *parent);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void narrow(const QString &words);
    void carryOut();

    struct Command {
        QPointer<QAction> action;
        QString words; ///< with the menu that it is in
    };
    std::vector<Command> m_commands;
    QLineEdit *m_words;
    QListWidget *m_found;
};

} // namespace desktop
