// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/pages/page.hpp"

namespace desktop {

class ActionButtons;
class RowTable;

/// The jobs that are parts of the same piece of work, how far each has come, and the items that go from one to another; what waits to be
/// taken on here first.
class LinkedPage : public Page {
    Q_OBJECT

public:
    explicit LinkedPage(const PageTools &tools, QWidget *parent = nullptr);
    static Page *make(const PageTools &tools, QWidget *parent) { return new LinkedPage(tools, parent); }
    /// How many items wait to be taken on here.
    static qsizetype waiting(const PageTools &tools);

    void chooseRow(const QString &key) override;

private:
    void refresh();
    void showJobs();
    void showItems();
    void showActions();

    RowTable *m_jobs;
    RowTable *m_items;
    ActionButtons *m_actions;
};

} // namespace desktop
