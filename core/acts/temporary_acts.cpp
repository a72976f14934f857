// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <QCoreApplication>

namespace core {

namespace {

using namespace Qt::StringLiterals;

TemporaryItem *temporaryOf(JobState &job, const Statement &said)
{
    const auto id = TemporaryId::parse(said.subject.value_or(QString()));
    return id ? job.temporary(*id) : nullptr;
}

bool apply(JobState &job, const Statement &said)
{
    const auto id = TemporaryId::parse(said.subject.value_or(QString()));
    const auto sort = parseTemporarySort(said.body.text(u"sort"));
    if (!id || !sort || job.temporary(*id))
        return false;
    job.temporaries.push_back({*id, *sort, said.body.text(u"name"), said.body.text(u"zone"), said.body.text(u"tag"), markOf(said), said.author, std::nullopt, {}});
    return true;
}

bool remove(JobState &job, const Statement &said)
{
    TemporaryItem *item = temporaryOf(job, said);
    if (!item || item->removed)
        return false;
    item->removed = markOf(said);
    item->removedBecause = said.body.text(u"reason");
    return true;
}

bool handOver(JobState &job, const Statement &said)
{
    TemporaryItem *item = temporaryOf(job, said);
    const auto to = PersonId::parse(said.body.text(u"to"));
    if (!item || item->removed || !to)
        return false;
    item->owner = *to;
    return true;
}

std::vector<QLatin1String> sorts()
{
    // The choices of a field outlive every entry, and the texts are made once.
    static const std::vector<QByteArray> texts = [] {
        std::vector<QByteArray> all;
        for (const TemporarySort sort : allTemporarySorts())
            all.push_back(temporarySortText(sort).toLatin1());
        return all;
    }();
    std::vector<QLatin1String> choices;
    for (const QByteArray &text : texts)
        choices.emplace_back(text.constData(), text.size());
    return choices;
}

/// Common practice; 29 CFR 1910.147 on lockout and tagout.
QStringList applyCautions()
{
    return {
        QCoreApplication::translate("Act", "Isolate before hands go near: power off and locked out, pressure released, and proven dead or empty where the maintenance data asks for it."),
        QCoreApplication::translate("Act", "Whoever works behind an isolation applies their own, with their name on it."),
        QCoreApplication::translate("Act", "The approved maintenance data and the local rules say what is isolated, and by whom."),
    };
}

QStringList removeCautions()
{
    return {
        QCoreApplication::translate("Act", "Before an isolation comes off: everybody is clear, told, and accounted for, and nothing behind it is open."),
        QCoreApplication::translate("Act", "Nobody takes off what somebody else put on for their own safety."),
    };
}

} // namespace

/// What is put on for the job and must come off again.
std::vector<Act> temporaryActs()
{
    const Field helpers = field("helpers"_L1, FieldType::People, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Helped, supervised or taught by"), "person"_L1);
    const Field remarks = field("remarks"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Remarks"));
    const Field doneAt = field("done_at"_L1, FieldType::Moment, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Done at, if earlier"));
    return {
        {"temporary.applied"_L1, LedgerSort::Job, "performed"_L1, SubjectSort::NewTemporary, QT_TRANSLATE_NOOP("Act", "Apply"), QT_TRANSLATE_NOOP("Act", "Applied"),
         {choice("sort"_L1, Needed::Always, QT_TRANSLATE_NOOP("Field", "Sort"), sorts()),
          field("name"_L1, FieldType::Text, Needed::Always, QT_TRANSLATE_NOOP("Field", "What, and where")),
          field("zone"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Zone")),
          field("tag"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Number of its tag or collar")), helpers, remarks, doneAt},
         &apply, &applyCautions, {}},
        {"temporary.removed"_L1, LedgerSort::Job, "performed"_L1, SubjectSort::Temporary, QT_TRANSLATE_NOOP("Act", "Remove"), QT_TRANSLATE_NOOP("Act", "Removed"),
         {field("reason"_L1, FieldType::Text, Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Why, where it is another person's")), helpers, remarks, doneAt},
         &remove, &removeCautions, {}},
        {"temporary.handed_over"_L1, LedgerSort::Job, "performed"_L1, SubjectSort::Temporary, QT_TRANSLATE_NOOP("Act", "Hand it over"), QT_TRANSLATE_NOOP("Act", "Handed over to another"),
         {field("to"_L1, FieldType::Person, Needed::Always, QT_TRANSLATE_NOOP("Field", "To whom"), "person"_L1), remarks},
         &handOver, &noCautions, {}},
    };
}

} // namespace core
