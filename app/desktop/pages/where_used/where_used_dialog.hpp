// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDialog>

#include "app/desktop/ask.hpp"
#include "app/session/where_used.hpp"

class QComboBox;
class QLabel;
class QLayout;
class QLineEdit;
class QPushButton;

namespace desktop {

class RowTable;

/// Looks through the whole store for a person, tool, part, batch, serial number or certificate: each entry of each job, open or closed, that
/// names it; of one kind of entry or between two days where that is asked for. The jobs come first, with how many entries each has; choosing one leaves its entries alone. A row leads to its entry, and all
/// rows can be written as CSV and PDF.
class WhereUsedDialog : public QDialog {
    Q_OBJECT

public:
    WhereUsedDialog(session::Session &session, Ask &ask, QWidget *parent);

signals:
    /// Lead to that entry of that job.
    void entryWanted(const core::LedgerId &job, qint64 seq);

private:
    void find();
    void offer();
    void lead(const QString &key);
    void showJobs();
    void showUses();
    QLayout *makeNarrowing();
    session::UsesQuestion question() const;
    QString damageInWords() const;
    QString signedBy(const session::UseOf &use) const;
    /// None before anything was asked.
    std::span<const session::UseOf> uses() const;
    /// Of what was answered last.
    core::AuditTable table() const;

    session::Session &m_session;
    Ask &m_ask;
    QComboBox *m_sort;
    QLineEdit *m_value;
    QComboBox *m_kind;
    QLineEdit *m_from;
    QLineEdit *m_until;
    QLabel *m_count;
    QLabel *m_nothing; ///< why nothing was found, or what was wrong with the question
    RowTable *m_jobs;
    RowTable *m_rows;
    QPushButton *m_lead;
    QPushButton *m_all; ///< jobs again
    QPushButton *m_csv;
    QPushButton *m_pdf;
    std::optional<session::UsesAnswer> m_answer; ///< to what was asked last; nothing when it was refused
};

} // namespace desktop
