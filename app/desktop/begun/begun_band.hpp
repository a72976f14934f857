// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QFrame>
#include <QTimer>

#include "app/desktop/begun/begun_forms.hpp"
#include "app/session/clock.hpp"

class QLabel;
class QPushButton;

namespace desktop {

/// Keeps what is typed into a form until it is signed or given up, and offers what was kept when the form is opened again.
/// While the offer stands the form is locked: nothing of the old is lost under the new, and nothing is signed that nobody took up.
class BegunBand : public QFrame {
    Q_OBJECT

public:
    static constexpr int waitMilliseconds = 200; ///< after the last key

    /// The form as it is filled in beforehand; both live as long as the sheet.
    BegunBand(const BegunForms &forms, FormName name, QWidget &form, session::Clock clock, QWidget *parent);

    /// Something was begun, and nobody said yet whether it is wanted.
    bool isOffering() const { return m_offered.has_value(); }
    /// The button that takes it up.
    QWidget *firstControl() const;
    /// Something may have been typed.
    void typed();
    /// It was signed or given up: what was kept goes, unless it is still offered.
    void finish();

signals:
    /// It was taken up or discarded.
    void answered();

private:
    void answer();
    void keep();
    void say(const QString &text);

    const BegunForms &m_forms;
    FormName m_name;
    QWidget &m_form;
    session::Clock m_clock;
    core::json::Object m_before; ///< what the form was filled in with
    core::json::Object m_kept;
    std::optional<Begun> m_offered;
    bool m_isFinished = false;
    QTimer m_wait;
    QLabel *m_words;
    QPushButton *m_takeUp;
    QPushButton *m_discard;
};

} // namespace desktop
