// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringList>

#include <map>

#include "core/job/fold.hpp"
#include "core/register/register.hpp"
#include "core/rules/refusal.hpp"

namespace story {

/// A job told in sentences that an inspector could read, for tests of the rules:
///
///     Story("Ana disconnects D1 tag=7; Ben reconnects D1; Ben torques D1; Cho accepts D1")
///
/// Each sentence is `<Person> <verb> [<what it is about>] [name=value …]`; name=value sets a member of the entry's body, and
/// `at=` the moment. What the sentence leaves out is filled in as a careful technician would. `;` ends a sentence.
/// Another job of the same store is told of by its name in front, `shop: Max disconnects S1`, and is opened when it is first told of (see
/// openingDrafts(name)); a value that names a job is that name, `here` for the first one.
/// Blanks in a value are written as `_`. Quantities of people and interfaces: see world() in the .cpp.
class Story {
public:
    /// `facts` are further members of the entry that opens the job.
    explicit Story(const QString &text = {}, const core::json::Object &facts = {});

    /// Tells on. Stops at the first sentence that is refused.
    void tell(const QString &text);
    /// Takes drafts that were made elsewhere, a minute apart. Stops at the first that is refused.
    void take(const std::vector<core::Draft> &drafts);

    /// The names of the rules that refused the last sentence, joined by blanks; empty when all were admitted.
    QString refusedBy() const;
    /// The sentence that was refused; empty when all were admitted.
    const QString &refusedSentence() const { return m_refusedSentence; }
    const core::Refusals &refusals() const { return m_refusals; }

    const core::JobState &job() const { return fold().state(); }
    const core::JobFold &fold() const { return m_folds.at(QString()); }
    /// Another job, as it sees the ones that it is linked with.
    const core::JobState &job(const QString &name);
    const core::Register &reg() const { return m_register; }
    const core::InterfaceState &item(const QString &id) const;
    /// The name of its stage; empty when it is not on the list (any more).
    QString stage(const QString &id) const;
    /// Rule and subject of each loose end, `loose.disconnected D1`, one a line.
    QString looseEnds() const { return looseEndsOf({}); }
    QString looseEndsOf(const QString &job) const;

    /// The drafts that a sentence stands for, not judged; "torques D1" without a fastener stands for one draft a fastener.
    std::vector<core::Draft> drafts(const QString &sentence);
    core::Refusals ask(const core::Draft &draft) const;

private:
    bool take(const core::Draft &draft, const QString &sentence, const QString &job);
    void begin(const QString &job);
    void fillIn(core::Draft &draft, const QString &job, const QStringList &words) const;
    void showOthers(const QString &job, const core::Draft &draft);

    core::Register m_register;
    std::map<QString, core::JobFold> m_folds; ///< the first job under the empty name
    QString m_told;                           ///< the job that the last sentence was told of
    core::Instant m_now;
    core::Refusals m_refusals;
    QString m_refusedSentence;
};

} // namespace story
