// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDialog>

#include <functional>

#include "app/desktop/begun/begun_forms.hpp"
#include "app/session/session.hpp"
#include "core/measure/working.hpp"
#include "core/rules/refusal.hpp"

class QBoxLayout;
class QFormLayout;
class QFrame;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace desktop {

class BegunBand;
class PersonField;

/// All that a signature needs to know about what is signed.
struct SheetPlan {
    QString title;
    QLatin1String manual;                                                 ///< the page of the manual that tells of it
    QString meaning;                                                      ///< the sentence that the signature stands for
    QString sign;                                                         ///< on the button
    QStringList cautions;                                                 ///< where the work can hurt somebody
    QWidget *form;                                                        ///< taken over; may be nullptr
    std::function<QWidget *()> firstGap;                                  ///< the first field to fill in, or nullptr
    std::function<std::vector<core::measure::Working>()> workings{};      ///< what the form works out to as it stands
    std::function<void(const core::measure::Offer &)> takeOffer{};        ///< into the form
    std::function<QStringList()> words;                                   ///< what is being signed, a line for each entry
    std::function<core::Refusals(const core::PersonId &)> whyNot;         ///< if this person signed it as it stands
    std::function<session::Signed(const session::Signer &)> take;         ///< signs and appends
    bool needsKeyHere = true;                                             ///< whether the signer's key must be at this station already
    std::optional<FormName> keptAs{};                                     ///< under which what is typed is kept until it is signed; nothing: it is not kept
    const BegunForms *begun = nullptr;                                    ///< where
    QString about{};                                                      ///< aircraft, unit and work order, so that nobody signs for the wrong one; empty outside a job
    QLatin1String section{};                                              ///< of the page of the manual; empty: the whole page tells of it
};

/// Where something is signed: what exactly, in words; what the signature means; who signs; their PIN. Nothing is signed by
/// Return unless a PIN was typed, so a scanner that ends its burst with Return signs nothing.
class SignSheet : public QDialog {
    Q_OBJECT

public:
    SignSheet(session::Session &session, SheetPlan plan, QWidget *parent);

    /// The state moved: ask again.
    void judge();
    /// Nothing is signed, and what was typed is given up.
    void reject() override;

signals:
    void hasSigned(const std::vector<core::Entry> &entries);
    /// The signer wants to take their key over at this station first. judge() once it is here.
    void keyWanted();

private:
    void addHead(QVBoxLayout *column);
    void addBegun(QVBoxLayout *column);
    void addBody(QVBoxLayout *column);
    void addForm();
    void addWorking();
    void showWorking();
    void addWords(QVBoxLayout *column);
    void addWho(QVBoxLayout *column);
    void addButtons(QVBoxLayout *column);
    void askWho();
    core::Refusals whyNotHere(const core::PersonId &person);
    std::optional<core::PersonId> who() const;
    void sayProblem(const QString &problem);
    void sign();
    void fit();
    int heightOfRest(int width) const;
    int layWords(int width);
    void stack(bool isTight);
    void start();
    void goToFirst();

    session::Session &m_session;
    SheetPlan m_plan;
    std::optional<core::PersonId> m_known; ///< signs with the PIN alone
    bool m_isDone = false;
    BegunBand *m_begun = nullptr; ///< where what is typed is kept
    bool m_isTight = false;       ///< the head and what is signed scroll with the form
    QWidget *m_head = nullptr;    ///< what it is about
    QScrollArea *m_body = nullptr;
    QWidget *m_content = nullptr; ///< of the body: cautions, the form, what it comes to
    QWidget *m_said = nullptr;    ///< what is signed, and the meaning of it
    QBoxLayout *m_bodyColumns = nullptr;
    QFrame *m_worked = nullptr;
    QLabel *m_answer = nullptr;
    QLabel *m_working = nullptr;
    QPushButton *m_offer = nullptr;
    QListWidget *m_words = nullptr;
    QWidget *m_knownRow = nullptr;
    QFormLayout *m_whoForm = nullptr;
    QLabel *m_name = nullptr;
    PersonField *m_person = nullptr;
    QLineEdit *m_secret = nullptr;
    QLabel *m_problem = nullptr;
    QPushButton *m_takeKey = nullptr; ///< shown to a signer whose key is at other stations
    QPushButton *m_sign = nullptr;
};

} // namespace desktop
