// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/pages/page.hpp"

class QLabel;

namespace desktop {

class ActionButtons;
class RowTable;

/// What stops closure: every loose end, in plain words, with who can clear it. A row leads to its interface.
class LooseEndsPage : public Page {
    Q_OBJECT

public:
    explicit LooseEndsPage(const PageTools &tools, QWidget *parent = nullptr);
    static Page *make(const PageTools &tools, QWidget *parent) { return new LooseEndsPage(tools, parent); }

private:
    void refresh();
    void lead(const QString &key);

    QLabel *m_title;
    RowTable *m_rows;
    ActionButtons *m_close;
};

} // namespace desktop
