// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/pages/page.hpp"

class QLabel;

namespace desktop {

class ItemCard;
class RowTable;

/// What waits for inspection, one item at a time with all that was recorded. Accept or reject by key, and the next one
/// comes up. Where the person at the computer may not sign an item, it says why.
class InspectPage : public Page {
    Q_OBJECT

public:
    explicit InspectPage(const PageTools &tools, QWidget *parent = nullptr);
    static Page *make(const PageTools &tools, QWidget *parent) { return new InspectPage(tools, parent); }
    static qsizetype waiting(const PageTools &tools);

private:
    void refresh();
    void choose(const QString &key);

    QLabel *m_title;
    RowTable *m_queue;
    ItemCard *m_card;
    int m_at = 0; ///< the row that was looked at, so that the next one moves up into it
};

} // namespace desktop
