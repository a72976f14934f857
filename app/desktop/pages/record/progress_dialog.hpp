// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDialog>

#include "app/desktop/pages/page.hpp"
#include "core/reports/progress.hpp"

class QComboBox;
class QLabel;

namespace desktop {

class ProgressView;

/// How the job went on: what was loose over time as a picture and in words, and what its own pace says about the rest.
class ProgressDialog : public QDialog {
    Q_OBJECT

public:
    ProgressDialog(const PageTools &tools, QWidget *parent);

private:
    void showBeside(int index);

    std::vector<core::ProgressLine> m_lines; ///< as the box offers them, after "none"
    QString m_whole;
    ProgressView *m_view;
    QComboBox *m_beside;
    QLabel *m_said;
};

} // namespace desktop
