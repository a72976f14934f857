// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/pages/page.hpp"

class QTabWidget;

namespace desktop {

class ActionButtons;
class RowTable;

/// What went out to the job and has to come back: tools and tags; and the balance of the hardware, interface by interface.
class PartsAndToolsPage : public Page {
    Q_OBJECT

public:
    explicit PartsAndToolsPage(const PageTools &tools, QWidget *parent = nullptr);
    static Page *make(const PageTools &tools, QWidget *parent) { return new PartsAndToolsPage(tools, parent); }
    /// Tools and blocks of tags that are out.
    static qsizetype waiting(const PageTools &tools);
    void chooseRow(const QString &key) override;

private:
    void refresh();
    void showTools();
    void showTags();
    void showHardware();
    void showToolActions();
    void showTagActions();

    QTabWidget *m_book;
    RowTable *m_tools;
    ActionButtons *m_toolActions;
    RowTable *m_tags;
    ActionButtons *m_tagActions;
    RowTable *m_hardware;
};

} // namespace desktop
