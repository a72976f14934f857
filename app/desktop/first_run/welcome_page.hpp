// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

class QVBoxLayout;

namespace desktop {

/// What is seen while no store is open: make one, open one, try the demo, or go on with a recent one.
class WelcomePage : public QWidget {
    Q_OBJECT

public:
    explicit WelcomePage(QWidget *parent = nullptr);
    void show(const QStringList &recentStores);

signals:
    void newStoreWanted();
    void openStoreWanted();
    void demoWanted();
    void packageWanted();
    void recentChosen(const QString &path);

private:
    QVBoxLayout *m_recent;
};

} // namespace desktop
