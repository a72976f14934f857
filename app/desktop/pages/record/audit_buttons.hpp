// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include "app/desktop/pages/page.hpp"

class QPushButton;

namespace desktop {

/// What an auditor asks of the job beyond its entries, each in a window of its own.
class AuditButtons : public QWidget {
    Q_OBJECT

public:
    AuditButtons(const PageTools &tools, QWidget *parent);

signals:
    void entryWanted(const QString &seq);

private:
    void offer();
    void showSample();
    void showCompare();
    void showSignings();
    void showProgress();

    PageTools m_tools;
    QPushButton *m_progress;
    QPushButton *m_sample;
    QPushButton *m_compare;
    QPushButton *m_signings;
};

} // namespace desktop
