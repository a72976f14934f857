// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/pages/page.hpp"

namespace desktop {

class ActionButtons;
class RowTable;

/// Damage and discrepancies with their dispositions, and what is due after closure.
class FindingsPage : public Page {
    Q_OBJECT

public:
    explicit FindingsPage(const PageTools &tools, QWidget *parent = nullptr);
    static Page *make(const PageTools &tools, QWidget *parent) { return new FindingsPage(tools, parent); }
    /// Findings that are open.
    static qsizetype waiting(const PageTools &tools);
    void chooseRow(const QString &key) override;

private:
    void refresh();
    void showActions();

    RowTable *m_rows;
    ActionButtons *m_actions;
    RowTable *m_followUps;
    ActionButtons *m_followUpActions;
};

} // namespace desktop
