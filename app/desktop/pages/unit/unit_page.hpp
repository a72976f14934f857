// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/pages/page.hpp"

namespace desktop {

class ActionButtons;
class RowTable;

/// The unit itself, off, received and in its place; and the tests of what was restored.
class UnitPage : public Page {
    Q_OBJECT

public:
    explicit UnitPage(const PageTools &tools, QWidget *parent = nullptr);
    static Page *make(const PageTools &tools, QWidget *parent) { return new UnitPage(tools, parent); }
    /// Tests that have failed, or are void.
    static qsizetype waiting(const PageTools &tools);
    void chooseRow(const QString &key) override;

private:
    QWidget *makeScrolled(QWidget *inside);
    void refresh();
    void showActions();

    RowTable *m_steps;
    RowTable *m_tests;
    ActionButtons *m_actions;
};

} // namespace desktop
