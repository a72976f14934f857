// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDialog>

#include "app/desktop/pages/page.hpp"
#include "app/desktop/flows/audit_export.hpp"

class QLabel;
class QLineEdit;
class QPushButton;

namespace desktop {

class RowTable;

/// What came between two entries of the job, each named by its number or its hash as the foot of a printed record has them.
class CompareDialog : public QDialog {
    Q_OBJECT

public:
    CompareDialog(const PageTools &tools, QWidget *parent);

private:
    void compare();
    void say(const QString &sentence, const char *role);
    void offer();

    PageTools m_tools;
    QLineEdit *m_from;
    QLineEdit *m_to;
    QLabel *m_said;
    QLabel *m_refused;
    RowTable *m_rows;
    QPushButton *m_compare;
    QPushButton *m_csv;
    QPushButton *m_pdf;
    AuditAnswer m_answer; ///< nothing before it was asked
};

} // namespace desktop
