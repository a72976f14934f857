// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <map>

#include "app/desktop/pages/page.hpp"
#include "core/acts/voids.hpp"

class QLabel;

namespace desktop {

class ActionButtons;
class RowTable;
class TimelineBar;

/// The timeline of all entries, struck ones legible, and what is done with the record: verify, export, back up.
class RecordPage : public Page {
    Q_OBJECT

public:
    explicit RecordPage(const PageTools &tools, QWidget *parent = nullptr);
    static Page *make(const PageTools &tools, QWidget *parent) { return new RecordPage(tools, parent); }
    void chooseRow(const QString &key) override;
    /// What verifying said: a sentence, and the entries that are not as they must be.
    void showVerdict(const QString &sentence, bool isGood);

private:
    QWidget *makeButtons();
    void takeFeed();
    void refresh();
    void showActions();

    QLabel *m_verdict;
    TimelineBar *m_bar;
    RowTable *m_rows;
    ActionButtons *m_actions;
    std::map<qint64, std::vector<core::Voided>> m_voided; ///< by each disturbance, of its sequence number
    std::size_t m_worked = 0;                             ///< so many entries
};

} // namespace desktop
