// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/pages/page.hpp"

namespace desktop {

class ActionButtons;
class RowTable;

/// What was put on for the job: isolations, tags, pins, blanks, hoist, sling, stand, platform; what is still on first.
class TemporariesPage : public Page {
    Q_OBJECT

public:
    explicit TemporariesPage(const PageTools &tools, QWidget *parent = nullptr);
    static Page *make(const PageTools &tools, QWidget *parent) { return new TemporariesPage(tools, parent); }
    static qsizetype waiting(const PageTools &tools);
    void chooseRow(const QString &key) override;

private:
    void refresh();
    void showActions();

    RowTable *m_rows;
    ActionButtons *m_actions;
};

} // namespace desktop
