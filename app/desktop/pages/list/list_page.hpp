// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/pages/page.hpp"

class QCheckBox;
class QLabel;
class QLineEdit;
class QStackedWidget;
class QTableView;

namespace desktop {

class InterfaceFilter;
class InterfaceModel;
class ItemCard;

/// All interfaces as rows, filtered as somebody types, with the card of what is chosen beside them.
class ListPage : public Page {
    Q_OBJECT

public:
    explicit ListPage(const PageTools &tools, QWidget *parent = nullptr);
    static Page *make(const PageTools &tools, QWidget *parent) { return new ListPage(tools, parent); }

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    QWidget *makeFilterRow();
    QWidget *makeTable();
    QWidget *makeEmpty();
    void addShortcuts();
    void followView();
    void followSelection();
    void count();
    void jumpToScanned();

    InterfaceModel *m_model;
    InterfaceFilter *m_filter;
    QLineEdit *m_words;
    QCheckBox *m_looseOnly;
    QLabel *m_count;
    QTableView *m_table;
    QStackedWidget *m_stack;
    ItemCard *m_card;
    bool m_isFollowing = false;
};

} // namespace desktop
