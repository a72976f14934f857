// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/pages/page.hpp"

namespace desktop {

class ActionButtons;
class FigureCard;
class RowTable;

/// Figures of the whole job: lifts as planned, fluids filled in, weight and balance. Struck ones are on the record's page.
class FiguresPage : public Page {
    Q_OBJECT

public:
    explicit FiguresPage(const PageTools &tools, QWidget *parent = nullptr);
    static Page *make(const PageTools &tools, QWidget *parent) { return new FiguresPage(tools, parent); }

private:
    void refresh();
    void showChosen();
    const core::JobFigure *figureOf(const QString &key) const;

    RowTable *m_rows;
    FigureCard *m_card;
    ActionButtons *m_actions;
    QString m_newest; ///< key of the last row, so that a new one is noticed
};

} // namespace desktop
