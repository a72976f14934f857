// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QObject>
#include <QPointer>
#include <QWidget>

#include "app/desktop/actions.hpp"
#include "app/desktop/ask.hpp"
#include "app/desktop/given.hpp"
#include "app/desktop/job_feed.hpp"
#include "app/desktop/parts/field_form.hpp"
#include "app/desktop/parts/sign_sheet.hpp"

namespace desktop {

class PhotoPicker;

/// Has things signed: makes the sheet, opens it over the window, and says when entries were appended.
class Signing : public QObject, public Deeds {
    Q_OBJECT

public:
    Signing(session::Session &session, JobFeed &feed, const core::Kinds &kinds, Ask &ask, QWidget *window);

    core::Refusals whyNot(const ActionLine &action, const std::vector<core::InterfaceId> &items,
                          const std::optional<QString> &subject = {}) const override;
    void begin(const ActionLine &action, const std::vector<core::InterfaceId> &items,
               const std::optional<QString> &subject = {}) override;
    std::optional<core::PersonId> person() const override { return m_session.currentSigner(); }

    /// The same as begin, with what a page knows already of each entry.
    void beginGiven(const QString &kind, const std::vector<core::InterfaceId> &items, const std::optional<QString> &subject, const Given &given);
    /// Drafts that are signed as they are, without a form: the rows of an interface list.
    void beginFixed(const QString &title, const std::vector<core::Draft> &drafts);
    /// Any other sheet: a new job, a person, a tool.
    void open(SheetPlan plan);
    /// From now on what is typed into a form is kept there until it is signed. They live longer than this.
    void keepBegun(const BegunForms &forms) { m_begun = &forms; }
    /// Leaves the signer's key for another station, and shows the code.
    void carryKey();
    /// Takes a key over at this station.
    void takeKey();
    /// The bodies of one act of the register, asked in a form that the named page of the manual tells of, or that section of it.
    void beginRegister(QLatin1String kind, const std::vector<Seed> &seeds, QLatin1String manual, QLatin1String section = {});

signals:
    /// Entries were appended.
    void hasSigned(const std::vector<core::Entry> &entries);

private:
    std::vector<JobChoice> otherJobs() const;
    Situation situation(const std::vector<core::InterfaceId> &items, const std::optional<QString> &subject) const;
    core::Refusals refusalsFor(const core::PersonId &person, const ActionLine &action, Situation situation) const;
    SheetPlan planFor(const ActionLine &action, const Situation &situation, const Given &given);
    PhotoPicker *makePicker(const std::optional<photos::PhotoFile> &photo, FieldForm &form);
    /// With the look-up tables of its fields.
    FieldForm *makeForm(const FieldForm::Plan &plan);
    QStringList cautionsFor(const Situation &situation) const;

    session::Session &m_session;
    JobFeed &m_feed;
    const core::Kinds &m_kinds;
    Ask &m_ask;
    QWidget *m_window;
    const BegunForms *m_begun = nullptr;
    QPointer<SignSheet> m_sheet;
};

} // namespace desktop
