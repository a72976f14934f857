// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include "app/session/folds.hpp"
#include "core/register/register.hpp"

class QLabel;
class QListView;
class QPushButton;
class QStackedWidget;

namespace desktop {

class RowModel;

/// All jobs of the store with what is loose in each; and, while the store is young, what to do next.
class StartPage : public QWidget {
    Q_OBJECT

public:
    explicit StartPage(QWidget *parent = nullptr);
    void show(const std::vector<session::JobRow> &jobs, const core::Register &reg);

signals:
    void jobChosen(const core::LedgerId &job);
    void newJobWanted();
    void peopleWanted();

private:
    QWidget *makeEmpty();
    void open(const QModelIndex &at);

    RowModel *m_model;
    QListView *m_list;
    QLabel *m_organisation;
    QLabel *m_next;
    QPushButton *m_people;
    QStackedWidget *m_stack;
};

} // namespace desktop
