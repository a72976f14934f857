// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDialog>

#include "app/desktop/ask.hpp"
#include "app/session/session.hpp"
#include "app/session/verify_store.hpp"
#include "core/kinds/kinds.hpp"

class QPushButton;

namespace desktop {

class RowTable;

/// The record packages of other stores that were imported into this one: to be verified again and saved to a file, never worked on.
class PackagesDialog : public QDialog {
    Q_OBJECT

public:
    PackagesDialog(session::Session &session, const core::Kinds &kinds, Ask &ask, QWidget *parent);
    void refresh();

signals:
    /// To look at a package before it is imported.
    void openWanted();

private:
    void verify();
    void save();
    void offer();

    session::Session &m_session;
    const core::Kinds &m_kinds;
    Ask &m_ask;
    RowTable *m_rows;
    QPushButton *m_verify;
    QPushButton *m_save;
};

/// Imports a package and tells how it went: what it is, whose root it hangs from, and how it stands to what the store has of the same job.
void importPackage(session::Session &session, const QString &path, const session::Known &known, const core::Kinds &kinds, Ask &ask, QWidget *window);

} // namespace desktop
