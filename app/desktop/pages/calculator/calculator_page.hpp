// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include <optional>

#include "app/desktop/ask.hpp"
#include "app/desktop/pages/calculator/worked_out.hpp"
#include "app/session/clock.hpp"

class QLabel;
class QListWidget;
class QPushButton;
class QStackedWidget;

namespace desktop {

class CalculationAnswer;
class CalculationForm;

/// Calculations outside any job, with or without a store: all of them on the left, the fields of one in the middle, and its working as
/// somebody types. Nothing of it is kept.
class CalculatorPage : public QWidget {
    Q_OBJECT

public:
    CalculatorPage(core::LookUpTables tables, session::Clock clock, Ask &ask, QWidget *parent);

    /// Shows a calculation by its name. What was typed into it before is still there.
    void choose(QStringView name);

signals:
    /// Back to where the person came from.
    void left();

private:
    QWidget *makeList();
    QWidget *makeHead();
    QWidget *makeMiddle();
    QWidget *makeRight();
    void showForm(int row);
    void work();
    void openTables(const QString &field);
    void copy() const;
    void printAsked();
    void pdfAsked();
    CalculationForm *form() const;

    core::LookUpTables m_tables;
    session::Clock m_clock;
    Ask &m_ask;
    QListWidget *m_list;
    QLabel *m_title;
    QLabel *m_summary;
    QLabel *m_cautions;
    QStackedWidget *m_forms; ///< one for each calculation that was looked at
    std::vector<CalculationForm *> m_made;
    CalculationAnswer *m_answer;
    QPushButton *m_print;
    QPushButton *m_pdf;
    QPushButton *m_copy;
    std::optional<WorkedOut> m_worked;
};

} // namespace desktop
