// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/parts/sign_sheet.hpp"

class QWidget;

namespace desktop {

/// The sheet for enrolling a person: id, name, how the identity was proved, and the PIN that the person types themselves,
/// twice. Signed by an administrator.
SheetPlan enrolPlan(session::Session &session, QWidget *parent);

/// The sheet for a new key: for a person who lost their secret.
SheetPlan replaceKeyPlan(session::Session &session, QWidget *parent);

/// The sheet for another PIN of one's own: the old one signs, so nobody else can change it. Writes no entry.
SheetPlan changeSecretPlan(session::Session &session, QWidget *parent);

/// Lines for a new secret, typed twice without being shown; and what is wrong with them.
class NewSecret {
public:
    NewSecret(class QFormLayout *form, QWidget *parent);
    QString secret() const;
    /// Why it cannot be taken, in words; empty when it can.
    QString fault() const;
    class QLineEdit *first() const { return m_first; }
    class QLineEdit *second() const { return m_second; }

private:
    class QLineEdit *m_first;
    class QLineEdit *m_second;
};

} // namespace desktop
