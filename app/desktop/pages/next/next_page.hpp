// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/pages/page.hpp"

class QComboBox;
class QLabel;

namespace desktop {

class ActionButtons;
class RowTable;

/// What goes on next, in the reverse of its removal, with what stands in the way; of one zone or all.
class NextPage : public Page {
    Q_OBJECT

public:
    explicit NextPage(const PageTools &tools, QWidget *parent = nullptr);
    static Page *make(const PageTools &tools, QWidget *parent) { return new NextPage(tools, parent); }

private:
    void refresh();
    void fillZones();
    void showActions();

    QLabel *m_title;
    QComboBox *m_zone;
    RowTable *m_rows;
    ActionButtons *m_actions;
};

} // namespace desktop
