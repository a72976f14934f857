// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/entry_words.hpp"

#include <QCoreApplication>

#include "app/desktop/parts/words.hpp"

namespace desktop {

namespace {

struct EntryWords {
    Q_DECLARE_TR_FUNCTIONS(EntryWords)
};

} // namespace

QString entryInWords(const core::JobState &job, const core::Line &line)
{
    const core::Act *act = core::findAct(line.kind);
    const QString done = act ? doneOf(*act) : line.kind;
    const QString subject = act ? subjectInWords(act->subject, line.subject, job) : line.subject.value_or(QString());
    return EntryWords::tr("%1, %2 (entry %3)").arg(subject.isEmpty() ? done : EntryWords::tr("%1: %2").arg(subject, done), momentInWords(job, line.seq, line.at), QString::number(line.seq));
}

} // namespace desktop
