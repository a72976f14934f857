// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include <functional>
#include <memory>

#include "app/session/people.hpp"

class QLabel;
class QLineEdit;
class QPushButton;

namespace desktop {

class NewSecret;

/// The first thing in an empty store: the organisation and its first administrator, whose key is the root of the register.
class FoundPage : public QWidget {
    Q_OBJECT

public:
    using Found = std::function<session::Signed(const QString &organisation, const session::NewPerson &root)>;
    FoundPage(Found found, QWidget *parent = nullptr);
    ~FoundPage() override;

signals:
    void founded();

private:
    void judge();
    void take();

    Found m_found;
    QLineEdit *m_organisation;
    QLineEdit *m_id;
    QLineEdit *m_name;
    std::unique_ptr<NewSecret> m_secret;
    QLabel *m_problem;
    QPushButton *m_take;
};

} // namespace desktop
