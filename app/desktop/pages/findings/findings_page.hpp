// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/pages/page.hpp"

namespace desktop {

class ActionButtons;
class RowTable;

/// Damage and discrepancies with their dispositions.
class FindingsPage : public Page {
    Q_OBJECT

public:
    explicit FindingsPage(const PageTools &tools, QWidget *parent = nullptr);
    static Page *make(const PageTools &tools, QWidget *parent) { return new FindingsPage(tools, parent); }
    static qsizetype waiting(const PageTools &tools);

private:
    void refresh();
    void showActions();

    RowTable *m_rows;
    ActionButtons *m_actions;
};

} // namespace desktop
