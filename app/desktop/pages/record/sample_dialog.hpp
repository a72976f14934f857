// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDialog>

#include "app/desktop/pages/page.hpp"
#include "app/desktop/flows/audit_export.hpp"

class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace desktop {

class RowTable;

/// Draws a sample of the job's interfaces by a seed, and shows every entry about each of them; as CSV and PDF too. The seed is suggested at random
/// and may be typed, so that a sample can be drawn again.
class SampleDialog : public QDialog {
    Q_OBJECT

public:
    SampleDialog(const PageTools &tools, QWidget *parent);

signals:
    /// Lead to that entry.
    void entryWanted(const QString &seq);

private:
    void draw();
    void offer();

    PageTools m_tools;
    QSpinBox *m_many;
    QLineEdit *m_seed;
    QLabel *m_said;
    RowTable *m_rows;
    QPushButton *m_draw;
    QPushButton *m_lead;
    QPushButton *m_csv;
    QPushButton *m_pdf;
    AuditAnswer m_answer; ///< nothing before it was asked
};

} // namespace desktop
