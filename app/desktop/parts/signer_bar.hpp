// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include <optional>

class QLabel;
class QPushButton;

namespace desktop {

/// Beside the menus: the ways to the jobs and the people, who signs with the PIN alone, and the lock.
class SignerBar : public QWidget {
    Q_OBJECT

public:
    explicit SignerBar(QWidget *parent);
    /// The name of whoever signs; nothing while nobody is signed in.
    void show(const std::optional<QString> &signer);

signals:
    void jobsWanted();
    void peopleWanted();
    void lockWanted();

private:
    QLabel *m_who;
    QPushButton *m_lock;
};

} // namespace desktop
