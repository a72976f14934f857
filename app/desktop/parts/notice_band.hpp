// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QFrame>

#include "app/session/notice.hpp"

class QLabel;
class QPushButton;

namespace desktop {

/// A band above the pages with what everybody must know, and the button that does something about it. Not there while all is
/// well; never in the way of work.
class NoticeBand : public QFrame {
    Q_OBJECT

public:
    explicit NoticeBand(QWidget *parent);
    /// True when it says something else than before.
    bool show(const std::optional<session::Notice> &notice);

signals:
    void backupWanted();

private:
    std::optional<session::Notice> m_shown;
    QLabel *m_sentence;
    QPushButton *m_backUp;
};

} // namespace desktop
