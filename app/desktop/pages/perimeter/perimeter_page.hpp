// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/pages/page.hpp"

class QLabel;
class QPushButton;
class QStackedWidget;

namespace desktop {

class PerimeterLegend;
class PerimeterView;
class StageMark;

/// The job at a glance: the unit as a boundary, its zones along it, every interface across it, what is applied outside it. What is chosen here is chosen in the
/// list as well.
class PerimeterPage : public Page {
    Q_OBJECT

public:
    explicit PerimeterPage(const PageTools &tools, QWidget *parent = nullptr);
    static Page *make(const PageTools &tools, QWidget *parent) { return new PerimeterPage(tools, parent); }
    void chooseRow(const QString &key) override;

private:
    QWidget *makeHead();
    QWidget *makeEmpty();
    QWidget *makeFoot();
    void refresh();
    void followView();
    void followSelection();
    void tellCurrent();
    void open();
    void printAsked();

    QLabel *m_title;
    QLabel *m_hoist;
    QStackedWidget *m_stack;
    PerimeterView *m_view;
    PerimeterLegend *m_legend;
    StageMark *m_stage;
    QLabel *m_current;
    QPushButton *m_open;
    QPushButton *m_print;
    bool m_isFollowing = false;
};

} // namespace desktop
