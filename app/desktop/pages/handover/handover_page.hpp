// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/pages/page.hpp"

class QLabel;

namespace desktop {

class ActionButtons;
class RowTable;

/// What the next shift takes over: the computed list of all that is open or half done, to be given and to be accepted.
class HandoverPage : public Page {
    Q_OBJECT

public:
    explicit HandoverPage(const PageTools &tools, QWidget *parent = nullptr);
    static Page *make(const PageTools &tools, QWidget *parent) { return new HandoverPage(tools, parent); }
    static qsizetype waiting(const PageTools &tools);

private:
    void refresh();

    QLabel *m_state;
    RowTable *m_open;
    RowTable *m_past;
    ActionButtons *m_actions;
};

} // namespace desktop
