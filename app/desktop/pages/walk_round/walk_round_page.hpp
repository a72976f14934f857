// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QSet>

#include "app/desktop/pages/page.hpp"

class QLabel;
class QPushButton;

namespace desktop {

class ActionButtons;
class RowTable;

/// The round before the mounts are let go: a second person looks at each interface that is off, and ticks it on its own. There is no way
/// to tick several at once. What was ticked is then signed, one entry each.
class WalkRoundPage : public Page {
    Q_OBJECT

public:
    explicit WalkRoundPage(const PageTools &tools, QWidget *parent = nullptr);
    static Page *make(const PageTools &tools, QWidget *parent) { return new WalkRoundPage(tools, parent); }
    /// Off, and not confirmed free.
    static qsizetype waiting(const PageTools &tools);
    void chooseRow(const QString &key) override;

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void refresh();
    void showChosen();
    void tick();
    void sign();

    QLabel *m_title;
    RowTable *m_rows;
    QPushButton *m_tick;
    QLabel *m_why;
    QPushButton *m_sign;
    ActionButtons *m_actions;
    QSet<core::InterfaceId> m_ticked;
    std::optional<core::PersonId> m_tickedBy; ///< whose eyes the ticks are
};

} // namespace desktop
