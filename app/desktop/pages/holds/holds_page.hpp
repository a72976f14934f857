// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/pages/page.hpp"

class QLabel;
class QPushButton;

namespace desktop {

class ActionButtons;
class RowTable;

/// The signed gates of the job: which are passed, what each asks for, and what of it is not so yet.
class HoldsPage : public Page {
    Q_OBJECT

public:
    explicit HoldsPage(const PageTools &tools, QWidget *parent = nullptr);
    static Page *make(const PageTools &tools, QWidget *parent) { return new HoldsPage(tools, parent); }
    /// Those that may be passed as far as their conditions go, or have to be passed again.
    static qsizetype waiting(const PageTools &tools);
    void chooseRow(const QString &key) override;

private:
    void refresh();
    void showChosen();

    RowTable *m_rows;
    QPushButton *m_set;
    QLabel *m_title;
    QLabel *m_behind;
    RowTable *m_conditions;
    ActionButtons *m_actions;
};

} // namespace desktop
