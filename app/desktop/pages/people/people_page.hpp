// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include <functional>

#include "app/desktop/flows/signing.hpp"
#include "app/desktop/parts/row_model.hpp"

class QLabel;

namespace desktop {

class RowTable;

/// The register: people with their authorisations, tools with their calibrations. Every change is a signed entry.
class PeoplePage : public QWidget {
    Q_OBJECT

public:
    PeoplePage(session::Session &session, Signing &signing, QWidget *parent = nullptr);
    void refresh();

private:
    QWidget *makePeople();
    QWidget *makeTools();
    QWidget *makeButtons(const std::vector<std::pair<QString, std::function<void()>>> &buttons);
    std::vector<Row> authorisationRows() const;
    void showAuthorisations();
    QStringList keyNews(const core::Person &person);
    void stopKey();
    void grant();
    void withdrawAuthorisation();
    void registerTool();
    void calibrate();
    void doubtTool();
    void withdrawTool();

    session::Session &m_session;
    Signing &m_signing;
    QLabel *m_root;
    RowTable *m_people;
    QLabel *m_whose;
    RowTable *m_authorisations;
    QLabel *m_keyNews; ///< what is to be known of the chosen person's key
    RowTable *m_tools;
};

} // namespace desktop
