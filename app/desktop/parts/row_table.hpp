// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStackedWidget>

#include "app/desktop/parts/row_model.hpp"

class QTableView;
class QTimer;

namespace desktop {

/// A table of plain rows that wrap their text, or a sentence where there are none.
class RowTable : public QStackedWidget {
    Q_OBJECT

public:
    struct Column {
        QString title;
        int characters; ///< width; 0 takes what is left
    };
    RowTable(const std::vector<Column> &columns, const QString &name, const QString &whenEmpty, QWidget *parent = nullptr);

    void take(const std::vector<Row> &rows);
    RowModel &model() { return *m_model; }
    QTableView &view() { return *m_view; }
    /// Whether a figure and its unit stay in one line, as they do unless told otherwise: where there is no room for that, better two lines than three dots.
    void keepFiguresWhole(bool isWhole);
    bool keepsFiguresWhole() const { return m_keepsFiguresWhole; }
    /// The key of the chosen row; empty when none is.
    QString chosen() const;
    void choose(const QString &key);
    /// So many rows are in sight without scrolling, or all where there are fewer, however small the window.
    void showAtLeast(int rows);

signals:
    void chosenChanged(const QString &key);
    /// Double click or Return on a row.
    void opened(const QString &key);
    /// The rows that have to be in sight need another height now, see showAtLeast.
    void heightChanged();

private:
    void keepInSight();

    RowModel *m_model;
    QTableView *m_view;
    bool m_keepsFiguresWhole = true;
    int m_atLeast = 0;
    QTimer *m_settle = nullptr; ///< where rows are kept in sight
};

} // namespace desktop
