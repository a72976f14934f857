// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDialog>

#include <functional>

#include "app/desktop/ask.hpp"
#include "app/session/verify_store.hpp"
#include "core/kinds/kinds.hpp"

class QLabel;
class QLineEdit;
class QPushButton;

namespace desktop {

class RowTable;

/// What verifying found, and what it was found of.
struct Verdict {
    session::VerifyReport report;
    QString about; ///< `Work order …, closed`; empty for a store
};

/// What is verified: a store, a package.
struct VerifyWhat {
    QString title; ///< of the window: Verify the store
    QString name;  ///< its file
    std::function<core::Result<Verdict>(const session::Known &known, const Progress &progress)> verify;
    /// Takes a package into the open store; empty where there is none, or nothing to take. Tells how it went.
    std::function<void(const session::Known &known)> import{};
};

/// The verdict on a store or a package: one sentence first, what it is about and what it does not say below, then every fault with its entry and rule. What the auditor knows
/// from elsewhere can be typed in, and is asked with the rest.
class VerifyDialog : public QDialog {
    Q_OBJECT

public:
    VerifyDialog(VerifyWhat what, Ask &ask, QWidget *parent);

    /// Verifies now, with what is typed in.
    void verify();

signals:
    void verified(const QString &sentence, bool isGood);

private:
    core::Result<session::Known> known() const;
    void show(const Verdict &verdict, const session::Known &known);
    void say(const QString &sentence, const char *outcome);
    void grow();
    void write();
    QString asText() const;
    QWidget *makeKnown();
    QWidget *makeButtons();

    VerifyWhat m_what;
    Ask &m_ask;
    QLabel *m_sentence;
    QLabel *m_about;
    QLabel *m_name; ///< with the root's fingerprint
    QLabel *m_limits;
    QLineEdit *m_root;
    QLineEdit *m_head;
    RowTable *m_ledgers;
    RowTable *m_faults;
    QPushButton *m_import;
    QPushButton *m_write;
};

/// The verdict on a package file.
VerifyWhat packageToVerify(const QString &path, const core::Kinds &kinds);

} // namespace desktop
