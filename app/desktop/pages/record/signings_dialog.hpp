// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDialog>

#include "app/desktop/pages/page.hpp"
#include "app/desktop/flows/audit_export.hpp"

class QLabel;
class QPushButton;

namespace desktop {

class RowTable;
class SigningsView;

/// Who signed what when: a picture with a lane a person and the shifts told apart, the entry behind the chosen mark in words, and the same as a table.
class SigningsDialog : public QDialog {
    Q_OBJECT

public:
    SigningsDialog(const PageTools &tools, QWidget *parent);

signals:
    void entryWanted(const QString &seq);

private:
    QWidget *makeLegend();
    QWidget *makeButtons();
    void say();

    PageTools m_tools;
    SigningsView *m_view;
    QLabel *m_said;
    RowTable *m_rows;
    QPushButton *m_lead;
    AuditAnswer m_answer; ///< nothing before it was asked
};

} // namespace desktop
